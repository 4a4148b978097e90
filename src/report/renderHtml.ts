import { requireObject, requireOptions, type Finding, type Severity } from '../base/index.js';
import type { TensionResult } from '../methods/index.js';
import { tensionCautions } from './cautions.js';
import { figures, type FigureName } from './figures.js';
import { html, raw, type Html } from './html.js';
import { pageStyle } from './pageStyle.js';
import { summarise, type SummaryRow } from './summarise.js';

/** Options of {@link renderHtml}. */
export interface RenderOptions {
  /** Drawings of the figures as SVG, by name, as `drawFigures` of `testpiece/render` makes them; figures without one are left out. */
  readonly drawings?: Partial<Record<FigureName, string>> | undefined;
}

const number = (value: number, figures: number): string => String(Number(value.toPrecision(figures)));
const percent = (value: number, figures = 3): string => `${number(100 * value, figures)} %`;

function identity(result: TensionResult): Html {
  const { test, testPiece } = result;
  const { section } = testPiece;
  const dimensions = Object.entries(section.dimensions)
    .map(([name, value]) => `${name} ${number(value, 5)}`)
    .join(', ');
  const rows: (readonly [string, string | undefined])[] = [
    ['Test piece', test.identity],
    ['Material', test.material],
    ['Date', test.date],
    ['Operator', test.operator],
    ['Temperature', test.temperature === undefined ? undefined : `${number(test.temperature, 4)} °C`],
    ['Standard claimed', test.standard],
    ['Force calibration', test.forceCalibration],
    ['Remarks', test.remarks],
    ['Section', `${section.shape}, ${dimensions} (mm); S0 = ${number(section.area, 5)} mm²`],
    ['Gauge length L0', `${number(testPiece.gaugeLength, 5)} mm`],
    ['Parallel length Lc', testPiece.parallelLength === undefined ? undefined : `${number(testPiece.parallelLength, 5)} mm`],
    ['Strain from', `${result.extensionBasis.replaceAll('-', ' ')}, over ${number(result.strainLength, 5)} mm`],
  ];
  return html`<dl>
    ${rows.flatMap(([name, value]) =>
      value === undefined
        ? []
        : [
            html`<dt>${name}</dt>
              <dd>${value}</dd>`,
          ],
    )}
  </dl>`;
}

function resultsTable(rows: readonly SummaryRow[]): Html {
  const row = ({ symbol, name, text, unit, standardUncertainty, source, stamp }: SummaryRow): Html =>
    html`<tr>
      <th scope="row">${symbol}</th>
      <td>${name}${stamp === undefined ? [] : html`<span class="stamp">${stamp}</span>`}</td>
      <td class="number">${text}</td>
      <td class="unit">${unit}</td>
      <td class="number">${standardUncertainty === undefined ? '' : number(standardUncertainty, 2)}</td>
      <td class="source">${source}</td>
    </tr>`;
  return html`<table>
    <caption>
      Rounded once, half to even; u: standard uncertainty by scatter alone, where it is known.
    </caption>
    <thead>
      <tr>
        <th scope="col">Symbol</th>
        <th scope="col">Quantity</th>
        <th scope="col">Value</th>
        <th scope="col">Unit</th>
        <th scope="col">u</th>
        <th scope="col">Rule</th>
      </tr>
    </thead>
    <tbody>
      ${rows.map(row)}
    </tbody>
  </table>`;
}

/** What explains the elastic line: its residuals, other windows, and what it means for the proof strength. */
function lineInWords({ residuals, envelope, trust }: NonNullable<TensionResult['modulusWindow']>): string[] {
  return [
    ...(residuals
      ? [
          `Residuals: ${residuals.runs} runs of one sign (${number(residuals.expectedRuns, 3)} expected in random order); a parabola changes the slope by ${percent(residuals.slopeChange)} from end to end.`,
        ]
      : []),
    ...(envelope
      ? [
          `Other windows (${envelope.windows}) give slopes from ${number(envelope.slope[0] / 1000, 4)} to ${number(envelope.slope[1] / 1000, 4)} GPa${envelope.proofStrength ? ` and Rp0.2 from ${number(envelope.proofStrength[0], 4)} to ${number(envelope.proofStrength[1], 4)} MPa` : ''}: ${envelope.verdict}.`,
        ]
      : []),
    ...(trust
      ? [
          `Leverage of the slope on Rp0.2: λ = ${number(trust.leverage, 3)}; one standard error of the slope moves the offset by ${percent(trust.offsetDoubt)} of itself: ${trust.verdict}.`,
        ]
      : []),
  ];
}

/** How each value was found, in sentences with the numbers. */
function howFound(result: TensionResult): Html {
  const { modulusWindow: line, fracture, hardening, upperYieldStrength: upper, proofStrengths } = result;
  const sentences: string[] = [];
  if (line)
    sentences.push(
      `Elastic line: window ${line.criterion}, samples ${line.first} to ${line.last} (${line.points}), ${number(line.stressLimits[0], 4)} to ${number(line.stressLimits[1], 4)} MPa; slope ${number(line.slope / 1000, 5)} GPa, R² = ${line.rSquared.toFixed(6)}, S_m(rel) = ${percent(line.relativeStandardError)}.`,
      `Strain origin: moved by ${number(line.strainShift, 4)} to where the line meets zero stress; all strains count from there.`,
      ...(line.alternatives.length > 0
        ? [`Runner-up windows give slopes of ${line.alternatives.map(({ slope }) => number(slope / 1000, 4)).join(', ')} GPa.`]
        : []),
      ...lineInWords(line),
    );
  for (const proof of proofStrengths)
    sentences.push(
      `${proof.symbol}: first lasting crossing with a line of the same slope, offset by ${percent(proof.extension)}; at a strain of ${percent(proof.strain)}.`,
    );
  if (upper)
    sentences.push(
      `Yield point: the highest stress before a fall of at least 0.5 % with no higher stress over the next 0.05 % strain, at sample ${upper.index}; ReL without the first transient.`,
    );
  sentences.push(`Maximum: sample ${result.maximumIndex}.`);
  if (fracture) sentences.push(`Fracture: sample ${fracture.index}, recognised as ${fracture.how.replaceAll('-', ' ')}.`);
  if (hardening)
    sentences.push(
      `${hardening.law}'s law: true plastic strain ${number(hardening.range[0], 3)} to ${number(hardening.range[1], 3)}, ${hardening.points} samples, R² = ${hardening.rSquared.toFixed(5)}.`,
    );
  return html`<ul>
    ${sentences.map((sentence) => html`<li>${sentence}</li>`)}
  </ul>`;
}

