import { describe, expect, test } from 'vitest';
import { findPauses, maximumStress, readRecord, round, type TensionRecord } from '../../src/index.js';
import { randomNumbers, resolution } from '../../src/numeric/index.js';
import { simulateTension, writeRecord, type TensionScenario } from '../../src/simulate/index.js';
import { refusal } from '../support/thrown.js';

const piece = { section: round({ diameter: 8 }), gaugeLength: 40, parallelLength: 48 };
const swift: TensionScenario = {
  material: {
    modulus: 205_000,
    yieldStress: 300,
    hardening: { law: 'swift', prestrain: 0.02, exponent: 0.2 },
    fracture: { extension: 0.3, share: 0.7 },
  },
  piece,
  frame: { compliance: 2e-5, slack: 0.3, seating: 0.05 },
  logger: { rate: 50 },
};

describe('the truth is that of the model', () => {
  test("Hollomon: Rm = K n^n e^-n, the neck at n (Considère's closed form)", () => {
    const { truth } = simulateTension({
      material: { modulus: 200_000, hardening: { law: 'hollomon', strengthCoefficient: 530, exponent: 0.26 } },
      piece,
    });
    expect(truth.tensileStrength).toBeCloseTo(530 * 0.26 ** 0.26 * Math.exp(-0.26), 9);
    expect(truth.uniformExtension).toBeCloseTo(Math.expm1(0.26), 12);
    expect(truth.proofStrengths.find(({ offset }) => offset === 0.002)!.stress).toBeCloseTo((530 * Math.log(1.002) ** 0.26) / 1.002, 9);
  });

  test('Swift and Voce neck where their closed forms say', () => {
    expect(simulateTension(swift).truth.uniformExtension).toBeCloseTo(Math.expm1(0.2 - 0.02), 12);
    const voce = simulateTension({
      material: { modulus: 70_000, yieldStress: 150, hardening: { law: 'voce', saturationStress: 400, rate: 10 } },
      piece,
    });
    // Voce 400, 150, 10: necking at 0.192789, strength 299.875 MPa
    expect(Math.log1p(voce.truth.uniformExtension)).toBeCloseTo(0.192789, 6);
    expect(voce.truth.tensileStrength).toBeCloseTo(299.875, 3);
  });

  test('samples without noise lie on it: maximum and energy by the samples agree', () => {
    const { record, truth } = simulateTension({ ...swift, logger: { rate: 400, extensometer: true } });
    const curve = { strain: record.extension!.map((x) => x / 40), stress: record.force.map((F) => F / piece.section.area) };
    const top = maximumStress(curve);
    expect(Math.abs(top.stress / truth.tensileStrength - 1)).toBeLessThan(1e-7);
    expect(top.strain).toBeCloseTo(truth.totalExtensionAtMaximumForce, 3);
    const area = curve.strain
      .slice(1)
      .reduce((sum, e, i) => sum + ((e - curve.strain[i]!) * (curve.stress[i]! + curve.stress[i + 1]!)) / 2, 0);
    expect(Math.abs(area / truth.toughness - 1)).toBeLessThan(1e-5);
    expect(record.travel!.every((x, i) => i === 0 || x >= record.travel![i - 1]! - 1e-12)).toBe(true);
  });

  test('what a person measures on the broken piece goes with A and Z', () => {
    const { truth } = simulateTension({ ...swift, material: { ...swift.material, reductionOfArea: 0.6 } });
    expect(truth.afterFracture.gaugeLength! / 40 - 1).toBeCloseTo(truth.elongationAfterFracture, 12);
    expect(1 - truth.afterFracture.area! / piece.section.area).toBeCloseTo(0.6, 12);
    expect(truth.elongationAfterFracture).toBeGreaterThan(0.3);
  });

  test('a soft frame snaps forward at the yield drop, and the record still lies on the model', () => {
    const { record, truth } = simulateTension({
      ...swift,
      material: { ...swift.material, yieldPoint: { upper: 330 } },
      logger: { rate: 100, extensometer: true },
    });
    expect(Math.max(...record.force.slice(0, 1800)) / piece.section.area).toBeGreaterThan(327);
    expect(truth.yieldPointExtension).toBeCloseTo(0.012 + (300 - 330) / 205_000, 12);
  });
});

