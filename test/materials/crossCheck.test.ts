import { expect, test } from 'vitest';
import { crossCheck, type CrossCheckInput } from '../../src/index.js';
import { refusal } from '../support/thrown.js';

const sound: CrossCheckInput = {
  tensileStrength: 450,
  modulus: 205_000,
  uniformExtension: 0.18,
  totalExtensionAtMaximumForce: 0.182,
  elongation: 0.3,
  longElongation: 0.24,
  trueFractureStress: 900,
  reductionOfArea: 0.6,
};
const yields = { upperYieldStrength: 300, lowerYieldStrength: 280 };
const proofs = [
  { extension: 0.01, value: 290 },
  { extension: 0.001, value: 260 },
  { extension: 0.002, value: 270 },
];

test('a sound test has no contradiction', () => {
  expect(crossCheck({ ...sound, ...yields, family: 'low-carbon-steel-annealed' })).toEqual([]);
  expect(crossCheck({ ...sound, proofStrengths: proofs })).toEqual([]);
  expect(crossCheck({})).toEqual([]);
});

test.each<[string, string, Partial<CrossCheckInput>, string]>([
  ['ReL', 'ReH', { upperYieldStrength: 280, lowerYieldStrength: 284 }, 'caution'],
  ['Rp0.1', 'Rp0.2', { proofStrengths: [proofs[2]!, { extension: 0.001, value: 275 }] }, 'caution'],
  ['Rp0.2', 'Rp1', { proofStrengths: [{ extension: 0.002, value: 299 }, proofs[0]!] }, 'caution'],
  ['Rp1', 'Rm', { proofStrengths: [{ extension: 0.01, value: 460 }] }, 'caution'],
  ['Ag', 'A', { uniformExtension: 0.313 }, 'caution'],
  ['Agt', 'Rm/E', { totalExtensionAtMaximumForce: 0.002 }, 'caution'],
  ['A11.3', 'A', { longElongation: 0.3 }, 'caution'],
  ['the true stress at fracture', 'Rm', { trueFractureStress: 440 }, 'note'],
  ['ReH', 'Rm', { upperYieldStrength: 440, family: 'low-carbon-steel-annealed' }, 'caution'],
  ['Rp0.2', 'Rm', { proofStrengths: [{ extension: 0.002, value: 300 }], family: 'copper-annealed' }, 'caution'],
])('%s beside %s', (left, right, change, severity) => {
  const found = crossCheck({ ...sound, ...change });
  expect(found).toHaveLength(1);
  expect(found[0]).toMatchObject({ code: 'properties-contradict', severity, values: { left, right } });
  expect(found[0]!.message).not.toMatch(/[{}]|NaN|undefined/);
});

test('limits: equal is sound, within the doubt is sound', () => {
  expect(crossCheck({ upperYieldStrength: 300, lowerYieldStrength: 300 })).toEqual([]);
  expect(crossCheck({ uniformExtension: 0.005, elongation: 0 })).toEqual([]);
  expect(crossCheck({ trueFractureStress: 440, tensileStrength: 450, reductionOfArea: 0.1 })).toEqual([]);
  expect(crossCheck({ elongation: 0, longElongation: 0 })).toEqual([]);
});

test.each<[string, unknown]>([
  ['not-positive tensileStrength', { tensileStrength: 0 }],
  ['not-finite uniformExtension', { uniformExtension: NaN }],
  ['out-of-range elongation', { elongation: -0.1 }],
  ['out-of-range reductionOfArea', { reductionOfArea: 1.2 }],
  ['wrong-type proofStrengths', { proofStrengths: 5 }],
  ['wrong-type proofStrengths[0]', { proofStrengths: [5] }],
  ['not-positive proofStrengths[0].value', { proofStrengths: [{ extension: 0.002, value: -1 }] }],
  ['missing proofStrengths[0].extension', { proofStrengths: [{ value: 1 }] }],
  ['out-of-range family', { family: 'wood' }],
  ['unknown-option input.Rm', { Rm: 5 }],
])('%s', (expected, input) => {
  expect(refusal(() => crossCheck(input as CrossCheckInput))).toBe(expected);
});
