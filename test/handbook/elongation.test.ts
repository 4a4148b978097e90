import { describe, expect, test } from 'vitest';
import { convertElongation, elongationAfterFracture, reductionOfArea, round } from '../../src/index.js';
import { expectPrinted } from '../support/handbook.js';

/** Conversion between two coefficients of proportionality on one section. */
const between = (material: 'carbon' | 'austenitic', elongation: number, from: number, to: number): number =>
  convertElongation({ elongation, fromLength: from, fromArea: 1, toLength: to, toArea: 1, material });

describe('ISO 2566-2, austenitic steels: worked examples of the standard', () => {
  test('24 % on 200 mm of 40 x 15 is 25.1 % on 5.65 √S0 (factor 0.957)', () => {
    const input = { fromLength: 200, fromArea: 600, toLength: 5.65, toArea: 1, material: 'austenitic' } as const;
    const converted = convertElongation({ elongation: 0.24, ...input });
    expectPrinted(100 * converted, '25.1');
    expectPrinted(0.24 / converted, '0.957');
  });

  test.each([
    { to: 200, printed: '23.0' },
    { to: 100, printed: '25.1' },
    { to: 50, printed: '27.4' },
  ])('from there to $to mm of 30 x 10: $printed %', ({ to, printed }) => {
    const proportional = convertElongation({
      elongation: 0.24,
      fromLength: 200,
      fromArea: 600,
      toLength: 5.65,
      toArea: 1,
      material: 'austenitic',
    });
    expectPrinted(
      100 *
        convertElongation({ elongation: proportional, fromLength: 5.65, fromArea: 1, toLength: to, toArea: 300, material: 'austenitic' }),
      printed,
    );
  });
});

describe('ISO 2566-1, carbon steels: from the formula, with logarithms beside it', () => {
  test.each([
    { from: 5.65, to: 11.3, printed: '0.757858' },
    { from: 4, to: 5.65, printed: '0.870973' },
    { from: 5.65, to: 8.16, printed: '0.863263' },
    { from: 8 / Math.sqrt(Math.PI), to: 10 / Math.sqrt(Math.PI), printed: '0.914610' },
  ])('$from to $to: x $printed', ({ from, to, printed }) => {
    const factor = between('carbon', 1, from, to);
    expectPrinted(factor, printed);
    expect(Math.log(factor)).toBeCloseTo(0.4 * (Math.log(from) - Math.log(to)), 12);
  });

  test('25 % on 5.65 √S0: 15.085 % on 200 mm of 100 mm², 22.889 % on 50 mm of d 8', () => {
    const input = { elongation: 0.25, fromLength: 5.65, fromArea: 1, material: 'carbon' } as const;
    expectPrinted(100 * convertElongation({ ...input, toLength: 200, toArea: 100 }), '15.085');
    expectPrinted(100 * convertElongation({ ...input, toLength: 50, toArea: round({ diameter: 8 }).area }), '22.889');
    // the constant 2 of the standard stands for 5.65^0.4 = 1.9991
    expect(25 * (5.65 * (Math.sqrt(100) / 200)) ** 0.4).toBeCloseTo(100 * convertElongation({ ...input, toLength: 200, toArea: 100 }), 1);
  });
});

// Callister and Rethwisch, worked example on ductility: 12.8 mm to 10.7 mm, 30 % (from memory)
test('12.8 mm necked to 10.7 mm: Z 30 %', () => {
  const Z = reductionOfArea({ originalArea: round({ diameter: 12.8 }).area, finalArea: round({ diameter: 10.7 }).area });
  expectPrinted(100 * Z, '30', 2);
  expectPrinted(100 * Z, '30.12');
});

// Groover, Fundamentals of Modern Manufacturing, tensile problem: 35.1 % of 100 mm
test('100 mm to 135.1 mm: A 35.1 %', () => {
  expectPrinted(100 * elongationAfterFracture({ originalLength: 100, finalLength: 135.1 }), '35.1');
});