describe('seeds, noise and steps', () => {
  test('the same seed gives the same record to the last bit, another seed another', () => {
    const noisy = { ...swift, logger: { rate: 50, forceNoise: 20, motionNoise: 0.002 } };
    expect(simulateTension({ ...noisy, seed: 5 })).toEqual(simulateTension({ ...noisy, seed: 5 }));
    expect(simulateTension({ ...noisy, seed: 6 }).record.force).not.toEqual(simulateTension({ ...noisy, seed: 5 }).record.force);
  });

  test.each([0, 0.9])('force noise has its standard deviation and its correlation %f', (noiseCorrelation) => {
    const quiet = simulateTension({ ...swift, logger: { rate: 500 } }).record.force;
    const loud = simulateTension({ ...swift, logger: { rate: 500, forceNoise: 20, noiseCorrelation } }).record.force;
    const noise = loud.map((F, i) => F - quiet[i]!);
    const product = (lag: number): number => noise.slice(lag).reduce((sum, one, i) => sum + one * noise[i]!, 0) / noise.length;
    // about 100 000 samples; correlated ones count for a twentieth
    expect(Math.abs(Math.sqrt(product(0)) / 20 - 1)).toBeLessThan(0.05);
    expect(Math.abs(product(1) / product(0) - noiseCorrelation)).toBeLessThan(0.02);
  });

  test('steps, repeated samples, late start, tail, an extensometer taken off', () => {
    const { record } = simulateTension({
      ...swift,
      logger: {
        rate: 50,
        forceNoise: 20,
        loadStep: 10,
        motionStep: 0.01,
        motionNoise: 0.01,
        repeated: 0.2,
        tail: 2,
        lead: 1,
        extensometer: { offAt: 0.1 },
      },
    });
    expect(resolution(record.force)).toBeCloseTo(10, 9);
    expect(resolution(record.travel!)).toBeCloseTo(0.01, 9);
    const repeated = record.force.filter(
      (F, i) => i > 0 && F === record.force[i - 1] && record.travel![i] === record.travel![i - 1],
    ).length;
    expect(repeated / record.force.length).toBeGreaterThan(0.15);
    expect(Math.abs(record.force.at(-1)!)).toBeLessThan(100);
    expect(Number.isNaN(record.extension!.at(-1)!)).toBe(true);
    const late = simulateTension({ ...swift, logger: { rate: 50, lateStart: 0.3 } });
    expect(late.record.force[0]! / late.truth.maximumForce).toBeGreaterThanOrEqual(0.3);
    expect(late.record.time![0]).toBe(0);
  });

  test('pauses of the hand are where they were asked for, with their relaxation', () => {
    const { record, truth } = simulateTension({
      ...swift,
      hand: {
        speed: 0.05,
        strokes: 20,
        depth: 0.2,
        pauses: [
          { stress: 200, duration: 3 },
          { stress: 350, duration: 5, relaxation: 0.03 },
        ],
      },
    });
    const found = findPauses(record);
    expect(found).toHaveLength(2);
    found.forEach((pause, k) => {
      expect(Math.abs(pause.range[0] - truth.pauses[k]![0])).toBeLessThanOrEqual(2);
      expect(pause.fall / record.force[pause.range[0]]!).toBeCloseTo([0.02, 0.03][k]!, 2);
    });
  });

  test('pressure: bore, rod and friction', () => {
    const { record, pressureRecord } = simulateTension({ ...swift, frame: { bore: 40, rod: 20, friction: 100 } });
    const truth = simulateTension({ ...swift, frame: {} }).record.force;
    const top = pressureRecord!.pressure.reduce((a, b) => Math.max(a, b));
    expect(top * 300 * Math.PI).toBeCloseTo(Math.max(...truth) + 100, 3);
    expect(record.force[0]).toBe(pressureRecord!.pressure[0]! * 300 * Math.PI);
  });
});

