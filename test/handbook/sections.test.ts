import { describe, expect, test } from 'vitest';
import { hexagon, rectangular, round, sectionFromMass, square, tube, tubeStrip } from '../../src/index.js';
import { expectPrinted } from '../support/handbook.js';
import { checkVectors } from '../support/vectors.js';

checkVectors('sections', 'round', 'tube', 'hexagon', 'rectangular', 'tubeStrip', 'sectionFromMass', 'bendingFromEccentricity');

/** Area, and second moment about the axis through the centroid, of a shape given by its width at each height: an independent derivation. */
function byStrips(width: (y: number) => number, low: number, high: number): { area: number; secondMoment: number } {
  const n = 200_000;
  const step = (high - low) / n;
  let area = 0;
  let first = 0;
  let second = 0;
  for (let k = 0; k < n; k += 1) {
    const y = low + (k + 0.5) * step;
    const w = width(y) * step;
    area += w;
    first += w * y;
    second += w * y * y;
  }
  return { area, secondMoment: second - first ** 2 / area };
}

describe('areas', () => {
  test('hexagon 10, by strips', () => {
    const corner = 10 / Math.sqrt(3);
    const strips = byStrips(
      (y) => (2 * (corner - Math.abs(y)) * Math.sqrt(3) > 10 ? 10 : 2 * (corner - Math.abs(y)) * Math.sqrt(3)),
      -corner,
      corner,
    );
    expect(hexagon({ acrossFlats: 10 }).area).toBeCloseTo(strips.area, 4);
    expect(hexagon({ acrossFlats: 10 }).secondMoment).toBeCloseTo(strips.secondMoment, 3);
  });

  test.each([
    { width: 12.5, outerDiameter: 60.3, wallThickness: 3.2 },
    { width: 10, outerDiameter: 33.7, wallThickness: 2.6 },
  ])('strip of $width mm from a tube of $outerDiameter mm, as the integral between its arcs', (strip) => {
    const { area } = tubeStrip(strip);
    const { width: b, outerDiameter: D, wallThickness: a } = strip;
    // ISO 6892-1 Annex E: the area between two arcs over the width
    const height = (x: number) => Math.sqrt((D / 2) ** 2 - x ** 2) - Math.sqrt((D / 2 - a) ** 2 - x ** 2);
    expect(area).toBeCloseTo(byStrips(height, -b / 2, b / 2).area, 6);
  });

  // nominal masses of reinforcing bar in EN 10080, kg/m at 7.85 g/cm³
  test.each([
    { diameter: 8, printed: '0.395' },
    { diameter: 10, printed: '0.617' },
    { diameter: 16, printed: '1.578' },
    { diameter: 25, printed: '3.853' },
    { diameter: 32, printed: '6.313' },
  ])('bar of $diameter mm weighs $printed kg/m', ({ diameter, printed }) => {
    const { area } = round({ diameter });
    expectPrinted((area * 7.85) / 1000, printed);
    expect(sectionFromMass({ mass: area * 7.85, length: 1000, density: 7.85 }).area).toBeCloseTo(area, 9);
  });
});

describe('second moments and section moduli', () => {
  const disc = (d: number) => (y: number) => 2 * Math.sqrt(Math.max(0, (d / 2) ** 2 - y ** 2));

  test('round 10, by strips', () => {
    const { secondMoment, sectionModulus } = round({ diameter: 10 });
    expect(sectionModulus!).toBeCloseTo(secondMoment! / 5, 9);
    expect(secondMoment!).toBeCloseTo(byStrips(disc(10), -5, 5).secondMoment, 3);
  });

  test('rectangle 11 x 5.3, by strips', () => {
    const { secondMoment, sectionModulus } = rectangular({ width: 11, thickness: 5.3 });
    expect(sectionModulus!).toBeCloseTo(secondMoment! / 2.65, 9);
    expect(secondMoment!).toBeCloseTo(byStrips(() => 11, -2.65, 2.65).secondMoment, 6);
    expect(square({ side: 5.3 }).secondMoment!).toBeCloseTo(byStrips(() => 5.3, -2.65, 2.65).secondMoment, 6);
  });

  test('tube 20/16, as the difference of two discs', () => {
    const { secondMoment } = tube({ outerDiameter: 20, wallThickness: 2 });
    expect(secondMoment!).toBeCloseTo(byStrips(disc(20), -10, 10).secondMoment - byStrips(disc(16), -8, 8).secondMoment, 2);
  });

  test('hexagon 10: to the flats and to the corners', () => {
    const section = hexagon({ acrossFlats: 10 });
    expect(section.sectionModulus!).toBeCloseTo(section.secondMoment! / 5, 9);
    expect(section.sectionModulusCorner!).toBeCloseTo(section.secondMoment! / (10 / Math.sqrt(3)), 9);
  });
});
