import { soundLength, type TensionRecord } from '../../base/index.js';
import { firstFall, firstReaching, highestSample, median, noiseLevel, ranked, type BlockExtremes } from '../../numeric/index.js';
import { GAP_STEPS } from '../survey/clock.js';
import { steepestChord } from '../survey/chords.js';
import { recordOutline, type RecordOutline } from '../survey/recordOutline.js';
import { surveyRecord, type RecordSurvey } from '../survey/surveyRecord.js';

/** @internal Where an extensometer no longer follows the piece, though it goes on reading. */
export interface ExtensometerEnd {
  readonly column: 'extension' | 'strain';
  /** First sample that no longer counts. */
  readonly end: number;
  /** It stands while the test goes on, or it fell back by more than the piece can. */
  readonly how: 'stands' | 'falls-back';
  /** Its reading at the last sample that counts [mm or mm/mm]. */
  readonly reading: number;
  /** The column as it was, with what no longer counts. */
  readonly whole: Float64Array;
}

/** Least samples that stand. */
const STANDING = 20;
/** Standard deviations of its noise within which a reading stands. */
const DEVIATIONS = 5;
/** Steps within which it stands. */
const STEPS = 1.5;
/** Share of the elastic way of the piece below which it stands as well: an extensometer that lies on the bench drifts. */
const DRIFT = 0.1;
/** Half bands by which the piece must move for the reading to be sure not to follow it. */
const SURE = 2;
/** Share of the elastic extension at the highest force that any extensometer resolves: about the error that class 1 allows. */
const FINEST = 0.01;
/** Share of itself above which a fall of the reading is no slip: it was set anew or taken off. */
const ANEW = 0.5;
/** Share of its fall that a channel whose sign is the other way rises by at the most. */
const RISES = 0.1;
/** Share of the highest force that a pause loses at the most. */
const RELAXATION = 0.05;
/** Multiple of the elastic shortening that a metal releases at the most: bent by its own stresses it shortens a little more than elastically. */
const RELEASE = 2;
/** Multiple of its pace before at which a reading moves that is taken off. */
const PACES = 10;
/** Samples over which that pace is taken, and over which taking off is followed back. */
const BEFORE = 25;
/** Multiple of its usual share of the travel beyond which a reading does not follow the piece. */
const FASTEST = 3;
/** Parts of the travel in each of which that share is taken. */
const PARTS = 8;
/** The fastest of those parts that are passed over. */
const BURSTS = 2;

