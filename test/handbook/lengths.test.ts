import { expect, test } from 'vitest';
import {
  effectiveLength,
  square,
  leastParallelLength,
  proportionalGaugeLength,
  proportionalityCoefficient,
  rectangular,
  round,
  roundedGaugeLength,
} from '../../src/index.js';
import { expectPrinted } from '../support/handbook.js';
import { refusal } from '../support/thrown.js';

// ISO 6892-1:2019, original gauge length: L0 = 5.65 √S0; five diameters of a round are 5.642 √S0
test('5.65 √S0 of 10 and 8 mm', () => {
  expectPrinted(proportionalGaugeLength({ area: round({ diameter: 10 }).area }), '50.072');
  expectPrinted(proportionalGaugeLength({ area: round({ diameter: 8 }).area }), '40.057');
});

test('coefficients of 5 d and 4 d, as 2 n / √π', () => {
  const { area } = round({ diameter: 10 });
  expectPrinted(proportionalityCoefficient({ gaugeLength: 50, area }), '5.6419');
  expectPrinted(proportionalityCoefficient({ gaugeLength: 40, area }), '4.5135');
  expect(proportionalityCoefficient({ gaugeLength: 50, area })).toBeCloseTo(10 / Math.sqrt(Math.PI), 12);
});

test('12.5 x 3: 34.599 mm, marked as 35 (+1.16 %), parallel length at least 44.19', () => {
  const section = rectangular({ width: 12.5, thickness: 3 });
  const length = proportionalGaugeLength({ area: section.area });
  expectPrinted(length, '34.599');
  const marked = roundedGaugeLength({ gaugeLength: length });
  expect(marked).toBe(35);
  expectPrinted(100 * (marked / length - 1), '1.16');
  expectPrinted(leastParallelLength({ section, gaugeLength: 35 }), '44.19');
});

test('small pieces take 11.3 √S0, and rounding that moves by a tenth is not done', () => {
  expect(proportionalGaugeLength({ area: 4 })).toBeCloseTo(22.6, 9);
  expect(roundedGaugeLength({ gaugeLength: 12.4 })).toBe(12.4);
});

test('least parallel lengths of rounds, thin flats and for arbitration (from memory of Annexes B and D)', () => {
  expect(leastParallelLength({ section: round({ diameter: 8 }), gaugeLength: 40 })).toBe(44);
  expect(leastParallelLength({ section: round({ diameter: 8 }), gaugeLength: 40, arbitration: true })).toBe(56);
  expect(leastParallelLength({ section: rectangular({ width: 12.5, thickness: 1 }), gaugeLength: 50 })).toBe(56.25);
  expect(leastParallelLength({ section: rectangular({ width: 12.5, thickness: 1 }), gaugeLength: 50, arbitration: true })).toBe(75);
});

// second derivation: the fillet summed over its length in 100 000 slices instead of over its angle
test('fillets of 5 mm from 8 to 12 mm lengthen 48 mm elastically to 54.300 mm', () => {
  const piece = { section: round({ diameter: 8 }), parallelLength: 48, filletRadius: 5, headSize: 12 };
  expectPrinted(effectiveLength(piece), '54.300');
  const slices = 100_000;
  const sum = (power: number, size: number): number =>
    Array.from({ length: slices }, (_, k) => (4 * (k + 0.5)) / slices).reduce(
      (total, x) => total + (4 / slices) * (size / (size + 2 * (5 - Math.sqrt(25 - x * x)))) ** power,
      0,
    );
  expect(effectiveLength(piece)).toBeCloseTo(48 + 2 * sum(2, 8), 7);
  const flat = { section: rectangular({ width: 12, thickness: 2 }), parallelLength: 60, filletRadius: 5, headSize: 16 };
  expect(effectiveLength(flat)).toBeCloseTo(60 + 2 * sum(1, 12), 7);
  expect(effectiveLength({ ...piece, headSize: 8 })).toBe(48);
  expect(refusal(() => effectiveLength({ ...piece, headSize: 7 }))).toBe('out-of-range headSize');
  expect(refusal(() => effectiveLength({ ...piece, section: square({ side: 8 }) }))).toBe('out-of-range section.shape');
});
