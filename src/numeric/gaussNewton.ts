import { choleskyInverse } from './choleskyInverse.js';

/**
 * @internal Values of a model and its derivatives by up to four parameters, for samples first to end (excluded), written from place 0 on. In
 * stretches, because a call for each sample would cost more than the formula.
 */
export type Evaluate = (
  at: { readonly strain: Float64Array; readonly first: number; readonly end: number },
  parameters: readonly number[],
  out: { readonly stress: Float64Array; readonly rows: readonly [Float64Array, Float64Array, Float64Array, Float64Array] },
) => void;

/** @internal Points to fit. */
export interface FitPoints {
  readonly x: Float64Array;
  readonly y: Float64Array;
  /** Weights of the squared residuals; default 1. */
  readonly weights?: Float64Array | undefined;
  readonly evaluate: Evaluate;
}

/** @internal A model of up to four parameters. */
export interface GaussNewtonTask extends FitPoints {
  readonly start: readonly number[];
  readonly lowest: readonly number[];
  readonly highest: readonly number[];
}

/** @internal Where it ended. */
export interface GaussNewtonEnd {
  readonly parameters: readonly number[];
  readonly residualSumOfSquares: number;
  /** Inverse of JᵀJ row by row, 0 for a parameter on its bound; undefined where the points do not determine the parameters. */
  readonly inverse: readonly number[] | undefined;
  readonly iterations: number;
  /** True where no step lowers the sum by more than 1e-12 of it, or by more than rounding. */
  readonly converged: boolean;
}

/** Steps at most: along a valley in which parameters trade off they are many. */
const MOST = 1000;
const FLAT = 1e-12;
const STILL = 1e-14;
/** Points from which walks are dear, and the fall of the sum, in variances, of a step within two standard errors. */
const POLISHED = 5000;
const NEAR = 4;

/** Samples of a stretch, and room for what a model gives on it; each call that fits has its own. */
const STRETCH = 512;
const roomFor = (samples: number) => {
  const column = (): Float64Array => new Float64Array(Math.min(samples, STRETCH));
  return { stress: column(), rows: [column(), column(), column(), column()] as const };
};
type Room = ReturnType<typeof roomFor>;

/** @internal Weighted sum of the squares of y about a number. */
export function squaresAbout(centre: number, y: Float64Array, weights: Float64Array | undefined): number {
  let sum = 0;
  if (weights) for (let i = 0; i < y.length; i += 1) sum += weights[i]! * (y[i]! - centre) * (y[i]! - centre);
  else for (let i = 0; i < y.length; i += 1) sum += (y[i]! - centre) * (y[i]! - centre);
  return sum;
}

/** @internal Weighted sum of squared residuals; infinite where the model is not a number. */
export function sumOfSquares({ x, y, weights, evaluate }: FitPoints, parameters: readonly number[]): number {
  const out = roomFor(y.length);
  let rest = 0;
  for (let first = 0; first < y.length; first += STRETCH) {
    const end = Math.min(first + STRETCH, y.length);
    evaluate({ strain: x, first, end }, parameters, out);
    for (let i = first; i < end; i += 1) rest += (weights ? weights[i]! : 1) * (y[i]! - out.stress[i - first]!) ** 2;
  }
  return Number.isNaN(rest) ? Infinity : rest;
}

interface Sums {
  readonly rest: number;
  readonly normal: Float64Array;
  readonly gradient: Float64Array;
}

/** JᵀJ (lower half), Jᵀr and the sum of squares in one walk; derivatives that a model of fewer parameters does not have are 0. */
function sumsAt({ x, y, weights, evaluate }: GaussNewtonTask, parameters: readonly number[], out: Room): Sums {
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
    evaluate({ strain: x, first, end }, parameters, out);
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
  const normal = new Float64Array(p * p);
  for (let j = 0; j < p; j += 1) for (let k = 0; k <= j; k += 1) normal[p * j + k] = all[(j * (j + 1)) / 2 + k]!;
  return { rest: Number.isNaN(rest) ? Infinity : rest, normal, gradient: Float64Array.of(g0, g1, g2, g3).slice(0, p) };
}

