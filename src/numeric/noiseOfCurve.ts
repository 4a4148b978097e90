import { medianOf } from './median.js';
import { noiseLevel, PLACES, QUARTILE } from './noiseLevel.js';

/** Samples that lie so far apart have forgotten each other's noise, as a rule; of a short curve they lie no farther apart than this share of it. */
const FAR = 16;
const SHARE = 1 / 64;
/** Noise of far samples that is so much more than that of neighbours is slow: chance makes no more of two medians (four deviations of their quotient). */
const SLOW = 1.4;
/** A tenfold of it is no noise but the shape of the curve: so much far samples show of noise whose neighbours share 98 %. */
const SHAPE = 10;

/** @internal Noise of the stress of a curve. */
export interface NoiseOfCurve {
  /** Standard deviation of a sample. */
  readonly level: number;
  /** What a mean of m samples has √m times of: more than the level, where neighbours are alike. */
  readonly ofMeans: number;
}

/**
 * Standard deviation of y about smooth functions of x, from samples so far apart: by how much each fourth misses the parabola through the three before.
 * A motion that pulses is no noise of a curve.
 */
function aboutMotion(x: Float64Array, y: Float64Array, far: number, first: number, end: number): number {
  const stride = Math.max(1, Math.ceil((end - first - 3 * far) / PLACES));
  const missed: number[] = [];
  for (let i = first; i + 3 * far < end; i += stride) {
    const [a, b, c, d] = [x[i]!, x[i + far]!, x[i + 2 * far]!, x[i + 3 * far]!];
    const [p, q, r, s] = [
      1 / ((a - b) * (a - c) * (a - d)),
      1 / ((b - a) * (b - c) * (b - d)),
      1 / ((c - a) * (c - b) * (c - d)),
      1 / ((d - a) * (d - b) * (d - c)),
    ];
    const value = Math.abs(p * y[i]! + q * y[i + far]! + r * y[i + 2 * far]! + s * y[i + 3 * far]!) / Math.hypot(p, q, r, s);
    if (Number.isFinite(value)) missed.push(value);
  }
  return missed.length > 0 ? medianOf(missed) / QUARTILE : 0;
}

/**
 * @internal Noise of a curve between two samples, slow noise included: differences of neighbours do not see what neighbours have in common, those of
 * samples far apart do, whether by their numbers or about the motion.
 *
 * Where each sample keeps the share ρ of the noise before it, neighbours show κ = (1 − ρ)(1 − ρ/2 + ρ²/10) of the variance, and the mean of many has
 * (1 + ρ)/(1 − ρ) times that of independent ones, which is 1.2/κ within a twentieth from ρ = 0.5 on.
 */
export function noiseOfCurve(x: Float64Array, y: Float64Array, first = 0, end = y.length): NoiseOfCurve {
  const near = noiseLevel(y, first, end);
  const far = Math.min(FAR, Math.floor(SHARE * (end - first)));
  if (far < 2) return { level: near, ofMeans: near };
  const byNumber = noiseLevel(y, first, end, far);
  // most noise is not slow, and then the motion need not be asked
  const level = byNumber > SLOW * near ? Math.min(byNumber, aboutMotion(x, y, far, first, end)) : near;
  return level > SLOW * near && level < SHAPE * near
    ? { level, ofMeans: (Math.sqrt(1.2) * level * level) / near }
    : { level: near, ofMeans: near };
}
