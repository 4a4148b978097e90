import { columnUnits, finding, type ColumnName, type Finding } from '../../base/index.js';
import { extent } from '../../numeric/index.js';
import type { ColumnHabit } from '../survey/habit.js';
import type { RecordOutline } from '../survey/recordOutline.js';

/** Share of the range above which noise is a caution. */
const NOISY = 0.005;
/**
 * Fewest samples whose third differences are noise. Those of a smooth curve go by the cube of the step: of t^6, the worst of many, half of n are beyond 120/8/n³ of
 * the range, which passes for noise of 5/n³: below a tenth of what is noisy from 22 samples on.
 */
const LEAST_OF_NOISE = 25;
/** Steps over the range below which a note is given. */
const FEW_STEPS = 2000;
/** Steps over the range below which the force has a caution: as many as class 1 asks at its lowest force (ISO 7500-1, from memory). */
const TOO_FEW_STEPS = 200;

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

/** @internal What each channel is worth: its steps, its noise. */
export function channelFindings(outline: RecordOutline): Finding[] {
  const { motion, habit, highest, force, first, last } = outline;
  const found = readingFindings('force', force.length, habit, highest);
  if (!motion) return found;
  const end = Math.min(last, motion.end);
  const about = (range: number): Finding[] => readingFindings(motion.column, motion.values.length, motion, range);
  // the way from first to last is no more than the reach: what is fine enough over it, is so over the reach
  const way = Math.abs(motion.values[end]! - motion.values[first]!);
  if (way > 0 && about(way).length === 0) return found;
  const [low, high] = extent(motion.values, first, end + 1);
  return [...found, ...about(high - low)];
}
