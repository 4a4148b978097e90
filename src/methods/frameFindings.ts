import { finding, type Finding } from '../base/index.js';
import type { RecordedCurve } from '../curve/index.js';
import { isCurved } from './lineFindings.js';
import type { TensionNumbers } from './tensionKernel.js';
import type { LineThresholds } from './thresholds.js';
import type { TensionResult } from './TensionResult.js';

/** The step of the displacement at which a proof strength is worth a fault, as a share of the offset. */
const STEP_FAULT = 0.33;

/** What the strain is of. */
type Strained = Pick<RecordedCurve, 'basis' | 'strainLength' | 'firstStrain'>;
type Settings = { readonly thresholds: LineThresholds };
type Found = Pick<TensionResult, 'proofStrengths' | 'modulusWindow'>;

/** @internal Whose motion a slope is of, where the strain comes from travel. `compliance` is that of the frame, where it was removed. */
export function slopeFindings(
  { strainLength }: Pick<Strained, 'strainLength'>,
  { line }: Pick<TensionNumbers, 'line'>,
  compliance: number | undefined,
  area: number,
): Finding[] {
  if (!line.ok) return [];
  if (compliance === undefined || compliance <= 0)
    return [finding('modulus-includes-frame-compliance', { slope: line.slope }, { field: 'modulus' })];
  // as springs in series: the frame's share of the whole motion
  const ratio = (compliance * area * line.slope) / strainLength;
  return [
    finding('frame-compliance-removed', { compliance, share: (100 * ratio) / (1 + ratio) }),
    ...(ratio > 1 ? [finding('frame-stretches-more-than-piece', { ratio }, { field: 'modulus' })] : []),
  ];
}

/** @internal Doubts about the toe, and how fine the displacement was read. */
export function displacementFindings(
  { firstStrain }: Pick<Strained, 'firstStrain'>,
  numbers: Pick<TensionNumbers, 'line'>,
  { modulusWindow, proofStrengths }: Found,
  { thresholds }: Settings,
  strainStep: number,
): Finding[] {
  const found: Finding[] = [];
  if (modulusWindow) {
    const shift = modulusWindow.strainShift - firstStrain;
    const elastic = modulusWindow.stressLimits[1] / modulusWindow.slope;
    const share = shift / elastic;
    if (share > thresholds.toeShare && !isCurved(numbers, thresholds.slopeFall))
      found.push(finding('toe-long', { shift, share: 100 * share }, { field: 'modulusWindow' }));
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

/** @internal Doubts about frame and displacement: what the strain is of, and how fine it was read. */
export function frameFindings(
  recorded: Strained,
  numbers: Pick<TensionNumbers, 'line'>,
  result: Found,
  settings: Settings & { readonly frameCompliance: number | undefined },
  area: number,
  strainStep: number,
): Finding[] {
  return [
    ...(recorded.basis === 'travel'
      ? [finding('extension-from-travel'), ...slopeFindings(recorded, numbers, settings.frameCompliance, area)]
      : []),
    ...displacementFindings(recorded, numbers, result, settings, strainStep),
  ];
}
