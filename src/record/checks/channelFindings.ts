import { columnUnits, finding, soundLength, type ColumnName, type Finding, type TensionRecord } from '../../base/index.js';
import { extent, firstReaching } from '../../numeric/index.js';
import type { ColumnHabit, RecordOutline } from '../survey/recordOutline.js';
import { spikeColumns, spikedColumns } from './spikedColumns.js';
import type { Spike } from './spikes.js';

/** Noise above this share of the range is a caution. */
const NOISY = 0.005;
/**
 * Fewest samples whose third differences are noise. Those of a smooth curve go by the cube of the step: of t^6, the worst of many, half of n are beyond 120/8/n³ of
 * the range, which passes for noise of 5/n³: below a tenth of what is noisy from 22 samples on.
 */
const LEAST_OF_NOISE = 25;
/** Steps over the range below which a note is given, and a caution: 200 steps are what class 1 asks at its lowest force (ISO 7500-1, from memory). */
const FEW_STEPS = 2000;
const TOO_FEW_STEPS = 200;
/** Spikes up to this length are told together; longer ones each. */
const SPIKE = 3;
/** A force at its end stands so many times as long as at any other value. */
const DWELL = 2;
/** One that flickers stays within so many of its steps and deviations, so many times as long as within as much again below. */
const STEPS = 2.5;
const DEVIATIONS = 6;
const FLAT = 8;
/** Equal samples at the end of a motion that mean its sensor was at its end, while the force still rises or falls by so much of its maximum. */
const STANDING = 20;
const GOES_ON = 0.05;

/** @internal Doubts that spikes of a column are. */
export function spikeFindings(column: ColumnName, spikes: readonly Spike[]): Finding[] {
  const found: Finding[] = [];
  const short = spikes.filter(({ range, bulges }) => range[1] - range[0] < SPIKE && !bulges);
  const worst = short.reduce<Spike | undefined>((a, b) => (a && a.height >= b.height ? a : b), undefined);
  if (worst)
    found.push(
      finding(
        'spikes',
        { column, count: short.length, largest: worst.height, unit: columnUnits[column], first: worst.range[0] },
        { range: worst.range },
      ),
    );
  for (const { range, height, nothing, bulges } of spikes) {
    const count = range[1] - range[0] + 1;
    const values = { column, count, first: range[0] };
    if (bulges) found.push(finding('force-bulges', { count, first: range[0], height }, { range }));
    if (bulges || count <= SPIKE) continue;
    found.push(
      nothing
        ? finding('signal-drops-out', values, { range })
        : finding('signal-strays', { ...values, height, unit: columnUnits[column] }, { range }),
    );
  }
  return found;
}

/** @internal Spikes of all columns of force and motion. */
export const allSpikeFindings = (record: TensionRecord): Finding[] =>
  spikedColumns(record, spikeColumns).flatMap(({ name, spikes }) => spikeFindings(name, spikes));

/** Equal highest samples: a channel at its end, unless the reading is stepped and stays near its top anyway. */
function forceSaturation(outline: RecordOutline, least: number): Finding[] {
  const { force, highest, first, top: highestAt, last: end } = outline;
  const { noise, step } = outline.habit;
  let equal = 0;
  for (let i = highestAt; i <= end; i += 1) if (force[i] === highest) equal += 1;
  if (equal < least) return [];
  // the longest stretch at the very highest value, and at any other
  let top = 0;
  let count = 0;
  let other = 0;
  for (let i = first, run = 1, before = NaN; i <= end; i += 1) {
    const F = force[i]!;
    run = F === before ? run + 1 : 1;
    before = F;
    if (F !== highest) {
      if (run > other) other = run;
    } else if (run > count) {
      count = run;
      top = i - run + 1;
    }
  }
  const last = top + count - 1;
  // a coarse reading, or a logger that repeats samples, stays at other values too
  if (count < least || count < DWELL * other) return [];
  const before = highest - (force[top - 1] ?? 0);
  const after = highest - (force[last + 1] ?? highest);
  // a true maximum is approached by ever smaller steps; a cut one is run into at the pace of the loading
  const paced =
    before > 3 * Math.max(step, noise) || (count >= 4 * least && noise > 0.5 * step) || (before > 0 && after > 3 * Math.max(step, noise));
  return paced ? [finding('force-saturated', { force: highest, count }, { field: 'maximumForce', range: [top, last] })] : [];
}

