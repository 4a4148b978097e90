/** Noise of a curve, by noise that is known: each sample keeps the share ρ of the noise before it. */
import { describe, expect, test } from 'vitest';
import { medianOf, noiseOfCurve, normalCdf } from '../../src/numeric/index.js';
import { seeded } from '../support/random.js';

const SAMPLES = 3000;
/** A power law of the strain up to 20 %, by an even motion or one that pulses every 100 samples, with noise of 2 MPa. */
function noisy(rho: number, pulses = 0, deviation = 2, seed = 1) {
  const { normal } = seeded(seed);
  let noise = normal();
  const strain = Float64Array.from(
    { length: SAMPLES },
    (_, i) => (0.2 / SAMPLES) * (i + 1 + (pulses * 100 * Math.sin((2 * Math.PI * i) / 100)) / (2 * Math.PI)),
  );
  const stress = strain.map((e) => {
    noise = rho * noise + Math.sqrt(1 - rho * rho) * normal();
    return 500 * (0.02 + e) ** 0.2 + deviation * noise;
  });
  return noiseOfCurve(strain, stress);
}

/** Records that a value is the median of: one or the other in which chance hides slow noise does not move it by much. */
const RECORDS = 41;
const middle = (of: (seed: number) => number) => medianOf(Array.from({ length: RECORDS }, (_, k) => of(k + 1)));
/** Standard error of a median, over that of a mean. */
const OF_MEDIAN = Math.sqrt(Math.PI / 2);

/** Samples that lie so far apart are compared, about each tenth of them: those of neighbours, and of far ones. */
const [NEAR, FAR, STRIDE] = [1, 16, 10];
/** Covariance of two third differences so many samples from each other, over the variance of one of independent noise. */
const covariance = (rho: number, apart: number, lag: number): number =>
  [20, -15, 6, -1].reduce(
    (sum, c, k) => sum + (c / 20) * (k === 0 ? rho ** lag : rho ** Math.abs(lag - k * apart) + rho ** (lag + k * apart)),
    0,
  );
/** What differences show of the deviation of a sample. */
const shown = (rho: number, apart: number): number => Math.sqrt(covariance(rho, apart, 0));
/**
 * Standard error of a deviation from the median of their absolute values, as a share: 1/(4 φ(q) q √n) = 1.166/√n with the quartile q of a normal deviate, more where
 * they go together: what is even in two normal deviates correlates by no more than the square of their own correlation.
 */
function standardError(rho: number, apart: number): number {
  const places = Math.ceil((SAMPLES - 3 * apart) / STRIDE);
  let together = 1;
  for (let k = 1; k < places; k += 1) together += 2 * (covariance(rho, apart, STRIDE * k) / covariance(rho, apart, 0)) ** 2;
  return 1.166 * Math.sqrt(together / places);
}
/** Chance that slow noise is not told: far samples must show 1.4 times what neighbours do. */
const hidden = (rho: number): number =>
  1 - normalCdf(Math.log(shown(rho, FAR) / shown(rho, NEAR) / 1.4) / Math.hypot(standardError(rho, FAR), standardError(rho, NEAR)));
/** Three standard errors of the median of all records, which one hidden in so many moves by so much of the deviation of one. */
const limit = (error: number, rho = 0): number => OF_MEDIAN * error * (3 / Math.sqrt(RECORDS) + (rho === 0 ? 0 : hidden(rho)));

describe('the noise of a curve', () => {
  test('of independent noise is that of a sample, and of means', () => {
    const within = limit(standardError(0, NEAR));
    expect(Math.abs(middle((seed) => noisy(0, 0, 2, seed).level) / 2 - 1)).toBeLessThan(within);
    expect(Math.abs(middle((seed) => noisy(0, 0, 2, seed).ofMeans) / 2 - 1)).toBeLessThan(within);
  });

  // samples 16 apart have forgotten each other's noise, or nearly: of 0.9 they share 18 %, and show 86 % of it
  test.each([0.5, 0.7, 0.9])('is that of a sample where its neighbours keep the share %d, as far samples show it', (rho) => {
    const wanted = 2 * shown(rho, FAR);
    expect(Math.abs(middle((seed) => noisy(rho, 0, 2, seed).level) / wanted - 1)).toBeLessThan(limit(standardError(rho, FAR), rho));
  });

  // the variance of the mean of many is (1 + ρ)/(1 − ρ) that of independent ones; 1.2 over what neighbours show is within a twentieth of it
  test.each([0.5, 0.7, 0.9])('gives that of a mean where its neighbours keep the share %d, as far samples show it', (rho) => {
    const wanted = 2 * Math.sqrt((1 + rho) / (1 - rho)) * shown(rho, FAR) ** 2;
    // what far and near samples show goes together, if at all, and then their quotient is surer
    const error = Math.hypot(2 * standardError(rho, FAR), standardError(rho, NEAR));
    expect(Math.abs(middle((seed) => noisy(rho, 0, 2, seed).ofMeans) / wanted - 1)).toBeLessThan(0.05 / 2 + limit(error, rho));
  });

  test('is not the pulse of the motion', () => {
    expect(Math.abs(middle((seed) => noisy(0, 0.6, 0.05, seed).level) / 0.05 - 1)).toBeLessThan(limit(standardError(0, NEAR)));
  });

  test('is not the shape of a curve without noise', () => {
    // third differences of neighbours are those of the pulse, 0.2/3000 × 0.6 (2π/100)² of strain, times at most 2290 MPa, the slope at its begin: 3.6e-4 MPa, which
    // noise of a third of it, 1/(0.6745 √20), would show
    const slope = 100 * 0.02 ** -0.8;
    const pulse = (0.2 / SAMPLES) * 0.6 * ((2 * Math.PI) / 100) ** 2;
    expect(noisy(0, 0.6, 0).level).toBeLessThan((pulse * slope) / (0.6745 * Math.sqrt(20)));
  });
});
