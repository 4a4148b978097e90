/** Yield points in noise that is known, of curves by closed forms: strain as it is, each sample keeping the share ρ of the noise before it. */
import { describe, expect, test } from 'vitest';
import { yieldPoints } from '../../src/index.js';
import { seeded } from '../support/random.js';

const MODULUS = 200_000;
/** Samples of 0.01 % strain up to 20 %, ten times as dense up to 1 %. */
const strain = [...Array.from({ length: 1000 }, (_, i) => 1e-5 * i), ...Array.from({ length: 1900 }, (_, i) => 0.01 + 1e-4 * i)];
const SEEDS = Array.from({ length: 20 }, (_, k) => k + 1);

/** The yield points of a curve with noise of so many MPa. */
function found(stressAt: (strain: number) => number, deviation: number, rho: number, seed: number) {
  const { normal } = seeded(seed);
  let noise = normal();
  const stress = strain.map((e) => {
    noise = rho * noise + Math.sqrt(1 - rho * rho) * normal();
    return stressAt(e) + deviation * noise;
  });
  return yieldPoints({ strain, stress }, { modulus: MODULUS });
}

/** A line up to 500 MPa, and slight hardening from there on. */
const smooth = (e: number): number => (e <= 0.0025 ? MODULUS * e : 500 * (1 + (e - 0.0025) / 0.01) ** 0.05);

/** ReH, a fall within 0.05 %, a level of 300 MPa up to 1.5 %, hardening by 3 GPa at first that slows down over 4 % of strain. */
const LEVEL_ENDS = 0.015;
const yielding =
  (upper: number) =>
  (e: number): number => {
    const at = upper / MODULUS;
    if (e <= at) return MODULUS * e;
    if (e <= at + 0.0005) return upper - ((upper - 300) * (e - at)) / 0.0005;
    return e <= LEVEL_ENDS ? 300 : 300 + 120 * (1 - Math.exp((LEVEL_ENDS - e) / 0.04));
  };

describe('noise whose neighbours are alike', () => {
  test.each([0, 0.5, 0.7, 0.9, 0.95])('makes no upper yield point of a smooth curve: share %d', (rho) => {
    for (const seed of SEEDS) expect(found(smooth, 2, rho, seed)).toMatchObject({ ok: false });
  });

  // a fall of 6 MPa is twelve deviations
  test.each([0, 0.5, 0.7, 0.9])('hides no fall of 2 %% that is far larger: share %d', (rho) => {
    for (const seed of SEEDS) expect(found(yielding(306), 0.5, rho, seed).ok).toBe(true);
  });
});

/** Middle error of Ae as a share of it. */
function errorOfAe(deviation: number, rho: number): number {
  const truth = LEVEL_ENDS - 330 / MODULUS;
  const errors = SEEDS.map((seed) => found(yielding(330), deviation, rho, seed)).flatMap((one) =>
    one.ok ? one.extension! / truth - 1 : [],
  );
  expect(errors.length).toBe(SEEDS.length);
  return errors.sort((a, b) => a - b)[SEEDS.length / 2]!;
}

// the lowest of a thousand samples lies three deviations low: 6 MPa, or 0.2 % strain by 3 GPa, which is 15 % of Ae
test('Ae is that of the level in noise of 0.7 % of it, not of its lowest sample', () => {
  expect(Math.abs(errorOfAe(2, 0))).toBeLessThan(0.05);
});
test('Ae ends with the level also in noise whose neighbours are alike', () => {
  expect(Math.abs(errorOfAe(1, 0.9))).toBeLessThan(0.05);
});
