import { expect, test } from 'vitest';
import { averageStrainRatio, plasticStrainRatio, rateSensitivity } from '../../src/index.js';
import { thrown } from '../support/thrown.js';
import { checkVectors } from '../support/vectors.js';

checkVectors('sheet', 'plasticStrainRatio', 'averageStrainRatio', 'rateSensitivity');

// computed from the definitions of ISO 10113 and ASTM E517; the second derivation beside each follows it
test('width 20 to 18.2, length 80 to 92: by strains', () => {
  const r = plasticStrainRatio({ originalWidth: 20, width: 18.2, originalLength: 80, length: 92 });
  // strains of width and thickness add up to minus that of the length
  const width = Math.log(18.2 / 20);
  expect(r).toBeCloseTo(width / (-Math.log(92 / 80) - width), 12);
});

test('an isotropic sheet has r = 1: width and thickness share the strain', () => {
  const stretch = 1.2;
  expect(plasticStrainRatio({ originalWidth: 20, width: 20 / Math.sqrt(stretch), originalLength: 80, length: 80 * stretch })).toBeCloseTo(
    1,
    12,
  );
});

test('alike in all directions: no planar anisotropy', () => {
  expect(averageStrainRatio({ along: 1.5, diagonal: 1.5, across: 1.5 })).toEqual({ average: 1.5, planar: 0 });
});

test('2 % more stress for ten times the rate, with the two exchanged', () => {
  const rates = { stress: 300, strainRate: 1e-3, otherStress: 306, otherStrainRate: 1e-2 };
  expect(rateSensitivity({ stress: 306, strainRate: 1e-2, otherStress: 300, otherStrainRate: 1e-3 })).toBeCloseTo(
    rateSensitivity(rates),
    14,
  );
});

test.each([
  [() => plasticStrainRatio({ originalWidth: 20, width: 21, originalLength: 80, length: 92 }), 'sheet.width'],
  [() => plasticStrainRatio({ originalWidth: 20, width: 15, originalLength: 80, length: 92 }), 'sheet.length'],
  [() => plasticStrainRatio({ originalWidth: 20, width: 18, originalLength: 0, length: 92 }), 'sheet.originalLength'],
  [() => averageStrainRatio({ along: -1, diagonal: 1, across: 1 }), 'ratios.along'],
  [() => rateSensitivity({ stress: 300, strainRate: 1e-3, otherStress: 306, otherStrainRate: 1e-3 }), 'rates.otherStrainRate'],
  [() => rateSensitivity({ stress: 0, strainRate: 1e-3, otherStress: 306, otherStrainRate: 1e-2 }), 'rates.stress'],
])('bad input %# is refused at %s', (call, path) => {
  expect(thrown(call).path).toBe(path);
});