test('random numbers: means and variances of uniform and normal', () => {
  const { uniform, normal } = randomNumbers(42);
  const n = 100_000;
  const u = Array.from({ length: n }, uniform);
  const z = Array.from({ length: n }, normal);
  const mean = (list: readonly number[]): number => list.reduce((a, b) => a + b, 0) / n;
  // four standard errors of each
  expect(Math.abs(mean(u) - 0.5)).toBeLessThan(4 * Math.sqrt(1 / 12 / n));
  expect(Math.abs(mean(z))).toBeLessThan(4 / Math.sqrt(n));
  expect(Math.abs(mean(z.map((one) => one * one)) - 1)).toBeLessThan(4 * Math.sqrt(2 / n));
  expect(u.every((one) => one >= 0 && one < 1)).toBe(true);
});

test('a record written as a logger would is read back', () => {
  const { record } = simulateTension({ ...swift, logger: { rate: 10, extensometer: { offAt: 0.05 } } });
  const text = writeRecord(record, {
    preamble: ['Data: invented'],
    columns: [
      { quantity: 'time', name: 'Zeit', unit: 's', decimals: 2 },
      { quantity: 'force', name: 'Kraft', unit: 'kN', decimals: 4 },
      { quantity: 'travel', name: 'Traversenweg', unit: 'mm', decimals: 4 },
      { quantity: 'extension', name: 'Verlängerung', unit: 'µm', decimals: 2 },
    ],
  });
  const back = readRecord(text).record as TensionRecord;
  expect(back.force).toHaveLength(record.force.length);
  back.force.forEach((F, i) => {
    expect(Math.abs(F - record.force[i]!)).toBeLessThanOrEqual(0.0501);
  });
  expect(back.extension!.findIndex(Number.isNaN)).toBe(record.extension!.findIndex(Number.isNaN));
});

test.each([
  ['not-positive material.modulus', { material: { ...swift.material, modulus: -1 } }],
  ['not-finite material.modulus', { material: { ...swift.material, modulus: NaN } }],
  ['unknown-option material.colour', { material: { ...swift.material, colour: 1 } }],
  ['out-of-range material.fracture.extension', { material: { ...swift.material, fracture: { extension: 0.1 } } }],
  ['out-of-range material.yieldPoint.upper', { material: { ...swift.material, yieldPoint: { upper: 300 } } }],
  [
    'out-of-range material.yieldStress',
    { material: { ...swift.material, hardening: { law: 'hollomon', strengthCoefficient: 500, exponent: 0.2 } } },
  ],
  [
    'out-of-range material.hardening.saturationStress',
    { material: { ...swift.material, hardening: { law: 'voce', saturationStress: 200, rate: 5 } } },
  ],
  ['out-of-range material.hardening.law', { material: { ...swift.material, hardening: { law: 'ludwig' } } }],
  ['missing material', { material: undefined }],
  ['unknown-option scenario.frames', { frames: {} }],
  ['unknown-option hand.pulse', { hand: { pulse: 1 } }],
  ['not-positive hand.speed', { hand: { speed: 0 } }],
  ['out-of-range hand.pauses[0].relaxation', { hand: { pauses: [{ stress: 1, duration: 1, relaxation: 0.9 }] } }],
  ['out-of-range logger.repeated', { logger: { repeated: 1 } }],
  ['too-large logger.rate', { logger: { rate: 1e9 } }],
  ['out-of-range seed', { seed: 1.5 }],
  ['not-positive offsets[0]', { offsets: [0] }],
])('%s', (expected, change) => {
  expect(refusal(() => simulateTension({ ...swift, ...change } as TensionScenario))).toBe(expected);
});

test.each([
  ['missing options.columns[0]', { columns: [{ quantity: 'strain', name: 'e', unit: '1', decimals: 1 }] }],
  ['unknown-unit options.columns[0].unit', { columns: [{ quantity: 'force', name: 'F', unit: 'mm', decimals: 1 }] }],
  ['out-of-range options.separator', { separator: ',', columns: [] }],
])('writeRecord: %s', (expected, options) => {
  expect(refusal(() => writeRecord({ force: [1], travel: [1] }, options as never))).toBe(expected);
});
