import { requireBoolean, requireList, requireObject, requireOptions, requireText } from '../base/index.js';
import type { Phrase } from '../languages/index.js';
import type { CurveResult, ReplicatesResult, TestResult } from '../methods/index.js';
import { budgetTables } from './budgetTables.js';
import { decisionsPart, requireDecisions, type AskedDecision } from './decisionsPart.js';
import type { Figure } from './Figure.js';
import { figures, type FigureName } from './figures.js';
import { findingsList } from './findingsList.js';
import { html, type Html } from './html.js';
import { htmlPage, requirePaper, type Paper } from './htmlPage.js';
import type { MethodPage } from './MethodPage.js';
import {
  bullets,
  cautionsPart,
  inventedBox,
  labelled,
  outside,
  pictureOf,
  provenancePart,
  sectionOf,
  tableOf,
  trailPart,
} from './pageParts.js';
import { pageOf } from './pageOf.js';
import { presentation, presentationOptions, type Presentation } from './presentation.js';
import { replicatesPage } from './replicatesPage.js';
import { summarise, type SummaryOptions, type SummaryRow } from './summarise.js';
import { hasPiece } from './TensionOrCurve.js';
import { whatIfTable } from './whatIfTable.js';

const optionNames = ['drawings', 'furtherFigures', 'decisions', 'whatIf', 'paper', 'rounding', 'half', ...presentationOptions];

/** A figure beside those of the test, with its drawing. */
export interface FurtherFigure {
  /** The figure, for its title and its words. */
  readonly figure: Figure;
  /** Its drawing as SVG, as `drawFigure` of `testpiece/render` makes it. */
  readonly drawing: string;
}

/** Options of {@link renderHtml}. */
export interface RenderOptions extends SummaryOptions {
  /** Drawings of the figures as SVG, by name, as `drawFigures` of `testpiece/render` makes them; figures without one are left out. */
  readonly drawings?: Partial<Record<FigureName, string>> | undefined;
  /** Figures beside those of the test: of several tests, of laws; default none. */
  readonly furtherFigures?: readonly FurtherFigure[] | undefined;
  /** Values with the limits and the rule that `decide` holds them against; default none. */
  readonly decisions?: readonly AskedDecision[] | undefined;
  /** Of a tension test: what other windows, offsets, lengths and compliances would give; default true. */
  readonly whatIf?: boolean | undefined;
  /** Sheet that the page is printed on; default `A4`. */
  readonly paper?: Paper | undefined;
}

/** A test, not several. */
type Single = TestResult | CurveResult;
/** A label and its text. */
type IdentityRow = ReturnType<MethodPage<Single>['identity']>[number];

