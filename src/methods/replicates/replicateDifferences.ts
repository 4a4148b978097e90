import { replicateTraits, type ReplicateTrait } from './replicateTraits.js';
import type { ReplicateDifference } from '../results/ReplicatesResult.js';
import type { TestResult } from '../results/TestResult.js';

/** @internal In what the tests differ, and how that is said. */
export interface FoundDifference {
  readonly difference: ReplicateDifference;
  readonly what: string;
  readonly values: string;
}

/** The different words, where there are several. */
function unlikeWords(list: readonly ReplicateTrait[]): string | undefined {
  const different = [...new Set(list.flatMap(({ words }) => words ?? []))];
  return different.length > 1 ? different.join(', ') : undefined;
}

/** Smallest and largest, where they are farther apart than the factor. */
function unlikeNumbers(list: readonly ReplicateTrait[]): string | undefined {
  const sound = list.flatMap(({ number }) => (number !== undefined && number > 0 ? number : []));
  if (sound.length < 2) return undefined;
  const { factor = 1, figures = 3, unit = '' } = list[0]!;
  const [low, high] = [Math.min(...sound), Math.max(...sound)];
  return high / low > factor ? `${Number(low.toPrecision(figures))} to ${Number(high.toPrecision(figures))}${unit}` : undefined;
}

/** @internal Every difference once, by the first trait that shows it. */
export function replicateDifferences(results: readonly TestResult[]): FoundDifference[] {
  // the traits under a result's own method are those of that result
  const all = results.map((one) => (replicateTraits[one.method] as (result: TestResult) => readonly ReplicateTrait[])(one));
  const found = (all[0] ?? []).flatMap(({ difference, what }, k): FoundDifference[] => {
    const same = all.map((traits) => traits[k]!);
    const values = unlikeWords(same) ?? unlikeNumbers(same);
    return values === undefined ? [] : [{ difference, what, values }];
  });
  return found.filter(({ difference }, k) => found.findIndex((one) => one.difference === difference) === k);
}
