import { soundLength, type TensionRecord } from '../../base/index.js';
import {
  BROKEN_SHARE,
  findBreak,
  stressOfAll,
  stressStrainKernel,
  withoutFrame,
  type FrameMotion,
  type PieceLengths,
  type RecordedCurve,
} from '../../curve/index.js';
import { metalModuli } from '../../materials/index.js';
import { motionColumn, ofPiece, pausesOf, surveyExcursions, unloadedFrom, type EndedRecord } from '../../record/index.js';
import { departuresOf, isTurnOfDrive, possibleSlips } from '../loading/departures.js';
import { interruptionsOf } from '../loading/interruptionsOf.js';
import { evaluateLoading } from './loadingPart.js';
import type { TensionInput } from '../loading/TensionNumbers.js';
import type { TensionSettings } from './tensionOptions.js';
import { withUsableFrame } from '../loading/usableFrame.js';
import { withoutLeaps } from './withoutLeaps.js';

/** Travel has nothing to carry on where the extensometer reads up to the fracture. */
function withoutNeedlessTravel(record: TensionRecord, fractureAt: number | undefined): TensionRecord {
  const column = motionColumn(record, ofPiece);
  if (fractureAt === undefined || column === 'travel' || record.travel === undefined) return record;
  const end = soundLength(record[column]!);
  if (end <= fractureAt || end === record.force.length) return record;
  return Object.fromEntries(Object.entries(record).filter(([name]) => name !== 'travel')) as unknown as TensionRecord;
}

/** @internal Last sample before the fracture, where there was one. */
export const brokenAt = ({ broken, unloadedFrom: unloaded }: Pick<TensionInput, 'broken' | 'unloadedFrom'>): number | undefined =>
  broken?.ok === true && unloaded === undefined ? broken.index : undefined;

/** @internal A record whose motion is that of the strain: without the frame, and without a travel that only carries on after the fracture. */
export const strainRecord = (record: TensionRecord, motion: FrameMotion | undefined, fractureAt: number | undefined): TensionRecord =>
  withoutNeedlessTravel(withoutFrame(record, motion), fractureAt);

/** @internal Travel without the frame still holds the fillets' share; an extensometer's strain, and a raw one, are left as they are. */
export function elasticLengthRatio(recorded: RecordedCurve, lengths: PieceLengths, frameCompliance: FrameMotion | undefined): number {
  const corrected = recorded.basis === 'travel' && frameCompliance !== undefined;
  return corrected ? lengths.effectiveLength / lengths.parallelLength : 1;
}

/** @internal The numbers of a record: of what is loading in it, with the frame taken out of travel where it can be; `measured` is what was measured on the broken piece. */
export function evaluateRecord(
  { record, survey, outline }: EndedRecord,
  lengths: PieceLengths,
  settings: TensionSettings,
  measured: TensionInput['measured'],
) {
  const rests = pausesOf(record, survey.clock, survey.top, outline?.motion);
  const excursions = surveyExcursions(record, outline, rests);
  const away = excursions?.drops.filter(({ kind }) => kind !== 'yield') ?? [];
  const pauses = rests.filter((rest) => !isTurnOfDrive(rest, away));
  const resolution = survey.forceStep / lengths.area;
  const ends = { unloadedFrom: outline && unloadedFrom(outline), broken: findBreak(record.force, survey.top, BROKEN_SHARE) };
  const evaluate = (motion: FrameMotion | undefined) => {
    const recorded = stressStrainKernel(strainRecord(record, motion, brokenAt(ends)), lengths);
    const curve = { strain: recorded.strain, stress: recorded.stress };
    const stress = stressOfAll(curve, record.force, lengths.area);
    const evidence = { found: excursions, pauses, unloadedFrom: ends.unloadedFrom, stress };
    const interruptions = interruptionsOf(evidence, recorded, lengths);
    const { excursions: left, ...where } = departuresOf(interruptions);
    const leaps = possibleSlips(excursions, recorded, lengths);
    const input = {
      curve,
      stress,
      highest: survey.top,
      resolution,
      elasticLengthRatio: elasticLengthRatio(recorded, lengths, motion),
      broken: ends.broken,
      measured,
      ...where,
    };
    // before the evaluation moves the curve
    const without = withoutLeaps(input, settings, left, leaps);
    return { recorded, curve, stress, interruptions, leaps, without, ...evaluateLoading(input, settings, left) };
  };
  return { excursions, pauses, resolution, ...withUsableFrame(evaluate, settings.frameCompliance, record, lengths, metalModuli[1]) };
}
