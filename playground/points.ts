import { thinned } from '../src/report/index.js';

/** Points of a line. */
export interface Points {
  readonly x: ArrayLike<number>;
  readonly y: ArrayLike<number>;
}

/** At most so many points of a line, with its ends and its peaks. */
export function pointsOf(x: ArrayLike<number>, y: ArrayLike<number>, most = 1600): Points {
  const kept = thinned({ x, y, most });
  return { x: kept.map((one) => one.x), y: kept.map((one) => one.y) };
}
