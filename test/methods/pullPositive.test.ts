import { expect, test } from 'vitest';
import { analyseTension, proportionalLimit, required } from '../../src/index.js';
import { simulateTension } from '../../src/simulate/index.js';
import { roundPiece } from '../support/records.js';

const { record } = simulateTension({
  material: {
    modulus: 206_000,
    yieldStress: 280,
    hardening: { law: 'swift', prestrain: 0.03, exponent: 0.25 },
    fracture: { extension: 0.35 },
  },
  piece: roundPiece,
  frame: { compliance: 2e-5, slack: 0.2 },
  hand: { speed: 0.02, speedAfterYield: 0.1 },
  logger: { rate: 20, lead: 1, tail: 1, forceNoise: 5, motionNoise: 3e-4 },
});
const negative = { ...record, force: record.force.map((F) => -F) };
/** A small generator of even numbers. */
const mulberry = (seed: number) => () => {
  seed = (seed + 0x6d2b79f5) | 0;
  let t = Math.imul(seed ^ (seed >>> 15), seed | 1);
  t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
  return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
};
const codes = ({ findings }: ReturnType<typeof analyseTension>) => findings.map(({ code }) => code);

test('pull that counts as negative is turned, said, and gives the numbers of the pull', () => {
  const asked = { frameCompliance: 2e-5 };
  const sound = analyseTension(record, roundPiece, asked);
  const found = analyseTension(negative, roundPiece, asked);
  expect(found.curve).toEqual(sound.curve);
  expect(found.tensileStrength!.value).toBe(sound.tensileStrength!.value);
  expect(found.findings.find(({ code }) => code === 'force-sign-reversed')!.severity).toBe('caution');
  expect(codes(found)).toContain('signs-turned');
  expect(codes(found)).not.toContain('force-looks-like-kilonewton');
  expect(found.trail[0]).toMatchObject({ code: 'sign-turned', values: { column: 'force' } });
  expect(analyseTension(negative, roundPiece, { ...asked, repairs: { reverse: ['force'] } }).curve).toEqual(sound.curve);
});

test('slack at no force is idle travel, no toe', () => {
  expect(codes(analyseTension(record, roundPiece, { frameCompliance: 2e-5 }))).not.toContain('toe-long');
});

test('steel is linear up to its yield by every definition, though the noise is in the strain', () => {
  const random = mulberry(7);
  const strain = Float64Array.from({ length: 1200 }, (_, i) => 2e-6 * i);
  const stress = strain.map((e) => (e < 330 / 205_000 ? 205_000 * e : 330 + 1000 * (e - 330 / 205_000)));
  const noisy = strain.map((e) => e + 6e-6 * Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random()));
  for (const definition of ['offset', 'deviation', 'tangent', 'johnson'] as const) {
    const limit = required(proportionalLimit({ strain: noisy, stress }, { modulus: 205_000, definition, residualStandardDeviation: 1.23 }));
    expect(Math.abs(limit.stress / 330 - 1), definition).toBeLessThan(0.05);
  }
});

test('a strength that a brittle metal does not have is a caution, no line at all a fault', () => {
  const stress = Float64Array.from({ length: 500 }, (_, i) => i / 2);
  const brittle = analyseTension({ force: stress, strain: stress.map((F) => F / (110_000 * 50)) }, roundPiece);
  expect(brittle.findings.find(({ code }) => code === 'proof-strength-not-reached')!.severity).toBe('caution');
  const none = analyseTension({ force: [0, 1], extension: [0, 1] }, roundPiece);
  expect(none.findings.find(({ values }) => values['symbol'] === 'mE')!.severity).toBe('fault');
});
