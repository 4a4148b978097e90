import { InputError, requireOptions, requirePositive } from '../base/index.js';

/** A metric thread. */
export interface MetricThread {
  /** Nominal diameter [mm]. */
  readonly diameter: number;
  /** Pitch P [mm]. */
  readonly pitch: number;
}

/**
 * Stress area of a metric thread.
 *
 * $$ A_s = \frac{\pi}{4} \left( \frac{d_2 + d_3}{2} \right)^2 = \frac{\pi}{4} (d - 0.9382\, P)^2 $$
 *
 * @remarks
 * Mean of pitch diameter $d_2 = d - \tfrac{3}{8}\sqrt3\, P$ and core $d_3 = d - \tfrac{17}{24}\sqrt3\, P$ of the basic profile; 0.9382 is
 * their mean, $\tfrac{13}{24}\sqrt3$.
 *
 * @param thread - `diameter` [mm] and `pitch` [mm], above 0.
 * @returns Stress area [mm²].
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `unknown-option`; `out-of-range` where the pitch leaves no core.
 *
 * @example
 * ```ts
 * threadStressArea({ diameter: 12, pitch: 1.75 }); // => 84.3
 * ```
 *
 * @see ISO 898-1, stress areas of coarse threads. Checked in `test/handbook/planning.test.ts`.
 */
export function threadStressArea(thread: MetricThread): number {
  const from = 'threadStressArea';
  requireOptions(from, thread, ['diameter', 'pitch'], 'thread');
  const diameter = requirePositive(from, 'diameter', thread.diameter);
  const pitch = requirePositive(from, 'pitch', thread.pitch);
  const mean = diameter - (13 / 24) * Math.sqrt(3) * pitch;
  if (mean <= 0) throw new InputError(from, 'pitch', 'out-of-range', 'must leave a core', pitch);
  return (Math.PI * mean ** 2) / 4;
}
