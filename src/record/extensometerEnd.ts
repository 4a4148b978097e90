import { soundLength, type TensionRecord } from '../base/index.js';
import { median, noiseLevel } from '../numeric/index.js';
import { GAP } from './clock.js';
import { recordOutline, steepestChord, type RecordOutline } from './recordOutline.js';
import { surveyRecord, type RecordSurvey } from './surveyRecord.js';

/** @internal Where an extensometer no longer tells what the piece does, though it goes on reading. */
export interface ExtensometerEnd {
  readonly column: 'extension' | 'strain';
  /** First sample that no longer counts. */
  readonly end: number;
  /** It stands while the test goes on, or it fell back by more than the piece can. */
  readonly how: 'stands' | 'falls-back';
  /** Its reading at the last sample that counts [mm or mm/mm]. */
  readonly reading: number;
}

/** At least so many samples stand. */
const STANDING = 20;
/** A reading stands within so many deviations of its noise, or one and a half of its steps. */
const DEVIATIONS = 5;
const STEPS = 1.5;
/** And where the piece would move, it stands if it moves by less than this share of that: one who lies on the bench drifts. */
const DRIFT = 0.1;
/** What the piece would have moved by must be so many times that. */
const SURE = 4;
/** A pause loses a little force; a test that goes on loses more (share of the highest). */
const RELAXATION = 0.05;
/** A metal that is unloaded shortens by its elastic strain and, bent by its own stresses, a little more; never by so many times. */
const RELEASE = 2;
/** Being taken off it moves so many times as fast as before. */
const PACES = 10;
const BEFORE = 25;

/** A channel of extension and the force with it, as far as the piece is loaded. */
interface Channel {
  readonly force: Float64Array;
  readonly travel: Float64Array | undefined;
  readonly values: Float64Array;
  readonly first: number;
  /** Last loaded sample. */
  readonly last: number;
  /** Sample of the highest force. */
  readonly top: number;
  readonly highest: number;
  readonly forceNoise: number;
  /** Half the band within which a reading stands. */
  readonly band: number;
}

/** How far the elastic piece alone would move for a change of the force, as far as a sample tells; 0 where it cannot. */
function elasticWay({ force, values, first, top }: Channel, until: number): number {
  const stiffness = steepestChord(force, values, first, Math.min(top, until));
  return stiffness > 0 ? 1 / stiffness : 0;
}

/** Back over samples that move as nothing does before: someone takes it off. */
function beforeHand({ values, first, band }: Channel, at: number): number {
  const from = Math.max(first, at - 2 * BEFORE);
  const pace = at - BEFORE > from ? Math.abs(values[at - BEFORE]! - values[from]!) / (at - BEFORE - from) : Infinity;
  let end = at;
  while (end > at - BEFORE && end > first + 1 && Math.abs(values[end - 1]! - values[end - 2]!) > PACES * pace + 2 * band) end -= 1;
  return end;
}

/** First sample from which on it stands to the last loaded one, while the force or the drive goes on. */
function standsFrom(channel: Channel): number | undefined {
  const { force, travel, values, first, last, top, highest, forceNoise, band } = channel;
  if (last - first < 2 * STANDING || Math.abs(values[last]! - values[last - STANDING]!) > 2 * band) return undefined;
  const level = median(values.subarray(last - STANDING, last + 1));
  let from = last;
  while (from > first && Math.abs(values[from - 1]! - level) <= band) from -= 1;
  const stood = from;
  if (last - stood < STANDING || stood - first < STANDING) return undefined;
  // how much the force rises and falls meanwhile
  let [rise, fall, low, high] = [0, 0, Infinity, -Infinity];
  for (let i = stood; i <= last; i += 1) {
    const F = force[i]!;
    if (F - low > rise) rise = F - low;
    if (high - F > fall) fall = high - F;
    if (F < low) low = F;
    if (F > high) high = F;
  }
  const change = Math.max(rise, fall > RELAXATION * highest ? fall : 0);
  const elastic = change > 2 * DEVIATIONS * forceNoise ? change * elasticWay(channel, stood) : 0;
  // up to the highest force the piece stretches as a whole: as far as before for the same way of the drive
  let stretched = 0;
  if (travel && stood < top) {
    const way = travel[Math.min(top, last)]! - travel[stood]!;
    let back = stood;
    while (back > first && travel[stood]! - travel[back]! < way) back -= 1;
    stretched = Math.min(way, travel[stood]! - travel[back]!) > 0 ? Math.abs(level - values[back]!) : 0;
  }
  if (Math.max(elastic, stretched) < SURE * 2 * band) return undefined;
  while (from > first && Math.abs(values[from - 1]! - level) <= band + DRIFT * elastic) from -= 1;
  return beforeHand(channel, from);
}

