import { finding, type Finding } from '../base/index.js';
import { horner, mean, squaresAbout, studentCdf, type PolynomialFit } from '../numeric/index.js';
import { calibrationFit, mostDegree, scatterOf, SIGNIFICANCE, type WeightedPairs } from './calibrationFit.js';
import { forceClasses } from './forceClasses.js';

/** A verification asks for five steps at least (ISO 7500-1, from memory); with fewer than three degrees of freedom a scatter is hardly known. */
const STEPS = 5;
const FREEDOM = 3;
/** Below this share of the highest force an error counts by its newtons rather than by its share (ISO 7500-1 verifies from a fifth on, from memory). */
const LOW = 0.2;
/** Level at which rising and falling runs are told apart (common practice). */
const RUNS = 0.01;
/** Pairs that make a run. */
const RUN = 3;

/** A reference is read to a thousandth of its highest force at least (common practice): coarser steps are nominal forces. */
const READ = 1e-3;

/** Step in which the reference was written down [N]: the largest power of ten that all its forces are multiples of. */
function stepOf(reference: Float64Array): number {
  const highest = reference.reduce((most, F) => Math.max(most, Math.abs(F)), 0);
  for (let step = 10 ** Math.floor(Math.log10(READ * highest)); step > 1e-9 * highest; step /= 10)
    if (reference.every((F) => Math.abs(F / step - Math.round(F / step)) < 1e-6)) return step;
  return 0;
}

const without = (column: Float64Array, i: number): Float64Array => column.filter((_, k) => k !== i);

/** Variance of the fitted line at a reading. */
function varianceAt({ scaledCovariance }: PolynomialFit, u: number): number {
  return scaledCovariance.reduce((sum, row, j) => sum + row.reduce((inner, one, k) => inner + one * u ** (j + k), 0), 0);
}

/** A pair against the calibration of all others: how far it lies off it [N], the chance of that, and the degree that the others ask for. */
interface LeftOut {
  readonly pair: number;
  readonly off: number;
  readonly chance: number;
  readonly degree: number;
}

function leaveOut(pairs: WeightedPairs, pair: number, wanted: number | undefined): LeftOut | undefined {
  const { indicated, reference, weights } = pairs;
  const rest = {
    indicated: without(indicated, pair),
    reference: without(reference, pair),
    weights: weights && without(weights, pair),
  };
  if (mostDegree(rest) < (wanted ?? 1)) return undefined;
  const { degree, fit } = calibrationFit(rest, wanted);
  const u = (indicated[pair]! - fit.centre) / fit.scale;
  const off = reference[pair]! - horner(fit.scaled, u);
  // a reading in steps is anywhere within its step, even where the others happen to lie on their line
  const own = Math.max(scatterOf(fit, rest) / (weights?.[pair] ?? 1), stepOf(reference) ** 2 / 12);
  const t = Math.abs(off) / Math.sqrt(own + varianceAt(fit, u));
  return { pair, off, degree, chance: 2 * studentCdf(-t, fit.degreesOfFreedom) };
}

/** Pairs worth leaving out: both ends, and of every degree the one farthest off for its leverage. */
function candidates(pairs: WeightedPairs, wanted: number | undefined): number[] {
  const { indicated, weights } = pairs;
  const all = [...indicated.keys()];
  const largest = (of: (i: number) => number): number => all.reduce((best, i) => (of(i) > of(best) ? i : best), 0);
  const degrees = wanted === undefined ? Array.from({ length: mostDegree(pairs) }, (_, k) => k + 1) : [wanted];
  const worst = degrees.map((degree) => {
    const { fit } = calibrationFit(pairs, degree);
    const scatter = scatterOf(fit, pairs);
    const share = (i: number): number => {
      const own = scatter / (weights?.[i] ?? 1);
      const left = own - varianceAt(fit, (indicated[i]! - fit.centre) / fit.scale);
      return fit.residuals[i]! ** 2 / Math.max(left, 1e-9 * own);
    };
    return largest(share);
  });
  return [...new Set([largest((i) => -indicated[i]!), largest((i) => indicated[i]!), ...worst])];
}

/** The same pairs as if their scatter grew with the force: by its share from a fifth of the highest on. */
function byShare(pairs: WeightedPairs): WeightedPairs {
  const highest = pairs.reference.reduce((most, F) => Math.max(most, Math.abs(F)), 0);
  return { ...pairs, weights: pairs.reference.map((F) => (highest / Math.max(Math.abs(F), LOW * highest)) ** 2) };
}

