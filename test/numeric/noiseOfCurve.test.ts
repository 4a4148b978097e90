/** Noise of a curve, by noise that is known: each sample keeps the share ρ of the noise before it. */
import { describe, expect, test } from 'vitest';
import { noiseOfCurve } from '../../src/numeric/index.js';
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
const averaged = (of: (seed: number) => number) => Array.from({ length: 10 }, (_, k) => of(k + 1)).reduce((sum, one) => sum + one / 10, 0);

describe('the noise of a curve', () => {
  // a median of 300 independent places is known to 6.7 %, of ten to 2.1 %; of places that share their noise to twice that
  test.each([0, 0.5, 0.7, 0.9])('is that of a sample where its neighbours keep the share %d', (rho) => {
    expect(Math.abs(averaged((seed) => noisy(rho, 0, 2, seed).level) / 2 - 1)).toBeLessThan(0.15);
  });

  // the variance of the mean of many is (1 + ρ)/(1 − ρ) that of independent ones
  test.each([0, 0.5, 0.7, 0.9])('gives that of a mean where its neighbours keep the share %d', (rho) => {
    const wanted = 2 * Math.sqrt((1 + rho) / (1 - rho));
    expect(Math.abs(averaged((seed) => noisy(rho, 0, 2, seed).ofMeans) / wanted - 1)).toBeLessThan(0.25);
  });

  test('is not the pulse of the motion', () => {
    expect(averaged((seed) => noisy(0, 0.6, 0.05, seed).level) / 0.05).toBeLessThan(1.2);
  });

  test('is not the shape of a curve without noise', () => {
    expect(noisy(0, 0.6, 0).level).toBeLessThan(1e-3);
  });
});
