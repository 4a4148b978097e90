import { InputError, requireList } from '../base/index.js';
import { requireTrialSet, type TrialSet } from './TrialSet.js';

/**
 * Parts of a Monte Carlo run put together, as if one had run them all.
 *
 * $$ \lbrace y_0, \dots, y_{m-1} \rbrace \cup \lbrace y_m, \dots, y_{M-1} \rbrace $$
 *
 * @remarks
 * The parts may come in any order; their trials must follow each other without gap or overlap, from one seed.
 *
 * @param parts - Sets of trials, at least one.
 * @returns One set of trials.
 * @throws {@link InputError} `missing`, `wrong-type`, `not-finite`, `empty`; `out-of-range` for another seed, a gap or an overlap.
 *
 * @example
 * ```ts
 * const part = (firstTrial: number) => monteCarloTrials(({ x }) => 2 * x, { x: { value: 1, uncertainty: 0.1 } }, { firstTrial, trials: 100 });
 * mergeTrials([part(100), part(0)]).trials; // => 200
 * ```
 *
 * @see JCGM 101:2008, Monte Carlo method. Checked in `test/uncertainty/monteCarlo.test.ts`.
 */
export function mergeTrials(parts: readonly TrialSet[]): TrialSet {
  const from = 'mergeTrials';
  const sorted = requireList(from, 'parts', parts)
    .map((part, k) => requireTrialSet(from, `parts[${k}]`, part))
    .sort((a, b) => a.firstTrial - b.firstTrial);
  const first = sorted[0]!;
  let next = first.firstTrial;
  for (const part of sorted) {
    if (part.seed !== first.seed)
      throw new InputError(from, 'parts.seed', 'out-of-range', `must be ${first.seed} in every part`, part.seed);
    if (part.firstTrial !== next)
      throw new InputError(from, 'parts.firstTrial', 'out-of-range', `must follow each other (${next} is next)`, part.firstTrial);
    next += part.trials;
  }
  const names = [...new Set(sorted.flatMap(({ outputs }) => Object.keys(outputs)))];
  const outputs = names.map((name) => {
    const found = sorted.flatMap((part) => part.outputs[name] ?? []);
    const count = found.reduce((sum, { values }) => sum + values.length, 0);
    const values = new Float64Array(count);
    let at = 0;
    for (const one of found) {
      values.set(one.values, at);
      at += one.values.length;
    }
    return [name, { values, failed: next - first.firstTrial - count }] as const;
  });
  return { seed: first.seed, firstTrial: first.firstTrial, trials: next - first.firstTrial, outputs: Object.fromEntries(outputs) };
}
