import { finding, unitInWords, type Finding } from '../base/index.js';
import { roundingStep, summariseReplicates } from '../statistics/index.js';
import type { FoundDifference } from './replicateDifferences.js';
import { replicateFields } from './replicateFields.js';
import type { ReplicateProperty } from './ReplicatesResult.js';

/** Times the usual variation that is a doubt about the test. */
const UNUSUAL = 3;

/** True where a value lies farther from the mean than one step of rounding: ties of rounded readings look like outliers and matter to nobody. */
function matters({ field, summary }: ReplicateProperty, value: number): boolean {
  const kind = replicateFields.find((one) => one.field === field)?.kind;
  return kind === undefined || Math.abs(value - summary.mean) > roundingStep(kind, value, 'iso');
}

/** @internal Tests that lie far out in two quantities or more, with these: such quantities share a reading, and one cause explains all. */
export function oddTests(properties: readonly ReplicateProperty[]): ReadonlyMap<number, readonly ReplicateProperty[]> {
  const far = new Map<number, ReplicateProperty[]>();
  for (const one of properties) {
    const { outlier, tests } = one;
    if (outlier?.flagged !== true || !matters(one, outlier.value)) continue;
    const test = tests[outlier.index]!;
    far.set(test, [...(far.get(test) ?? []), one]);
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

/** @internal What is said of one property; `told` where its outlying value was said of its test. */
export function propertyFindings(property: ReplicateProperty, names: readonly string[], told: boolean): Finding[] {
  const { symbol, unit, field, summary, outlier, usualVariation: usual, tests } = property;
  const found: Finding[] = [];
  const variation = summary.coefficientOfVariation;
  if (usual !== undefined && variation !== undefined && variation > UNUSUAL * usual && (!told || variesAnyway(property, UNUSUAL * usual)))
    found.push(finding('variation-above-usual', { symbol, variation: 100 * variation, usual: 100 * usual }, { field }));
  if (!told && outlier?.flagged === true && matters(property, outlier.value)) {
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

/** @internal Records that come more than once, by their hashes: a copy is no further test. */
export function repeatedFindings(hashes: readonly string[], names: readonly string[]): Finding[] {
  return [...new Set(hashes)].flatMap((hash) => {
    const same = names.filter((_, i) => hashes[i] === hash);
    return same.length > 1 ? [finding('replicates-repeated', { tests: same.join(', '), count: same.length })] : [];
  });
}

/** @internal What is said of each difference: which properties it kept apart, or that it was pooled across. */
export function differenceFinding(
  { difference, what, values }: FoundDifference,
  kept: readonly ReplicateProperty[],
  pooled: boolean,
): Finding[] {
  const apart = kept.filter(({ field }) => replicateFields.some((one) => one.field === field && one.bars.includes(difference)));
  const symbols = apart.map(({ symbol }) => symbol).join(', ');
  return [
    ...(apart.length > 0 && !pooled ? [finding('replicates-not-pooled', { symbols, what, values })] : []),
    ...(pooled || difference === 'section' || apart.length === 0 ? [finding('replicates-mixed', { what, values })] : []),
  ];
}
