import { cellMeans, gaussNewton, squaresAbout, type GaussNewtonEnd } from '../../numeric/index.js';
import { condensed } from './condensed.js';
import { lawPoints, type LawPoints, type LawShape } from './lawShape.js';
import { sumOfSquares, sumsOver, type FitPoints } from './residualSums.js';

/** The scan for a start is made on about so many means; of a long curve the best starts are followed on so many; and this is how many are followed. */
const SCANNED = 64;
const PLACES = 256;
const FOLLOWED = 2;
/** More samples than this are condensed, unless the residuals are smaller than this share of the stress, squared. */
const MANY = 5000;
const EXACT = 1e-9;

/** @internal Least and greatest value of every parameter. */
export interface Limits {
  readonly lowest: readonly number[];
  readonly highest: readonly number[];
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
  const task = taskOf(shape, points);
  const sums = {
    lowest,
    highest,
    sumsAt: sumsOver(task, lowest.length),
    samples: task.y.length,
    total: squaresAbout(0, task.y, task.weights),
  };
  let best: GaussNewtonEnd | undefined;
  for (const start of starts) {
    const end = gaussNewton({ start, ...sums });
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

/** @internal Columns to fit, with weights where they were given. */
export type LawColumns = Pick<LawPoints, 'strain' | 'stress' | 'weights'>;

/** About so many means of points without weights. */
function means({ strain, stress }: LawColumns, places: number): LawPoints {
  const { x, y } = cellMeans(strain, stress, 0, strain.length - 1, places);
  return lawPoints(x, y, undefined);
}

/**
 * The optimum on a curve of very many samples by weighted points that stand for them; undefined where what they leave out could show: in residuals
 * near nothing.
 */
function onCondensed<Name extends string>(
  shape: LawShape<Name>,
  { strain, stress }: LawColumns,
  limits: Limits,
  start: readonly number[],
): GaussNewtonEnd | undefined {
  const { x, y, weights, rest } = condensed(strain, stress);
  const points = lawPoints(x, y, weights);
  const end = bestEnd(shape, points, limits, [start]);
  return end && rest > EXACT * squaresAbout(0, y, weights) ? { ...end, residualSumOfSquares: end.residualSumOfSquares + rest } : undefined;
}

/** @internal The optimum of a law within limits; `before` counts the steps of a search on few points. */
export function lawSearch<Name extends string>(
  shape: LawShape<Name>,
  columns: LawColumns,
  limits: Limits,
  held: Readonly<Partial<Record<Name, number>>> | undefined,
): { readonly end: GaussNewtonEnd | undefined; readonly before: number } {
  const { strain, stress, weights } = columns;
  const { lowest, highest } = limits;
  const within = (start: readonly number[]): number[] => start.map((one, k) => Math.min(Math.max(one, lowest[k]!), highest[k]!));
  const startsOn = (points: LawPoints) => {
    const some = points.weights || points.strain.length <= 2 * SCANNED ? points : means(points, SCANNED);
    return valleys(shape, some, shape.starts(some, held).map(within));
  };
  const all = (): LawPoints => lawPoints(strain, stress, weights);
  if (weights || strain.length <= 2 * PLACES) {
    const points = all();
    return { end: bestEnd(shape, points, limits, startsOn(points)), before: 0 };
  }
  const few = means(columns, PLACES);
  const rough = bestEnd(shape, few, limits, startsOn(few));
  if (!rough) return { end: undefined, before: 0 };
  const condensedEnd = strain.length > MANY ? onCondensed(shape, columns, limits, rough.parameters) : undefined;
  return { end: condensedEnd ?? bestEnd(shape, all(), limits, [rough.parameters]), before: rough.iterations };
}
