import { describe, expect, test } from 'vitest';
import { bendingFromEccentricity, hexagon, rectangular, round, sectionFromMass, square, tube, tubeStrip } from '../../src/index.js';
import { expectPrinted } from '../support/handbook.js';

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
  test('round 10, 8 and 12.8 mm', () => {
    expectPrinted(round({ diameter: 10 }).area, '78.5398');
    expectPrinted(round({ diameter: 8 }).area, '50.2655');
    // Callister and Rethwisch, problem on an aluminium test piece: 128.7 mm² (from memory)
    expectPrinted(round({ diameter: 12.8 }).area, '128.7', 2);
  });

  test('tube 20 x 2, hexagon 10: computed from the definition, and by strips', () => {
    expectPrinted(tube({ outerDiameter: 20, wallThickness: 2 }).area, '113.097');
    expectPrinted(hexagon({ acrossFlats: 10 }).area, '86.6025');
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
    { width: 12.5, outerDiameter: 60.3, wallThickness: 3.2, printed: '40.32767' },
    { width: 10, outerDiameter: 33.7, wallThickness: 2.6, printed: '26.47397' },
  ])('strip from a tube: $printed mm², and as the integral between its arcs', ({ printed, ...strip }) => {
    const { area } = tubeStrip(strip);
    expectPrinted(area, printed);
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

  test('0.617 kg/m is 78.60 mm²; 15.41 g of 250 mm is 7.8522 mm²', () => {
    expectPrinted(sectionFromMass({ mass: 617, length: 1000, density: 7.85 }).area, '78.60');
    expectPrinted(sectionFromMass({ mass: 15.41, length: 250, density: 7.85 }).area, '7.8522');
  });
});

describe('second moments and section moduli', () => {
  const disc = (d: number) => (y: number) => 2 * Math.sqrt(Math.max(0, (d / 2) ** 2 - y ** 2));

  test('round 10: I 490.874, W 98.1748, and by strips', () => {
    const { secondMoment, sectionModulus } = round({ diameter: 10 });
    expectPrinted(secondMoment!, '490.874');
    expectPrinted(sectionModulus!, '98.1748');
    expect(secondMoment!).toBeCloseTo(byStrips(disc(10), -5, 5).secondMoment, 3);
  });

  test('rectangle 11 x 5.3: I 136.471, W 51.4983, and by strips', () => {
    const { secondMoment, sectionModulus } = rectangular({ width: 11, thickness: 5.3 });
    expectPrinted(secondMoment!, '136.471');
    expectPrinted(sectionModulus!, '51.4983');
    expect(secondMoment!).toBeCloseTo(byStrips(() => 11, -2.65, 2.65).secondMoment, 6);
    expect(square({ side: 5.3 }).secondMoment!).toBeCloseTo(byStrips(() => 5.3, -2.65, 2.65).secondMoment, 6);
  });

  test('tube 20/16: I 4636.99, and as the difference of two discs', () => {
    const { secondMoment } = tube({ outerDiameter: 20, wallThickness: 2 });
    expectPrinted(secondMoment!, '4636.99');
    expect(secondMoment!).toBeCloseTo(byStrips(disc(20), -10, 10).secondMoment - byStrips(disc(16), -8, 8).secondMoment, 2);
  });

  test('hexagon 10: I 601.407, W 120.281 to the flats, 104.167 to the corners', () => {
    const section = hexagon({ acrossFlats: 10 });
    expectPrinted(section.secondMoment!, '601.407');
    expectPrinted(section.sectionModulus!, '120.281');
    expectPrinted(section.sectionModulusCorner!, '104.167');
    expect(section.sectionModulus!).toBeCloseTo(section.secondMoment! / 5, 9);
    expect(section.sectionModulusCorner!).toBeCloseTo(section.secondMoment! / (10 / Math.sqrt(3)), 9);
  });
});

// ASTM B557, note on eccentricity of loading: 0.001 in. off the axis; the note's 1.5 % for 0.505 in. does not reproduce and is left out
test.each([
  { inches: 0.357, printed: '2.24' },
  { inches: 0.252, printed: '3.17' },
])('0.001 in. off the axis of a round of $inches in. bends by $printed %', ({ inches, printed }) => {
  expectPrinted(100 * bendingFromEccentricity({ eccentricity: 0.0254, diameter: inches * 25.4 }), printed, 2);
});

test('0.1 mm off the axis of 8 mm is 10.00 %', () => {
  expectPrinted(100 * bendingFromEccentricity({ eccentricity: 0.1, diameter: 8 }), '10.00');
});
