import type { WindowTask } from './windowTask.js';

/** Scores this close, relative, are equal; then the wider rise of the line decides, and of equal rises the earlier start. */
const TIE = 1e-9;

/** @internal How much lower than a score another may be and still tie with it. */
export const tieOf = ({ unit }: Pick<WindowTask, 'unit'>, score: number): number => TIE * Math.max(Math.abs(score), unit);

/** @internal The best window so far, samples counted from the first that a window may start at, and what another must reach. */
export interface Incumbent {
  first: number;
  last: number;
  slope: number;
  score: number;
  rise: number;
  /** Highest score seen. */
  top: number;
  /** Lowest score that still ties with it. */
  floor: number;
  /** A tie was lost while the highest score was still creeping up: look once more, knowing it. */
  again: boolean;
}

/** @internal No window yet, and the highest score known. */
export const noIncumbent = (task: Pick<WindowTask, 'unit'>, top: number): Incumbent => ({
  first: -1,
  last: -1,
  slope: NaN,
  score: -Infinity,
  rise: -Infinity,
  top,
  floor: top === -Infinity ? top : top - tieOf(task, top),
  again: false,
});

/** @internal Takes a window where it beats the incumbent, or ties with it and rises over more stress. */
export function offer(
  task: Pick<WindowTask, 'unit'>,
  best: Incumbent,
  first: number,
  last: number,
  slope: number,
  score: number,
  rise: number,
): void {
  if (score > best.top) {
    const tie = tieOf(task, score);
    best.top = score;
    best.floor = score - tie;
    if (best.first >= 0 && best.score < best.floor) {
      // the incumbent no longer ties; one that was passed over for its lower rise may
      best.again ||= best.score > best.floor - 2 * tie;
      best.rise = -Infinity;
    }
  }
  if (score < best.floor || rise < best.rise || (rise === best.rise && first >= best.first)) return;
  best.first = first;
  best.last = last;
  best.slope = slope;
  best.score = score;
  best.rise = rise;
}
