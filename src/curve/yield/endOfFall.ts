import type { StressStrainCurve } from '../../base/index.js';
import { firstReaching, maximumIndex } from '../../numeric/index.js';
import type { Fall } from './Fall.js';
import { levelOf } from './levelOf.js';
import { LONGER_THAN_WAVE, STANDS_OUT } from './yieldRule.js';

/** Over a level the stress falls by less than this share of the fall to it; the fall of a neck goes on, and grows. */
const LEVEL_FALL = 0.25;
/** A fall is slowing down where from the first third to the second it is so many times what it is from there to the last. */
const SLOWS = 2;
/** Places of a level are tried so many times as far from the peak, one after the other. */
const GROWS = 1.25;
/** The first of them so far from it [mm/mm]. */
const SOONEST = LONGER_THAN_WAVE / 20;

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

/** @internal The level of yielding after a fall: the sample that it ends with, and whether the curve ends there or falls away from it. */
export interface Level {
  readonly last: number;
  readonly ends: 'level' | 'fall';
}

/** True where the stress stays below the peak over a stretch, and falls by less than a quarter of the fall from the peak to it, which stands out. */
function isEven(curve: StressStrainCurve, { peak, reach, spoilt }: Fall, first: number, last: number): boolean {
  const { strain, stress } = curve;
  if (strain[last]! - strain[first]! < LONGER_THAN_WAVE || stress[maximumIndex(stress, first, last + 1)]! >= stress[peak]!) return false;
  const [begin, goesOn] = meansOfParts(curve, first, last, 2, spoilt) as [number, number];
  const depth = stress[peak]! - goesOn;
  // from the middle of one half to that of the other it falls by half of what it falls over both
  return 2 * (begin - goesOn) <= LEVEL_FALL * depth && depth >= Math.max(STANDS_OUT * stress[peak]!, reach / 2);
}

/**
 * The level that a fall comes to: it lasts as long again as it took to come to it, which no fall does that goes on evenly or grows. Where the curve leaves it,
 * it ends where the stress is for the last time as high as most of it.
 */
function levelAfter(curve: StressStrainCurve, fall: Fall): Level | undefined {
  const { strain, stress } = curve;
  const { peak, fallen, end, spoilt } = fall;
  const at = (way: number): number => firstReaching(strain, strain[peak]! + way, fallen, end);
  const farthest = (strain[end - 1]! - strain[peak]!) / GROWS;
  for (let way = Math.max(strain[fallen]! - strain[peak]!, SOONEST); way < farthest; way *= GROWS) {
    const first = at(way);
    let last = at(way + Math.max(way, LONGER_THAN_WAVE));
    if (last >= end || !isEven(curve, fall, first, last)) continue;
    if (isEven(curve, fall, first, end - 1)) return { last: end - 1, ends: 'level' };
    for (let next = last; next < end && isEven(curve, fall, first, next); next = at(GROWS * (strain[next]! - strain[peak]!))) last = next;
    const level = levelOf(stress, first, last, spoilt);
    while (stress[last]! < level || spoilt?.[last] === 1) last -= 1;
    return { last, ends: 'fall' };
  }
  return undefined;
}

/**
 * @internal What a curve comes to that fell from a peak and did not rise again: a level of yielding, on which it ends or which it leaves; a `fall` that goes on,
 * as that of a neck does; or `untold`, where it ends while the fall slows down.
 */
export function endOfFall(curve: StressStrainCurve, fall: Fall): Level | 'fall' | 'untold' {
  const { peak, fallen, end, spoilt } = fall;
  const last = end - 1;
  if (isEven(curve, fall, fallen, last)) return { last, ends: 'level' };
  const level = levelAfter(curve, fall);
  if (level) return level;
  const [early, middle, late] = meansOfParts(curve, peak, last, 3, spoilt) as [number, number, number];
  // a part without samples tells nothing
  return early - middle <= SLOWS * (middle - late) ? 'fall' : 'untold';
}
