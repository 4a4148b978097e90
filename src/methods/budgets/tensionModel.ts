import type { Quantity, TensionRecord, TestPiece } from '../../base/index.js';
import {
  stressOfAll,
  stressStrainKernel,
  type LineExplanation,
  type PieceLengths,
  type RecordedCurve,
  type WindowChoice,
} from '../../curve/index.js';
import { areaOf } from '../../uncertainty/index.js';
import { afterFracture } from '../evaluation/afterFracture.js';
import type { BrokenPiece } from '../common/brokenPiece.js';
import { maximumForce } from '../common/quantity.js';
import { tensionKernel } from '../evaluation/tensionKernel.js';
import type { TensionInput, TensionNumbers } from '../loading/TensionNumbers.js';
import type { TensionSettings } from '../evaluation/tensionOptions.js';
import { meetingsOf, metAgain, type Meetings } from './meetings.js';
import { quantitiesOf } from './statedResult.js';
import { atMaximum, tensionQuantities, type StrainHolds } from '../evaluation/tensionQuantities.js';
import { SECTION } from '../evaluation/tensionUncertainty.js';

/** @internal A test as it was analysed, ready to be evaluated again with something changed: the part of its record that is loading. */
export interface TensionTask {
  readonly record: TensionRecord;
  readonly piece: TestPiece;
  readonly broken: BrokenPiece;
  readonly lengths: PieceLengths;
  readonly settings: TensionSettings;
  /** The record that strain is taken from: without the frame's motion, and without travel where it has nothing to carry on. */
  readonly strainRecord: (record: TensionRecord) => TensionRecord;
  /** Elastic over strain length, by basis and lengths. */
  readonly elasticLengthRatio: (recorded: RecordedCurve, lengths: PieceLengths) => number;
  /** Which quantities the strain bears. */
  readonly holds: StrainHolds;
  /** What was evaluated beside the curve, and the sample of the highest force. */
  readonly input: Omit<TensionInput, 'curve' | 'stress'>;
  readonly top: number;
  /** What the analysis found. */
  readonly numbers: TensionNumbers;
  readonly recorded: RecordedCurve;
  readonly explanation: LineExplanation;
}

/** A scale, a length or an area is above 0; only the zero of the force may lie on either side. */
const isPossible = (inputs: TensionChange['inputs']): boolean =>
  Object.entries(inputs).every(([name, value]) => name === 'forceZero' || value > 0);

/** @internal What is changed: inputs of the uncertainty by name, and noise on the samples. */
export interface TensionChange {
  readonly inputs: Readonly<Record<string, number>>;
  /** Turns the elastic line about the middle of its window by this factor. */
  readonly slopeFactor?: number | undefined;
  /** Added to the force [N], sample by sample. */
  readonly forceNoise?: Float64Array | undefined;
  /** Added to extension and travel [mm], sample by sample. */
  readonly displacementNoise?: Float64Array | undefined;
  /** The window that is kept, as samples; default: searched anew. */
  readonly window?: WindowChoice | undefined;
  /** How the curve goes on at the strengths that it meets a line at; default: the meetings are searched anew, in the noise of the samples. */
  readonly meetings?: Meetings | undefined;
}

/** Columns that every evaluation writes anew: they would cost more to allocate than to fill. */
type Room = Readonly<Record<'force' | 'extension' | 'gaugeStrain' | 'travel' | 'strain' | 'stress', Float64Array>>;

/** Room for a record: for the columns that it has, and for its curve. */
function roomFor({ force, extension, strain, travel }: TensionRecord): Room {
  const like = (column: Float64Array | undefined): Float64Array => new Float64Array(column ? column.length : 0);
  return {
    force: like(force),
    extension: like(extension),
    gaugeStrain: like(strain),
    travel: like(travel),
    strain: like(force),
    stress: like(force),
  };
}

/** A column with a scale, an offset and noise (in units of one `per`), written into another. */
function changed(
  result: Float64Array,
  column: Float64Array,
  scale: number,
  offset: number,
  noise: Float64Array | undefined,
  per = 1,
): Float64Array {
  const share = 1 / per;
  if (noise) for (let i = 0; i < result.length; i += 1) result[i] = scale * column[i]! + offset + noise[i]! * share;
  else for (let i = 0; i < result.length; i += 1) result[i] = scale * column[i]! + offset;
  return result;
}