/** Outliers, and a pair on which the degree rests; none is taken out. How scatter goes with force is not known, so an outlier is one either way. */
function oddPairs(pairs: WeightedPairs, degree: number, wanted: number | undefined): Finding[] {
  const { indicated, reference } = pairs;
  const shares = pairs.weights ? pairs : byShare(pairs);
  const left = candidates(pairs, wanted).flatMap((pair) => {
    const one = leaveOut(pairs, pair, wanted);
    const other = leaveOut(shares, pair, wanted);
    return one && other ? { ...one, chance: Math.max(one.chance, other.chance) } : [];
  });
  // at most so many tests are made: each pair against each degree (Bonferroni)
  const questions = indicated.length * (wanted === undefined ? mostDegree(pairs) : 1);
  const outliers = left.filter(({ chance }) => chance * questions < SIGNIFICANCE);
  if (outliers.length > 0)
    return outliers.map(({ pair, off, degree: of }) =>
      finding('calibration-outlier', { pair: pair + 1, force: reference[pair]!, off, degree, without: of }),
    );
  const [alone] = left.filter((one) => one.degree < degree).sort((a, b) => a.chance - b.chance);
  return alone
    ? [finding('calibration-degree-by-one', { pair: alone.pair + 1, force: reference[alone.pair]!, degree, without: alone.degree })]
    : [];
}

/** Residuals of rising and of falling readings: those of falling ones where three of them follow each other. */
function runs({ indicated }: WeightedPairs, residuals: Float64Array): { rising: number[]; falling: number[] } {
  const falls = (i: number): boolean => i > 0 && indicated[i]! < indicated[i - 1]!;
  const inRun = (i: number): boolean => falls(i) && (falls(i - 1) || falls(i + 1));
  const rising: number[] = [];
  const falling: number[] = [];
  residuals.forEach((one, i) => (inRun(i) ? falling : rising).push(one));
  return { rising, falling };
}

/** The force on the way down against that on the way up, beyond what the readings scatter. */
function hysteresis(pairs: WeightedPairs, residuals: Float64Array): Finding[] {
  const { rising, falling } = runs(pairs, residuals);
  if (rising.length < RUN || falling.length < RUN) return [];
  const squares = (list: readonly number[]): number => squaresAbout(mean(list), list);
  const freedom = rising.length + falling.length - 2;
  const difference = mean(falling) - mean(rising);
  const highest = pairs.reference.reduce((most, F) => Math.max(most, Math.abs(F)), 0);
  const scatter = Math.sqrt(((squares(rising) + squares(falling)) / freedom) * (1 / rising.length + 1 / falling.length));
  if (Math.abs(difference) <= 1e-9 * highest) return [];
  const t = Math.abs(difference) / Math.max(scatter, Number.MIN_VALUE);
  return 2 * studentCdf(-t, freedom) < RUNS
    ? [finding('calibration-hysteresis', { difference, share: (100 * Math.abs(difference)) / highest })]
    : [];
}

/** Pairs farther off than a channel of class 1 may be. */
function scatter({ reference }: WeightedPairs, residuals: Float64Array): Finding[] {
  const highest = reference.reduce((most, F) => Math.max(most, Math.abs(F)), 0);
  const shares = residuals.map((one, i) => Math.abs(one) / Math.max(Math.abs(reference[i]!), LOW * highest));
  const worst = shares.reduce((best, one, i) => (one > shares[best]! ? i : best), 0);
  const allowed = forceClasses.find(({ forceClass }) => forceClass === 1)!.indicationError;
  return shares[worst]! > allowed
    ? [finding('calibration-scatter', { share: 100 * shares[worst]!, force: reference[worst]!, allowed: 100 * allowed })]
    : [];
}

/** @internal Findings about the pairs of a calibration: their number, outliers, scatter. */
export function pairFindings(pairs: WeightedPairs, degree: number, wanted: number | undefined, fit: PolynomialFit): Finding[] {
  const points = pairs.indicated.length;
  const readings = new Set(pairs.indicated).size;
  const freedom = fit.degreesOfFreedom;
  const few = readings < STEPS || freedom < FREEDOM ? [finding('calibration-points-few', { points, readings, degree, freedom })] : [];
  const odd = oddPairs(pairs, degree, wanted);
  const outliers = odd.some(({ code }) => code === 'calibration-outlier');
  return [...few, ...odd, ...hysteresis(pairs, fit.residuals), ...(outliers ? [] : scatter(pairs, fit.residuals))];
}
