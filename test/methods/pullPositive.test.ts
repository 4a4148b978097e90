import { expect, test } from 'vitest';
import { analyseTension } from '../../src/index.js';
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
  hand: { speed: 0.005, speedAfterYield: 0.1 },
  logger: { rate: 20, lead: 1, tail: 1, forceNoise: 5, motionNoise: 3e-4 },
});
const negative = { ...record, force: record.force.map((F) => -F) };
const codes = ({ findings }: ReturnType<typeof analyseTension>) => findings.map(({ code }) => code);

test('pull that counts as negative is turned, said, and gives the numbers of the pull', () => {
  const asked = { frameCompliance: 2e-5 };
  const sound = analyseTension(record, roundPiece, asked);
  const found = analyseTension(negative, roundPiece, asked);
  expect(found.curve).toEqual(sound.curve);
  expect(found.tensileStrength.value).toBe(sound.tensileStrength.value);
  expect(found.findings.find(({ code }) => code === 'force-sign-reversed')!.severity).toBe('caution');
  expect(codes(found)).toContain('signs-turned');
  expect(codes(found)).not.toContain('force-looks-like-kilonewton');
  expect(found.trail[0]).toMatchObject({ code: 'sign-turned', values: { column: 'force' } });
  expect(analyseTension(negative, roundPiece, { ...asked, repairs: { reverse: ['force'] } }).curve).toEqual(sound.curve);
});

test('slack at no force is idle travel, no toe; steel is linear up to its yield by every definition', () => {
  const found = analyseTension(record, roundPiece, { frameCompliance: 2e-5 });
  expect(codes(found)).not.toContain('toe-long');
  for (const proportionalLimit of ['tangent', 'johnson'] as const)
    expect(analyseTension(record, roundPiece, { frameCompliance: 2e-5, proportionalLimit }).proportionalLimit!.value).toBeGreaterThan(
      0.85 * 280,
    );
});

test('a strength that a brittle metal does not have is a caution, no line at all a fault', () => {
  const stress = Float64Array.from({ length: 500 }, (_, i) => i / 2);
  const brittle = analyseTension({ force: stress, strain: stress.map((F) => F / (110_000 * 50)) }, roundPiece);
  expect(brittle.findings.find(({ code }) => code === 'proof-strength-not-reached')!.severity).toBe('caution');
  const none = analyseTension({ force: [0, 1], extension: [0, 1] }, roundPiece);
  expect(none.findings.find(({ values }) => values['symbol'] === 'mE')!.severity).toBe('fault');
});
