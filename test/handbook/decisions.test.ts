import { describe, expect, test } from 'vitest';
import { decide, required } from '../../src/index.js';
import { expectPrinted } from '../support/handbook.js';

// JCGM 106:2012, probability of conformity and guard bands; second derivation by tables of the normal distribution: Φ(2) = 0.97725
test('241 with u 3 against 235: P 0.97725; guarded by 1.645 u the least that passes is 239.93', () => {
  const guarded = required(decide({ value: 241, standardUncertainty: 3 }, { lower: 235, rule: 'guarded' }));
  expectPrinted(guarded.probabilityOfConformity!, '0.97725');
  expectPrinted(guarded.consumersRisk!, '0.02275');
  expectPrinted(guarded.acceptance.lower!, '239.93');
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

// second derivation by tables: Φ(1) − Φ(−2) = 0.84134 − 0.02275 = 0.81859
test('two limits: 10 with u 1 between 8 and 11: P 0.81859', () => {
  const both = required(decide({ value: 10, standardUncertainty: 1 }, { lower: 8, upper: 11 }));
  expectPrinted(both.probabilityOfConformity!, '0.81859');
  expect(both.verdict).toBe('pass');
  const outside = required(decide({ value: 12, standardUncertainty: 1 }, { lower: 8, upper: 11 }));
  expect(outside.verdict).toBe('fail');
  // Φ(−1) − Φ(−4) = 0.158655 − 0.000032
  expectPrinted(outside.producersRisk!, '0.158624');
  expect(outside).not.toHaveProperty('consumersRisk');
});
