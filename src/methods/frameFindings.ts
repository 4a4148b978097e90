import { finding, type Finding, type TensionRecord } from '../base/index.js';
import { beyondCompliance, type RecordedCurve } from '../curve/index.js';
import type { FrameShare } from './frameShare.js';
import { isCurved } from './lineFindings.js';
import type { TensionNumbers } from './tensionKernel.js';
import type { TensionSettings } from './tensionOptions.js';
import type { TensionResult } from './TensionResult.js';

/** The step of the displacement at which a proof strength is worth a fault, as a share of the offset. */
const STEP_FAULT = 0.33;

/** What the compliance alone may make of E before it is a caution (common practice). */
const CARRIED = 0.05;

/** @internal Doubts about frame and displacement: what the strain is of, and how fine it was read. */
export function frameFindings(
  record: TensionRecord,
  recorded: RecordedCurve,
  numbers: TensionNumbers,
  result: Pick<TensionResult, 'proofStrengths' | 'modulus' | 'modulusWindow'>,
  settings: TensionSettings,
  frame: FrameShare | undefined,
  strainStep: number,
): Finding[] {
  const found: Finding[] = [];
  const { line } = numbers;
  const { basis } = recorded;
  const motion = settings.frameCompliance;
  if (motion && record.travel) found.push(...beyondCompliance(record.force, motion));
  if (basis === 'travel') {
    found.push(finding('extension-from-travel'));
    if (frame) {
      // as springs in series: the frame's share of the whole motion
      const { compliance, ratio, lowest, uncertainty } = frame;
      found.push(finding('frame-compliance-removed', { compliance, share: (100 * ratio) / (1 + ratio) }));
      if (ratio > 1) found.push(finding('frame-stretches-more-than-piece', { ratio }, { field: 'modulus' }));
      if (uncertainty !== undefined && uncertainty > CARRIED)
        found.push(finding('modulus-carries-compliance', { uncertainty: 100 * uncertainty }, { field: 'modulus' }));
      const limit = motion?.range?.[0] ?? -Infinity;
      if (lowest < limit - 1e-9 * Math.abs(limit))
        found.push(finding('window-below-compliance', { force: lowest, limit }, { field: 'modulusWindow' }));
    } else if (line.ok) found.push(finding('modulus-includes-frame-compliance', { slope: line.slope }, { field: 'modulus' }));
  }
  const { modulusWindow } = result;
  if (modulusWindow) {
    const shift = modulusWindow.strainShift - recorded.firstStrain;
    const elastic = modulusWindow.stressLimits[1] / modulusWindow.slope;
    const share = shift / elastic;
    if (share > settings.thresholds.toeShare && !isCurved(numbers, settings.thresholds.slopeFall))
      found.push(finding('toe-long', { shift, share: 100 * share }, { field: 'modulusWindow' }));
    if (shift < -settings.thresholds.toeShare * elastic) found.push(finding('toe-outside-record', { shift }, { field: 'modulusWindow' }));
  }
  for (const { symbol, extension } of result.proofStrengths) {
    const share = strainStep / extension;
    if (share > settings.thresholds.displacementStep)
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
