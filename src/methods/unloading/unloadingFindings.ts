import { finding, type Finding } from '../../base/index.js';
import type { UnloadingLoop } from '../../curve/index.js';
import { percent } from '../common/quantity.js';

/** A loop that ends above this share of its top does not go to zero. */
const NEAR_ZERO = 0.05;

/** @internal Doubts about the loops that were found. */
export function loopFindings(loops: readonly UnloadingLoop[], limit: number, strength: number | undefined): Finding[] {
  const sets = loops.map(({ permanentSet }) => permanentSet);
  return [
    ...loops.flatMap(({ top, bottom }, k) =>
      bottom.stress > NEAR_ZERO * top.stress
        ? [
            finding(
              'unloading-not-to-zero',
              { number: k + 1, share: (100 * bottom.stress) / top.stress },
              { range: [top.index, bottom.index] },
            ),
          ]
        : [],
    ),
    ...(strength === undefined
      ? [
          finding(
            'permanent-set-not-bracketed',
            { symbol: `Rr${percent(limit)}`, least: 100 * Math.min(...sets), most: 100 * Math.max(...sets) },
            { field: 'permanentSetStrength' },
          ),
        ]
      : []),
  ];
}
