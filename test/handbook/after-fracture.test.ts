import { describe, expect, test } from 'vitest';
import {
  analyseTension,
  areaAfterFracture,
  barba,
  convertElongation,
  effectiveThickness,
  elongationBySubdivision,
  elongationWithoutNecking,
  fracturePosition,
  round,
  totalExtensionFromMarks,
} from '../../src/index.js';
import { expectPrinted } from '../support/handbook.js';
import { roundPiece } from '../support/records.js';
import { checkVectors } from '../support/vectors.js';

checkVectors('after-fracture', 'elongationBySubdivision', 'barba', 'totalExtensionFromMarks', 'elongationWithoutNecking');

/** Stretch of each place of a piece: even, and a neck about a place, alike on both sides. */
const stretched = (from: number, to: number, neckAt: number): number => {
  const strips = 20_000;
  let sum = 0;
  for (let k = 0; k < strips; k += 1) {
    const at = from + ((to - from) * (k + 0.5)) / strips;
    sum += 1.12 + 0.9 * Math.exp(-(((at - neckAt) / 4) ** 2));
  }
  return (sum * (to - from)) / strips;
};

describe('subdivision (ISO 6892-1, Annex I)', () => {
  test('gives what the piece would have shown with its neck in the middle: even and odd', () => {
    const centred = stretched(0, 50, 25) / 50 - 1;
    const even = elongationBySubdivision({
      originalLength: 50,
      intervals: 10,
      between: 4,
      xToY: stretched(0, 20, 10),
      beyondY: stretched(20, 35, 10),
    });
    const odd = elongationBySubdivision({
      originalLength: 50,
      intervals: 10,
      between: 5,
      xToY: stretched(0, 25, 12.5),
      beyondY: [stretched(25, 35, 12.5), stretched(25, 40, 12.5)],
    });
    expect(even).toBeCloseTo(centred, 9);
    expect(odd).toBeCloseTo(centred, 9);
    // the marks themselves would have shown less: a part of the neck lies beyond them
    expect(stretched(0, 50, 3) / 50 - 1).toBeLessThan(centred - 0.01);
  });
});

describe('Barba', () => {
  test('30 % on 5.65 √S0 and 24 % on 11.3', () => {
    const law = barba({ elongation: 0.3, gaugeLength: 5.65 * 8, area: 64 }, { elongation: 0.24, gaugeLength: 11.3 * 8, area: 64 });
    // twice the length halves the part of the neck, so that part is twice the difference
    expect(law.uniform).toBeCloseTo(0.3 - 2 * (0.3 - 0.24), 12);
  });

  test('between proportional lengths it goes the way of ISO 2566-1, which has an exponent instead', () => {
    const law = barba({ elongation: 0.3, gaugeLength: 5.65, area: 1 }, { elongation: 0.3 * 0.757858, gaugeLength: 11.3, area: 1 });
    const between = law.uniform + law.neck / 8.16;
    const converted = convertElongation({ elongation: 0.3, fromLength: 5.65, fromArea: 1, toLength: 8.16, toArea: 1, material: 'carbon' });
    // through the same two points the two laws part by less than half a point of elongation, the step in which A is stated
    expect(Math.abs(between - converted)).toBeLessThan(0.005);
  });
});

describe('neck', () => {
  test('(t1 + 4 t2 + t3)/6 is the mean of a parabola through the readings (ASTM E8/E8M, from memory)', () => {
    const thickness = (at: number): number => 2.3 + 0.3 * at ** 2;
    const strips = 20_000;
    let sum = 0;
    for (let k = 0; k < strips; k += 1) sum += thickness((2 * (k + 0.5)) / strips - 1) / strips;
    expect(effectiveThickness({ edge: thickness(-1), middle: thickness(0), otherEdge: thickness(1) })).toBeCloseTo(sum, 8);
    expect(areaAfterFracture({ width: 10, thickness: [2.6, 2.3, 2.6] })).toBeCloseTo(10 * sum, 7);
  });

  // Callister and Rethwisch, worked example on ductility: 12.8 mm to 10.7 mm, 30 % (from memory)
  test('two diameters of 10.7 mm in the mean of a piece of 12.8 mm: Z 30 %', () => {
    const after = areaAfterFracture({ diameters: [10.6, 10.8] });
    expectPrinted(100 * (1 - after / round({ diameter: 12.8 }).area), '30', 2);
  });
});

describe('marks away from the neck (ISO 6892-1, Annex J)', () => {
  const part = { originalLength: 100, finalLength: 108, diameter: 12, fromFracture: 60, fromGrip: 30 };

  test('valid from 5 diameters off the fracture and 2.5 off the grip (from memory)', () => {
    expect(elongationWithoutNecking(part).valid).toBe(true);
    expect(elongationWithoutNecking({ ...part, fromFracture: 59.9 }).valid).toBe(false);
    expect(elongationWithoutNecking({ ...part, fromGrip: 29.9 }).valid).toBe(false);
  });

  test('Awn of a bar by σ = K ε^0.2 is where its force was highest, and Rm/E below Agt', () => {
    let [strain, highest] = [0, 0];
    for (let e = 0; e < 1; e += 1e-5) {
      const force = e ** 0.2 * Math.exp(-e);
      if (force > highest) [strain, highest] = [e, force];
    }
    const finalLength = 100 * Math.exp(strain);
    const { elongation } = elongationWithoutNecking({ ...part, finalLength });
    // Considère: the true strain at maximum force is the exponent
    expect(elongation).toBeCloseTo(Math.exp(0.2) - 1, 4);
    expect(totalExtensionFromMarks({ originalLength: 100, finalLength, tensileStrength: 500 }) - elongation).toBeCloseTo(0.0025, 12);
  });
});

test('a third of 50 mm (ISO 6892-1) and a quarter (ASTM E8/E8M) from the nearest mark', () => {
  expect(fracturePosition({ gaugeLength: 50, distance: 50 / 3 })).toMatchObject({ middleThird: true, middleHalf: true });
  expect(fracturePosition({ gaugeLength: 50, distance: 16.6 })).toMatchObject({ middleThird: false, middleHalf: true });
  expect(fracturePosition({ gaugeLength: 50, distance: 12.5 })).toMatchObject({ middleThird: false, middleHalf: true });
  expect(fracturePosition({ gaugeLength: 50, distance: 12.4 })).toMatchObject({ middleThird: false, middleHalf: false });
});

test('a tension test takes its A from subdivision and its Z from two diameters', () => {
  const record = { force: [0, 10_000, 20_000, 22_000, 15_000], strain: [0, 0.001, 0.002, 0.15, 0.2] };
  const piece = {
    ...roundPiece,
    gaugeLength: 50,
    parallelLength: 60,
    afterFracture: { subdivision: { intervals: 10, between: 4, xToY: 26, beyondY: 17.2 }, diameters: [4.8, 4.8] },
  };
  const result = analyseTension(record, piece);
  expectPrinted(100 * result.elongationAfterFracture!.value, '20.8');
  expect(result.elongationMethod).toBe('subdivision');
  // d 8 to 4.8: 1 − 0.36
  expectPrinted(100 * result.reductionOfArea!.value, '64.0');
});
