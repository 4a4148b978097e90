import { localParabola, type LocalParabola } from './localParabola.js';
import { noiseLevel } from './noiseLevel.js';

/** Fewer samples than this say little about their own scatter. */
const LEAST = 7;

/**
 * @internal A parabola through the samples around `at` (x near sample `index`), over the widest of the half-widths whose lack of fit
 * cannot be told from noise; undefined where even the narrowest shows it, as on data without noise. Widths in ascending order.
 */
export function parabolaNear(
  x: Float64Array,
  y: Float64Array,
  index: number,
  at: number,
  widths: readonly number[],
): (LocalParabola & { readonly width: number }) | undefined {
  let best: (LocalParabola & { readonly width: number }) | undefined;
  let first = index;
  let last = index - 1;
  for (const width of widths) {
    while (first > 0 && Math.abs(x[first - 1]! - at) <= width) first -= 1;
    while (last < x.length - 1 && Math.abs(x[last + 1]! - at) <= width) last += 1;
    if (last - first + 1 < LEAST) continue;
    const parabola = localParabola(x, y, first, last, at);
    if (!parabola || parabola.residualStandardDeviation > 1.25 * noiseLevel(y, first, last + 1)) break;
    best = { width, ...parabola };
  }
  return best;
}
