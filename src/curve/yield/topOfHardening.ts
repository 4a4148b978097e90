import type { StressStrainCurve } from '../../base/index.js';
import { maximumIndex } from '../../numeric/index.js';
import type { Fall } from './Fall.js';
import { LONGER_THAN_WAVE } from './yieldRule.js';

/**
 * @internal Sample of the maximum of hardening after an upper yield point: the highest after the fall where it passes ReH; else the end of the
 * greatest rise, for then the highest may be of the fall itself. Undefined without a rise of `least` [MPa].
 */
export function topOfHardening(
  { strain, stress }: StressStrainCurve,
  { peak, fallen, end, spoilt }: Fall,
  least: number,
): number | undefined {
  const highest = maximumIndex(stress, fallen, end);
  const passes = stress[highest]! > stress[peak]!;
  let lowest = fallen;
  let top = fallen;
  let rise = 0;
  let over = 0;
  for (let i = fallen; i < (passes ? highest + 1 : end); i += 1) {
    if (spoilt?.[i] === 1) continue;
    if (stress[i]! < stress[lowest]!) lowest = i;
    else if (stress[i]! - stress[lowest]! > rise) {
      rise = stress[i]! - stress[lowest]!;
      over = strain[i]! - strain[lowest]!;
      top = i;
    }
  }
  if (rise < least) return undefined;
  if (passes) return highest;
  return over < LONGER_THAN_WAVE ? undefined : top;
}
