import { PROOF_OFFSET, finding, type Finding } from '../base/index.js';
import { strainRateOfSpeed } from '../curve/index.js';
import { dimensionFindings, lengthFindings } from '../methods/index.js';
import { READ_EVERY } from './paceSheet.js';
import type { PlanLimits } from './planForce.js';
import { strokeFindings } from './strokeFindings.js';
import type { StageInput } from './speedStages.js';
import type { PlannedResolution, SpeedStage, TensionPlan } from './TensionPlan.js';
import type { TensionPlanInput } from './TensionPlanInput.js';
import { cylinderArea, type TestFrame } from './TestFrame.js';

/** A gauge length so far off is no longer proportional. */
const PROPORTIONAL = 0.1;
/** Strokes or turns a minute that a hand can keep even (common practice). */
const BY_HAND = 60;
/** A tenth of the offset is wanted as the step of the displacement; a third is too coarse. */
const STEP = { caution: 10, fault: 3 } as const;

function frameFindings({ travel }: Pick<TensionPlan, 'travel'>, { frame, limits }: { frame: TestFrame; limits: PlanLimits }): Finding[] {
  const found = strokeFindings(frame, travel.travel, limits);
  if (frame.compliance === undefined) found.push(finding('frame-compliance-unknown', {}));
  if (frame.bore !== undefined && frame.oilVolume === undefined) found.push(finding('oil-volume-unknown', {}));
  return found;
}

function resolutionFindings({ stepsInOffset, frameOverPiece }: PlannedResolution, byTravel: boolean, proof: boolean): Finding[] {
  const found: Finding[] = [];
  if (byTravel && frameOverPiece !== undefined && frameOverPiece > 1)
    found.push(finding('frame-stretches-more-than-piece', { ratio: frameOverPiece }));
  if (proof && stepsInOffset !== undefined && stepsInOffset < STEP.caution)
    found.push(
      finding(
        'displacement-steps-coarse',
        { share: 100 / stepsInOffset, symbol: 'Rp0.2' },
        stepsInOffset < STEP.fault ? { severity: 'fault' } : {},
      ),
    );
  return found;
}

function speedFindings(stages: readonly SpeedStage[], { frame, length }: StageInput): Finding[] {
  const found: Finding[] = [];
  const [elastic, next] = stages;
  const time = (elastic?.untilStress ?? Infinity) / (elastic?.stressRate ?? 1);
  if (time < 5 * READ_EVERY) found.push(finding('elastic-part-quick', { time }));
  if (elastic && next?.stage === 'yield') {
    const rate = strainRateOfSpeed({ speed: elastic.speed, length });
    const ratio = rate / next.strainRate;
    // a rounding error of the same speed is no change
    if (ratio > 1.01)
      found.push(finding('elastic-speed-too-fast-for-yield', { rate, ratio }, rate > next.limits[1] ? { severity: 'caution' } : {}));
  }
  const what = frame.drive?.kind === 'pump' ? 'strokes' : 'turns';
  for (const { stage, drivePerMinute } of stages)
    if (drivePerMinute !== undefined && drivePerMinute > BY_HAND)
      found.push(finding('drive-too-fast', { number: drivePerMinute, what, stage, limit: BY_HAND }));
  // a wheel turns as finely as the hand likes, a stroke has an end
  const { drive } = frame;
  const piston = cylinderArea(frame);
  if (drive?.kind === 'pump' && piston !== undefined && next?.stage === 'yield') {
    const travel = drive.volumePerStroke / piston;
    const ratio = travel / (PROOF_OFFSET * length);
    if (ratio > 1) found.push(finding('drive-strokes-coarse', { travel, ratio }));
  }
  return found;
}

function useFindings({ extensometer, claimsStandard, use, control = 'iso-a' }: TensionPlanInput): Finding[] {
  const standard = control.startsWith('iso') ? 'ISO 6892-1' : 'ASTM E8/E8M';
  return [
    ...((claimsStandard === true || use === 'acceptance') && !extensometer ? [finding('strain-not-in-accordance', { standard })] : []),
    ...(use === 'structural' ? [finding('structural-acceptance', {})] : []),
  ];
}

/** @internal Doubts about a planned tension test beside those about its force. */
export function tensionPlanFindings(
  input: TensionPlanInput,
  plan: Pick<TensionPlan, 'travel' | 'lengths' | 'stages' | 'resolution' | 'leastSamplingRate' | 'material'>,
  stageInput: StageInput,
  limits: PlanLimits,
): Finding[] {
  const { gaugeLength, parallelLength } = plan.lengths;
  const { samplingRate } = input;
  const stressRate = plan.stages[0]?.stressRate ?? 0;
  return [
    ...frameFindings(plan, { frame: input.frame, limits }),
    ...dimensionFindings(input.section),
    ...lengthFindings({ section: input.section, gaugeLength, parallelLength }, PROPORTIONAL, false),
    ...resolutionFindings(plan.resolution, input.extensometer === undefined, plan.material.yieldStrength !== undefined),
    ...speedFindings(plan.stages, stageInput),
    ...(samplingRate !== undefined && samplingRate < plan.leastSamplingRate
      ? [
          finding('planned-sampling-slow', {
            rate: samplingRate,
            least: plan.leastSamplingRate,
            stressRate,
            loss: stressRate / samplingRate,
          }),
        ]
      : []),
    ...useFindings(input),
  ];
}