/** Samples of the loaded part within a band of the force. */
function samplesIn({ force, blocks, first, last }: RecordOutline, low: number, high: number): number {
  let count = 0;
  for (let i = firstReaching(force, low, first, last + 1, blocks); i <= last; i += 1) {
    if (force[i]! >= low) {
      if (force[i]! < high) count += 1;
    } else i = firstReaching(force, low, i, last + 1, blocks) - 1;
  }
  return count;
}

/**
 * A force at its end whose reading flickers, or is too coarse to tell how it was run into: it stays within its noise and its steps of the highest while the
 * motion goes on, and hardly within as much again below. A piece that yields at one level looks the same. Of a round maximum the second band holds √2 - 1 of what the first one does, or more.
 */
function forceStands(outline: RecordOutline): Finding[] {
  const { force, blocks, first, last, highest, motion, habit } = outline;
  const band = Math.max(STEPS * habit.step, DEVIATIONS * habit.noise);
  const from = firstReaching(force, highest - band, first, last + 1, blocks);
  if (!motion || band <= 0 || last - from < STANDING) return [];
  const count = samplesIn(outline, highest - band, Infinity);
  if (count < STANDING || count < FLAT * samplesIn(outline, highest - 2 * band, highest - band)) return [];
  let to = last;
  while (force[to]! < highest - band) to -= 1;
  const { values } = motion;
  const [begin, end] = [Math.min(from, motion.end), Math.min(to, motion.end)];
  return Math.abs(values[end]! - values[begin]!) > GOES_ON * Math.abs(values[Math.min(last, motion.end)]! - values[first]!)
    ? [finding('force-saturated', { force: highest, count }, { field: 'maximumForce', range: [from, to], severity: 'caution' })]
    : [];
}

/** A motion that stands at its farthest to the end while the force goes on. */
function motionSaturation({ force, motion, last, highest, habit }: RecordOutline): Finding[] {
  if (!motion) return [];
  const { values, column } = motion;
  const end = Math.min(last, soundLength(values) - 1);
  let from = end;
  while (from > 0 && values[from - 1] === values[end]) from -= 1;
  if (end - from < STANDING) return [];
  // a pause loses a little force; a test that goes on loses or gains more
  const change = Math.abs(force[end - 1]! - force[from]!);
  let most = 0;
  for (let i = from; i < end; i += 1) most = Math.max(most, Math.abs(force[i]! - force[from]!));
  return Math.max(change, most) > Math.max(GOES_ON * highest, 6 * habit.noise)
    ? [
        finding(
          'motion-saturated',
          { column, value: values[end]!, unit: columnUnits[column], count: end - from + 1 },
          { range: [from, end] },
        ),
      ]
    : [];
}

/** What a reading is worth over some range: its steps, its noise. */
function readingFindings(column: ColumnName, samples: number, { noise, step }: ColumnHabit, range: number): Finding[] {
  const found: Finding[] = [];
  const counts = step > 0 ? Math.round(range / step) : Infinity;
  if (counts < FEW_STEPS) {
    const coarse = column === 'force' && counts < TOO_FEW_STEPS && samples > TOO_FEW_STEPS;
    found.push(finding('reading-coarse', { column, step, unit: columnUnits[column], counts }, coarse ? { severity: 'caution' } : {}));
  }
  // nothing is noise of a channel that stands
  if (samples >= LEAST_OF_NOISE && range > 0 && noise > Math.max(NOISY * range, step))
    found.push(finding('signal-noisy', { column, noise, unit: columnUnits[column], share: (100 * noise) / range }));
  return found;
}

/** @internal What each channel is worth: its steps, its noise, its ends. */
export function channelFindings(outline: RecordOutline, saturated: number): Finding[] {
  const { motion, habit, highest, force, first, last } = outline;
  const equal = forceSaturation(outline, saturated);
  const ends = [...(equal.length > 0 ? equal : forceStands(outline)), ...motionSaturation(outline)];
  const found = [...ends, ...readingFindings('force', force.length, habit, highest)];
  if (!motion) return found;
  const end = Math.min(last, motion.end);
  const about = (range: number): Finding[] => readingFindings(motion.column, motion.values.length, motion, range);
  // the way from first to last is no more than the reach: what is fine enough over it, is so over the reach
  const way = Math.abs(motion.values[end]! - motion.values[first]!);
  if (way > 0 && about(way).length === 0) return found;
  const [low, high] = extent(motion.values, first, end + 1);
  return [...found, ...about(high - low)];
}
