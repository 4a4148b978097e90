import {
  finding,
  requireNonNegative,
  requireOptions,
  soundLength,
  toldOnce,
  type Finding,
  type TensionColumns,
  type TensionRecord,
  columnUnits,
} from '../../base/index.js';
import { extent, noiseLevel, resolution, type BlockExtremes } from '../../numeric/index.js';
import { channelFindings } from './channelFindings.js';
import { clockFindings, GAP_STEPS } from '../survey/clock.js';
import { exchangedChannels } from './exchangedChannels.js';
import { excursionsOf, type Excursions } from './excursions.js';
import type { Pause } from './pauseSearch.js';
import { endExtensometer, type ExtensometerEnd } from './extensometerEnd.js';
import { motionFindings } from './motionFindings.js';
import type { MotionColumn } from '../survey/motionColumn.js';
import { recordOutline, type RecordOutline } from '../survey/recordOutline.js';
import { recordBlocks } from '../survey/recordBlocks.js';
import { requireColumns } from '../survey/requireColumns.js';
import { severalTests } from '../survey/segments.js';
import type { SlipsBack } from './slipsBack.js';
import { saturationFindings } from './saturationFindings.js';
import { spikeFindings } from './spikeFindings.js';
import { spikeColumns, spikedColumns } from './spikedColumns.js';
import { straightened } from './spikes.js';
import { surveyRecord, type RecordSurvey } from '../survey/surveyRecord.js';
import { zeroFindings } from './zeroFindings.js';

/** Thresholds of {@link checkRecord}: common practice. */
export interface RecordThresholds {
  /** A gap is longer than so many usual time steps; default 5. */
  readonly gap?: number | undefined;
  /** Share of repeated samples that is worth a note; default 0.05. */
  readonly repeated?: number | undefined;
  /** Equal samples at the highest value that mean saturation; default 5. */
  readonly saturated?: number | undefined;
  /** Share of the maximum force that the first sample may carry; default 0.05. */
  readonly lateStart?: number | undefined;
  /** Zero drift, as a share of the maximum force, that is a caution; default 0.005, a fault from twice that. */
  readonly zeroDrift?: number | undefined;
}

/** The thresholds with their defaults. */
const defaults = { gap: GAP_STEPS, repeated: 0.05, saturated: 5, lateStart: 0.05, zeroDrift: 0.005 };
type Limits = typeof defaults;

/** Multiple of the highest force by which the lowest one is negative where the sign is the other way. */
const REVERSED = 3;

/** @internal What the checks of a record share, so that an analysis need not look twice. */
export interface KnownRecord {
  /** Default: made. */
  readonly survey?: RecordSurvey;
  /** Default: drawn from the survey. */
  readonly outline?: RecordOutline | undefined;
  /** Default: looked for. */
  readonly pauses?: readonly Pause[];
  /** Default: looked for. */
  readonly excursions?: Excursions | undefined;
  /** Where the extensometer of the record was ended, because it no longer followed the piece. */
  readonly ended?: ExtensometerEnd | undefined;
  /** Default: looked for. */
  readonly slipsBack?: SlipsBack | undefined;
  /** True where what broke may go on carrying force: a ball stands in the cup, a pin rubs, a crushed piece stands between the plates. */
  readonly carriesOn?: boolean;
}

/** @internal The lowest and highest force of a record whose pull counts as negative: its force is so for the most part. */
export function reversedForce({ lowest: lows }: BlockExtremes, highest: number): { lowest: number; highest: number } | undefined {
  const [lowest] = extent(lows);
  return lowest < 0 && -lowest > REVERSED * Math.max(highest, 0) ? { lowest, highest } : undefined;
}

/** A motion that falls while the force rises. */
function motionSign(record: TensionRecord, column: MotionColumn, { first, top }: RecordOutline): Finding[] {
  const values = record[column]!;
  const end = Math.min(top, soundLength(values) - 1);
  const fell = values[first]! - values[end]!;
  if (!(fell > 0)) return [];
  const [low, high] = extent(values, first, end + 1);
  return fell > 20 * Math.max(noiseLevel(values, first, end + 1), resolution(values)) && fell > 0.5 * (high - low)
    ? [finding('motion-sign-reversed', { column, first: values[first]!, last: values[end]!, unit: columnUnits[column] })]
    : [];
}

