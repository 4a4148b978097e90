import type { Quantity } from '../../base/index.js';
import { complianceBetween, modulusContributions, type FrameMotion, type PieceLengths, type RecordedCurve } from '../../curve/index.js';
import { metalModuli } from '../../materials/index.js';
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

/** A slope and the two stresses that it lies between [MPa]. */
interface Slope {
  readonly slope: number;
  readonly stresses: readonly [number, number];
}

/**
 * @internal The frame's share of the motion along a slope, where a compliance was taken out of travel. One that takes out next to
 * nothing vanishes beside the piece only where the piece is that soft: not where no frame is so stiff, or E is below that of the softest [MPa].
 */
export function shareOfSlope(
  { basis }: Pick<RecordedCurve, 'basis'>,
  { slope, stresses }: Slope,
  { area, effectiveLength }: Pick<PieceLengths, 'area' | 'effectiveLength'>,
  motion: FrameMotion | undefined,
  softest: number = metalModuli[0],
): FrameShare | undefined {
  if (basis !== 'travel' || !motion) return undefined;
  const [a, b] = [stresses[0] * area, stresses[1] * area];
  const compliance = complianceBetween(motion, a, b);
  const ratio = (compliance * area * slope) / effectiveLength;
  const doubt = motion.relativeUncertainty?.(a, b);
  return {
    compliance,
    ratio,
    lowest: Math.min(a, b),
    vanishing: ratio / (1 + ratio) < NEGLIGIBLE && (compliance < STIFFEST_FRAME || slope < softest),
    ...(doubt === undefined ? {} : { uncertainty: modulusContributions(ratio, { compliance: doubt }).compliance }),
  };
}

/** @internal {@link shareOfSlope} in the elastic window. */
export const frameShare = (
  recorded: Pick<RecordedCurve, 'basis' | 'stress'>,
  { line }: Pick<TensionNumbers, 'line'>,
  lengths: Pick<PieceLengths, 'area' | 'effectiveLength'>,
  motion: FrameMotion | undefined,
  softest?: number,
): FrameShare | undefined =>
  line.ok
    ? shareOfSlope(
        recorded,
        { slope: line.slope, stresses: [recorded.stress[line.first]!, recorded.stress[line.last]!] },
        lengths,
        motion,
        softest,
      )
    : undefined;

/** @internal A modulus with what the compliance of the frame adds to its uncertainty. */
export const withFrame = (modulus: Quantity, share: FrameShare | undefined): Quantity =>
  share?.uncertainty === undefined
    ? modulus
    : { ...modulus, standardUncertainty: Math.hypot(modulus.standardUncertainty ?? 0, modulus.value * share.uncertainty) };

/** @internal Quantities whose elastic slope, and modulus where it is one, are {@link withFrame}. */
export const slopeWithFrame = <Given extends { readonly elasticSlope?: Quantity | undefined; readonly modulus?: Quantity | undefined }>(
  quantities: Given,
  share: FrameShare | undefined,
): Given => {
  const { elasticSlope, modulus } = quantities;
  return {
    ...quantities,
    ...(elasticSlope ? { elasticSlope: withFrame(elasticSlope, share) } : {}),
    ...(modulus ? { modulus: withFrame(modulus, share) } : {}),
  };
};

/** @internal What was taken out of travel, for the trail: the number, or the law in words. */
export const frameInWords = ({ constant, law }: FrameMotion): Readonly<Record<string, number | string>> => ({
  ...(constant === undefined ? {} : { compliance: constant }),
  ...(law === undefined ? {} : { law }),
});
