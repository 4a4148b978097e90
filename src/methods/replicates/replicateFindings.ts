import { finding, unitInWords, type Finding, type Quantity } from '../../base/index.js';
import { stepOfFigures } from '../../numeric/index.js';
import { roundingStep, summariseReplicates } from '../../statistics/index.js';
import type { FoundDifference } from './replicateDifferences.js';
import type { ReplicateField } from './replicateFields.js';
import type { ReplicateProperty } from '../results/ReplicatesResult.js';
import type { TestResult } from '../results/TestResult.js';

/** @internal A property with the rule of its field. */
export interface RuledProperty {
  readonly field: ReplicateField;
  readonly property: ReplicateProperty;
}

/** Times the usual variation that is a doubt about the test. */
const UNUSUAL = 3;

/** True where a value lies farther from the mean than one step of rounding: ties of rounded readings look like outliers and matter to nobody. */
function matters({ field: { step }, property: { summary } }: RuledProperty, value: number): boolean {
  const size =
    typeof step === 'string' ? roundingStep(step, value, 'iso') : typeof step === 'number' ? step : stepOfFigures(value, step.figures);
  return Math.abs(value - summary.mean) > size;
}

/** @internal Tests that lie far out in two quantities or more, with these: such quantities share a reading, and one cause explains all. */
export function oddTests(properties: readonly RuledProperty[]): ReadonlyMap<number, readonly ReplicateProperty[]> {
  const far = new Map<number, ReplicateProperty[]>();
  for (const one of properties) {
    const { outlier, tests } = one.property;
    if (outlier?.flagged !== true || !matters(one, outlier.value)) continue;
    const test = tests[outlier.index]!;
    far.set(test, [...(far.get(test) ?? []), one.property]);
  }
  return new Map([...far].filter(([, list]) => list.length > 1));
}

/** @internal One finding of such a test, by the quantity that lies farthest out of its limit. */
export function oddFinding(list: readonly ReplicateProperty[], test: string): Finding {
  const excess = ({ outlier }: ReplicateProperty): number => outlier!.statistic / outlier!.criticalValue;
  const worst = list.reduce((a, b) => (excess(b) > excess(a) ? b : a));
  const { value, statistic, criticalValue: limit } = worst.outlier!;
  const symbols = list.map(({ symbol }) => symbol).join(', ');
  return finding('replicate-odd', { test, symbols, symbol: worst.symbol, value, unit: unitInWords(worst.unit), statistic, limit });
}

/** True where the values vary more than is usual also without the one that lies out. */
function variesAnyway({ values, outlier }: ReplicateProperty, most: number): boolean {
  const variation = summariseReplicates(values.filter((_, k) => k !== outlier!.index)).coefficientOfVariation;
  return variation !== undefined && variation > most;
}

/** @internal The properties that two tests gave, in one finding. */
export function fewFindings(properties: readonly ReplicateProperty[]): Finding[] {
  const symbols = properties.filter(({ summary }) => summary.n === 2).map(({ symbol }) => symbol);
  return symbols.length > 0 ? [finding('few-replicates', { symbols: symbols.join(', ') })] : [];
}

/** @internal Values that have no part in a mean, as their tests ended before the maximum force: a finding for each group of tests, with their symbols. */
export function boundFindings(
  found: readonly { readonly test: number; readonly quantity: Quantity }[],
  names: readonly string[],
): Finding[] {
  const bounds = found.filter(({ quantity }) => quantity.atLeast);
  const testsOf = (symbol: string): string[] => bounds.flatMap(({ quantity, test }) => (quantity.symbol === symbol ? names[test]! : []));
  const all = [...new Set(bounds.map(({ quantity }) => quantity.symbol))].map((symbol) => ({ symbol, tests: testsOf(symbol) }));
  return [...new Set(all.map(({ tests }) => tests.join(', ')))].map((tests) => {
    const alike = all.filter((one) => one.tests.join(', ') === tests);
    const symbols = alike.map(({ symbol }) => symbol).join(', ');
    return finding('replicates-at-least', { symbols, count: alike[0]!.tests.length, total: names.length, tests });
  });
}

/** @internal What is said of one property; `told` where its outlying value was said of its test. */
export function propertyFindings(ruled: RuledProperty, names: readonly string[], told: boolean): Finding[] {
  const { property } = ruled;
  const { symbol, unit, field, summary, outlier, usualVariation: usual, tests } = property;
  const found: Finding[] = [];
  const variation = summary.coefficientOfVariation;
  if (usual !== undefined && variation !== undefined && variation > UNUSUAL * usual && (!told || variesAnyway(property, UNUSUAL * usual)))
    found.push(finding('variation-above-usual', { symbol, variation: 100 * variation, usual: 100 * usual }, { field }));
  if (!told && outlier?.flagged === true && matters(ruled, outlier.value)) {
    const { index, value, statistic, criticalValue } = outlier;
    found.push(
      finding(
        'replicate-outlying',
        { symbol, test: names[tests[index]!]!, value, unit: unitInWords(unit), statistic, limit: criticalValue },
        { field },
      ),
    );
  }
  return found;
}

/** True where columns were recorded; readings of a few digits, as of a pointer or a microscope, may be alike by chance. */
function isRecorded(result: TestResult): boolean {
  if (result.method === 'shear') return result.record !== undefined;
  return result.method !== 'brinell' || result.indentations.some(({ record }) => record !== undefined);
}

/** @internal Records that come more than once, by their hashes: a copy is no further test. */
export function repeatedFindings(results: readonly TestResult[], names: readonly string[]): Finding[] {
  return [...new Set(results.map(({ provenance }) => provenance.hash))].flatMap((hash) => {
    const same = results.flatMap(({ provenance }, i) => (provenance.hash === hash ? i : []));
    if (same.length < 2) return [];
    const values = { tests: same.map((i) => names[i]!).join(', '), count: same.length };
    return [finding(isRecorded(results[same[0]!]!) ? 'replicates-repeated' : 'replicates-read-alike', values)];
  });
}

/** Differences that touch what is pooled all the same: a section is in every strength, a span in every bending. */
const inAll: readonly string[] = ['section', 'span'];

/** @internal What is said of each difference: which properties it kept apart, or that it was pooled across. */
export function differenceFinding(
  { difference, what, values }: FoundDifference,
  all: readonly RuledProperty[],
  pooled: boolean,
): Finding[] {
  const apart = all.filter(({ field }) => field.bars.includes(difference));
  const symbols = apart.map(({ property }) => property.symbol).join(', ');
  const others = inAll.includes(difference) && apart.length < all.length;
  return [
    ...(apart.length > 0 && !pooled ? [finding('replicates-not-pooled', { symbols, what, values })] : []),
    ...(pooled || others || apart.length === 0 ? [finding('replicates-mixed', { what, values })] : []),
  ];
}
