import type { StressStrainCurve, TensionRecord } from '../../base/index.js';
import { stressStrainKernel, withoutFrame, type FrameMotion, type PieceLengths } from '../../curve/index.js';
import { isOfDrive, pausesOf, recordOutline, runningTime, surveyExcursions, surveyRecord, unloadedFrom } from '../../record/index.js';
import { isTurnOfDrive } from './departures.js';
import { lineKernel, type LineEvidence, type LineNumbers, type LineSettings } from './lineKernel.js';
import { loadingRanges, pickCurve, sampleOfRecord, samplesOfPart, type Ranges } from './loadingRanges.js';
import { moveCurve } from './moveCurve.js';
import { lineOnRecord, windowAt } from './onRecord.js';
import { withUsableFrame } from './usableFrame.js';

/** @internal The loading of a curve, whose origin was moved, and its numbers by its own samples. */
export interface LineLoadingPart {
  readonly curve: StressStrainCurve;
  readonly numbers: LineNumbers;
  /** First and last of its samples in each pause. */
  readonly pauses: Ranges;
  /** Stretches of the record that it is made of; absent where it is the whole. */
  readonly ranges?: Ranges;
}

/** Numbers by the samples of the record, and the part that they were found on. */
interface LineEvaluation {
  readonly numbers: LineNumbers;
  readonly part: LineLoadingPart;
}

/** Evaluates what of a curve is loading, moves the whole curve alike, and counts samples in the whole. */
function ofLoading(curve: StressStrainCurve, settings: LineSettings, ranges: Ranges | undefined, evidence: LineEvidence): LineEvaluation {
  if (!ranges) {
    const numbers = lineKernel(curve, settings, evidence);
    return { numbers, part: { curve, numbers, pauses: evidence.pauses } };
  }
  const { from, upTo } = samplesOfPart(ranges);
  const own = pickCurve(curve, ranges);
  const ofPart: LineEvidence = {
    ...evidence,
    pauses: evidence.pauses.flatMap(([first, last]) => (from(first) <= upTo(last) ? [[from(first), upTo(last)] as const] : [])),
    unloadedFrom: evidence.unloadedFrom === undefined ? undefined : upTo(evidence.unloadedFrom),
  };
  const numbers = lineKernel(own, { ...settings, window: windowAt(settings.window, from, upTo) }, ofPart);
  moveCurve(curve, numbers, 1);
  const at = (sample: number): number => sampleOfRecord(ranges, sample);
  return {
    numbers: { ...lineOnRecord(numbers, at), plateauEnd: at(numbers.plateauEnd) },
    part: { curve: own, numbers, pauses: ofPart.pauses, ranges },
  };
}

/**
 * @internal The numbers of a compression or bending record: of what is loading in it, with the frame taken out of travel where that leaves the piece
 * no stiffer than `stiffest` [MPa]. Nothing holds the piece as grips do: a fall of the force in which the drive did not go back is its own, a crack or a
 * fold, and stays.
 */
export function evaluateLine(
  record: TensionRecord,
  lengths: PieceLengths,
  settings: LineSettings & { readonly frameCompliance: FrameMotion | undefined },
  stiffest: number,
) {
  const survey = surveyRecord(record);
  const outline = recordOutline(record, survey);
  const rests = pausesOf(record, survey.clock, survey.top, outline?.motion);
  const found = surveyExcursions(record, outline, rests);
  const away = found ? found.drops.filter(isOfDrive) : [];
  const ranges = loadingRanges(
    away.map(({ range: [leaves, , back] }) => [leaves, back]),
    record.force.length,
  );
  const pauses = rests.filter((rest) => !isTurnOfDrive(rest, away));
  const evidence = {
    resolution: survey.forceStep / lengths.area,
    pauses: pauses.map(({ range }) => range),
    unloadedFrom: outline && unloadedFrom(outline),
  };
  const evaluate = (motion: FrameMotion | undefined) => {
    const recorded = stressStrainKernel(withoutFrame(record, motion), lengths);
    const curve = { strain: recorded.strain, stress: recorded.stress };
    return { recorded, curve, ...ofLoading(curve, settings, ranges, evidence) };
  };
  const used = withUsableFrame(evaluate, settings.frameCompliance, record, lengths, stiffest);
  const step = survey.motion?.step ?? 0;
  return {
    ...used,
    survey,
    time: runningTime(record, survey),
    pauses,
    strainStep: survey.motion?.column === 'strain' ? step : step / used.recorded.strainLength,
    /** What the checks of the record need not look for again. */
    known: { survey, outline, pauses, excursions: found },
  };
}
