import { cellMeans, gaussNewton, sumOfSquares, type FitPoints, type GaussNewtonEnd } from '../numeric/index.js';
import { lawPoints, type LawPoints, type LawShape } from './lawShape.js';

/** Of a long curve the start is found on about so many means, and of those of the scan so many are followed. */
const PLACES = 256;
const FOLLOWED = 2;

/** Least and greatest value of every parameter. */
interface Limits {
  readonly lowest: readonly number[];
  readonly highest: readonly number[];
}

/** Points of a long curve as means; with weights they stay as they are. */
function fewer(points: LawPoints): LawPoints {
  const { strain, stress, weights } = points;
  if (weights || strain.length <= 2 * PLACES) return points;
  const { x, y } = cellMeans(strain, stress, 0, strain.length - 1, PLACES);
  return lawPoints(x, y, undefined);
}

/** The points and the law as least squares takes them. */
const taskOf = <Name extends string>({ evaluate }: LawShape<Name>, { strain, logarithm, stress, weights }: LawPoints): FitPoints => ({
  x: strain,
  logarithm,
  y: stress,
  weights,
  evaluate,
});

/** Best end of the starts of a scan. */
function bestEnd<Name extends string>(
  shape: LawShape<Name>,
  points: LawPoints,
  { lowest, highest }: Limits,
  starts: readonly (readonly number[])[],
): GaussNewtonEnd | undefined {
  const task = { ...taskOf(shape, points), lowest, highest };
  let best: GaussNewtonEnd | undefined;
  for (const start of starts) {
    const end = gaussNewton({ ...task, start });
    if (Number.isFinite(end.residualSumOfSquares) && (!best || end.residualSumOfSquares < best.residualSumOfSquares)) best = end;
  }
  return best;
}

/** The starts of a scan that are lower than their neighbours, best first. */
function valleys<Name extends string>(shape: LawShape<Name>, points: LawPoints, starts: readonly (readonly number[])[]) {
  if (starts.length === 1) return starts.filter((one) => one.every(Number.isFinite));
  const task = taskOf(shape, points);
  const costs = starts.map((one) => (one.every(Number.isFinite) ? sumOfSquares(task, one) : Infinity));
  return starts
    .map((start, k) => ({
      start,
      cost: costs[k]!,
      valley: costs[k]! <= (costs[k - 1] ?? Infinity) && costs[k]! <= (costs[k + 1] ?? Infinity),
    }))
    .filter(({ cost, valley }) => valley && cost < Infinity)
    .sort((a, b) => a.cost - b.cost)
    .slice(0, FOLLOWED)
    .map(({ start }) => start);
}

/** @internal The optimum of a law within limits, from a scan on few points; `before` counts the steps on them. */
export function lawSearch<Name extends string>(
  shape: LawShape<Name>,
  points: LawPoints,
  limits: Limits,
  held: Readonly<Partial<Record<Name, number>>> | undefined,
): { readonly end: GaussNewtonEnd | undefined; readonly before: number } {
  const { lowest, highest } = limits;
  const few = fewer(points);
  const within = (start: readonly number[]): number[] => start.map((one, k) => Math.min(Math.max(one, lowest[k]!), highest[k]!));
  const starts = valleys(shape, few, shape.starts(few, held).map(within));
  const rough = few === points ? undefined : bestEnd(shape, few, limits, starts);
  const end = bestEnd(shape, points, limits, rough ? [rough.parameters] : starts);
  return { end, before: rough?.iterations ?? 0 };
}