const severities: readonly (readonly [Severity, string])[] = [
  ['fault', 'Faults: a value is withheld or must not be used'],
  ['caution', 'Cautions: read them beside the values'],
  ['note', 'Notes'],
];

function findingsList(findings: readonly Finding[]): Html {
  if (findings.length === 0) return html`<p>Nothing to report.</p>`;
  const item = ({ severity, message, remedy }: Finding): Html =>
    html`<li class="${severity}">${message} <span class="remedy">${remedy}</span></li>`;
  return raw(
    severities
      .map(([severity, heading]) => {
        const own = findings.filter((one) => one.severity === severity);
        return own.length === 0
          ? ''
          : html`<h3>${heading}</h3>
              <ul class="findings">
                ${own.map(item)}
              </ul>`.markup;
      })
      .join(''),
  );
}

/** Drawings in the order of the figures, each with its words. The SVG is our renderer's own. */
function drawn(result: TensionResult, drawings: NonNullable<RenderOptions['drawings']>): Html[] {
  return Object.entries(figures(result)).flatMap(([name, { title, description }]) => {
    const svg = drawings[name as FigureName];
    return svg === undefined ? [] : [html`<figure role="img" aria-label="${`${title}. ${description}`}">${raw(svg)}</figure>`];
  });
}

/**
 * A report as one page of HTML, complete in itself: no script, no address outside.
 *
 * @remarks
 * Results with units, rules and stamps; how each value was found; findings with their remedy; cautions; figures; what was done to the
 * record; what reproduces it. Prints on A4. Text from outside (identity, remarks, messages) is escaped; the drawings are put in as they are
 * and must come from `testpiece/render`.
 *
 * @param result - A result of `analyseTension`.
 * @param options - Drawings of the figures.
 * @returns The page.
 * @throws {@link InputError} `wrong-type`, `missing`, `unknown-option`.
 *
 * @example
 * ```ts
 * const record = { force: [0, 1000, 2000, 3000, 3100, 2500], strain: [0, 0.001, 0.002, 0.003, 0.05, 0.06] };
 * const result = analyseTension(record, { section: round({ diameter: 8 }), gaugeLength: 40 }, { test: { identity: 'bar <1>' } });
 * renderHtml(result).includes('bar &lt;1&gt;'); // => true
 * ```
 *
 * @see ISO 6892-1:2019, test report. Checked in `test/report/report.test.ts`.
 */
export function renderHtml(result: TensionResult, options: RenderOptions = {}): string {
  requireObject('renderHtml', 'result', result);
  requireOptions('renderHtml', options, ['drawings']);
  const { test, provenance, trail } = result;
  const title = `Tension test${test.identity === undefined ? '' : `: ${test.identity}`}`;
  const pictures = drawn(result, options.drawings ?? {});
  const steps = trail.map(({ step, values }) => {
    const numbers = Object.entries(values).map(([name, value]) => `${name} ${typeof value === 'number' ? number(value, 6) : value}`);
    return html`<li>${step} (${numbers.join(', ')})</li>`;
  });
  const page = html`<!doctype html>
    <html lang="en">
      <head>
        <meta charset="utf-8" />
        <meta name="viewport" content="width=device-width, initial-scale=1" />
        <title>${title}</title>
        <style>
          ${raw(pageStyle)}
        </style>
      </head>
      <body>
        <main>
          <h1>${title}</h1>
          <p class="lead">Properties from the record, how each was found, and what stands in doubt.</p>
          ${test.invented === true ? html`<p class="invented"><strong>Invented data.</strong> Made by a simulation for teaching; no real test stands behind these numbers.</p>` : []}
          ${identity(result)}
          <h2>Results</h2>
          ${resultsTable(summarise(result))}
          <h2>Findings</h2>
          ${findingsList(result.findings)}
          ${
            pictures.length > 0
              ? html`<h2>Figures</h2>
                  ${pictures}`
              : []
          }
          <h2>How each value was found</h2>
          ${howFound(result)}
          <h2>Cautions</h2>
          <ul>
            ${tensionCautions.map((caution) => html`<li>${caution}</li>`)}
          </ul>
          <h2>What was done to the record</h2>
          <ol>
            ${steps}
          </ol>
          <h2>Provenance</h2>
          <dl>
            <dt>Evaluated by</dt>
            <dd>${provenance.package} ${provenance.version}</dd>
            <dt>Hash of the columns</dt>
            <dd><code>${provenance.hash}</code> (tells records apart; not cryptographic)</dd>
            <dt>Options</dt>
            <dd><code>${JSON.stringify(provenance.options)}</code></dd>
          </dl>
        </main>
      </body>
    </html> `;
  return page.markup;
}