/** Step of the free parameters for a damping, how far it should lower the sum, and the inverse of JᵀJ; undefined where it is singular. */
function stepFor({ normal, gradient }: Sums, free: readonly number[], damping: number) {
  const p = gradient.length;
  const size = free.map((k) => Math.sqrt(normal[p * k + k]!));
  if (!size.every((one) => one > 0 && one < Infinity)) return undefined;
  const m = free.length;
  const scaled = new Float64Array(m * m);
  free.forEach((j, a) => {
    free.forEach((k, b) => {
      scaled[m * a + b] = normal[p * Math.max(j, k) + Math.min(j, k)]! / (size[a]! * size[b]!) + (a === b ? damping : 0);
    });
  });
  const inverted = choleskyInverse(scaled, m);
  if (!inverted) return undefined;
  const step = Array<number>(p).fill(0);
  const inverse = Array<number>(p * p).fill(0);
  let fall = 0;
  free.forEach((j, a) => {
    free.forEach((k, b) => {
      const one = inverted[m * a + b]! / (size[a]! * size[b]!);
      inverse[p * j + k] = one;
      step[j]! += one * gradient[k]!;
      fall += gradient[j]! * one * gradient[k]!;
    });
  });
  return { step, inverse, fall };
}

/**
 * @internal Least squares by Gauss-Newton steps from a good start, damped only where a step fails; bounds are kept by holding a parameter
 * that the sum pushes outwards. One walk over the points for each step.
 */
export function gaussNewton(task: GaussNewtonTask): GaussNewtonEnd {
  const { lowest, highest, y, weights } = task;
  const within = (values: readonly number[]): number[] => values.map((one, k) => Math.min(Math.max(one, lowest[k]!), highest[k]!));
  const total = squaresAbout(0, y, weights);
  let parameters = within(task.start);
  const out = roomFor(y.length);
  let here = sumsAt(task, parameters, out);
  let damping = 0;
  let iterations = 0;
  const freeAt = ({ gradient }: Sums): number[] =>
    parameters
      .map((_, k) => k)
      .filter((k) => {
        const low = parameters[k]! <= lowest[k]! && (gradient[k]! <= 0 || lowest[k] === highest[k]);
        return !low && !(parameters[k]! >= highest[k]! && gradient[k]! >= 0);
      });
  const end = (inverse: readonly number[] | undefined, converged: boolean): GaussNewtonEnd => ({
    parameters,
    residualSumOfSquares: here.rest,
    inverse,
    iterations,
    converged,
  });
  while (iterations < MOST) {
    const free = freeAt(here);
    const plain = stepFor(here, free, 0);
    // what rounding does to the sum, and to residuals of nothing
    const flat = FLAT * here.rest + 1e-15 * Math.sqrt(here.rest) * Math.sqrt(total) + 1e-29 * total;
    // on many points a step within two standard errors ends so near the optimum that another walk would show nothing
    if (plain && y.length > POLISHED && plain.fall <= (NEAR * here.rest) / y.length) {
      parameters = within(parameters.map((one, k) => one + plain.step[k]!));
      here = { ...here, rest: Math.max(0, here.rest - plain.fall) };
      return end(plain.inverse, true);
    }
    if (plain && plain.fall <= flat) {
      // the sum cannot resolve the last digits; the steps can
      let known = plain;
      let size = Infinity;
      for (let k = 0; k < MOST; k += 1) {
        const next = within(parameters.map((one, j) => one + known.step[j]!));
        const there = sumsAt(task, next, out);
        const step = Math.max(...next.map((one, j) => Math.abs(one - parameters[j]!) / (Math.abs(one) || 1)));
        if (!(step < size) || !(there.rest <= here.rest + flat)) break;
        parameters = next;
        here = there;
        size = step;
        if (step < STILL) break;
        const after = stepFor(here, freeAt(here), 0);
        if (!after) break;
        known = after;
      }
      return end(known.inverse, true);
    }
    iterations += 1;
    const { step } = (damping === 0 ? plain : stepFor(here, free, damping)) ?? { step: undefined };
    const next = step && within(parameters.map((one, k) => one + step[k]!));
    const there = next && next.every(Number.isFinite) ? sumsAt(task, next, out) : undefined;
    if (next && there && there.rest < here.rest) {
      parameters = next;
      here = there;
      damping = damping > 1e-9 ? damping / 10 : 0;
    } else {
      if (damping > 1e10) break;
      damping = damping === 0 ? 1e-6 : damping * 10;
    }
  }
  const last = stepFor(here, freeAt(here), 0);
  return end(last?.inverse, false);
}
