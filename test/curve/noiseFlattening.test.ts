import { describe, expect, test } from 'vitest';
import { analyseTension, fitModulus, required, sectionFromArea } from '../../src/index.js';
import { randomNumbers } from '../../src/numeric/index.js';

const E = 205_000;

/** A straight line to 500 MPa, then flat, with normal noise of the strain. */
function noisyStrain(noise: number, seed: number, n = 2000) {
  const random = randomNumbers(seed);
  const exact = Float64Array.from({ length: n }, (_, i) => (i * 0.005) / n);
  return { strain: exact.map((e) => e + noise * random.normal()), stress: exact.map((e) => Math.min(E * e, 500) + 0.5 * random.normal()) };
}

const window = { by: 'stress', from: 50, to: 250 } as const;

describe('noise of the strain', () => {
  test.each([1e-4, 2e-4])('of %f flattens a line by what is told', (noise) => {
    const found = [1, 2, 3, 4, 5, 6, 7, 8].map((seed) => {
      const { strain, stress } = noisyStrain(noise, seed);
      const first = stress.findIndex((R) => R >= 50);
      const last = stress.findIndex((R) => R >= 250);
      return required(fitModulus({ strain, stress }, { window: { by: 'samples', first, last } }));
    });
    const mean = (values: readonly number[]) => values.reduce((a, b) => a + b, 0) / values.length;
    const told = mean(found.map(({ noiseFlattening }) => noiseFlattening!.slopeShare));
    expect(Math.abs(mean(found.map(({ noiseFlattening }) => noiseFlattening!.strainNoise)) / noise - 1)).toBeLessThan(0.1);
    // eight means of some 300 differences tell the noise to 2 %, its square to 5 %, and the slopes the flattening to 5 % of it: three deviations
    // a uniform strain over 200 MPa has the variance (200/E)^2/12
    const share = noise ** 2 / ((200 / E) ** 2 / 12);
    expect(Math.abs(told / share - 1)).toBeLessThan(0.2);
    const lacks = mean(found.map(({ slope }) => E / slope - 1));
    expect(Math.abs(lacks / told - 1)).toBeLessThan(0.2);
  });

  test('is a note from 1 % of the slope on, a caution from 5 %, and stands in its uncertainty', () => {
    const result = (noise: number) => {
      const { strain, stress } = noisyStrain(noise, 3);
      return analyseTension(
        { force: stress.map((R) => 50 * R), strain },
        { section: sectionFromArea({ area: 50 }), gaugeLength: 50 },
        { modulus: { window } },
      );
    };
    for (const [noise, severity] of [
      [3e-6, undefined],
      [4e-5, 'note'],
      [2e-4, 'caution'],
    ] as const) {
      const { findings, elasticSlope, modulusWindow } = result(noise);
      expect(findings.find(({ code }) => code === 'strain-noise-flattens')?.severity).toBe(severity);
      if (severity)
        expect(elasticSlope!.standardUncertainty! / elasticSlope!.value).toBeGreaterThan(modulusWindow!.noiseFlattening!.slopeShare);
    }
  });

  test('is none where there is none, or stress alone is noisy, or the window holds too few samples', () => {
    const { strain, stress } = noisyStrain(0, 1);
    expect(required(fitModulus({ strain, stress }, { window })).noiseFlattening?.slopeShare ?? 0).toBeLessThan(1e-6);
    const few = noisyStrain(1e-5, 1, 40);
    expect(required(fitModulus(few, { window: { by: 'samples', first: 2, last: 9 } })).noiseFlattening).toBeUndefined();
  });
});
