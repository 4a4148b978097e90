import { describe, expect, test } from 'vitest';
import { rectangular, round } from '../../src/index.js';
import { simulateCompression, type CompressionScenario } from '../../src/simulate/index.js';
import { refusal } from '../support/thrown.js';

const piece = { section: round({ diameter: 10 }), height: 15 };
const swift: CompressionScenario = {
  material: { modulus: 70_000, yieldStress: 200, hardening: { law: 'swift', prestrain: 0.02, exponent: 0.2 } },
  piece,
  friction: 0.12,
  frame: { compliance: 3e-6, slack: 0.1 },
  logger: { extensometer: true },
};
const { record, truth } = simulateCompression(swift);

describe('every sample lies on the model, by its own way', () => {
  test('friction, volume, elastic part and frame account for force, extension and travel', () => {
    const { area } = piece.section;
    expect(record.force.length).toBeGreaterThan(500);
    record.force.forEach((F, i) => {
      const R = F / area;
      const e = record.extension![i]! / 15;
      expect(record.travel![i]! - (F > 0 ? 0.1 + 3e-6 * F + record.extension![i]! : record.travel![i]!)).toBeCloseTo(0, 9);
      const p = e - R / 70_000;
      if (p < 1e-6) return;
      // diameter from the volume, then the slab with friction
      const h = 15 * (1 - p);
      const d = Math.sqrt((100 * 15) / h);
      const flow = 200 * (1 + Math.log(15 / h) / 0.02) ** 0.2;
      expect(F / ((Math.PI / 4) * d * d) / (flow * (1 + (0.12 * d) / (3 * h)))).toBeCloseTo(1, 6);
    });
  });

  test('the truth is the end of the record', () => {
    expect(truth.maximumForce).toBeCloseTo(record.force.at(-1)!, 6);
    expect(truth.flowStress).toBeCloseTo(200 * (1 - Math.log(0.7) / 0.02) ** 0.2, 9);
    expect(truth.afterTest.height).toBeCloseTo(10.5, 12);
    expect(truth.afterTest.middleDiameter).toBeCloseTo(10 / Math.sqrt(0.7), 9);
  });

  test('a barrel keeps the volume: its outline is a parabola', () => {
    const { afterTest } = simulateCompression({ ...swift, bulge: 1.08 }).truth;
    const { middleDiameter: D, endDiameter: d, height } = afterTest;
    expect(D / d).toBeCloseTo(1.08, 12);
    let volume = 0;
    const n = 10_000;
    for (let k = 0; k < n; k += 1) {
      const z = -1 + (2 * (k + 0.5)) / n;
      volume += (Math.PI / 4) * (D - (D - d) * z * z) ** 2 * (height / n);
    }
    expect(volume / (piece.section.area * 15)).toBeCloseTo(1, 7);
  });
});

test('without hardening and friction the force grows as the area', () => {
  const ideal = simulateCompression({
    material: { modulus: 70_000, yieldStress: 200, hardening: { law: 'none' } },
    piece: { section: rectangular({ width: 10, thickness: 8 }), height: 12 },
    until: 0.5,
  });
  expect(ideal.truth.maximumForce).toBeCloseTo(200 * 80 * 2, 6);
  expect(ideal.truth.proofStrengths.map(({ stress }) => stress * (1 - 0.002))[1]).toBeCloseTo(200, 9);
});

test('offsets beyond the end have no strength; the same seed gives the same record', () => {
  expect(simulateCompression({ ...swift, until: 0.005 }).truth.proofStrengths.map(({ offset }) => offset)).toEqual([0.001, 0.002]);
  const noisy = { ...swift, logger: { forceNoise: 20, motionNoise: 1e-3 }, seed: 4 };
  expect(simulateCompression(noisy)).toEqual(simulateCompression(noisy));
  expect(simulateCompression(noisy).record.force).not.toEqual(simulateCompression({ ...noisy, seed: 5 }).record.force);
});

test('wrong scenarios are refused by name', () => {
  const with_ = (change: object) => refusal(() => simulateCompression({ ...swift, ...change }));
  expect(with_({ until: 0.95 })).toBe('out-of-range until');
  expect(with_({ friction: -0.1 })).toBe('out-of-range friction');
  expect(with_({ bulge: 0 })).toBe('not-positive bulge');
  expect(with_({ seed: 0.5 })).toBe('out-of-range seed');
  expect(with_({ frame: { bore: 40 } })).toBe('unknown-option frame.bore');
  expect(with_({ hand: { pauses: [] } })).toBe('unknown-option hand.pauses');
  expect(with_({ piece: { section: piece.section, height: -1 } })).toBe('not-positive piece.height');
  expect(with_({ material: { ...swift.material, yieldPoint: {} } })).toBe('unknown-option material.yieldPoint');
  expect(with_({ material: { modulus: 1, yieldStress: 5, hardening: { law: 'hollomon', strengthCoefficient: 1, exponent: 0.1 } } })).toBe(
    'out-of-range material.yieldStress',
  );
});
