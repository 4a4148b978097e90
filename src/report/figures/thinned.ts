/** @internal Points of a line in a figure, and the factors from the library's units to those of the axes. */
export interface Line {
  readonly x: ArrayLike<number>;
  readonly y: ArrayLike<number>;
  readonly xFactor?: number;
  readonly yFactor?: number;
  /** At most so many points; default 900. */
  readonly most?: number;
}

/** @internal A point of a line as it is drawn, with its place in the line. */
// a type and no interface, so that it is plain data of a figure
export type DrawnPoint = { readonly i: number; readonly x: number; readonly y: number };

/** @internal Points that a line is drawn with at the most, where nothing else is asked. */
export const MOST_POINTS = 900;

/** @internal At most so many points of a line, with the lowest and highest of each stretch, so that peaks stay. */
export function thinned({ x, y, xFactor = 1, yFactor = 1, most = MOST_POINTS }: Line): DrawnPoint[] {
  const n = x.length;
  const point = (i: number) => ({ i, x: x[i]! * xFactor, y: y[i]! * yFactor });
  if (n <= most) return Array.from({ length: n }, (_, i) => point(i));
  const buckets = Math.floor(most / 2) - 1;
  const kept = new Set([0, n - 1]);
  for (let b = 0; b < buckets; b += 1) {
    const from = Math.floor((b * n) / buckets);
    const to = Math.floor(((b + 1) * n) / buckets);
    let low = from;
    let high = from;
    for (let i = from; i < to; i += 1) {
      if (y[i]! < y[low]!) low = i;
      if (y[i]! > y[high]!) high = i;
    }
    kept.add(low).add(high);
  }
  return [...kept].sort((a, b) => a - b).map(point);
}

/** @internal Largest of a list. */
export const largest = (list: ArrayLike<number>, end = list.length): number => {
  let most = -Infinity;
  for (let i = 0; i < end; i += 1) most = Math.max(most, list[i]!);
  return most;
};
