import { expect, test } from 'vitest';
import { analyseShear, shearStress } from '../../src/index.js';
import { expectPrinted } from '../support/handbook.js';
import { checkVectors } from '../support/vectors.js';

checkVectors('shear', 'shearStress');

// class sheet on single shear of a 12 mm pin: 33 600 N, 297.24 MPa computed with 3.14 for π
test('33 600 N on a 12 mm pin in single shear: 297.24 MPa with π as 3.14', () => {
  const stress = shearStress({ force: 33_600, diameter: 12, planes: 1 });
  expectPrinted((stress * Math.PI) / 3.14, '297.24');
});

test('56 800 N on a 12 mm pin in double shear: the area by strips', () => {
  const stress = shearStress({ force: 56_800, diameter: 12, planes: 2 });
  const strips = 200_000;
  let area = 0;
  for (let k = 0; k < strips; k += 1) {
    const x = (12 * (k + 0.5)) / strips - 6;
    area += (2 * Math.sqrt(36 - x * x) * 12) / strips;
  }
  expect(56_800 / (2 * area)).toBeCloseTo(stress, 4);
  expect(analyseShear({ maximumForce: 56_800 }, { diameter: 12, planes: 2 }).shearStrength.value).toBe(stress);
});

test('an area stands for a diameter', () => {
  expect(shearStress({ force: 1000, area: 50, planes: 1 })).toBe(20);
  expect(shearStress({ force: 1000, area: 50, planes: 2 })).toBe(10);
});
