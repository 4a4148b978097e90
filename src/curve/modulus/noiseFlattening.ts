import type { StressStrainCurve } from '../../base/index.js';
import { mean, noiseLevel } from '../../numeric/index.js';

/** What noise of the strain takes off the slope of a least-squares line. */
export interface NoiseFlattening {
  /** Standard deviation of the noise of one strain within the window [1]. */
  readonly strainNoise: number;
  /** Share of the slope that this noise takes off [1]. */
  readonly slopeShare: number;
}

/** Fewest samples that tell noise. */
const LEAST = 12;
/** Variances beyond this share of the window's leave no line to speak of. */
const MOST = 0.9;

/**
 * @internal Flattening of a least-squares line by noise of its strains, which the line takes for none; undefined where the window holds too few samples.
 *
 * $$ -\frac{\Delta m}{m} = \frac{\sigma_e^2}{\overline{(e - \bar e)^2} - \sigma_e^2} $$
 *
 * Third differences divide the noise between strain and stress, those of what is left of the line tell how much there is: what moves both together is none.
 * Rounding in steps is left out: strains that lie evenly about the value of each step flatten no line. What few steps leave open is told by `strainSteps`.
 * Fuller 1987, Measurement Error Models, attenuation of a slope (from memory).
 */
export function noiseFlattening(
  { strain, stress }: StressStrainCurve,
  { slope, first, last }: { readonly slope: number; readonly first: number; readonly last: number },
): NoiseFlattening | undefined {
  const n = last - first + 1;
  if (n < LEAST || !(slope > 0)) return undefined;
  const e = strain.subarray(first, last + 1);
  const R = stress.subarray(first, last + 1);
  const middle = mean(e);
  const rest = new Float64Array(n);
  let squares = 0;
  for (let i = 0; i < n; i += 1) {
    rest[i] = R[i]! - slope * e[i]!;
    squares += (e[i]! - middle) ** 2;
  }
  const own = noiseLevel(e);
  const both = noiseLevel(R) ** 2 + (slope * own) ** 2;
  const near = noiseLevel(rest) ** 2;
  const strainNoise = own * Math.sqrt(both > near ? near / both : 1);
  const variance = squares / n;
  if (!(variance > 0 && strainNoise > 0)) return undefined;
  const share = Math.min(strainNoise ** 2 / variance, MOST);
  return { strainNoise, slopeShare: share / (1 - share) };
}