/** A channel of extension and the force with it, as far as the piece is loaded. */
interface Channel {
  readonly outline: RecordOutline;
  readonly force: Float64Array;
  readonly travel: Float64Array | undefined;
  readonly values: Float64Array;
  readonly blocks: BlockExtremes;
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

/** How far the elastic piece alone moves for a change of the force [unit of the reading per N], by the samples up to one; 0 where these do not show it. */
function elasticWay({ outline, values, top }: Pick<Channel, 'outline' | 'values' | 'top'>, until: number): number {
  const stiffness = steepestChord(outline, values, Math.min(top, until));
  return stiffness > 0 ? 1 / stiffness : 0;
}

/** How far the reading moved before a sample while another column went on by a given way. */
function movedFor({ values, first }: Channel, column: Float64Array, at: number, way: number): number {
  let back = at;
  while (back > first && column[at]! - column[back]! < way) back -= 1;
  return Math.abs(values[at]! - values[back]!);
}

/** The share of the travel that the reading usually shows, by parts of the way; the fastest parts may be a burst of yielding, or a hand that takes it off. */
function usualShare(values: Float64Array, travel: Float64Array, first: number, last: number): number {
  const part = (travel[last]! - travel[first]!) / PARTS;
  const shares: number[] = [];
  for (let k = 1, i = first; k <= PARTS && part > 0; k += 1) {
    const to = firstReaching(travel, travel[first]! + k * part, i, last);
    if (travel[to]! > travel[i]!) shares.push((values[to]! - values[i]!) / (travel[to]! - travel[i]!));
    i = to;
  }
  return shares.length > BURSTS ? ranked(shares, shares.length - 1 - BURSTS) : Infinity;
}

/**
 * One past the last sample before a hand takes it off, however slowly, by the travel beside it: the piece neither goes back nor goes faster than the travel
 * lets it. So the hand began where the reading was farthest, or before that, where the reading was last least ahead of the fastest that the piece can go.
 */
function beforeHandByTravel({ values, first, band }: Channel, travel: Float64Array, at: number): number {
  let farthest = at;
  for (let i = at; i >= first; i -= 1) if (values[i]! > values[farthest]!) farthest = i;
  if (values[farthest]! - values[at]! <= 2 * band) farthest = at;
  const fastest = FASTEST * usualShare(values, travel, first, farthest);
  const ahead = (i: number): number => values[i]! - fastest * travel[i]!;
  let least = farthest;
  for (let i = farthest; i >= first; i -= 1) if (ahead(i) < ahead(least)) least = i;
  return 1 + (ahead(farthest) - ahead(least) > 2 * band ? least : farthest);
}

/** Goes back over samples that move faster than all before: someone takes it off. */
function beforeHand(channel: Channel, at: number): number {
  const { values, travel, first, band } = channel;
  if (travel) return Math.min(at, beforeHandByTravel(channel, travel, at));
  const from = Math.max(first, at - 2 * BEFORE);
  const pace = at - BEFORE > from ? Math.abs(values[at - BEFORE]! - values[from]!) / (at - BEFORE - from) : Infinity;
  let end = at;
  while (end > at - BEFORE && end > first + 1 && Math.abs(values[end - 1]! - values[end - 2]!) > PACES * pace + 2 * band) end -= 1;
  return end;
}

/** First sample from which the reading stands up to the last loaded sample, while the force or the drive goes on. */
function standsFrom(channel: Channel): number | undefined {
  const { force, travel, values, first, last, top, highest, forceNoise, band } = channel;
  if (last - first < 2 * STANDING || Math.abs(values[last]! - values[last - STANDING]!) > 2 * band) return undefined;
  const level = median(values.subarray(last - STANDING, last + 1));
  // noise throws a single one of many samples out of any band
  const standsSince = (at: number, within: number): number => {
    let from = at;
    while (from > first + 1 && Math.min(Math.abs(values[from - 1]! - level), Math.abs(values[from - 2]! - level)) <= within) from -= 1;
    return from;
  };
  const stood = standsSince(last, band);
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
  // a force that rises stretches the piece as a whole, and a hardening one no less than it did for the same rise before; so does the drive up to
  // the highest force
  const byForce = rise > 2 * DEVIATIONS * forceNoise ? movedFor(channel, force, stood, rise) : 0;
  const byTravel = travel && stood < top ? movedFor(channel, travel, stood, travel[Math.min(top, last)]! - travel[stood]!) : 0;
  const stretched = Math.max(byForce, byTravel);
  // that way is the difference of two single readings, each with its own noise
  if (elastic < SURE * band && stretched < 2 * SURE * band) return undefined;
  return beforeHand(channel, standsSince(stood, band + DRIFT * elastic));
}

/**
 * First sample of a fall that is more than the piece can release, where the reading never comes back or loses most of itself. What comes back in one
 * sample, as it went, is a drop-out.
 */
function fallsBackFrom(channel: Channel): number | undefined {
  const { force, values, blocks, first, last, band, forceNoise } = channel;
  if (firstFall(values, 2 * SURE * band, first, last + 1, blocks) > last) return undefined;
  let farthest = first;
  let most = force[first]!;
  let release: number | undefined;
  for (let i = first + 1; i <= last; i += 1) {
    if (values[i]! >= values[farthest]!) {
      farthest = i;
      most = force[i]!;
      continue;
    }
    if (force[i]! > most) most = force[i]!;
    const fall = values[farthest]! - values[i]!;
    if (fall <= 2 * SURE * band) continue;
    release ??= RELEASE * elasticWay(channel, farthest);
    if (fall <= 2 * SURE * band + release * (most - force[i]! + DEVIATIONS * forceNoise)) continue;
    let back = i;
    while (back <= last && values[back]! < values[farthest]! - band) back += 1;
    const atOnce = back <= last && values[back]! - values[back - 1]! > fall / 2;
    if (back > last || (!atOnce && fall > ANEW * (values[farthest]! - values[first]!))) return beforeHand(channel, i);
    i = back - 1;
  }
  return undefined;
}

/** True of a channel whose sign is the other way: it only ever falls while the force rises, so nothing of it is a fall back. */
function countsDown({ values, blocks, first, last, top }: Channel): boolean {
  const end = Math.min(top, last);
  const fell = values[first]! - values[end]!;
  return fell > 0 && values[highestSample(values, blocks, first, end + 1)]! - values[first]! < RISES * fell;
}

function endOf(
  record: TensionRecord,
  column: 'extension' | 'strain',
  values: Float64Array,
  step: number,
  blocks: BlockExtremes,
  outline: RecordOutline,
): ExtensometerEnd | undefined {
  const { force, first, top, highest, habit, motion } = outline;
  const last = Math.min(outline.last, soundLength(values) - 1);
  if (last - first < 2 * STANDING) return undefined;
  // what was taken off may be noisier than before, or perfectly still
  const along = motion?.values === values ? motion.noise : noiseLevel(values, first, last + 1);
  const noise = Math.max(along, noiseLevel(values, last - 2 * STANDING, last + 1));
  const own = { outline, force, travel: record.travel, values, blocks, first, last, top, highest, forceNoise: habit.noise };
  const channel: Channel = { band: Math.max(DEVIATIONS * noise, STEPS * step, FINEST * highest * elasticWay(own, top)), ...own };
  const stands = standsFrom(channel);
  const end = stands ?? (countsDown(channel) ? undefined : fallsBackFrom(channel));
  if (end === undefined || end <= first) return undefined;
  return { column, end, how: stands === undefined ? 'falls-back' : 'stands', reading: values[end - 1]!, whole: values };
}

/**
 * The extensometer that is asked for the strain, where it was left reading after it had been taken off, came to its end of travel, or
 * was set anew: it stands while the force goes on, or it falls back by more than the piece can and stays there.
 *
 * The physics is the limit: a piece whose force changes stretches or shortens elastically, even where a neck outside the gauge length takes all
 * the rest. A reading that does not show as much, by far more than its noise and its steps, is not the piece's.
 */
function extensometerEnd(record: TensionRecord, { motion, blocks }: RecordSurvey, outline: RecordOutline): ExtensometerEnd | undefined {
  if (!motion || motion.column === 'travel') return undefined;
  return endOf(record, motion.column, record[motion.column]!, motion.step, blocks[motion.column]!, outline);
}

/** @internal A record whose extensometer ends where it no longer counts, as if it had been taken off there, with its survey and its outline. */
export interface EndedRecord {
  readonly record: TensionRecord;
  readonly survey: RecordSurvey;
  readonly outline: RecordOutline | undefined;
  /** Absent where it counts to its end. */
  readonly ended?: ExtensometerEnd;
}

/** @internal The record with its extensometer as if it had been taken off where it no longer counts. */
export function endExtensometer(record: TensionRecord, survey: RecordSurvey, gap = GAP_STEPS): EndedRecord {
  const outline = recordOutline(record, survey);
  const ended = outline && extensometerEnd(record, survey, outline);
  if (!ended) return { record, survey, outline };
  const values = record[ended.column]!;
  const kept = { ...record, [ended.column]: values.map((value, i) => (i < ended.end ? value : NaN)) };
  const counted = surveyRecord(kept, gap);
  return { record: kept, survey: counted, outline: recordOutline(kept, counted), ended };
}
