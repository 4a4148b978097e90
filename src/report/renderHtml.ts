import { requireOptions } from '../base/index.js';
import { cautionsOf, type TestResult } from '../methods/index.js';
import { figures, type FigureName } from './figures.js';
import { findingsList } from './findingsList.js';
import { html, raw, type Html } from './html.js';
import { htmlPage } from './htmlPage.js';
import type { MethodPage, PageTable } from './MethodPage.js';
import { pageOf } from './pageOf.js';
import { presentation, presentationOptions, type Presentation, type PresentationOptions } from './presentation.js';
import { summarise, type SummaryOptions, type SummaryRow } from './summarise.js';

/** Options of {@link renderHtml}. */
export interface RenderOptions extends SummaryOptions {
  /** Drawings of the figures as SVG, by name, as `drawFigures` of `testpiece/render` makes them; figures without one are left out. */
  readonly drawings?: Partial<Record<FigureName, string>> | undefined;
}

/** A label and its text. */
type IdentityRow = ReturnType<MethodPage<TestResult>['identity']>[number];

/** What is known of the verification of the force. */
function calibrationRows(known: TestResult['test']['forceCalibration'], show: Presentation): readonly IdentityRow[] {
  if (typeof known !== 'object') return [['Force calibration', known]];
  const { certificate, date, intervalMonths, forceClass, range } = known;
  return [
    ['Force calibration', certificate],
    ['Force verified on', date],
    ['Interval of verification', intervalMonths === undefined ? undefined : show.say('{months} months', { months: intervalMonths })],
    ['Class of the force', forceClass === undefined ? undefined : String(forceClass)],
    ['Forces verified', range && show.say('{low} to {high}', { low: show.value(range[0], 'N', 4), high: show.value(range[1], 'N', 4) })],
  ];
}

/** Who tested what, then piece and set-up of the method. */
function identity({ test }: TestResult, own: ReturnType<MethodPage<TestResult>['identity']>, show: Presentation): Html {
  const rows: ReturnType<MethodPage<TestResult>['identity']> = [
    ['Test piece', test.identity],
    ['Material', test.material],
    ['Date', test.date],
    ['Operator', test.operator],
    ['Temperature', test.temperature === undefined ? undefined : `${show.number(test.temperature, 4)} °C`],
    ['Standard claimed', test.standard],
    ['Grips', test.grips],
    ...calibrationRows(test.forceCalibration, show),
    ['Remarks', test.remarks],
    ...own,
  ];
  return html`<dl>
    ${rows.flatMap(([name, value]) =>
      value === undefined
        ? []
        : [
            html`<dt>${show.say(name)}</dt>
              <dd>${value}</dd>`,
          ],
    )}
  </dl>`;
}

/** What the columns of the table mean: how values were rounded, and what their uncertainty holds. */
function tableInWords(result: TestResult, { rounding = 'iso', half = 'even' }: SummaryOptions, { say }: Presentation): string {
  const budgets = 'uncertainty' in result && result.uncertainty !== undefined;
  const steps = { standard: rounding === 'iso' ? 'ISO 6892-1' : 'ASTM E8/E8M' };
  return [
    half === 'even'
      ? say('Rounded once, by the steps of {standard} where it has them, half to even.', steps)
      : say('Rounded once, by the steps of {standard} where it has them, half up.', steps),
    budgets
      ? say('u: standard uncertainty by the budget of the test, where it is known.')
      : say('u: standard uncertainty by scatter alone, where it is known.'),
  ].join(' ');
}

function resultsTable(rows: readonly SummaryRow[], words: string, { say, number }: Presentation): Html {
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
        <th scope="col">${say('Symbol')}</th>
        <th scope="col">${say('Quantity')}</th>
        <th scope="col">${say('Value')}</th>
        <th scope="col">${say('Unit')}</th>
        <th scope="col">u</th>
        <th scope="col">${say('Rule')}</th>
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
function drawn(result: TestResult, drawings: NonNullable<RenderOptions['drawings']>, options: PresentationOptions): Html[] {
  return Object.entries(figures(result, options)).flatMap(([name, { title, description }]) => {
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
 * @param options - Drawings of the figures (made with the same language and units); whose steps of rounding, and where a half goes; language; units.
 * @returns The page.
 * @throws {@link InputError} `wrong-type`, `missing`, `out-of-range`, `unknown-option`.
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
  const from = 'renderHtml';
  const method = pageOf(from, result);
  requireOptions(from, options, ['drawings', 'rounding', 'half', ...presentationOptions]);
  const { rounding, half, language, units } = options;
  const show = presentation(from, options);
  const { say, term, number } = show;
  const { test, provenance, trail } = result;
  const title = `${say(method.title)}${test.identity === undefined ? '' : `: ${test.identity}`}`;
  const pictures = drawn(result, options.drawings ?? {}, { language, units });
  const steps = trail.map(({ step, values }) => {
    const numbers = Object.entries(values).map(
      ([name, value]) => `${term(name)} ${typeof value === 'number' ? number(value, 6) : term(value)}`,
    );
    return html`<li>${term(step)} (${numbers.join('; ')})</li>`;
  });
  return htmlPage(
    title,
    html`<h1>${title}</h1>
      <p class="lead">${say('Properties from the record, how each was found, and what stands in doubt.')}</p>
      ${
        test.invented === true
          ? html`<p class="invented">
              <strong>${say('Invented data.')}</strong>
              ${say('Made by a simulation for teaching; no real test stands behind these numbers.')}
            </p>`
          : []
      }
      ${identity(result, method.identity(result, show), show)}
      <h2>${say('Results')}</h2>
      ${resultsTable(summarise(result, { rounding, half, language, units }), tableInWords(result, { rounding, half }, show), show)}
      <h2>${say('Findings')}</h2>
      ${findingsList(result.findings, show)}
      ${
        pictures.length > 0
          ? html`<h2>${say('Figures')}</h2>
              ${pictures}`
          : []
      }
      <h2>${say('How each value was found')}</h2>
      <ul>
        ${method.howFound(result, show).map((sentence) => html`<li>${sentence}</li>`)}
      </ul>
      ${method.table ? furtherTable(method.table(result, show)) : []}
      <h2>${say('Cautions')}</h2>
      <ul>
        ${cautionsOf(method.work).map(({ tag }) => html`<li>${show.language.cautions[tag]}</li>`)}
      </ul>
      <h2>${say('What was done to the record')}</h2>
      <ol>
        ${steps}
      </ol>
      <h2>${say('Provenance')}</h2>
      <dl>
        <dt>${say('Evaluated by')}</dt>
        <dd>${provenance.package} ${provenance.version}</dd>
        <dt>${say('Hash of the columns')}</dt>
        <dd><code>${provenance.hash}</code> ${say('(tells records apart; not cryptographic)')}</dd>
        <dt>${say('Options')}</dt>
        <dd><code>${JSON.stringify(provenance.options)}</code></dd>
      </dl>`,
    show.language,
  );
}
