import { describe, expect, test } from 'vitest';
import { analyseTension, round, testingRates } from '../../src/index.js';
import { simulateTension, type SimulatedHand } from '../../src/simulate/index.js';

const piece = { section: round({ diameter: 8 }), gaugeLength: 40, parallelLength: 48 };
const material = { modulus: 205_000, yieldStress: 320, hardening: { law: 'swift' as const, prestrain: 0.02, exponent: 0.16 } };
/** A test on a stiff frame with an extensometer: the crosshead's speed is the piece's, over its parallel length. */
const pulled = (hand: SimulatedHand, clock = true) => {
  const { record } = simulateTension({ material, piece, hand, logger: { rate: 50, extensometer: true } });
  const { time, ...rest } = record;
  return analyseTension(clock && time ? { ...rest, time } : rest, { ...piece, extensometerLength: 40 });
};

describe('how a piece was loaded', () => {
  test('by strain rate in range 2 up to yield and range 4 beyond: the local rates are those of the hand', () => {
    const { loading } = pulled({ speed: 48 * 0.00025, speedAfterYield: 48 * 0.0067 });
    const [elastic, yielding, hardening] = loading!.stages;
    expect(elastic!.strainRate.median).toBeCloseTo(0.00025, 7);
    expect(elastic!.stressRate.median).toBeCloseTo(205_000 * 0.00025, 1);
    expect(yielding!.stage).toBe('yield');
    expect(hardening!.strainRate.median).toBeCloseTo(0.0067, 5);
    expect(loading!.designations[0]).toBe('A224');
    // 51 MPa/s is within method B for a stiff material too
    expect(loading!.designations[1]).toBe('B51');
    const met = loading!.controls.filter((one) => one.met).map(({ control, stage }) => `${stage}: ${control}`);
    expect(met).toContain('elastic: ISO 6892-1 method A, range 2');
    expect(met).toContain('elastic: ASTM E8/E8M control B');
    expect(met).not.toContain('elastic: ASTM E8/E8M control A');
  });

  test('too fast for any control', () => {
    const { loading, findings } = pulled({ speed: 48 * 0.01, speedAfterYield: 48 * 0.05 });
    expect(loading!.controls.filter((one) => one.met)).toEqual([]);
    expect(loading!.designations).toEqual([]);
    expect(findings.map(({ code }) => code)).toEqual(expect.arrayContaining(['stress-rate-outside', 'strain-rate-high']));
  });

  test('a rate exactly at a limit is within; without a clock nothing is said', () => {
    const [low, high] = testingRates.strainRanges[1]!.limits;
    expect([low, high]).toEqual([0.0002, 0.0003]);
    expect(pulled({ speed: 0.012 }, false).loading).toBeUndefined();
  });
});
