/** Tests that ended before hardening, by the law of the curve: to ReH, down to a level within 0.08 % of strain, and a neck that falls as a parabola. */
import { describe, expect, test } from 'vitest';
import { analyseTension, round, type TensionResult } from '../../src/index.js';
import { simulateTension } from '../../src/simulate/index.js';

const piece = { section: round({ diameter: 8 }), gaugeLength: 40, parallelLength: 48 };
const [UPPER, LOWER, PLATEAU] = [320, 300, 0.015];
const material = {
  modulus: 205_000,
  yieldStress: LOWER,
  yieldPoint: { upper: UPPER, plateau: PLATEAU },
  hardening: { law: 'swift' as const, prestrain: 0.025, exponent: 0.2 },
  fracture: { extension: 0.3 },
};
const { record } = simulateTension({
  material,
  piece,
  hand: { speed: 0.02 },
  logger: { rate: 20, extensometer: true, forceNoise: 10, motionNoise: 1e-4 },
});
const extension = record.extension!;

/** The test stopped at a plastic strain, by its record or by its drive. */
function stopped(at: number, unloads: boolean): TensionResult {
  const end = extension.findIndex((x) => x / piece.gaugeLength > UPPER / material.modulus + at);
  const back = unloads ? 60 : 0;
  const follow = (column: ArrayLike<number>, per: number) =>
    Float64Array.from({ length: end + back }, (_, i) => {
      const last = column[end - 1]!;
      return i < end ? column[i]! : last - ((i - end + 1) / back) * 0.95 * per;
    });
  const F = record.force[end - 1]!;
  const stretch = F / piece.section.area / material.modulus;
  return analyseTension({ force: follow(record.force, F), extension: follow(extension, piece.gaugeLength * stretch) }, piece);
}
const whyNot = ({ findings }: TensionResult) => findings.find(({ code }) => code === 'no-yield-point')?.values['why'];

describe.each([
  ['its record ended', false],
  ['it was unloaded', true],
])('a test on its level of yielding where %s', (_, unloads) => {
  const result = stopped(0.008, unloads);

  test('has ReH and ReL, with the caution that hardening was not seen', () => {
    // noise of 10 N is 0.2 MPa: the extremes of some hundred samples lie three deviations off
    expect(Math.abs(result.upperYieldStrength!.value - UPPER)).toBeLessThan(1);
    expect(Math.abs(result.lowerYieldStrength!.value - LOWER)).toBeLessThan(1);
    expect(result.findings.find(({ code }) => code === 'ends-before-hardening')).toMatchObject({
      severity: 'caution',
      field: 'lowerYieldStrength',
      values: { lower: result.lowerYieldStrength!.value, upper: result.upperYieldStrength!.value },
    });
  });

  test('has neither Ae nor what stands at the maximum force', () => {
    for (const name of ['yieldPointExtension', 'totalExtensionAtMaximumForce', 'uniformExtension', 'necking', 'hardening'] as const)
      expect(result[name]).toBeUndefined();
    expect(result.findings.filter(({ code }) => code === 'not-determined').map(({ values }) => values)).toContainEqual({
      symbol: 'Ag, Agt, εu, n, K',
      why: 'the test ended on the level of yielding, before hardening',
    });
    expect(result.findings.map(({ code }) => code)).not.toContain('maximum-below-upper-yield');
  });

  test('has the strengths that lie on the level, as the test that went on has', () => {
    const whole = stopped(0.1, false);
    // the line is searched on another part of the record, so it is another one within its noise
    expect(result.proofStrengths.map(({ symbol }) => symbol)).toEqual(whole.proofStrengths.map(({ symbol }) => symbol));
    expect(Math.abs(result.proofStrengths[0]!.value - whole.proofStrengths[0]!.value)).toBeLessThan(0.5);
    expect(result.findings.map(({ code }) => code)).not.toContain('proof-strength-not-reached');
  });
});

test('a fall from one sample to the next is that of ReH, and no doubt of a spike', () => {
  const strain = Array.from({ length: 200 }, (_, i) => i * 1e-4);
  const stress = strain.map((e) => (e <= 0.0015 ? 200_000 * e : 270));
  const result = analyseTension({ force: stress.map((R) => R * piece.section.area), extension: strain.map((e) => e * 40) }, piece);
  const codes = result.findings.map(({ code }) => code);
  expect(codes).toContain('ends-before-hardening');
  expect(codes).not.toContain('maximum-is-spike');
});

test('too soon after the fall what the peak was is left open', () => {
  const result = stopped(0.0015, false);
  expect(result.upperYieldStrength).toBeUndefined();
  expect(whyNot(result)).toBe('the record ends after a fall, too soon to tell a level of yielding from a neck');
});

test('with hardening nothing of it is said', () => {
  const codes = stopped(0.1, false).findings.map(({ code }) => code);
  expect(codes).not.toContain('ends-before-hardening');
});

test.each([0.005, 0.02, 0.06])('a neck that was stopped %d beyond its maximum is no level', (beyond) => {
  // the stress falls by a twentieth at most, as the square of the way
  const strain = Array.from({ length: 3000 }, (_, i) => (i / 3000) * (0.004 + beyond));
  const stress = strain.map((e) => (e < 0.003 ? 200_000 * e : 600 * (1 - 0.05 * ((e - 0.003) / beyond) ** 2)));
  const force = stress.map((R) => R * piece.section.area);
  const result = analyseTension({ force, extension: strain.map((e) => e * piece.gaugeLength) }, piece);
  expect(result.upperYieldStrength).toBeUndefined();
  expect(whyNot(result)).toBe('after its highest point the curve only falls: that is the maximum, not a yield point');
});
