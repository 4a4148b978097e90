import type { StressStrainCurve } from '../../base/index.js';
import type { TensionNumbers } from './TensionNumbers.js';

/** @internal What the fillets and heads give elastically over the stress [1/MPa]: strain counts over Lc, but Leff stretches. */
export const filletShare = (slope: number, ratio: number): number => (ratio - 1) / (slope * ratio); // with the slope m over Lc, E = m ratio

/** @internal Takes out, in place, what the fillets and heads give elastically. */
export function withoutFillets({ strain, stress }: StressStrainCurve, slope: number, ratio: number): void {
  const surplus = filletShare(slope, ratio);
  for (let i = 0; i < strain.length; i += 1) strain[i]! -= stress[i]! * surplus;
}

/** @internal Counts strains, in place, from where the line meets zero stress. */
export function moveOrigin(strain: Float64Array, shift: number): void {
  if (shift !== 0) for (let i = 0; i < strain.length; i += 1) strain[i]! -= shift;
}

/** @internal Moves a curve in place as the kernel moved the one that it was given. */
export function moveCurve(
  curve: StressStrainCurve,
  { filletSlope, shift }: Pick<TensionNumbers, 'filletSlope' | 'shift'>,
  ratio: number,
): void {
  if (filletSlope !== undefined) withoutFillets(curve, filletSlope, ratio);
  moveOrigin(curve.strain, shift);
}
