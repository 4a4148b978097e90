import type { StressStrainCurve } from '../../base/index.js';
import type { Fall } from './Fall.js';
import { LONGER_THAN_WAVE } from './yieldRule.js';

/** Over a level the stress falls by less than this share of the fall to it; the fall of a neck goes on, and grows. */
const LEVEL_FALL = 0.25;
/** A fall is slowing down where from the first third to the second it is so many times what it is from there to the last. */
const SLOWS = 2;

/** Mean stresses of a stretch in equal parts of its strain, pauses apart; NaN of a part without samples. */
function meansOfParts(
  { strain, stress }: StressStrainCurve,
  first: number,
  last: number,
  parts: number,
  spoilt: Uint8Array | undefined,
): number[] {
  const sums = Array.from({ length: parts }, () => ({ sum: 0, count: 0 }));
  const width = (strain[last]! - strain[first]!) / parts;
  for (let i = first; i <= last; i += 1) {
    if (spoilt?.[i] === 1) continue;
    const part = sums[Math.min(parts - 1, Math.max(0, Math.floor((strain[i]! - strain[first]!) / width)))];
    if (!part) continue;
    part.sum += stress[i]!;
    part.count += 1;
  }
  return sums.map(({ sum, count }) => sum / count);
}

/**
 * @internal What a curve ends on that fell from a peak by at least so much and did not rise again: a `level` of yielding; a `fall` that goes on, as that
 * of a neck does; or `untold`, where it ends while the fall slows down.
 */
export function endOfFall(
  curve: StressStrainCurve,
  { peak, fallen, end, reach, spoilt }: Fall,
  least: number,
): 'level' | 'fall' | 'untold' {
  const { strain, stress } = curve;
  const last = end - 1;
  const [begin, goesOn] = meansOfParts(curve, fallen, last, 2, spoilt) as [number, number];
  const depth = stress[peak]! - goesOn;
  // from the middle of one half to that of the other it falls by half of what it falls over both
  const even = 2 * (begin - goesOn) <= LEVEL_FALL * depth && depth >= Math.max(least, reach / 2);
  if (even && strain[last]! - strain[fallen]! >= LONGER_THAN_WAVE) return 'level';
  const [early, middle, late] = meansOfParts(curve, peak, last, 3, spoilt) as [number, number, number];
  // a part without samples tells nothing
  return early - middle <= SLOWS * (middle - late) ? 'fall' : 'untold';
}
