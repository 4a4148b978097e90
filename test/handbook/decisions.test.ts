import { describe, expect, test } from 'vitest';
import { decide, required } from '../../src/index.js';
import { expectPrinted } from '../support/handbook.js';
import { checkVectors } from '../support/vectors.js';

checkVectors('decisions', 'decide');

// JCGM 106:2012, probability of conformity and guard bands; second derivation by tables of the normal distribution: Φ(2) = 0.97725
test('241 with u 3 against 235, guarded by 1.645 u', () => {
  const guarded = required(decide({ value: 241, standardUncertainty: 3 }, { lower: 235, rule: 'guarded' }));
  expect(guarded.verdict).toBe('pass');
  expect(guarded.rule).toContain('1.645 u');
  expectPrinted(
    required(decide({ value: 241, standardUncertainty: 3 }, { lower: 235, rule: 'guarded', guardFactor: 1.645 })).acceptance.lower!,
    '239.935',
  );
});

// ILAC-G8:09/2019, non-binary statement with a guard band: w = 1.645 · 3 = 4.935 about 235
describe('four verdicts with a guard band', () => {
  test.each([
    [240, 'pass'],
    [239, 'conditional-pass'],
    [235, 'conditional-pass'],
    [234.9, 'conditional-fail'],
    [230.1, 'conditional-fail'],
    [230, 'fail'],
  ])('%f: %s', (value, verdict) => {
    expect(required(decide({ value, standardUncertainty: 3 }, { lower: 235, rule: 'guarded' })).verdict).toBe(verdict);
  });
});

// of the vectors: Φ(1) − Φ(−2) = 0.84134 − 0.02275 = 0.81859; Φ(−1) − Φ(−4) = 0.158655 − 0.000032
test('two limits: 10 with u 1 between 8 and 11', () => {
  const both = required(decide({ value: 10, standardUncertainty: 1 }, { lower: 8, upper: 11 }));
  expect(both.verdict).toBe('pass');
  const outside = required(decide({ value: 12, standardUncertainty: 1 }, { lower: 8, upper: 11 }));
  expect(outside.verdict).toBe('fail');
  expect(outside).not.toHaveProperty('consumersRisk');
});
