import { choleskyInverse } from './choleskyInverse.js';

/** @internal What one walk over the points sums up. */
export interface Sums {
  readonly rest: number;
  readonly normal: readonly number[];
  readonly gradient: readonly number[];
}

/** @internal A sum of squares to make least. */
export interface GaussNewtonTask {
  readonly start: readonly number[];
  readonly lowest: readonly number[];
  readonly highest: readonly number[];
  /** What a walk over the samples sums up. */
  readonly sumsAt: (parameters: readonly number[]) => Sums;
  readonly samples: number;
  /** Sum of the squares of what is fitted: rounding is measured by it. */
  readonly total: number;
  /** To begin with; default 0, for a good start. */
  readonly damping?: number;
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
/** Points from which walks are dear, and the fall of the sum, in variances, of a step within a fifth of the standard errors. */
const POLISHED = 5000;
const NEAR = 0.04;

/** Step of the free parameters for a damping, how far it should lower the sum, and the inverse of JᵀJ; undefined where it is singular. */
function stepFor({ normal, gradient }: Sums, free: readonly boolean[], damping: number) {
  const p = gradient.length;
  // scaled to a diagonal of ones; a parameter that is held has nothing in common with the others
  const size: number[] = [];
  for (let k = 0; k < p; k += 1) {
    size[k] = free[k] ? Math.sqrt(normal[p * k + k]!) : Infinity;
    if (!(size[k]! > 0) || (free[k] && size[k] === Infinity)) return undefined;
  }
  const scaled: number[] = [];
  for (let j = 0; j < p; j += 1)
    for (let k = 0; k < p; k += 1) {
      const one = free[j] && free[k] ? normal[p * Math.max(j, k) + Math.min(j, k)]! / (size[j]! * size[k]!) : Number(j === k);
      scaled[p * j + k] = one + (j === k ? damping : 0);
    }
  const inverse = choleskyInverse(scaled, p);
  if (!inverse) return undefined;
  const step: number[] = [];
  let fall = 0;
  for (let j = 0; j < p; j += 1) {
    step[j] = 0;
    for (let k = 0; k < p; k += 1) {
      const one = inverse[p * j + k]! / (size[j]! * size[k]!);
      inverse[p * j + k] = one;
      step[j]! += one * gradient[k]!;
      fall += gradient[j]! * one * gradient[k]!;
    }
  }
  return { step, inverse, fall };
}

/** Parameters within their bounds. */
const boundedBy =
  ({ lowest, highest }: GaussNewtonTask) =>
  (values: readonly number[]): number[] =>
    values.map((one, k) => Math.min(Math.max(one, lowest[k]!), highest[k]!));

/** Which parameters may move: those on a bound that the sum pushes outwards are held. */
const freeAt = ({ lowest, highest }: GaussNewtonTask, parameters: readonly number[], { gradient }: Sums): boolean[] =>
  parameters.map((one, k) => {
    const low = one <= lowest[k]! && (gradient[k]! <= 0 || lowest[k] === highest[k]);
    return !low && !(one >= highest[k]! && gradient[k]! >= 0);
  });

/** Where a walk stands: the parameters, the sums there, and the step from there. */
interface Place {
  readonly parameters: readonly number[];
  readonly here: Sums;
  readonly known: NonNullable<ReturnType<typeof stepFor>>;
}

/** The last digits: the sum cannot resolve them, `flat` being what rounding does to it; the steps can. */
function lastDigits(task: GaussNewtonTask, from: Place, flat: number): Place {
  const within = boundedBy(task);
  let { parameters, here, known } = from;
  let size = Infinity;
  for (let k = 0; k < MOST; k += 1) {
    const next = within(parameters.map((one, j) => one + known.step[j]!));
    let step = 0;
    for (let j = 0; j < next.length; j += 1) step = Math.max(step, Math.abs(next[j]! - parameters[j]!) / (Math.abs(next[j]!) || 1));
    // a step within rounding needs no walk to show that it is, nor one whose successor will be: they fall by a constant factor
    if (!(step < size) || step < STILL) break;
    if (step * step < STILL * size && size < Infinity) return { parameters: next, here, known };
    const there = task.sumsAt(next);
    if (!(there.rest <= here.rest + flat)) break;
    parameters = next;
    here = there;
    size = step;
    const after = stepFor(here, freeAt(task, parameters, here), 0);
    if (!after) break;
    known = after;
  }
  return { parameters, here, known };
}

/**
 * @internal Least squares by Gauss-Newton steps from a good start, damped only where a step fails; bounds are kept by holding a parameter
 * that the sum pushes outwards. One walk over the points for each step.
 */
export function gaussNewton(task: GaussNewtonTask): GaussNewtonEnd {
  const { sumsAt, samples, total } = task;
  const within = boundedBy(task);
  let parameters: readonly number[] = within(task.start);
  let here = sumsAt(parameters);
  let damping = task.damping ?? 0;
  let iterations = 0;
  const end = (inverse: readonly number[] | undefined, converged: boolean): GaussNewtonEnd => ({
    parameters,
    residualSumOfSquares: here.rest,
    inverse,
    iterations,
    converged,
  });
  while (iterations < MOST) {
    const free = freeAt(task, parameters, here);
    const plain = stepFor(here, free, 0);
    // what rounding does to the sum, and to residuals of nothing
    const flat = FLAT * here.rest + 1e-15 * Math.sqrt(here.rest) * Math.sqrt(total) + 1e-29 * total;
    // on many points the step after such a one is lost in the standard errors, and its walk is spared
    if (plain && samples > POLISHED && plain.fall <= (NEAR * here.rest) / samples) {
      parameters = within(parameters.map((one, k) => one + plain.step[k]!));
      here = { ...here, rest: Math.max(0, here.rest - plain.fall) };
      return end(plain.inverse, true);
    }
    if (plain && plain.fall <= flat) {
      const last = lastDigits(task, { parameters, here, known: plain }, flat);
      ({ parameters, here } = last);
      return end(last.known.inverse, true);
    }
    iterations += 1;
    const { step } = (damping === 0 ? plain : stepFor(here, free, damping)) ?? { step: undefined };
    const next = step && within(parameters.map((one, k) => one + step[k]!));
    const there = next && next.every(Number.isFinite) ? sumsAt(next) : undefined;
    if (next && there && there.rest < here.rest) {
      parameters = next;
      here = there;
      damping = damping > 1e-9 ? damping / 10 : 0;
    } else {
      if (damping > 1e10) break;
      damping = damping === 0 ? 1e-6 : damping * 10;
    }
  }
  const last = stepFor(here, freeAt(task, parameters, here), 0);
  return end(last?.inverse, false);
}
