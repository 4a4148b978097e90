import { InputError, type StressStrainCurve } from '../../base/index.js';
import { requirePiece, type FrameMotion, type PieceLengths } from '../../curve/index.js';
import { filletShare } from '../loading/moveCurve.js';
import type { TensionSettings } from '../evaluation/tensionOptions.js';
import type { TensionResult } from '../evaluation/TensionResult.js';

/** @internal A curve as it was before its origin was moved and the fillets were taken off, read back from a result. */
export interface CurveAsRecorded extends StressStrainCurve {
  readonly lengths: PieceLengths;
  /** Length that stretches elastically over the one that strain is counted over, where fillets were taken off; else 1. */
  readonly elasticLengthRatio: number;
  /** What the frame gives at each sample [mm], beyond what it gave where travel took over; absent where none was taken out. */
  readonly frame?: Float64Array;
}

/** What a result tells of itself; one of an early version has it in sentences alone. */
function told(from: string, field: string, value: number | undefined): number {
  if (value === undefined)
    throw new InputError(
      from,
      `result.${field}`,
      'missing',
      'must be there: the result is of an early version, analyse its record again',
      value,
    );
  return value;
}

/** Motion of the frame by sample, from where the strain is travel. */
function frameOf(from: string, result: TensionResult, area: number, motion: FrameMotion): Float64Array | undefined {
  const { extensionBasis, extensometerEnd } = result;
  const { stress } = result.curve;
  if (extensionBasis === 'travel') return stress.map((R) => motion.at(R * area));
  if (extensionBasis !== 'extensometer-then-travel') return undefined;
  const splice = told(from, 'extensometerEnd', extensometerEnd);
  const before = motion.at(stress[splice - 1]! * area);
  return stress.map((R, i) => (i < splice ? 0 : motion.at(R * area) - before));
}

/** @internal The curve as it was recorded. */
export function recordedCurve(from: string, result: TensionResult, settings: TensionSettings): CurveAsRecorded {
  const lengths = requirePiece(from, result.testPiece);
  const shift = result.modulusWindow?.strainShift ?? 0;
  const { stress } = result.curve;
  const moved = { strain: result.curve.strain.map((e) => e + shift), stress: stress.slice() };
  const motion = settings.frameCompliance;
  if (!motion) return { ...moved, lengths, elasticLengthRatio: 1 };
  const ratio = result.extensionBasis === 'travel' ? lengths.effectiveLength / lengths.parallelLength : 1;
  const { modulusWindow } = result;
  // without an elastic line nothing was taken off
  const surplus =
    ratio === 1 || !modulusWindow ? 0 : filletShare(told(from, 'modulusWindow.filletSlope', modulusWindow.filletSlope), ratio);
  const frame = frameOf(from, result, lengths.area, motion);
  return {
    strain: moved.strain.map((e, i) => e + surplus * moved.stress[i]!),
    stress: moved.stress,
    lengths,
    elasticLengthRatio: ratio,
    ...(frame ? { frame } : {}),
  };
}
