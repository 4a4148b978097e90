import type { StressStrainCurve } from '../../base/index.js';

/** What the steps of a coarse strain reading leave open of the slope of a line. */
export interface StrainSteps {
  /** One step of the reading, as strain [mm/mm]. */
  readonly step: number;
  /** Steps that the line rises by within its window [1]. */
  readonly steps: number;
  /** Standard uncertainty that they leave to the slope beyond the scatter of its samples, as a share of it [1]. */
  readonly slopeShare: number;
}

/**
 * @internal What steps of the strain leave open of a least-squares line; undefined where the strain was not read in steps; a `step` of 0 is one that the record does not tell.
 *
 * $$ \frac{u(m)}{m} = \frac{1}{k} \sqrt{\frac{1}{r} - \frac{1}{n}} $$
 *
 * Each strain is off by up to half a step, evenly: by q/√12. The n strains of a line of k steps have the standard deviation kq/√12, so n errors that
 * know nothing of each other leave the slope 1/(k√n), which its scatter tells. But samples for which the reading stands share its error: there are only as
 * many as the reading stands times, r, and the rest of their variance is in no scatter. Of a clean reading r = k, and u(m)/m falls as k^(-3/2): a tenth of the
 * slope at 4.6 steps. Samples spread evenly over each step cancel most of it (1/k²), strokes of a hand do not; noise that moves the reading to and fro makes r large.
 */
export function strainSteps(
  { strain, stress }: StressStrainCurve,
  { slope, first, last }: { readonly slope: number; readonly first: number; readonly last: number },
  step: number,
): StrainSteps | undefined {
  let stands = 1;
  // a frame taken out of travel moves the strain a little while the travel stands
  for (let i = first + 1; i <= last; i += 1) if (Math.abs(strain[i]! - strain[i - 1]!) > step / 2) stands += 1;
  const n = last - first + 1;
  // so few steps in a whole record that nothing else tells them
  const own = step > 0 ? step : 2 * stands <= n ? Math.abs(strain[last]! - strain[first]!) / (stands - 1) : 0;
  if (!(own > 0)) return undefined;
  const steps = Math.abs(stress[last]! - stress[first]!) / slope / own;
  const shared = Math.sqrt(Math.max(0, 1 / stands - 1 / n));
  // beyond all of itself nothing of a slope is known
  return { step: own, steps, slopeShare: shared > 0 ? Math.min(1, shared / steps) : 0 };
}
