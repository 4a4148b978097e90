import type { TensionRecord } from '../base/index.js';
import { stressStrainKernel, travelWithoutFrame, type FrameMotion, type PieceLengths, type RecordedCurve } from '../curve/index.js';
import { metalModuli } from '../materials/index.js';
import { pausesOf, surveyExcursions, type Pause, type RecordSurvey } from '../record/index.js';
import { departuresOf, type Departures } from './departures.js';
import { evaluateLoading } from './loadingPart.js';
import type { TensionSettings } from './tensionOptions.js';
import { withUsableFrame } from './usableFrame.js';

/** @internal The frame's motion taken out of the travel, where its compliance is known. */
export function withoutFrame(record: TensionRecord, motion: FrameMotion | undefined): TensionRecord {
  return motion && record.travel ? { ...record, travel: travelWithoutFrame(record.travel, record.force, motion) } : record;
}

/** @internal Travel without the frame still holds the fillets' share; an extensometer's strain, and a raw one, are left as they are. */
export function elasticLengthRatio(recorded: RecordedCurve, lengths: PieceLengths, frameCompliance: FrameMotion | undefined): number {
  const corrected = recorded.basis === 'travel' && frameCompliance !== undefined;
  return corrected ? lengths.effectiveLength / lengths.parallelLength : 1;
}

/** A drive that went back and came again within a moment stood nowhere. */
const isExcursion = ({ range: [first, last] }: Pause, { excursions }: Departures): boolean =>
  excursions.some(([leaves, , back]) => 2 * leaves <= first + last && first + last <= 2 * back);

/** @internal The numbers of a record: of what is loading in it, with the frame taken out of travel where it can be. */
export function evaluateRecord(record: TensionRecord, survey: RecordSurvey, lengths: PieceLengths, settings: TensionSettings) {
  const rests = pausesOf(record, survey.clock, survey.top);
  const excursions = surveyExcursions(record, survey, rests);
  const resolution = survey.forceStep / lengths.area;
  const evaluate = (motion: FrameMotion | undefined) => {
    const recorded = stressStrainKernel(withoutFrame(record, motion), lengths);
    const curve = { strain: recorded.strain, stress: recorded.stress };
    const stress = curve.stress.length === record.force.length ? curve.stress : record.force.map((F) => F / lengths.area);
    const departures = departuresOf(excursions, recorded);
    const pauses = rests.filter((rest) => !isExcursion(rest, departures));
    const { slips, zeroMoves } = departures;
    const input = {
      curve,
      stress,
      highest: survey.top,
      resolution,
      pauses: pauses.map(({ range }) => range),
      slips,
      zeroMoves,
      elasticLengthRatio: elasticLengthRatio(recorded, lengths, motion),
    };
    return { recorded, curve, stress, pauses, ...evaluateLoading(input, settings, departures.excursions) };
  };
  return { ...withUsableFrame(evaluate, settings.frameCompliance, record, lengths, metalModuli[1]), excursions, resolution };
}
