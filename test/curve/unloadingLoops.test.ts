import { describe, expect, test } from 'vitest';
import { required, round, stressStrain, unloadingLoops } from '../../src/index.js';
import { simulateTension, type SimulatedHand, type SimulatedLogger } from '../../src/simulate/index.js';
import { refusal } from '../support/thrown.js';

const piece = { section: round({ diameter: 8 }), gaugeLength: 40, parallelLength: 48 };
const material = { modulus: 205_000, yieldStress: 300, hardening: { law: 'swift' as const, prestrain: 0.02, exponent: 0.2 } };
const unloadings = [{ stress: 250 }, { stress: 330, bow: 4e-5, to: 0.05 }, { stress: 370, bow: 8e-5, modulus: 190_000, to: 0 }];
const simulated = (hand: SimulatedHand = { unloadings }, logger: SimulatedLogger = {}) =>
  simulateTension({ material, piece, hand: { speed: 0.02, ...hand }, logger: { rate: 50, extensometer: true, ...logger } });
const curveOf = ({ record }: ReturnType<typeof simulated>) => stressStrain({ force: record.force, extension: record.extension! }, piece);

describe('unloadingLoops', () => {
  const made = simulated();
  const found = required(unloadingLoops(curveOf(made)));

  test('tops, slopes, sets and energies are those of the simulation', () => {
    expect(found.loops).toHaveLength(3);
    made.truth.unloadings!.forEach((truth, k) => {
      const loop = found.loops[k]!;
      expect(loop.top.index).toBe(truth.index);
      expect(loop.top.stress).toBeCloseTo(truth.stress, 9);
      // the bow is even about the middle of the fall; a window that ends on samples (one of 230) and leaves out 0.3 % is off it by 0.7 %
      expect(Math.abs(loop.slope / truth.slope - 1)).toBeLessThan((8 * 8e-5 * 0.007) / (370 / 190_000));
      // up to 0.3 % of the fall is left out at the bottom, where the bow still holds four times that share of itself
      expect(Math.abs(loop.permanentSet - truth.permanentSet)).toBeLessThan(4 * 0.003 * 8e-5 + 1e-7);
      // trapezoids over some thirty steps of a parabola, and the end of the fall that is left out
      expect(Math.abs(loop.energy! - truth.energy)).toBeLessThan(0.01 * truth.energy + 1e-5);
    });
  });

  test('a window that is searched for finds the straight unloading too', () => {
    const searched = required(unloadingLoops(curveOf(made), { window: 'search' }));
    expect(searched.loops[0]!.slope / 205_000).toBeCloseTo(1, 6);
    expect(unloadingLoops(curveOf(made), { window: { from: 0.3, to: 0.7 } })).toMatchObject({ ok: true });
  });

  test('with noise: slopes within five of their standard errors', () => {
    const noisy = simulated({ unloadings }, { forceNoise: 8, motionNoise: 5e-5 });
    const { loops } = required(unloadingLoops(curveOf(noisy)));
    expect(loops).toHaveLength(3);
    noisy.truth.unloadings!.forEach(({ slope, permanentSet }, k) => {
      // noise of strain in the regressor takes a little off besides
      expect(Math.abs(loops[k]!.slope - slope)).toBeLessThan(5 * loops[k]!.standardError + 0.002 * slope);
      expect(Math.abs(loops[k]!.permanentSet - permanentSet)).toBeLessThan(2e-5);
    });
  });

  test('a pause, a yield drop and a fracture are no unloadings', () => {
    const paused = simulated({ pauses: [{ stress: 320, duration: 20, relaxation: 0.15 }] });
    expect(unloadingLoops(curveOf(paused))).toMatchObject({ ok: false, reason: 'motion-not-reversed' });
    const dropping = simulateTension({
      material: { ...material, yieldPoint: { upper: 360 } },
      piece,
      logger: { extensometer: true, tail: 1 },
    });
    expect(unloadingLoops(stressStrain(dropping.record, piece))).toMatchObject({ ok: false, reason: 'motion-not-reversed' });
  });

  test('a curve that only rises has none; one without a line before its first top says so', () => {
    expect(unloadingLoops({ strain: [0, 1, 2], stress: [0, 1, 2] })).toMatchObject({ ok: false, reason: 'no-unloading' });
    expect(unloadingLoops({ strain: [0, 0.01, 0.005], stress: [0, 300, 0] })).toMatchObject({ ok: false, reason: 'no-line' });
  });

  test('a last unloading without a rise has no energy; a known line serves where none can be fitted', () => {
    const strain = [0, 0.01, 0.0096, 0.0092, 0.0088, 0.0085];
    const stress = [0, 300, 220, 140, 60, 0];
    const { loops } = required(unloadingLoops({ strain, stress }, { modulus: 200_000, strainShift: 0 }));
    expect(loops[0]!.slope).toBeCloseTo(200_000, 6);
    expect(loops[0]!.permanentSet).toBeCloseTo(0.0085, 12);
    expect(loops[0]).not.toHaveProperty('energy');
  });

  test('a piece that hangs loose while the drive goes on back ends where the force has gone', () => {
    const strain = [0, 0.01, 0.009, 0.0085, 0.004, 0, 0.004, 0.0085, 0.009, 0.01];
    const stress = [0, 300, 100, 0.5, 0.2, 0, 0.1, 0.5, 100, 300];
    const { loops } = required(unloadingLoops({ strain, stress }, { modulus: 200_000, strainShift: 0, window: { from: 0, to: 0.9 } }));
    expect(loops[0]!.bottom.index).toBe(3);
    expect(loops[0]!.energy).toBeCloseTo(0, 2);
  });

  test('a loop that comes back short of its top counts over the strain that both ways pass', () => {
    // a parallelogram: down along 0.010 to 0.009, up again from 0.009 to 0.0095 above it
    const strain = [0, 0.01, 0.009, 0.0091, 0.0095, 0.009];
    const stress = [0, 300, 100, 200, 280, 100];
    expect(unloadingLoops({ strain, stress }, { modulus: 200_000, strainShift: 0 })).toMatchObject({ ok: false, reason: 'too-few-points' });
    const { loops } = required(unloadingLoops({ strain, stress }, { modulus: 200_000, strainShift: 0, window: { from: 0, to: 1 } }));
    const below = ((100 + 200) / 2) * 0.0005;
    const above = ((100 + 200) / 2) * 0.0001 + ((200 + 280) / 2) * 0.0004;
    expect(loops[0]!.energy).toBeCloseTo(above - below, 12);
  });

  test('wrong options are refused', () => {
    const call = (options: object) => refusal(() => unloadingLoops({ strain: [0, 1, 2], stress: [0, 1, 2] }, options));
    expect(call({ modulus: 0 })).toBe('not-positive options.modulus');
    expect(call({ strainShift: NaN })).toBe('not-finite options.strainShift');
    expect(call({ minimumFall: 2 })).toBe('out-of-range options.minimumFall');
    expect(call({ window: { from: 0.9, to: 0.1 } })).toBe('out-of-range options.window.to');
    expect(call({ window: { from: 0, to: 1, by: 'x' } })).toBe('unknown-option options.window.by');
    expect(call({ limit: 1 })).toBe('unknown-option options.limit');
    expect(refusal(() => simulated({ unloadings: [{ stress: 0 }] }))).toBe('not-positive hand.unloadings[0].stress');
    expect(refusal(() => simulated({ unloadings: [{ stress: 1, to: 1 }] }))).toBe('out-of-range hand.unloadings[0].to');
  });
});

test('unloadings leave the rest of a simulated test as it is', () => {
  const without = simulated({});
  const made = simulated();
  expect(made.truth).toMatchObject({ tensileStrength: without.truth.tensileStrength, toughness: without.truth.toughness });
  expect(without.truth).not.toHaveProperty('unloadings');
  const { index } = made.truth.unloadings![0]!;
  expect(made.record.force.slice(0, index + 1)).toEqual(without.record.force.slice(0, index + 1));
  const time = made.record.time!;
  expect(time.every((t, i) => i === 0 || t > time[i - 1]!)).toBe(true);
});