/** The lengths with what was changed; a length that was not given goes with the one that stands for it. */
function changedLengths({ piece, lengths }: TensionTask, inputs: TensionChange['inputs'], area: number): PieceLengths {
  const gaugeLength = inputs['gaugeLength'] ?? lengths.gaugeLength;
  const parallelLength = inputs['parallelLength'] ?? piece.parallelLength ?? gaugeLength;
  return {
    area,
    gaugeLength,
    extensometerLength: inputs['extensometerLength'] ?? piece.extensometerLength ?? gaugeLength,
    parallelLength,
    effectiveLength: inputs['effectiveLength'] ?? piece.effectiveLength ?? parallelLength,
  };
}

/** The area with other dimensions; of repeated readings the mean of their areas moves along. */
function changedArea({ shape, dimensions, area }: TestPiece['section'], inputs: TensionChange['inputs']): number {
  const moved: Record<string, number> = { ...dimensions };
  let any = false;
  for (const name in dimensions) {
    const value = inputs[SECTION + name];
    if (value === undefined) continue;
    moved[name] = value;
    any = true;
  }
  return any ? (area * areaOf(shape, moved)) / areaOf(shape, dimensions) : area;
}

/** The record with what was changed, less the frame. */
function changedRecord({ record, strainRecord, lengths }: TensionTask, change: TensionChange, room: Room): TensionRecord {
  const { inputs, displacementNoise: noise } = change;
  const scale = inputs['displacement'] ?? 1;
  const { extension, strain, travel } = record;
  const moved: TensionRecord = {
    force: changed(room.force, record.force, inputs['force'] ?? 1, inputs['forceZero'] ?? 0, change.forceNoise),
    ...(extension ? { extension: changed(room.extension, extension, scale, 0, noise) } : {}),
    ...(strain ? { strain: changed(room.gaugeStrain, strain, scale, 0, noise, lengths.extensometerLength) } : {}),
    ...(travel ? { travel: changed(room.travel, travel, scale, 0, noise) } : {}),
  };
  const used = strainRecord(moved);
  const frame = inputs['frameCompliance'] ?? 1;
  if (frame === 1 || !moved.travel || !used.travel) return used;
  // so much more or less than the frame's motion as it was taken out
  const piece = used.travel;
  return { ...used, travel: moved.travel.map((x, i) => x - frame * (x - piece[i]!)) };
}

/** Evaluates a test again with something changed: numbers, and the curve as the kernel moved it. Columns are kept from one evaluation to the next. */
function evaluation(task: TensionTask) {
  const { piece, settings } = task;
  const room = roomFor(task.record);
  const definitions = [settings.proportionalLimit];
  return (change: TensionChange) => {
    const area = changedArea(piece.section, change.inputs);
    const lengths = changedLengths(task, change.inputs, area);
    const record = changedRecord(task, change, room);
    const recorded = stressStrainKernel(record, lengths, room);
    const curve = { strain: recorded.strain, stress: recorded.stress };
    const stress = stressOfAll(curve, record.force, area);
    const numbers = tensionKernel(
      {
        ...task.input,
        curve,
        stress,
        // what a change may move is looked for anew
        highest: change.forceNoise ? undefined : task.top,
        broken: undefined,
        alone: true,
        definitions,
        elasticLengthRatio: task.elasticLengthRatio(recorded, lengths),
        slopeFactor: change.slopeFactor,
      },
      change.window ? { ...settings, window: change.window } : settings,
    );
    return { numbers, curve, stress, area, lengths, force: record.force };
  };
}

/** @internal How the curve goes on at every strength that it meets a line at, by the window that is kept. */
export const tensionMeetings = (task: TensionTask, kept: Partial<TensionChange>): Meetings =>
  meetingsOf(task.settings, (settings) => evaluation({ ...task, settings })({ inputs: {}, ...kept }));

/** @internal Evaluates a test again with something changed: every quantity. */
export function tensionModel(task: TensionTask): (change: TensionChange) => readonly Quantity[] {
  const { piece, settings, broken } = task;
  const evaluate = evaluation(task);
  return (change) => {
    if (!isPossible(change.inputs)) return [];
    const { numbers: searched, curve, stress, area, lengths, force } = evaluate(change);
    const numbers = change.meetings ? metAgain(searched, curve, change.meetings) : searched;
    const lengthAfter = broken.length === undefined ? undefined : (change.inputs['finalGaugeLength'] ?? broken.length);
    const areaAfter = broken.area === undefined ? undefined : (change.inputs['finalArea'] ?? broken.area);
    const changedPiece = { ...piece, section: { ...piece.section, area }, gaugeLength: lengths.gaugeLength };
    return [
      ...quantitiesOf(tensionQuantities(numbers, curve, stress, settings, task.holds, undefined)),
      atMaximum(maximumForce(force[numbers.maximumSample]!), numbers),
      ...quantitiesOf(afterFracture(changedPiece, { ...broken, length: lengthAfter, area: areaAfter })),
    ];
  };
}
