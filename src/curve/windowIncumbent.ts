/** @internal Scores this close, relative, are equal; then the wider rise of the line decides. */
export const TIE = 1e-9;
/** @internal The best window so far, and what another must reach. */
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
export const noIncumbent = (top: number): Incumbent => ({
  first: -1,
  last: -1,
  slope: NaN,
  score: -Infinity,
  rise: -Infinity,
  top,
  floor: top - TIE * Math.abs(top),
  again: false,
});

/** @internal Takes a window where it beats the incumbent, or ties with it and rises over more stress. */
export function offer(best: Incumbent, first: number, last: number, slope: number, score: number, rise: number): void {
  if (score > best.top) {
    best.top = score;
    best.floor = score - TIE * Math.abs(score);
    if (best.first >= 0 && best.score < best.floor) {
      best.again ||= best.score > best.floor - 2 * TIE * Math.abs(score);
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
