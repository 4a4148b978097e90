import type { Sums } from '../../numeric/index.js';

/**
 * @internal Values of a model and its derivatives by up to four parameters, for samples first to end (excluded), written from place 0 on. In
 * stretches, because a call for each sample would cost more than the formula.
 */
export type Evaluate = (
  at: { readonly strain: Float64Array; readonly logarithm: Float64Array; readonly first: number; readonly end: number },
  parameters: readonly number[],
  out: { readonly stress: Float64Array; readonly rows: readonly [Float64Array, Float64Array, Float64Array, Float64Array] },
) => void;

/** @internal Points to fit. */
export interface FitPoints {
  readonly x: Float64Array;
  /** Logarithms of x, which many laws need at every step. */
  readonly logarithm: Float64Array;
  readonly y: Float64Array;
  /** Weights of the squared residuals; default 1. */
  readonly weights?: Float64Array | undefined;
  readonly evaluate: Evaluate;
}

/** Samples of a stretch. */
const STRETCH = 512;
const NONE = new Float64Array(0);

/** Room for what a model of so many parameters gives on a stretch; each call that fits has its own. */
const roomFor = (samples: number, parameters: number) => {
  const size = Math.min(samples, STRETCH);
  const row = (k: number): Float64Array => (k < parameters ? new Float64Array(size) : NONE);
  return { stress: new Float64Array(size), rows: [row(0), row(1), row(2), row(3)] as const };
};
type Room = ReturnType<typeof roomFor>;

/** @internal Weighted sum of squared residuals; infinite where the model is not a number. */
export function sumOfSquares({ x, logarithm, y, weights, evaluate }: FitPoints, parameters: readonly number[]): number {
  const out = roomFor(y.length, parameters.length);
  let rest = 0;
  for (let first = 0; first < y.length; first += STRETCH) {
    const end = Math.min(first + STRETCH, y.length);
    evaluate({ strain: x, logarithm, first, end }, parameters, out);
    for (let i = first; i < end; i += 1) rest += (weights ? weights[i]! : 1) * (y[i]! - out.stress[i - first]!) ** 2;
  }
  return Number.isNaN(rest) ? Infinity : rest;
}

/** @internal The walk over points, with its own room, for {@link gaussNewton}. */
export function sumsOver(points: FitPoints, parameters: number): (values: readonly number[]) => Sums {
  const out = roomFor(points.y.length, parameters);
  return (values) => sumsAt(points, values, out);
}

/** JᵀJ (lower half), Jᵀr and the sum of squares in one walk, for two to four parameters. */
function sumsAt({ x, logarithm, y, weights, evaluate }: FitPoints, parameters: readonly number[], out: Room): Sums {
  const { stress, rows } = out;
  const [d0, d1, d2, d3] = rows;
  const p = parameters.length;
  let rest = 0;
  let g0 = 0;
  let g1 = 0;
  let g2 = 0;
  let g3 = 0;
  let n00 = 0;
  let n10 = 0;
  let n11 = 0;
  let n20 = 0;
  let n21 = 0;
  let n22 = 0;
  let n30 = 0;
  let n31 = 0;
  let n32 = 0;
  let n33 = 0;
  for (let first = 0; first < y.length; first += STRETCH) {
    const end = Math.min(first + STRETCH, y.length);
    evaluate({ strain: x, logarithm, first, end }, parameters, out);
    for (let i = first, k = 0; i < end; i += 1, k += 1) {
      const residual = y[i]! - stress[k]!;
      const w = weights ? weights[i]! : 1;
      const r0 = d0[k]!;
      const r1 = d1[k]!;
      const weighted = w * residual;
      rest += weighted * residual;
      g0 += weighted * r0;
      g1 += weighted * r1;
      n00 += w * r0 * r0;
      n10 += w * r1 * r0;
      n11 += w * r1 * r1;
      if (p < 3) continue;
      const r2 = d2[k]!;
      g2 += weighted * r2;
      n20 += w * r2 * r0;
      n21 += w * r2 * r1;
      n22 += w * r2 * r2;
      if (p < 4) continue;
      const r3 = d3[k]!;
      g3 += weighted * r3;
      n30 += w * r3 * r0;
      n31 += w * r3 * r1;
      n32 += w * r3 * r2;
      n33 += w * r3 * r3;
    }
  }
  const all = [n00, n10, n11, n20, n21, n22, n30, n31, n32, n33];
  const normal: number[] = [];
  for (let j = 0; j < p; j += 1) for (let k = 0; k < p; k += 1) normal.push(k > j ? 0 : all[(j * (j + 1)) / 2 + k]!);
  return { rest: Number.isNaN(rest) ? Infinity : rest, normal, gradient: [g0, g1, g2, g3].slice(0, p) };
}
