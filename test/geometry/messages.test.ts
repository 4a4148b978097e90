import { expect, test } from 'vitest';
import {
  bendingFromEccentricity,
  convertElongation,
  elongationAfterFracture,
  hexagon,
  leastParallelLength,
  proportionalGaugeLength,
  proportionalityCoefficient,
  rectangular,
  reductionOfArea,
  round,
  roundedGaugeLength,
  sectionFromArea,
  sectionFromMass,
  square,
  tube,
  tubeStrip,
  type Section,
} from '../../src/index.js';
import { thrown } from '../support/thrown.js';

const strip = round({ diameter: 8 });
const other: object = { other: 1 };

// function: path rule, got value; one form for all
test.each<[() => unknown, string]>([
  [
    () => bendingFromEccentricity(other as never),
    'bendingFromEccentricity: input.other is not an option (known: eccentricity, diameter), got "other"',
  ],
  [
    () => elongationAfterFracture(other as never),
    'elongationAfterFracture: input.other is not an option (known: originalLength, finalLength), got "other"',
  ],
  [
    () => elongationAfterFracture({ originalLength: 40, finalLength: 39 }),
    'elongationAfterFracture: finalLength must not be below originalLength (40), got 39',
  ],
  [() => reductionOfArea(other as never), 'reductionOfArea: input.other is not an option (known: originalArea, finalArea), got "other"'],
  [() => reductionOfArea({ originalArea: 40, finalArea: 41 }), 'reductionOfArea: finalArea must not be above originalArea (40), got 41'],
  [
    () => proportionalGaugeLength(other as never),
    'proportionalGaugeLength: input.other is not an option (known: area, coefficient), got "other"',
  ],
  [
    () => proportionalityCoefficient(other as never),
    'proportionalityCoefficient: input.other is not an option (known: gaugeLength, area), got "other"',
  ],
  [() => roundedGaugeLength(other as never), 'roundedGaugeLength: input.other is not an option (known: gaugeLength), got "other"'],
  [
    () => leastParallelLength({ ...other, section: strip, gaugeLength: 40 }),
    'leastParallelLength: input.other is not an option (known: section, gaugeLength, arbitration), got "other"',
  ],
  [() => round({ diameter: 0 }), 'round: diameter must be above 0, got 0'],
  [() => round({ diameter: [] }), 'round: diameter is empty, got 0'],
  [() => round({ diameter: 8, ...other }), 'round: other is unknown (known: diameter), got "other"'],
  [() => rectangular({ width: 8, ...other } as never), 'rectangular: other is unknown (known: width, thickness), got "other"'],
  [() => round(8 as never), 'round: diameter must be a number, got undefined'],
  [() => tube(null as never), 'tube: outerDiameter must be a number, got undefined'],
  [() => round({} as never), 'round: diameter must be a number, got undefined'],
  [() => rectangular({ width: -1, thickness: 2 }), 'rectangular: width must be above 0, got -1'],
  [() => square({ side: NaN }), 'square: side must be finite (< 1e100), got NaN'],
  [() => hexagon({ acrossFlats: '5' as never }), 'hexagon: acrossFlats must be a number, got "5"'],
  [() => sectionFromArea({ area: 0 }), 'sectionFromArea: area must be above 0, got 0'],
  [() => sectionFromMass({ mass: 0, length: 1, density: 1 }), 'sectionFromMass: mass must be above 0, got 0'],
])('%#: the message names function, field, rule and value', (call, message) => {
  expect(thrown(call).message).toBe(message);
});

test.each<[Section, string]>([
  [round({ diameter: 8 }), 'round'],
  [rectangular({ width: 10, thickness: 3 }), 'rectangular'],
  [square({ side: 5 }), 'square'],
  [hexagon({ acrossFlats: 10 }), 'hexagon'],
  [tube({ outerDiameter: 20, wallThickness: 2 }), 'tube'],
  [tubeStrip({ width: 10, outerDiameter: 33.7, wallThickness: 2.6 }), 'tube-strip'],
])('a section names its shape: $1', (section, shape) => {
  expect(section.shape).toBe(shape);
});

test('walls and widths that do not fit, and a length beyond the limit, say so', () => {
  expect(thrown(() => tube({ outerDiameter: 20, wallThickness: 11 })).message).toMatch(/^tube: wallThickness must .+, got 11$/);
  expect(thrown(() => tubeStrip({ width: 30, outerDiameter: 33.7, wallThickness: 2.6 })).message).toMatch(
    /^tubeStrip: width must be at most the inner.+, got 30$/,
  );
  const beyond = { elongation: 0.2, fromLength: 3000, fromArea: 50, toLength: 40, toArea: 50, material: 'carbon' } as const;
  expect(thrown(() => convertElongation(beyond)).message).toMatch(
    /^convertElongation: fromLength must be at most 25 roots of .+, got 3000$/,
  );
});

test('exactly 15 mm is no short gauge length', () => {
  const area = (15 / 5.65) ** 2;
  expect(proportionalGaugeLength({ area: area * (1 + 1e-12) })).toBeCloseTo(15, 9);
});
