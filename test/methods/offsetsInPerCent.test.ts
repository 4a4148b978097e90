import { describe, expect, test } from 'vitest';
import {
  analyseBending,
  analyseCompression,
  analyseCurve,
  analyseTension,
  crossCheck,
  monteCarloTension,
  offsetLeverage,
  proofStrength,
  proofStrengthBudget,
  proportionalLimit,
  rectangular,
  round,
  totalExtensionStrength,
  whatIf,
} from '../../src/index.js';
import { caseT1, roundPiece } from '../support/records.js';

const curve = { strain: [0, 0.001, 0.1], stress: [0, 200, 300] };
const bar = { section: rectangular({ width: 10, thickness: 4 }), setup: { points: 3, span: 64 } } as const;
const record = caseT1(401);
const uncertainty = { force: 0.005 };
const whole = analyseTension(record, roundPiece);
const plug = { section: round({ diameter: 10 }), height: 15 };

/** Everything that takes the extension of a proof strength, with a field by which the refusal must name it. */
const calls: readonly (readonly [string, string, (extension: number) => unknown])[] = [
  ['analyseTension', 'options.offsets[0]', (e) => analyseTension(record, roundPiece, { offsets: [e] })],
  ['analyseTension, Rt', 'options.totalExtensions[0]', (e) => analyseTension(record, roundPiece, { totalExtensions: [e] })],
  ['analyseTension with budgets', 'options.offsets[1]', (e) => analyseTension(record, roundPiece, { offsets: [0.002, e], uncertainty })],
  ['monteCarloTension', 'options.offsets[0]', (e) => monteCarloTension(record, roundPiece, { offsets: [e], uncertainty, trials: 100 })],
  ['analyseCurve', 'options.offsets[0]', (e) => analyseCurve(curve, { offsets: [e] })],
  ['analyseCompression', 'options.offsets[0]', (e) => analyseCompression({ force: [0, 1e4, 2e4], travel: [0, 0.1, 1] }, plug, { offsets: [e] })],
  ['analyseBending', 'options.offsets[0]', (e) => analyseBending({ force: [0, 100, 200], deflection: [0, 0.5, 1] }, bar, { offsets: [e] })],
  ['whatIf', 'options.offsets[0]', (e) => whatIf(whole, { offsets: [e] })],
  ['proofStrength', 'line.offset', (e) => proofStrength(curve, { modulus: 200_000, offset: e })],
  ['totalExtensionStrength', 'where.totalExtension', (e) => totalExtensionStrength(curve, { totalExtension: e })],
  ['proportionalLimit', 'line.offset', (e) => proportionalLimit(curve, { modulus: 200_000, offset: e })],
  ['offsetLeverage', 'at.offset', (e) => offsetLeverage({ stress: 250, modulus: 200_000, offset: e })],
  ['proofStrengthBudget', 'inputs.offset.value', (e) =>
    proofStrengthBudget({ force: 1e4, area: 50, slope: 200_000, offset: { value: e, uncertainty: 1e-5 }, exponent: 20 })],
  ['crossCheck', 'proofStrengths[0].extension', (e) => crossCheck({ proofStrengths: [{ extension: e, value: 300 }] })],
]; // prettier-ignore

describe('an extension that was given in per cent is refused, and how it is meant is said', () => {
  test.each(calls)('%s', (_, path, call) => {
    for (const extension of [0.1, 0.2, 0.5, 1, 0.0501])
      expect(() => call(extension)).toThrow(
        expect.objectContaining({
          code: 'out-of-range',
          path,
          received: extension,
          message: expect.stringContaining('0.2 % is 0.002') as string,
        }),
      );
    for (const extension of [0.0001, 0.002, 0.02, 0.05]) expect(() => call(extension)).not.toThrow();
  });

  test('a compressive strain may be large, but not more than the height', () => {
    const squeezed = (strain: number) => () =>
      analyseCompression({ force: [0, 1e4, 2e4], travel: [0, 0.1, 1] }, plug, { strains: [strain] });
    expect(squeezed(0.5)).not.toThrow();
    expect(squeezed(5)).toThrow(/options\.strains\[0\] must be 1 at most/);
  });
});
