import { requireOptions } from '../base/index.js';
import type { TestResult } from '../methods/index.js';
import { figures, type FigureName } from './figures.js';
import { findingsList } from './findingsList.js';
import { html, raw, type Html } from './html.js';
import { htmlPage } from './htmlPage.js';
import { number, type MethodPage, type PageTable } from './MethodPage.js';
import { pageOf } from './pageOf.js';
import { summarise, type SummaryOptions, type SummaryRow } from './summarise.js';

/** Options of {@link renderHtml}. */
export interface RenderOptions extends SummaryOptions {
  /** Drawings of the figures as SVG, by name, as `drawFigures` of `testpiece/render` makes them; figures without one are left out. */
  readonly drawings?: Partial<Record<FigureName, string>> | undefined;
}

/** What is known of the verification of the force. */
function calibrationRows(known: TestResult['test']['forceCalibration']): readonly (readonly [string, string | undefined])[] {
  if (typeof known !== 'object') return [['Force calibration', known]];
  const { certificate, date, intervalMonths, forceClass, range } = known;
  return [
    ['Force calibration', certificate],
    ['Force verified on', date],
    ['Interval of verification', intervalMonths === undefined ? undefined : `${number(intervalMonths, 4)} months`],
    ['Class of the force', forceClass === undefined ? undefined : String(forceClass)],
    ['Forces verified', range === undefined ? undefined : `${number(range[0], 4)} N to ${number(range[1], 4)} N`],
  ];
}

/** Who tested what, then piece and set-up of the method. */
function identity({ test }: TestResult, own: ReturnType<MethodPage<TestResult>['identity']>): Html {
  const rows: ReturnType<MethodPage<TestResult>['identity']> = [
    ['Test piece', test.identity],
    ['Material', test.material],
    ['Date', test.date],
    ['Operator', test.operator],
    ['Temperature', test.temperature === undefined ? undefined : `${number(test.temperature, 4)} °C`],
    ['Standard claimed', test.standard],
    ['Grips', test.grips],
    ...calibrationRows(test.forceCalibration),
    ['Remarks', test.remarks],
    ...own,
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

/** What the columns of the table mean: how values were rounded, and what their uncertainty holds. */
function tableInWords(result: TestResult, { rounding = 'iso', half = 'even' }: SummaryOptions): string {
  const steps = rounding === 'iso' ? 'ISO 6892-1' : 'ASTM E8/E8M';
  const budgets = 'uncertainty' in result && result.uncertainty !== undefined;
  return `Rounded once, by the steps of ${steps} where it has them, half ${half === 'even' ? 'to even' : 'up'}; u: standard uncertainty ${budgets ? 'by the budget of the test' : 'by scatter alone'}, where it is known.`;
}

function resultsTable(rows: readonly SummaryRow[], words: string): Html {
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
      ${words}
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

function furtherTable({ heading, caption, columns, rows }: PageTable): Html {
  return html`<h2>${heading}</h2>
    <table>
      <caption>
        ${caption}
      </caption>
      <thead>
        <tr>
          ${columns.map((one) => html`<th scope="col">${one}</th>`)}
        </tr>
      </thead>
      <tbody>
        ${rows.map(
          ([name = '', ...cells]) =>
            html`<tr>
              <th scope="row">${name}</th>
              ${cells.map((one) => html`<td>${one}</td>`)}
            </tr>`,
        )}
      </tbody>
    </table>`;
}

/** Drawings in the order of the figures, each with its words. The SVG is our renderer's own. */
function drawn(result: TestResult, drawings: NonNullable<RenderOptions['drawings']>): Html[] {
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
 * @param result - A result of any `analyse` function.
 * @param options - Drawings of the figures; whose steps of rounding, and where a half goes.
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
export function renderHtml(result: TestResult, options: RenderOptions = {}): string {
  const method = pageOf('renderHtml', result);
  requireOptions('renderHtml', options, ['drawings', 'rounding', 'half']);
  const { rounding, half } = options;
  const { test, provenance, trail } = result;
  const title = `${method.title}${test.identity === undefined ? '' : `: ${test.identity}`}`;
  const pictures = drawn(result, options.drawings ?? {});
  const steps = trail.map(({ step, values }) => {
    const numbers = Object.entries(values).map(([name, value]) => `${name} ${typeof value === 'number' ? number(value, 6) : value}`);
    return html`<li>${step} (${numbers.join(', ')})</li>`;
  });
  return htmlPage(
    title,
    html`<h1>${title}</h1>
      <p class="lead">Properties from the record, how each was found, and what stands in doubt.</p>
      ${test.invented === true ? html`<p class="invented"><strong>Invented data.</strong> Made by a simulation for teaching; no real test stands behind these numbers.</p>` : []}
      ${identity(result, method.identity(result))}
      <h2>Results</h2>
      ${resultsTable(summarise(result, { rounding, half }), tableInWords(result, { rounding, half }))}
      <h2>Findings</h2>
      ${findingsList(result.findings)}
      ${
        pictures.length > 0
          ? html`<h2>Figures</h2>
              ${pictures}`
          : []
      }
      <h2>How each value was found</h2>
      <ul>
        ${method.howFound(result).map((sentence) => html`<li>${sentence}</li>`)}
      </ul>
      ${method.table ? furtherTable(method.table(result)) : []}
      <h2>Cautions</h2>
      <ul>
        ${method.cautions.map((caution) => html`<li>${caution}</li>`)}
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
      </dl>`,
  );
}