/** Signs that are the other way: the force is negative for the most part, or a motion falls while the force rises. */
function signFindings(
  record: TensionRecord,
  { blocks, motion }: RecordSurvey,
  highest: number,
  outline: RecordOutline | undefined,
): Finding[] {
  const reversed = reversedForce(blocks.force, highest);
  if (reversed) return [finding('force-sign-reversed', reversed, { field: 'maximumForce' })];
  if (!outline?.motion || !motion) return [];
  // that of the drive, and that of the piece
  return [...new Set([outline.motion.column, motion.column])].flatMap((column) => motionSign(record, column, outline));
}

/** @internal {@link checkRecord} on a checked record; spikes are looked for by whoever may take them out. */
export function checkRecordKernel(record: TensionRecord, thresholds: RecordThresholds = {}, known?: KnownRecord): Finding[] {
  const limits: Limits = {
    ...defaults,
    ...(Object.fromEntries(Object.entries(thresholds).filter(([, value]) => value !== undefined)) as Partial<Limits>),
  };
  const { force, time } = record;
  const survey = known?.survey ?? surveyRecord(record, limits.gap);
  const { top, forceNoise, clock, motion } = survey;
  const highest = force[top]!;
  const ofClock = clockFindings(clock, time);
  const outline = known?.outline ?? recordOutline(record, survey);
  const signs = signFindings(record, survey, highest, outline);
  const flat = !(highest > 0) || highest - force[0]! <= Math.max(10 * forceNoise, 1e-9 * Math.abs(highest));
  if (flat || !outline)
    return [...signs, finding('force-does-not-rise', { first: force[0]!, highest }, { field: 'maximumForce' }), ...ofClock];
  if (signs.length > 0) return [...ofClock, ...signs];
  const exchanged = exchangedChannels(record);
  if (exchanged.length > 0) return [...ofClock, ...exchanged];
  // an analysis that found the excursions of a test knows that it is one
  const several = known?.excursions ? [] : severalTests(force, time);
  if (several.length > 0) return [...ofClock, ...several];
  const excursions = known?.excursions ?? excursionsOf(record, outline, known?.pauses);
  return toldOnce([
    ...ofClock,
    ...saturationFindings(outline, limits.saturated),
    ...channelFindings(outline),
    ...zeroFindings(outline, excursions, limits, known?.carriesOn),
    ...motionFindings(record, outline, motion, excursions.drops, limits.repeated, known),
  ]);
}

/**
 * First checks of a record: its clock, the ends of the force, repeated samples, motion that goes back.
 *
 * @remarks
 * Nothing is changed; each doubt is a finding with its numbers and the samples it concerns.
 *
 * @param record - `force` [N], `extension` [mm], `strain` [mm/mm], `travel` [mm], `time` [s], as far as they were logged.
 * @param thresholds - When a doubt is worth a finding.
 * @returns Findings in the order of the checks; an empty list where nothing is wrong.
 * @throws {@link InputError} `missing`, `not-finite`, `out-of-range`, `empty`, `unequal-lengths`, `unknown-option`.
 *
 * @example
 * ```ts
 * checkRecord({ force: [0, 100, 200, 300, 400], travel: [0, 1, 2, 3, 4] }).map(({ code }) => code); // => ['time-missing']
 * ```
 *
 * @see Common practice. Checked in `test/record/record.test.ts`.
 */
export function checkRecord(record: TensionColumns, thresholds: RecordThresholds = {}): Finding[] {
  const from = 'checkRecord';
  requireOptions(from, thresholds, Object.keys(defaults), 'thresholds');
  for (const [name, value] of Object.entries(thresholds)) if (value !== undefined) requireNonNegative(from, `thresholds.${name}`, value);
  const columns = requireColumns(from, record, 1);
  const limit = thresholds.gap ?? GAP_STEPS;
  const blocks = recordBlocks(columns);
  const spiked = spikedColumns(columns, spikeColumns, blocks);
  const straight = Object.fromEntries(spiked.map(({ name, column, spikes }) => [name, straightened(column, spikes)]));
  const spikeless: TensionRecord = { ...columns, ...straight };
  const survey = surveyRecord(spikeless, limit, spiked.length === 0 ? blocks : undefined);
  const { record: counted, ...known } = endExtensometer(spikeless, survey, limit);
  return [...spiked.flatMap(({ name, spikes }) => spikeFindings(name, spikes)), ...checkRecordKernel(counted, thresholds, known)];
}
