import type { StressStrainCurve } from '../../base/index.js';
import { maximumIndex, noiseReach } from '../../numeric/index.js';
import type { Fall } from './Fall.js';
import { LITTLE, LONGER_THAN_WAVE, TRANSIENT_STRAIN } from './yieldRule.js';

/** A stretch of the curve that waves are averaged over: its mean stress, its first and last sample, and how many counted. */
interface Stretch {
  readonly mean: number;
  readonly first: number;
  readonly last: number;
  readonly count: number;
}

/** Means over stretches longer than a wave, from where the transient after ReH is over, pauses apart. */
function stretchesOf({ strain, stress }: StressStrainCurve, { peak, fallen, end, spoilt }: Fall): Stretch[] {
  const found: Stretch[] = [];
  let i = fallen;
  while (i < end && strain[i]! - strain[peak]! < TRANSIENT_STRAIN) i += 1;
  while (i < end) {
    const first = i;
    let [sum, count] = [0, 0];
    for (; i < end && (i === first || strain[i]! - strain[first]! < LONGER_THAN_WAVE); i += 1) {
      if (spoilt?.[i] === 1) continue;
      sum += stress[i]!;
      count += 1;
    }
    if (count > 0) found.push({ mean: sum / count, first, last: i - 1, count });
  }
  return found;
}

/** The greatest rise of a row of numbers, from its lowest so far, with the places of both ends. */
function greatestRise(values: readonly number[]): { readonly rise: number; readonly from: number; readonly to: number } {
  let best = { rise: 0, from: 0, to: 0 };
  let lowest = 0;
  values.forEach((value, k) => {
    if (value < values[lowest]!) lowest = k;
    else if (value - values[lowest]! > best.rise) best = { rise: value - values[lowest]!, from: lowest, to: k };
  });
  return best;
}

/**
 * @internal Sample of the maximum of hardening after an upper yield point: the highest after the fall where it passes ReH. Below ReH the highest may be of
 * the fall itself: there it is the end of the greatest rise of means, which must stand out of noise and out of the waves of the level. Undefined without.
 */
export function topOfHardening(curve: StressStrainCurve, fall: Fall): number | undefined {
  const { stress } = curve;
  const { peak, fallen, end, noise, step } = fall;
  const highest = maximumIndex(stress, fallen, end);
  if (stress[highest]! > stress[peak]!) return highest;
  const stretches = stretchesOf(curve, fall);
  const means = stretches.map(({ mean }) => mean);
  const { rise, from, to } = greatestRise(means);
  // what rises and is lost again, before or after, or falls on the way, is a wave
  const waves = Math.max(
    greatestRise(means.slice(0, from)).rise,
    greatestRise(means.slice(from, to + 1).reverse()).rise,
    greatestRise(means.slice(to + 1)).rise,
  );
  const top = stretches[to];
  if (!top) return undefined;
  const doubt = (noiseReach(stretches.length) * noise.ofMeans) / Math.sqrt(Math.min(stretches[from]!.count, top.count));
  // the means of a level that is read in steps lie anywhere within one
  return rise - waves > Math.max(LITTLE * stress[peak]!, doubt, step) ? maximumIndex(stress, top.first, top.last + 1) : undefined;
}
