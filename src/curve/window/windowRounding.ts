import { lineFit } from '../../numeric/index.js';
import { noIncumbent, offer, tieOf, type Incumbent } from './windowIncumbent.js';
import { lineOfSums } from './windowLine.js';
import { greatest, momentsAbout, sumsBefore, type WindowMoments } from './windowMoments.js';
import type { WindowTask } from './windowTask.js';

/** What rounding usually takes off a difference of running sums of squares, as a share of them; it only decides whether to look again. What it never exceeds, for the bounds, is ROUNDING. */
const LOST = 1e-15;
/** Residuals whose squares are more than so many times that are told well enough: there is noise, or a bend. */
const NOISE = 1e4;
/** Rounding of a score by up to this share of a tie leaves told what ties. */
const LITTLE = 0.01;

/** Whether the score of the incumbent is known well enough to tell what ties with it. */
function known(task: WindowTask, moments: WindowMoments, { first, last, slope, score }: Incumbent): boolean {
  const sums = new Float64Array(10);
  sumsBefore(task, moments, first, sums, 0);
  sumsBefore(task, moments, last + 1, sums, 5);
  const count = last - first + 1;
  const { xx, rest } = lineOfSums(sums, 0, 5, count);
  const lost = LOST * greatest(sums, 4, 9);
  if (rest > NOISE * lost) return true;
  const error = (squares: number): number => Math.sqrt(squares / ((count - 2) * xx));
  return task.score(slope, error(rest)) - task.score(slope, error(rest + lost)) <= LITTLE * tieOf(task, score);
}

/**
 * @internal Moments about the line of the incumbent, and its score by its own residuals, where rounding of running sums hides what ties with
 * it: its samples lie on their line. Undefined where there is noise. So scores are known to a tenth of a tie, except those of windows on
 * another exact line, far from the first.
 */
export function finerMoments(
  task: WindowTask,
  moments: WindowMoments,
  found: Incumbent,
): { readonly moments: WindowMoments; readonly found: Incumbent } | undefined {
  if (known(task, moments, found)) return undefined;
  const { strain, stress, start, score } = task;
  const { first, last } = found;
  const line = lineFit(strain, stress, start + first, start + last);
  if (!line) return undefined;
  const { slope, intercept, standardError } = line;
  const finer = noIncumbent(task, -Infinity);
  offer(task, finer, first, last, slope, score(slope, standardError), slope * (strain[start + last]! - strain[start + first]!));
  return { moments: momentsAbout(task, moments, slope, intercept, Math.floor((first + last) / 2 / moments.size)), found: finer };
}
