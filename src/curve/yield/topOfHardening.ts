import type { StressStrainCurve } from '../../base/index.js';
import { maximumIndex } from '../../numeric/index.js';

/** Hardening that stays below ReH rises over so much strain at least: a wave in a neck is sooner over. */
const LEAST_STRAIN = 0.002;

/**
 * @internal Sample of the maximum of hardening after an upper yield point: the highest after the fall where it passes ReH; else the end of the
 * greatest rise, for then the highest may be of the fall itself. Undefined without a rise of `least` [MPa].
 */
export function topOfHardening(
  { strain, stress }: StressStrainCurve,
  {
    peak,
    fallen,
    end,
    spoilt,
  }: { readonly peak: number; readonly fallen: number; readonly end: number; readonly spoilt: Uint8Array | undefined },
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
  return over < LEAST_STRAIN ? undefined : top;
}
