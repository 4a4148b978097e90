import { describe, expect, test } from 'vitest';
import {
  analyseTension,
  fitSwift,
  flowCurve,
  flowOf,
  fromJson,
  required,
  swift,
  toJson,
  trueCurve,
  type TensionResult,
} from '../../src/index.js';
import { simulateTension } from '../../src/simulate/index.js';
import { roundPiece } from '../support/records.js';
import { refusal } from '../support/thrown.js';

const E = 206_000;
const YIELD = 420;
const law = { prestrain: 0.02, exponent: 0.15 };
const hand = { speed: 0.05, speedAfterYield: 0.2 };
const recordOf = (unloadings: readonly { stress: number }[]) =>
  simulateTension({
    material: { modulus: E, yieldStress: YIELD, hardening: { law: 'swift', ...law }, fracture: { extension: 0.3 } },
    piece: roundPiece,
    hand: { ...hand, unloadings },
    logger: { rate: 20, extensometer: true, forceNoise: 0, motionNoise: 0 },
  }).record;
// flow of the material begins at its yield stress: K = σ_y / ε_0^n
const { stress: made } = swift({ strengthCoefficient: YIELD / law.prestrain ** law.exponent, ...law });
/** The simulator keeps the volume in plastic strain, 1 + e in all of it: the true stress of a record holds the elastic strain once more. */
const truth = (p: number): number => made(p) * Math.exp(made(p) / E);

describe('a test that was unloaded three times while it hardened', () => {
  const result = analyseTension(recordOf([{ stress: 440 }, { stress: 460 }, { stress: 480 }]), roundPiece);
  const flow = required(flowOf(result));
  const whole = flowCurve(trueCurve(result.curve, { to: result.maximumIndex }), { modulus: result.elasticSlope!.value });
  const farthest = ({ strain, stress }: { strain: ArrayLike<number>; stress: ArrayLike<number> }): number =>
    Math.max(...Array.from(strain, (p, i) => (p > 0.002 ? Math.abs(stress[i]! / truth(p) - 1) : 0)));

  test('the flow curve is the law of the material at every sample, where the whole curve goes down with the unloadings', () => {
    expect(result.interruptions?.filter(({ kind }) => kind === 'unloading')).toHaveLength(3);
    // loading is back within a sample: 2e-4 of plastic strain, n 2e-4 / ε_0 of the stress
    expect(farthest(flow)).toBeLessThan(0.0015);
    expect(farthest(whole)).toBeGreaterThan(0.5);
  });

  test('its law is that of the material', () => {
    const { prestrain, exponent } = required(fitSwift(flow, { from: 0.005 }));
    expect(prestrain).toBeCloseTo(law.prestrain, 3);
    expect(exponent).toBeCloseTo(law.exponent, 3);
  });

  test('it ends with the maximum, and comes from JSON alike', () => {
    const { strain, stress } = result.curve;
    const top = result.maximumIndex;
    expect(flow.stress.at(-1)).toBeCloseTo(stress[top]! * (1 + strain[top]!), 9);
    expect(required(flowOf(fromJson(toJson(result))))).toMatchObject({ strain: flow.strain, stress: flow.stress });
  });
});

test('a test that was loaded on is trueCurve and flowCurve as they are', () => {
  const result = analyseTension(recordOf([]), roundPiece);
  expect(result.interruptions).toBeUndefined();
  const { strain, stress } = flowCurve(trueCurve(result.curve, { to: result.maximumIndex }), { modulus: result.elasticSlope!.value });
  expect(required(flowOf(result))).toMatchObject({ strain, stress });
});

test('no line, a slip that the strain counts, and what is no result', () => {
  const result = analyseTension(recordOf([]), roundPiece);
  expect(flowOf({ ...result, elasticSlope: undefined })).toMatchObject({ ok: false, reason: 'no-line' });
  const slip = (at: number): TensionResult => ({
    ...result,
    interruptions: [{ kind: 'slip', range: [at, at + 5], fall: 40, strain: 0.002 }],
  });
  expect(flowOf(slip(100))).toMatchObject({ ok: false, reason: 'after-slip' });
  expect(flowOf(slip(result.maximumIndex + 10))).toMatchObject({ ok: true });
  expect(refusal(() => flowOf({ ...result, method: 'bending' } as never))).toBe('wrong-type result.method');
  expect(refusal(() => flowOf(undefined as never))).toBe('missing result');
});

test('a result that was read as JSON alone, and one that is none', () => {
  const result = analyseTension(recordOf([]), roundPiece);
  expect(required(flowOf(JSON.parse(toJson(result)) as TensionResult))).toEqual(required(flowOf(result)));
  expect(refusal(() => flowOf({ method: 'tension' } as never))).toBe('missing result.curve');
  expect(refusal(() => flowOf({ ...result, maximumIndex: undefined } as never))).toBe('missing result.maximumIndex');
});