/** What is known of the verification of the force. */
function calibrationRows(known: Single['test']['forceCalibration'], show: Presentation): readonly IdentityRow[] {
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
function identity({ test }: Single, own: ReturnType<MethodPage<Single>['identity']>, show: Presentation): Html {
  const rows: ReturnType<MethodPage<Single>['identity']> = [
    ['Test piece', test.identity],
    ['Material', test.material],
    ['Date', test.date],
    ['Operator', test.operator],
    ['Temperature', test.temperature === undefined ? undefined : `${show.number(test.temperature, 4)}\u00a0°C`],
    ['Standard claimed', test.standard],
    ['Grips', test.grips],
    ...calibrationRows(test.forceCalibration, show),
    ['Remarks', test.remarks],
    ...own,
  ];
  return labelled(rows.map(([name, value]) => [show.say(name), value]));
}

/** What the columns of the table mean: how values were rounded, and what their uncertainty holds. */
function tableInWords(result: Single, { rounding = 'iso', half = 'even' }: SummaryOptions, { say, inchPound }: Presentation): string {
  const budgets = 'uncertainty' in result && result.uncertainty !== undefined;
  const steps = { standard: rounding === 'iso' ? 'ISO 6892-1' : 'ASTM E8/E8M' };
  return [
    half === 'even'
      ? say('Rounded once, by the steps of {standard} where it has them, half to even.', steps)
      : say('Rounded once, by the steps of {standard} where it has them, half up.', steps),
    ...(inchPound
      ? [
          rounding === 'iso'
            ? say('In ksi, in and lbf each step is the next round one below that of {standard}.', steps)
            : say('Strengths by the steps that {standard} has for ksi; in and lbf by the next round step below the metric one.', steps),
        ]
      : []),
    budgets
      ? say('u: standard uncertainty by the budget of the test, where it is known; U = k u, k by its degrees of freedom.')
      : say('u: standard uncertainty by scatter alone, where it is known; U = 2 u.'),
  ].join(' ');
}

function resultsTable(rows: readonly SummaryRow[], words: string, { say, doubt }: Presentation): Html {
  const two = (value: number | undefined): string => (value === undefined ? '' : doubt(value));
  return tableOf({
    caption: words,
    columns: [say('Symbol'), say('Quantity'), say('Value'), say('Unit'), 'u', 'U', say('Rule')],
    kinds: ['short', undefined, 'number', 'short', 'number', 'number', 'source'],
    rows: rows.map(({ symbol, name, text, unit, standardUncertainty, expandedUncertainty, source, stamp }) => [
      symbol,
      html`${name}${stamp === undefined ? [] : html`<span class="stamp">${stamp}</span>`}`,
      text,
      unit,
      two(standardUncertainty),
      two(expandedUncertainty),
      source,
    ]),
  });
}

/** Drawings in the order of the figures, each with its words. */
function drawn(result: Single, { drawings = {}, language, units }: RenderOptions): Html[] {
  return Object.entries(figures(result, { language, units })).flatMap(([name, one]) => {
    const svg = drawings[name as FigureName];
    return svg === undefined ? [] : [pictureOf(one, svg, name)];
  });
}

/** Figures that were given beside those of the test. */
const further = (given: readonly FurtherFigure[]): Html[] =>
  given.map(({ figure, drawing }, k) => pictureOf(figure, drawing, `further-${k + 1}`));

/** The parts of a single test's page. */
function testPage(result: Single, options: RenderOptions, show: Presentation): Html {
  const method = pageOf('renderHtml', result);
  const { say } = show;
  const { rounding, half, language, units } = options;
  const shown = method.quantities(result);
  const budgets = 'uncertainty' in result && result.uncertainty ? budgetTables(result.uncertainty, shown, show) : [];
  const curveAlone = result.method === 'tension' && !hasPiece(result);
  const others = result.method === 'tension' && hasPiece(result) && options.whatIf !== false ? whatIfTable(result, show) : [];
  const call = curveAlone ? 'analyseCurve' : `analyse${result.method.charAt(0).toUpperCase()}${result.method.slice(1)}`;
  return html`${inventedBox(result.test.invented, show, say('Made by a simulation for teaching; no real test stands behind these numbers.'))}
    ${identity(result, method.identity(result, show), show)}
    <h2>${say('Results')}</h2>
    ${resultsTable(summarise(result, { rounding, half, language, units }), tableInWords(result, { rounding, half }, show), show)}
    ${sectionOf(say('Decisions'), decisionsPart(options.decisions ?? [], shown, show))}
    <h2>${say('Findings')}</h2>
    ${findingsList(result.findings, show)}
    ${sectionOf(say('Figures'), [...drawn(result, options), ...further(options.furtherFigures ?? [])])}
    ${sectionOf(say('How each value was found'), [bullets(method.howFound(result, show))])}
    ${sectionOf(say('Uncertainty'), budgets.map(tableOf))} ${[...others, ...(method.tables?.(result, show) ?? [])].map(tableOf)}
    ${cautionsPart(method.work, show)} ${trailPart(say('What was done to the record'), result.trail, show)}
    ${provenancePart(result.provenance, [result.provenance.hash], call, curveAlone ? 'curve' : 'piece', show)}`;
}

function requireFurther(from: string, given: readonly FurtherFigure[] | undefined): void {
  requireList(from, 'options.furtherFigures', given ?? [], 0).forEach((one, i) => {
    const path = `options.furtherFigures[${i}]`;
    requireOptions(from, requireObject(from, path, one), ['figure', 'drawing'], path);
    requireObject(from, `${path}.figure`, one.figure);
    for (const name of ['title', 'description'] as const) requireText(from, `${path}.figure.${name}`, one.figure[name]);
    requireText(from, `${path}.drawing`, one.drawing);
  });
}

/**
 * A report as one page of HTML, complete in itself: no script, no address outside.
 *
 * @remarks
 * Results with units, uncertainty, rules and stamps; decisions by their rule; how each value was found; findings with their remedy; cautions;
 * figures; budgets; what other evaluations would give ({@link whatIf}); what was done to the record; what reproduces it. Of replicates: each property
 * over the tests. Prints on A4 or Letter. Text from outside (identity, remarks, messages) is escaped; the drawings are put in as they are
 * and must come from `testpiece/render`.
 *
 * @param result - A result of any `analyse` function, also of `analyseReplicates`; of `analyseCurve`, what needs the piece is left out.
 * @param options - Drawings of the figures (made with the same language and units), further ones, decisions; whose steps of rounding, and where a half goes; language; units; paper.
 * @returns The page.
 * @throws {@link InputError} `wrong-type`, `missing`, `out-of-range`, `unknown-option`, `not-text`; those of `decide`.
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
export function renderHtml(result: TestResult | CurveResult | ReplicatesResult, options: RenderOptions = {}): string {
  const from = 'renderHtml';
  const own = requireObject(from, 'result', result) as typeof result;
  const replicates = own.method === 'replicates';
  const title: Phrase = replicates ? 'Replicate tests' : pageOf(from, own).title;
  requireOptions(from, options, optionNames);
  if (options.drawings !== undefined) requireObject(from, 'options.drawings', options.drawings);
  requireFurther(from, options.furtherFigures);
  requireDecisions(from, options.decisions);
  requireBoolean(from, 'options.whatIf', options.whatIf ?? true);
  const paper = requirePaper(from, options.paper);
  const show = presentation(from, options);
  const { say } = show;
  const piece = replicates ? undefined : own.test.identity;
  const heading = say(title);
  const lead = replicates
    ? say('Each property over several tests, and what stands in doubt when they are taken together.')
    : say('Properties from the record, how each was found, and what stands in doubt.');
  return htmlPage(
    piece === undefined ? heading : `${heading}: ${piece}`,
    html`<h1>${heading}${piece === undefined ? [] : html`: ${outside(piece)}`}</h1>
      <p class="lead">${lead}</p>
      ${replicates ? replicatesPage(own, options.decisions ?? [], further(options.furtherFigures ?? []), show) : testPage(own, options, show)}`,
    show.language,
    paper,
  );
}
