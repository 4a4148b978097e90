import { finding, type Finding, type TensionRecord } from '../../base/index.js';
import { beyondCompliance, type ComplianceConditions, type FrameMotion, type RecordedCurve } from '../../curve/index.js';
import { maximumIndex } from '../../numeric/index.js';
import { LOADED } from '../../record/index.js';
import type { FrameShare } from './frameShare.js';
import type { RefusedFrame } from './usableFrame.js';
import type { TestInfo } from '../common/MethodResult.js';
import type { LineResult } from './LineResult.js';
import type { TensionNumbers } from './TensionNumbers.js';
import type { LineThresholds } from '../common/thresholds.js';

/** The step of the displacement at which a proof strength is worth a fault, as a share of the offset. */
const STEP_FAULT = 0.33;

/** What the compliance alone may make of E before it is a caution (common practice). */
const CARRIED = 0.05;

type Found = Pick<LineResult, 'proofStrengths' | 'modulusWindow'>;
type Settings = { readonly thresholds: LineThresholds };

/** Grips in words, so that capitals and blanks at the ends make no difference. */
const plain = (words: string): string => words.trim().toLowerCase();

/** @internal Compliances that were measured with other grips, or in the other direction, than the test that they are taken off. */
export function conditionFindings(
  measured: readonly (ComplianceConditions | undefined)[],
  { grips: used }: TestInfo,
  loaded: 'tension' | 'compression',
): Finding[] {
  return measured.flatMap((one) => [
    ...(one?.grips !== undefined && used !== undefined && plain(one.grips) !== plain(used)
      ? [finding('compliance-of-other-grips', { measured: one.grips, used })]
      : []),
    ...(one?.direction !== undefined && one.direction !== loaded
      ? [finding('compliance-of-other-direction', { measuredDirection: one.direction, usedDirection: loaded })]
      : []),
  ]);
}

/** @internal A compliance that was given and not removed. */
export const refusedFindings = (refused: RefusedFrame | undefined, field = 'modulus'): Finding[] =>
  refused ? [finding('compliance-too-large', { ...refused }, { field })] : [];

/** @internal What was taken out of the motion along a slope, and what that makes of the modulus. */
export function shareFindings({ compliance, ratio, vanishing, uncertainty }: FrameShare, field = 'modulus'): Finding[] {
  // as springs in series: the frame's share of the whole motion
  const share = (100 * ratio) / (1 + ratio);
  const found = [finding('frame-compliance-removed', { compliance, share })];
  if (vanishing) found.push(finding('compliance-vanishing', { compliance, share }, { field }));
  if (ratio > 1) found.push(finding('frame-stretches-more-than-piece', { ratio }, { field }));
  if (uncertainty !== undefined && uncertainty > CARRIED)
    found.push(finding('modulus-carries-compliance', { uncertainty: 100 * uncertainty }, { field }));
  return found;
}

/** @internal Whose motion a slope is of, where the strain comes from travel; and how far the frame was measured. */
export function slopeFindings(
  { line }: Pick<TensionNumbers, 'line'>,
  motion: FrameMotion | undefined,
  frame: FrameShare | undefined,
): Finding[] {
  if (!frame) return line.ok ? [finding('modulus-includes-frame-compliance', { slope: line.slope }, { field: 'modulus' })] : [];
  const { lowest } = frame;
  const found = shareFindings(frame);
  const limit = motion?.range?.[0] ?? -Infinity;
  if (lowest < limit - 1e-9 * Math.abs(limit))
    found.push(finding('window-below-compliance', { force: lowest, limit }, { field: 'modulusWindow' }));
  return found;
}

/** Strain by which the first loaded sample lies before its line: travel at no force is idle, and no toe. */
function toeOf(
  { strain, stress }: Pick<RecordedCurve, 'strain' | 'stress'>,
  { first, slope }: { readonly first: number; readonly slope: number },
  highest: number,
): number {
  // an extensometer may end before the highest force
  const least = LOADED * (stress[highest] ?? stress[maximumIndex(stress)]!);
  let i = first;
  while (i > 0 && stress[i]! > least) i -= 1;
  return stress[i]! / slope - strain[i]!;
}

/** @internal Doubts about the toe, and how fine the displacement was read. */
export function displacementFindings(
  recorded: Pick<RecordedCurve, 'firstStrain' | 'strain' | 'stress'>,
  { modulusWindow, proofStrengths }: Found,
  { thresholds }: Settings,
  strainStep: number,
  highest: number,
): Finding[] {
  const found: Finding[] = [];
  if (modulusWindow) {
    const shift = modulusWindow.strainShift - recorded.firstStrain;
    const elastic = modulusWindow.stressLimits[1] / modulusWindow.slope;
    const toe = toeOf(recorded, modulusWindow, highest);
    const share = toe / elastic;
    const why = modulusWindow.linearPart?.why;
    // a curve that bends from the start seems to have a toe
    const curved = why !== undefined && why !== 'toe-reaches-up' && why !== 'yields-early';
    if (share > thresholds.toeShare && !curved)
      found.push(finding('toe-long', { shift: toe, share: 100 * share }, { field: 'modulusWindow' }));
    if (shift < -thresholds.toeShare * elastic) found.push(finding('toe-outside-record', { shift }, { field: 'modulusWindow' }));
  }
  for (const { symbol, extension } of proofStrengths) {
    const share = strainStep / extension;
    if (share > thresholds.displacementStep)
      found.push(
        finding(
          'displacement-steps-coarse',
          { share: 100 * share, symbol },
          { field: 'proofStrengths', severity: share > STEP_FAULT ? 'fault' : 'caution' },
        ),
      );
  }
  return found;
}

/** @internal What the doubts about frame and displacement rest on. */
export interface FrameEvidence {
  readonly record: Pick<TensionRecord, 'force' | 'travel'>;
  readonly recorded: Pick<RecordedCurve, 'basis' | 'firstStrain' | 'strain' | 'stress'>;
  readonly numbers: Pick<TensionNumbers, 'line' | 'highest'>;
  readonly share: FrameShare | undefined;
  readonly refused: RefusedFrame | undefined;
  /** The step of the displacement, as strain. */
  readonly strainStep: number;
}

/** @internal Doubts about frame and displacement: what the strain is of, and how fine it was read. */
export function frameFindings(
  { record, recorded, numbers, share, refused, strainStep }: FrameEvidence,
  loaded: 'tension' | 'compression',
  result: Found,
  settings: Settings & { readonly frameCompliance: FrameMotion | undefined; readonly test: TestInfo },
): Finding[] {
  const motion = settings.frameCompliance;
  return [
    ...refusedFindings(refused),
    ...(motion && record.travel ? [...conditionFindings([motion], settings.test, loaded), ...beyondCompliance(record.force, motion)] : []),
    ...(recorded.basis === 'travel' ? [finding('extension-from-travel', {}), ...slopeFindings(numbers, motion, share)] : []),
    ...displacementFindings(recorded, result, settings, strainStep, numbers.highest),
  ];
}
