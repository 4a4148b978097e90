/** The proportional limit of a slow pull whose motion is known by a noisy travel alone. */
import { expect, test } from 'vitest';
import { analyseTension, round } from '../../src/index.js';
import { seeded } from '../support/random.js';

/** 200 GPa up to 280 MPa, then 2 GPa, over 50 mm of a piece of 100 mm²; with the noise of the travel [mm]. */
const pulled = (noise: number) => {
  const random = seeded(3);
  const strain = Array.from({ length: 3000 }, (_, i) => 1e-5 * i);
  return {
    time: strain.map((_, i) => i / 10),
    force: strain.map((e) => 100 * Math.min(200_000 * e, 280 + 2000 * (e - 0.0014))),
    travel: strain.map((e) => 50 * e + noise * random.normal()),
  };
};
const piece = { section: round({ diameter: Math.sqrt(400 / Math.PI) }), gaugeLength: 50, parallelLength: 50 };
const analysed = (noise: number) => analyseTension(pulled(noise), piece, { proportionalLimit: 'tangent' });

test('a quiet travel gives it with its doubt, a noisy one none, with the reason', () => {
  const quiet = analysed(1e-5);
  expect(Math.abs(quiet.proportionalLimit!.value - 280)).toBeLessThan(2 * quiet.proportionalLimit!.standardUncertainty!);
  expect(quiet.proportionalLimit!.standardUncertainty).toBeLessThan(6);
  const noisy = analysed(3e-3);
  expect(noisy.proportionalLimit).toBeUndefined();
  expect(noisy.findings).toContainEqual(
    expect.objectContaining({
      code: 'not-determined',
      field: 'proportionalLimit',
      message: expect.stringMatching(/^Not determined: the proportional limit; noise makes a tangent reach over \d+ MPa\.$/) as string,
    }),
  );
});
