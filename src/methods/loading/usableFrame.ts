import type { TensionRecord } from '../../base/index.js';
import { complianceBetween, type FrameMotion, type PieceLengths, type RecordedCurve } from '../../curve/index.js';
import { maximumIndex } from '../../numeric/index.js';
import type { LineNumbers } from './lineKernel.js';

/** @internal A compliance that was not taken out, because it takes more than the piece can spare. */
export interface RefusedFrame {
  /** Compliance that was given, over the elastic part [mm/N]. */
  readonly compliance: number;
  /** What it is of the motion that travel shows, in per cent. */
  readonly share: number;
}

/** What an evaluation must tell; its curve is that of `recorded`. */
interface Evaluated {
  readonly recorded: RecordedCurve;
  readonly numbers: Pick<LineNumbers, 'line'>;
}

/** An evaluation, the frame that it took out, and the one that it was asked to take out and did not. */
type Used<T> = T & { readonly frameCompliance: FrameMotion | undefined; readonly refused?: RefusedFrame };

/** An elastic line whose foot is further from its window than this share of what the line says stands on another part of the curve. */
const NEAR_LINE = 0.5;

/** @internal What a compliance is of the motion over the whole loading, where it leaves no piece: the frame's is all that travel shows, or more. */
export function shareOfLoading({ force, travel }: Pick<TensionRecord, 'force' | 'travel'>, motion: FrameMotion): RefusedFrame | undefined {
  if (!travel) return undefined;
  const top = maximumIndex(force);
  const [rise, moved] = [force[top]! - force[0]!, travel[top]! - travel[0]!];
  const frame = motion.at(force[top]!) - motion.at(force[0]!);
  return rise > 0 && moved > 0 && frame >= moved ? { compliance: frame / rise, share: (100 * frame) / moved } : undefined;
}

/**
 * True where a line may owe itself to a compliance that is too large: there is none, its slope is no metal's, or the curve does not come
 * to its window from half its stress as the line does (it goes backwards where the piece stretched).
 */
function isDoubtful({ recorded: { strain, stress }, numbers: { line } }: Evaluated, stiffest: number): boolean {
  if (!line.ok || line.slope > stiffest) return true;
  const { first, slope } = line;
  const from = stress[first]! / 2;
  let i = first - 1;
  while (i >= 0 && stress[i]! > from) i -= 1;
  return i < 0 || strain[first]! - strain[i]! < (NEAR_LINE * (stress[first]! - stress[i]!)) / slope;
}

/** What a compliance is of the motion in the elastic part as recorded, where it leaves the piece stiffer than any is. */
function shareOfLine(
  { recorded, numbers: { line } }: Evaluated,
  { area, effectiveLength }: Pick<PieceLengths, 'area' | 'effectiveLength'>,
  motion: FrameMotion,
  stiffest: number,
): RefusedFrame | undefined {
  if (!line.ok) return undefined;
  const [a, b] = [recorded.stress[line.first]! * area, recorded.stress[line.last]! * area];
  const compliance = complianceBetween(motion, a, b);
  const together = recorded.strainLength / (area * line.slope);
  return together - compliance <= effectiveLength / (area * stiffest) ? { compliance, share: (100 * compliance) / together } : undefined;
}

/**
 * @internal An evaluation with the frame taken out of travel, or without where that would leave the piece stiffer than `stiffest` [MPa]:
 * springs in series, the frame cannot give more than frame and piece together. The raw line is looked for only where the corrected one is in doubt.
 */
export function withUsableFrame<T extends Evaluated>(
  evaluate: (motion: FrameMotion | undefined) => T,
  motion: FrameMotion | undefined,
  record: Pick<TensionRecord, 'force' | 'travel'>,
  lengths: Pick<PieceLengths, 'area' | 'effectiveLength'>,
  stiffest: number,
): Used<T> {
  const asked = evaluate(motion);
  const { basis } = asked.recorded;
  if (!motion || basis === 'extensometer') return { frameCompliance: motion, ...asked };
  const whole = shareOfLoading(record, motion);
  if (!whole && (basis !== 'travel' || !isDoubtful(asked, stiffest))) return { frameCompliance: motion, ...asked };
  const raw = evaluate(undefined);
  const refused = (basis === 'travel' ? shareOfLine(raw, lengths, motion, stiffest) : undefined) ?? whole;
  return refused ? { frameCompliance: undefined, refused, ...raw } : { frameCompliance: motion, ...asked };
}

/** @internal Whether the frame was taken out, as a result says it; of a record without travel, or where no compliance was given, nothing. */
export const frameRemoved = (
  asked: FrameMotion | undefined,
  travel: ArrayLike<number> | undefined,
  refused: RefusedFrame | undefined,
): { readonly frameRemoved?: boolean } => (asked && travel ? { frameRemoved: refused === undefined } : {});
