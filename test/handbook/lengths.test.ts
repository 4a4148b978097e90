import { expect, test } from 'vitest';
import { proportionalGaugeLength, proportionalityCoefficient, rectangular, round, roundedGaugeLength } from '../../src/index.js';
import { expectPrinted } from '../support/handbook.js';
import { checkVectors } from '../support/vectors.js';

checkVectors('lengths', 'proportionalGaugeLength', 'roundedGaugeLength', 'proportionalityCoefficient', 'leastParallelLength');

test('coefficient of 5 d, as 2 n / √π', () => {
  const { area } = round({ diameter: 10 });
  expect(proportionalityCoefficient({ gaugeLength: 50, area })).toBeCloseTo(10 / Math.sqrt(Math.PI), 12);
});

test('12.5 x 3: marked as 35 mm, which is 1.16 % more', () => {
  const section = rectangular({ width: 12.5, thickness: 3 });
  const length = proportionalGaugeLength({ area: section.area });
  const marked = roundedGaugeLength({ gaugeLength: length });
  expect(marked).toBe(35);
  expectPrinted(100 * (marked / length - 1), '1.16');
});

test('rounding that moves by a tenth is not done', () => {
  expect(roundedGaugeLength({ gaugeLength: 12.4 })).toBe(12.4);
});
