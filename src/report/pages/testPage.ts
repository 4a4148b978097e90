import type { CurveResult, TestResult } from '../../methods/index.js';
import { budgetTables } from './budgetTables.js';
import { decisionsPart } from './decisionsPart.js';
import { figures, type FigureName } from './figures.js';
import { findingsList } from './findingsList.js';
import { html, type Html } from './html.js';
import type { MethodPage } from './MethodPage.js';
import { bullets, cautionsPart, inventedBox, labelled, pictureOf, provenancePart, sectionOf, tableOf, trailPart } from './pageParts.js';
import { pageOf } from './pageOf.js';
import type { Presentation } from '../words/presentation.js';
import type { FurtherFigure, RenderOptions } from './RenderOptions.js';
import { FORCE } from '../words/shownUnit.js';
import { summarise, type SummaryOptions, type SummaryRow } from './summarise.js';
import { hasPiece } from '../words/TensionOrCurve.js';
import { whatIfPart } from './whatIfPart.js';

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
    ['Class of the force', forceClass === undefined ? undefined : show.number(forceClass, 3)],
    [
      'Forces verified',
      range && show.say('{low} to {high}', { low: show.value(range[0], FORCE, 4), high: show.value(range[1], FORCE, 4) }),
    ],
  ];
}

/** How the force was made: bore, rod, efficiency and tare of a cylinder, or the calibration of its channel. */
function originRows({ cylinder, channelCalibration: channel }: Single['test'], show: Presentation): readonly IdentityRow[] {
  const { say, number, value } = show;
  const tare = cylinder?.tareForce;
  return [
    ['Bore of the cylinder', cylinder && value(cylinder.bore, 'mm', 5)],
    ['Rod of the cylinder', cylinder?.rod === undefined ? undefined : value(cylinder.rod, 'mm', 5)],
    ['Efficiency of the cylinder', cylinder && (cylinder.efficiency === undefined ? say('not given') : number(cylinder.efficiency, 4))],
    ['Tare force', typeof tare === 'object' ? say('a table over travel') : tare === undefined ? undefined : value(tare, FORCE, 4)],
    ['Calibration of the channel', channel && (channel.name ?? say('by the coefficients in the options below'))],
    ['Channel calibrated on', channel?.date],
  ];
}

/** Who tested what, then piece and set-up of the method. */
function identity({ test }: Single, own: ReturnType<MethodPage<Single>['identity']>, show: Presentation): Html {
  const rows: ReturnType<MethodPage<Single>['identity']> = [
    ['Test piece', test.identity],
    ['Material', test.material],
    ['Direction of sampling', test.sampleDirection],
    ['Place of sampling', test.samplePlace],
    ['Date', test.date],
    ['Operator', test.operator],
    ['Temperature', test.temperature === undefined ? undefined : `${show.number(test.temperature, 4)}\u00a0°C`],
    ['Standard claimed', test.standard],
    ['Control of the test, as stated', test.control],
    ['Testing rate, as stated', test.rate],
    ['Grips', test.grips],
    ['Class of the extensometer', test.extensometerClass],
    ...originRows(test, show),
    ...calibrationRows(test.forceCalibration, show),
    ['Remarks', test.remarks],
    ...own,
  ];
  return labelled(rows.map(([name, value]) => [show.say(name), value]));
}

/** What the columns of the table mean: how values were rounded, and what their uncertainty holds. */
function tableInWords(result: Single, { rounding = 'iso', half = 'even' }: SummaryOptions, { say, inchPound }: Presentation): string {
  const byAstm = result.method === 'tension' && rounding === 'astm';
  const standard = byAstm ? 'ASTM E8/E8M' : pageOf('renderHtml', result).steps;
  const budgets = 'uncertainty' in result && result.uncertainty !== undefined;
  return [
    standard === undefined
      ? say(
          half === 'even'
            ? 'Rounded once, by steps of common practice, half to even.'
            : 'Rounded once, by steps of common practice, half up.',
        )
      : half === 'even'
        ? say('Rounded once, by the steps of {standard} where it has them, half to even.', { standard })
        : say('Rounded once, by the steps of {standard} where it has them, half up.', { standard }),
    ...(inchPound
      ? [
          byAstm
            ? say('Strengths by the steps that {standard} has for ksi; in and lbf by the next round step below the metric one.', {
                standard: 'ASTM E8/E8M',
              })
            : say('In ksi, in and lbf each step is the next round one below the metric one.'),
        ]
      : []),
    budgets
      ? say(
          'u: standard uncertainty by the budget of the test, where it is known; U = k √(u² + s²/12) holds for the value as rounded, in steps of s; k by its degrees of freedom.',
        )
      : say(
          'u: standard uncertainty by the record alone, where it is known; U = 2 √(u² + s²/12) holds for the value as rounded, in steps of s.',
        ),
  ].join(' ');
}

/** U of a value as it is printed: rounding spreads it over a step, as a rectangular distribution (JCGM 100, F.2.2.1). */
const ofRounded = ({ standardUncertainty: u, coverageFactor: k, step }: SummaryRow): number | undefined =>
  u === undefined || k === undefined ? undefined : k * Math.hypot(u, step / Math.sqrt(12));

function resultsTable(rows: readonly SummaryRow[], words: string, { say, doubt }: Presentation): Html {
  const two = (value: number | undefined): string => (value === undefined ? '' : doubt(value));
  return tableOf({
    caption: words,
    columns: [say('Symbol'), say('Quantity'), say('Value'), say('Unit'), 'u', 'U', say('Rule')],
    kinds: ['short', undefined, 'number', 'short', 'number', 'number', 'source'],
    rows: rows.map((row) => [
      row.symbol,
      html`${row.name}${[row.stamp, row.leftOut].flatMap((one) => (one === undefined ? [] : [html`<span class="stamp">${one}</span>`]))}`,
      row.text,
      row.unit,
      two(row.standardUncertainty),
      two(ofRounded(row)),
      row.source,
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

/** @internal Figures that were given beside those of the test. */
export const further = (given: readonly FurtherFigure[]): Html[] =>
  given.map(({ figure, drawing }, k) => pictureOf(figure, drawing, `further-${k + 1}`));

/** @internal The parts of a single test's page. */
export function testPage(result: Single, options: RenderOptions, show: Presentation): Html {
  const method = pageOf('renderHtml', result);
  const { say } = show;
  const { rounding, half, language, units } = options;
  const shown = method.quantities(result);
  const budgets = 'uncertainty' in result && result.uncertainty ? budgetTables(result.uncertainty, shown, show) : [];
  const curveAlone = result.method === 'tension' && !hasPiece(result);
  const others = result.method === 'tension' && hasPiece(result) && options.whatIf !== false ? whatIfPart(result, show) : [];
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
    ${sectionOf(say('Uncertainty'), budgets.map(tableOf))} ${others} ${(method.tables?.(result, show) ?? []).map(tableOf)}
    ${cautionsPart(method.work, show)} ${trailPart(say('What was done to the record'), result.trail, show)}
    ${provenancePart(result.provenance, [result.provenance.hash], call, curveAlone ? 'curve' : 'piece', show)}`;
}