/** First sample of a fall that is more than the piece can release and is never made good. */
function fallsBackFrom(channel: Channel): number | undefined {
  const { force, values, first, last, band } = channel;
  let farthest = first;
  for (let i = first; i <= last; i += 1) if (values[i]! > values[farthest]!) farthest = i;
  const allowed = 2 * SURE * band;
  if (values[farthest]! - values[last]! <= allowed) return undefined;
  const elastic = RELEASE * elasticWay(channel, farthest);
  let most = force[farthest]!;
  for (let i = farthest + 1; i <= last; i += 1) {
    if (force[i]! > most) most = force[i]!;
    if (values[farthest]! - values[i]! > allowed + elastic * (most - force[i]!)) return beforeHand(channel, i);
  }
  return undefined;
}

function endOf(
  record: TensionRecord,
  column: 'extension' | 'strain',
  values: Float64Array,
  step: number,
  outline: RecordOutline,
): ExtensometerEnd | undefined {
  const { force, first, top, highest, habit } = outline;
  const last = Math.min(outline.last, soundLength(values) - 1);
  if (last - first < 2 * STANDING) return undefined;
  // what was taken off may be noisier than before, or perfectly still
  const noise = Math.max(noiseLevel(values, first, last + 1), noiseLevel(values, last - 2 * STANDING, last + 1));
  const band = Math.max(DEVIATIONS * noise, STEPS * step, 1e-9 * Math.abs(values[last]!));
  const channel = { force, travel: record.travel, values, first, last, top, highest, forceNoise: habit.noise, band };
  const stands = standsFrom(channel);
  const end = stands ?? fallsBackFrom(channel);
  if (end === undefined || end <= first) return undefined;
  return { column, end, how: stands === undefined ? 'falls-back' : 'stands', reading: values[end - 1]! };
}

/**
 * @internal The extensometer that is asked for the strain, where it was left reading after it had been taken off, came to its end of travel, or
 * was set anew: it stands while the force goes on, or it falls back by more than the piece can and stays there.
 *
 * The physics is the limit: a piece whose force changes stretches or shortens elastically, even where a neck outside the gauge length takes all
 * the rest. A reading that does not show as much, by far more than its noise and its steps, is not the piece's.
 */
export function extensometerEnd(record: TensionRecord, survey: RecordSurvey): ExtensometerEnd | undefined {
  const { motion } = survey;
  if (!motion || motion.column === 'travel') return undefined;
  const outline = recordOutline(record, survey);
  return outline && endOf(record, motion.column, record[motion.column]!, motion.step, outline);
}

/** @internal A record whose extensometer ends where it no longer counts, as if it had been taken off there, and its survey. */
export interface EndedRecord {
  readonly record: TensionRecord;
  readonly survey: RecordSurvey;
  /** Absent where it counts to its end. */
  readonly ended?: ExtensometerEnd;
}

/** @internal The record with its extensometer as if it had been taken off where it no longer counts. */
export function endExtensometer(record: TensionRecord, survey = surveyRecord(record), gap = GAP): EndedRecord {
  const ended = extensometerEnd(record, survey);
  if (!ended) return { record, survey };
  const values = record[ended.column]!;
  const kept = { ...record, [ended.column]: values.map((value, i) => (i < ended.end ? value : NaN)) };
  return { record: kept, survey: surveyRecord(kept, gap), ended };
}
