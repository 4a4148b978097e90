import type { StressStrainCurve } from '../../base/index.js';
import type { Fracture } from '../../curve/index.js';
import { brokeSuddenly, type LineNumbers } from '../loading/lineKernel.js';

/** Below this share of the maximum, to the end, the force is gone: the level that the record's own checks take for one after fracture. */
const GONE = 0.3;
/** What springs back by more than this share of its elastic way was let go by the drive. */
const SPRINGS = 0.25;

/** True where the force is gone at the end of the record, however slowly it fell, and the piece did not spring back on the way. */
function faded({ line, highest }: LineNumbers, { strain, stress }: StressStrainCurve): boolean {
  if (!line.ok) return false;
  const top = stress[highest]!;
  let gone = stress.length;
  while (gone > highest && stress[gone - 1]! < GONE * top) gone -= 1;
  if (gone === stress.length) return false;
  let farthest = strain[highest]!;
  for (let i = highest; i <= gone; i += 1) farthest = Math.max(farthest, strain[i]!);
  return strain[gone]! > farthest - (SPRINGS * (top - stress[gone]!)) / line.slope;
}

/**
 * @internal Where a pressed piece broke that lost its force over several samples while it was pressed on: at its maximum. A slender one may have
 * buckled instead, and is not asked.
 */
export function fadedBreak(numbers: LineNumbers, curve: StressStrainCurve): Fracture | undefined {
  if (brokeSuddenly(numbers, curve) || !faded(numbers, curve)) return undefined;
  const { highest: index } = numbers;
  return { index, strain: curve.strain[index]!, stress: curve.stress[index]!, how: 'faded-away' };
}
