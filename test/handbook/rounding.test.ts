import { expect, test } from 'vitest';
import { roundResult } from '../../src/index.js';

// ISO 6892-1:2019, ASTM E8/E8M, ISO 80000-1 and ASTM E29, rounding (rules from memory; the numbers follow from the rules by hand)
test.each([
  [0.2425, 'elongation', 'iso', 'even', 0.24, '0.240'],
  [0.2475, 'elongation', 'iso', 'even', 0.25, '0.250'],
  [0.2425, 'elongation', 'iso', 'up', 0.245, '0.245'],
  [450.5, 'strength', 'iso', 'even', 450, '450'],
  [451.5, 'strength', 'iso', 'even', 452, '452'],
  [1234.4, 'strength', 'iso', 'even', 1234, '1234'],
  [0.0225, 'yieldPointExtension', 'iso', 'even', 0.022, '0.022'],
  [0.1125, 'extension', 'iso', 'even', 0.11, '0.110'],
  [0.635, 'reductionOfArea', 'iso', 'even', 0.64, '0.64'],
  [500, 'strength', 'astm', 'even', 500, '500'],
  [499.6, 'strength', 'astm', 'even', 500, '500'],
  [502.4, 'strength', 'astm', 'even', 500, '500'],
  [507.5, 'strength', 'astm', 'even', 510, '510'],
  [512.5, 'strength', 'astm', 'even', 510, '510'],
  [1000, 'strength', 'astm', 'even', 1000, '1000'],
  [1234.4, 'strength', 'astm', 'even', 1230, '1230'],
  [1235, 'strength', 'astm', 'even', 1240, '1240'],
  [1245, 'strength', 'astm', 'even', 1240, '1240'],
  [1245, 'strength', 'astm', 'up', 1250, '1250'],
  [0.0974, 'elongation', 'astm', 'even', 0.095, '0.095'],
  [0.0977, 'elongation', 'astm', 'even', 0.1, '0.100'],
  [0.1049, 'elongation', 'astm', 'even', 0.1, '0.10'],
  [0.245, 'elongation', 'astm', 'even', 0.24, '0.24'],
  [0.635, 'reductionOfArea', 'astm', 'up', 0.64, '0.64'],
] as const)('%f as %s by %s, half %s: %f', (value, kind, rule, half, rounded, text) => {
  expect(roundResult(value, { kind, rule, half })).toMatchObject({ value, rounded, text });
});

test.each([
  [24.25, 0.5, 'even', 24, '24.0'],
  [24.75, 0.5, 'even', 25, '25.0'],
  [24.25, 0.5, 'up', 24.5, '24.5'],
  [2.675, 0.01, 'even', 2.68, '2.68'],
  [2.675, 0.01, 'up', 2.68, '2.68'],
  [2.665, 0.01, 'even', 2.66, '2.66'],
  [2.665, 0.01, 'up', 2.67, '2.67'],
  [1.005, 0.01, 'up', 1.01, '1.01'],
  [-2.5, 1, 'even', -2, '-2'],
  [-2.5, 1, 'up', -3, '-3'],
  [-0.4, 1, 'even', 0, '0'],
  [3.75, 2.5, 'even', 5, '5.0'],
  [37, 25, 'even', 25, '25'],
  [0.125, 0.25, 'up', 0.25, '0.25'],
] as const)('%f in steps of %f, half %s: %f', (value, step, half, rounded, text) => {
  expect(roundResult(value, { step, half })).toMatchObject({ value, rounded, text, step });
});
