/** A proof strength on the level of a piece that is elastic and ideally plastic, in noise: the highest sample may lie anywhere on it, by every method alike. */
import { describe, expect, test } from 'vitest';
import { analyseBending, analyseCompression, analyseTension, proofStrength, rectangular, round } from '../../src/index.js';
import { seeded } from '../support/random.js';

const [MODULUS, LEVEL, NOISE] = [70_000, 300, 1];
const section = round({ diameter: 10 });
const beam = { section: rectangular({ width: 20, thickness: 5 }), setup: { points: 3 as const, span: 100 } };

/** Up to a strain of 2 %, the level in noise. */
function curveOf(seed: number) {
  const { normal } = seeded(seed);
  const strain = Array.from({ length: 2000 }, (_, i) => i * 1e-5);
  return { strain, stress: strain.map((e) => Math.min(MODULUS * e, LEVEL) + NOISE * normal()) };
}

const ways: Readonly<Record<string, (curve: ReturnType<typeof curveOf>) => number | undefined>> = {
  'the function': (curve) => {
    const found = proofStrength(curve, { modulus: MODULUS, offset: 0.01 });
    return found.ok ? found.stress : undefined;
  },
  tension: ({ strain, stress }) =>
    analyseTension(
      { force: stress.map((R) => R * section.area), extension: strain.map((e) => e * 50) },
      { section, gaugeLength: 50 },
      { offsets: [0.01] },
    ).proofStrengths[0]?.value,
  compression: ({ strain, stress }) =>
    analyseCompression(
      { force: stress.map((R) => R * section.area), extension: strain.map((e) => e * 15) },
      { section, height: 15 },
      { offsets: [0.01] },
    ).proofStrengths[0]?.value,
  // flexural stress 3 F L/(2 b h²), strain 6 h f/L² (ISO 178)
  bending: ({ strain, stress }) =>
    analyseBending(
      { force: stress.map((R) => (R * 2 * 20 * 5 ** 2) / (3 * 100)), deflection: strain.map((e) => (e * 100 ** 2) / (6 * 5)) },
      beam,
      { offsets: [0.01] },
    ).proofStrengths[0]?.value,
};

describe.each(Object.entries(ways))('%s', (_, found) => {
  test('finds it whatever sample is the highest', () => {
    for (let seed = 1; seed <= 20; seed += 1) expect(Math.abs((found(curveOf(seed)) ?? NaN) - LEVEL)).toBeLessThan(3 * NOISE);
  });

  test('finds none where the stress falls from its maximum by more than half a per cent and noise before', () => {
    const { strain, stress } = curveOf(1);
    const falling = stress.map((R, i) => R - (strain[i]! > 0.006 ? 20_000 * (strain[i]! - 0.006) : 0));
    expect(found({ strain, stress: falling })).toBeUndefined();
  });
});
