import type { Quantity } from '../base/index.js';
import { modulusContributions, type FrameMotion, type PieceLengths, type RecordedCurve } from '../curve/index.js';
import { metalModuli } from '../materials/index.js';
import type { TensionNumbers } from './TensionNumbers.js';

/** @internal What a removed frame is to the elastic line. */
export interface FrameShare {
  /** Compliance over the elastic window [mm/N]. */
  readonly compliance: number;
  /** Motion of the frame over that of the piece. */
  readonly ratio: number;
  /** Lowest force of the elastic window [N]. */
  readonly lowest: number;
  /** What the uncertainty of the compliance is of E, where it is known. */
  readonly uncertainty?: number;
  /** True where so little was taken out that the slope is that of the travel as recorded. */
  readonly vanishing: boolean;
}

/** A share of the motion that moves E by less than the scatter that is wanted of it. */
const NEGLIGIBLE = 0.01;
/** No frame with grips is stiffer [mm/N]: a steel column of 100 mm in diameter and 1 m in length gives six times as much. */
const STIFFEST_FRAME = 1e-7;

/**
 * @internal The frame's share of the motion in the elastic window, where a compliance was taken out of travel. One that takes out next to
 * nothing vanishes beside the piece only where the piece is that soft: not where no frame is so stiff, or E is below that of the softest [MPa].
 */
export function frameShare(
  { basis, stress }: Pick<RecordedCurve, 'basis' | 'stress'>,
  { line }: Pick<TensionNumbers, 'line'>,
  lengths: Pick<PieceLengths, 'area' | 'effectiveLength'>,
  motion: FrameMotion | undefined,
  softest: number = metalModuli[0],
): FrameShare | undefined {
  if (basis !== 'travel' || !motion || !line.ok) return undefined;
  const [a, b] = [stress[line.first]! * lengths.area, stress[line.last]! * lengths.area];
  const compliance = motion.constant ?? (motion.at(b) - motion.at(a)) / (b - a);
  const ratio = (compliance * lengths.area * line.slope) / lengths.effectiveLength;
  const { relativeStandardUncertainty: doubt } = motion;
  return {
    compliance,
    ratio,
    lowest: Math.min(a, b),
    vanishing: ratio / (1 + ratio) < NEGLIGIBLE && (compliance < STIFFEST_FRAME || line.slope < softest),
    ...(doubt === undefined ? {} : { uncertainty: modulusContributions(ratio, { compliance: doubt }).compliance }),
  };
}

/** @internal E with what the compliance of the frame adds to its uncertainty. */
export function modulusWithFrame<Given extends { readonly modulus?: Quantity | undefined }>(
  quantities: Given,
  share: FrameShare | undefined,
): Given {
  const { modulus } = quantities;
  if (!modulus || share?.uncertainty === undefined) return quantities;
  const standardUncertainty = Math.hypot(modulus.standardUncertainty ?? 0, modulus.value * share.uncertainty);
  return { ...quantities, modulus: { ...modulus, standardUncertainty } };
}

/** @internal What was taken out of travel, for the trail: the number, or the law in words. */
export const frameInWords = ({ constant, law }: FrameMotion): Readonly<Record<string, number | string>> => ({
  ...(constant === undefined ? {} : { compliance: constant }),
  ...(law === undefined ? {} : { law }),
});
