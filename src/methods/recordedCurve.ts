import { InputError, trailValue, type StressStrainCurve, type TrailStep } from '../base/index.js';
import { requirePiece, type FrameMotion, type PieceLengths } from '../curve/index.js';
import { filletShare } from './moveCurve.js';
import type { TensionSettings } from './tensionOptions.js';
import type { TensionResult } from './TensionResult.js';

/** @internal A curve as it was before its origin was moved and the fillets were taken off, read back from a result. */
export interface CurveAsRecorded extends StressStrainCurve {
  readonly lengths: PieceLengths;
  /** Length that stretches elastically over the one that strain is counted over, where fillets were taken off; else 1. */
  readonly elasticLengthRatio: number;
  /** What the frame gives at each sample [mm], beyond what it gave where travel took over; absent where none was taken out. */
  readonly frame?: Float64Array;
}

/** Motion of the frame by sample, from where the strain is travel. */
function frameOf(result: TensionResult, area: number, motion: FrameMotion): Float64Array | undefined {
  const { stress } = result.curve;
  const splice = trailValue(result.trail, 'carried-on-by-travel', 'fromSample');
  if (result.extensionBasis === 'travel') return stress.map((R) => motion.at(R * area));
  if (splice === undefined) return undefined;
  const before = motion.at(stress[splice - 1]! * area);
  return stress.map((R, i) => (i < splice ? 0 : motion.at(R * area) - before));
}

/** Steps tell by their codes what was taken off; those of a result that is older than the codes have sentences alone. */
function requireCodes(from: string, trail: readonly TrailStep[]): void {
  const k = trail.findIndex(({ code }) => (code as unknown) === undefined);
  if (k >= 0)
    throw new InputError(
      from,
      `result.trail[${k}].code`,
      'missing',
      'must say what was done: the result is older than the codes of steps, analyse its record again',
      undefined,
    );
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
  if (ratio !== 1 || result.extensionBasis === 'extensometer-then-travel') requireCodes(from, result.trail);
  const slope = trailValue(result.trail, 'fillets-taken-off', 'slope');
  const surplus = slope === undefined ? 0 : filletShare(slope, ratio);
  const frame = frameOf(result, lengths.area, motion);
  return {
    strain: moved.strain.map((e, i) => e + surplus * moved.stress[i]!),
    stress: moved.stress,
    lengths,
    elasticLengthRatio: ratio,
    ...(frame ? { frame } : {}),
  };
}
