import type { Phrase } from '../../languages/index.js';
import type { ReplicateDifference, ReplicateProperty, ReplicatesResult } from '../../methods/index.js';
import { decisionsPart, type AskedDecision } from './decisionsPart.js';
import { findingsList } from './findingsList.js';
import { html, type Html } from './html.js';
import { shownAs, type PageTable } from './MethodPage.js';
import { pages } from './pageOf.js';
import { bullets, cautionsPart, inventedBox, outside, provenancePart, sectionOf, tableOf, trailPart } from './pageParts.js';
import type { TextTable } from './planSheet.js';
import type { Presentation } from '../words/presentation.js';
import { shownUnit } from '../words/shownUnit.js';

const differences: Readonly<Record<ReplicateDifference, Phrase>> = {
  dwell: 'the time that the force was held',
  extensionBasis: 'where the strain comes from',
  frame: 'the give of the frame',
  friction: 'the friction taken off',
  gaugeLength: 'the gauge length over √S0',
  height: 'the height over the diameter',
  material: 'the material',
  operator: 'the operator',
  rate: 'the rate of loading',
  scale: 'the ball or the force-diameter index',
  section: 'the section',
  setup: 'how the piece is loaded',
  shape: 'the shape of the section',
  span: 'the span over the height',
  thickness: 'the thickness',
};

/** @internal What the report says of the method of the tests. */
export const repeated = ({ replicatesOf }: ReplicatesResult) => pages[replicatesOf ?? 'tension'];

/** How the values of a property are shown. */
const wayOf = ({ symbol, unit }: ReplicateProperty, show: Presentation) => show.unit(shownUnit(symbol, unit));

function testsTable({ tests, provenance }: ReplicatesResult, { say, number }: Presentation): PageTable {
  return {
    heading: say('Tests'),
    caption: say('The tests that were taken together, in the order given.'),
    columns: [
      say('Number'),
      say('Test piece'),
      say('Material'),
      say('Date'),
      say('Operator'),
      `${say('Temperature')} / °C`,
      say('Hash of the columns'),
    ],
    kinds: ['short', undefined, undefined, undefined, undefined, 'number', 'short'],
    rows: tests.map((test, k) => [
      String(k + 1),
      ...[test.identity, test.material, test.date, test.operator].map((text) => (text === undefined ? '–' : outside(text))),
      test.temperature === undefined ? '–' : number(test.temperature, 4),
      html`<code>${provenance.hashes[k] ?? ''}</code>`,
    ]),
  };
}

/** @internal Each property over the tests. */
export function propertiesTable({ properties, provenance }: ReplicatesResult, show: Presentation): TextTable {
  const { say, percent, term, doubt, beside, alike } = show;
  const { confidence = 0.95, content = 0.9 } = provenance.options as { readonly confidence?: number; readonly content?: number };
  return {
    heading: say('Results'),
    caption: say(
      's: standard deviation; CV: coefficient of variation; interval of the mean at {confidence} confidence; limit: above it {content} of all pieces, at the same confidence. Two tests give a range only.',
      { confidence: percent(confidence), content: percent(content) },
    ),
    columns: [
      say('Symbol'),
      say('Quantity'),
      'n',
      say('Mean'),
      say('Interval'),
      's',
      'CV',
      say('Smallest'),
      say('Largest'),
      say('Limit'),
      say('Unit'),
    ],
    kinds: ['short', undefined, ...Array.from({ length: 8 }, () => 'number' as const), 'short'],
    rows: properties.map((property) => {
      const { symbol, name, summary, tolerance } = property;
      const { unit, factor } = wayOf(property, show);
      const { mean, interval, standardDeviation, coefficientOfVariation: variation, minimum, maximum } = summary;
      const [middle, least, most, limit] = alike(
        [mean, minimum, maximum, tolerance?.lower].map((value) => value && value * factor),
        4,
      );
      return [
        symbol,
        term(name),
        String(summary.n),
        interval === undefined || interval.halfWidth === 0 ? (middle ?? '') : beside(mean * factor, interval.halfWidth * factor, 4),
        interval === undefined ? '' : `±\u00a0${doubt(interval.halfWidth * factor)}`,
        standardDeviation === undefined ? '' : doubt(standardDeviation * factor),
        variation === undefined ? '' : percent(variation, 2),
        least ?? '',
        most ?? '',
        limit ?? '',
        unit,
      ];
    }),
  };
}

/** Every value, test by test; the one that Grubbs's test flags is marked. */
function valuesTable({ properties, tests }: ReplicatesResult, show: Presentation): PageTable {
  const { say, number, alike, listed } = show;
  return {
    heading: say('Values test by test'),
    caption: say('In the order of the tests; –: the test has no such value; *: flagged as an outlier, and kept in.'),
    columns: [say('Symbol'), say('Values'), say('Unit'), say('G'), say('Limit of G')],
    kinds: ['short', undefined, 'short', 'number', 'number'],
    rows: properties.map((property) => {
      const { symbol, values, tests: which, outlier } = property;
      const { unit, factor } = wayOf(property, show);
      const flagged = outlier?.flagged === true ? outlier.index : -1;
      const texts = alike(
        values.map((value) => value * factor),
        4,
      );
      const all = tests.map((_, test) => {
        const k = which.indexOf(test);
        return k < 0 ? '–' : `${texts[k]}${k === flagged ? ' *' : ''}`;
      });
      return [symbol, listed(all), unit, ...(outlier ? [number(outlier.statistic, 3), number(outlier.criticalValue, 3)] : ['', ''])];
    }),
  };
}

/** @internal The parts of a page of several tests together. */
export function replicatesPage(
  result: ReplicatesResult,
  decisions: readonly AskedDecision[],
  pictures: readonly Html[],
  show: Presentation,
): Html {
  const { say } = show;
  const shown = result.properties.flatMap(({ field, symbol, name, unit, summary }) =>
    shownAs(field, { figures: 4 }, { symbol, name, unit, value: summary.mean, source: '' }),
  );
  return html`${inventedBox(
      result.tests.some(({ invented }) => invented === true),
      show,
      say('Made by a simulation for teaching; no real test stands behind these numbers.'),
    )}
    ${tableOf(testsTable(result, show))} ${tableOf(propertiesTable(result, show))}
    ${sectionOf(say('Decisions'), decisionsPart(decisions, shown, show))}
    <h2>${say('Findings')}</h2>
    ${findingsList(result.findings, show)}
    ${sectionOf(
      say('In what the tests differ'),
      result.differences.length === 0 ? [] : [bullets(result.differences.map((one) => say(differences[one])))],
    )}
    ${sectionOf(say('Figures'), pictures)} ${tableOf(valuesTable(result, show))} ${cautionsPart(repeated(result).work, show)}
    ${trailPart(say('What was done'), result.trail, show)}
    ${provenancePart(result.provenance, result.provenance.hashes, 'analyseReplicates', 'tests', show)}`;
}
