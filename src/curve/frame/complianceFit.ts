import { linearLeastSquares, type LinearFit } from '../../numeric/index.js';

/** @internal How the motion of a frame depends on the force. */
export type ComplianceShape = 'constant' | 'table' | 'power';

/** @internal Samples of all pulls in one, forces as shares of the highest. */
export interface ComplianceTask {
  readonly shape: ComplianceShape;
  /** Force over the highest force. */
  readonly f: Float64Array;
  readonly travel: Float64Array;
  /** Which pull each sample is of. */
  readonly pull: Uint16Array;
  /** Length over area of each pull's piece times the highest force [N/mm]: over the modulus, what the piece gives [mm]. */
  readonly pieces: readonly number[];
  /** Reciprocal of the modulus [1/MPa]; undefined where it is to be found. */
  readonly softness: number | undefined;
  /** Points of a table as shares of the highest force; the first is the origin. */
  readonly knots: Float64Array;
}

/** @internal Where a fit ended. */
export interface ComplianceEnd extends LinearFit {
  /** Exponent of a power law. */
  readonly exponent: number;
  /** Columns of the frame's motion, for any forces: times their parameters, the motion from its origin. */
  readonly frame: (f: Float64Array) => Float64Array[];
  /** The first parameter of the frame. */
  readonly first: number;
}

const LEAST = 0.1;
const MOST = 4;

/** Columns of the frame's motion; a table stands for its rises from the first point. */
function frameColumns({ shape, knots }: ComplianceTask, f: Float64Array, b: number): Float64Array[] {
  if (shape === 'constant') return [f];
  if (shape === 'power') return [f.map((x) => Math.max(0, x) ** b)];
  return Array.from({ length: knots.length - 1 }, (_, k) => {
    // no force lies beyond the last point
    const [before, here, after] = [knots[k]!, knots[k + 1]!, knots[k + 2]!];
    return f.map((x) => Math.max(0, x <= here ? (x - before) / (here - before) : (after - x) / (after - here)));
  });
}

/** How a power law changes with its exponent. */
const byExponent = (f: Float64Array, size: number, b: number): Float64Array => f.map((x) => (x > 0 ? size * x ** b * Math.log(x) : 0));

/** The fit for one exponent; with `size` the exponent is a parameter as well, linearised there. */
function solve(task: ComplianceTask, b: number, size?: number): LinearFit | undefined {
  const { f, pull, pieces, softness } = task;
  const own = f.map((x, i) => pieces[pull[i]!]! * x);
  const y = softness === undefined ? task.travel : task.travel.map((x, i) => x - own[i]! * softness);
  // each pull begins where it begins: an origin of its own
  const origins = pieces.map((_, k) => Float64Array.from(pull, (one) => (one === k ? 1 : 0)));
  const frame = [...frameColumns(task, f, b), ...(size === undefined ? [] : [byExponent(f, size, b)])];
  return linearLeastSquares([...origins, ...(softness === undefined ? [own] : []), ...frame], y);
}

/** The exponent with the least sum of a scan: near enough for the steps that follow. */
function scanExponent(task: ComplianceTask): number {
  const [low, high, steps] = [Math.log(LEAST), Math.log(MOST), 24];
  const places = Array.from({ length: steps + 1 }, (_, k) => Math.exp(low + ((high - low) * k) / steps));
  const sums = places.map((b) => solve(task, b)?.residualSumOfSquares ?? Infinity);
  return places[sums.indexOf(Math.min(...sums))]!;
}

/** @internal Least squares of origins, frame and, where it is unknown, modulus; undefined where the samples do not determine them. */
export function fitComplianceKernel(task: ComplianceTask, start?: number): ComplianceEnd | undefined {
  const first = task.pieces.length + (task.softness === undefined ? 1 : 0);
  if (task.shape !== 'power') {
    const fit = solve(task, 1);
    return fit && { ...fit, exponent: 1, frame: (f) => frameColumns(task, f, 1), first };
  }
  let b = start ?? scanExponent(task);
  let size = solve(task, b)?.parameters[first];
  for (let k = 0; k < 50 && size !== undefined; k += 1) {
    const fit = solve(task, b, size);
    if (!fit) return undefined;
    const step = fit.parameters[first + 1]!;
    const next = b + step;
    if (!(next >= LEAST && next <= MOST)) return undefined;
    const here = b;
    const scale = size;
    b = next;
    size = fit.parameters[first];
    if (Math.abs(step) < 1e-10)
      return { ...fit, exponent: here, frame: (f) => [...frameColumns(task, f, here), byExponent(f, scale, here)], first };
  }
  return undefined;
}
