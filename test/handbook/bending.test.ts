import { describe, expect, test } from 'vitest';
import {
  beamDeflection,
  bendTestSpan,
  bendTestStrain,
  chordModulus,
  flexuralModulus,
  flexuralStrain,
  flexuralStress,
  hexagon,
  plasticShapeFactor,
  rectangular,
  required,
  round,
  sectionFromArea,
  shearDeflectionShare,
  square,
  tube,
  type BendingSetup,
  type Section,
} from '../../src/index.js';
import { expectPrinted } from '../support/handbook.js';
import { refusal } from '../support/thrown.js';
import { checkVectors } from '../support/vectors.js';

checkVectors(
  'bending',
  'flexuralStress',
  'flexuralStrain',
  'flexuralModulus',
  'beamDeflection',
  'plasticShapeFactor',
  'bendTestStrain',
  'bendTestSpan',
);

const third = (span: number): BendingSetup => ({ points: 4, span, arm: span / 3 });
const quarter = (span: number): BendingSetup => ({ points: 4, span, arm: span / 4 });
const three = (span: number): BendingSetup => ({ points: 3, span });
const middle = (setup: BendingSetup): BendingSetup => ({ ...setup, measuredAt: 'mid-span' });

/** Deflection and largest moment of a beam on two supports, by statics and two sums over the length: independent of the closed forms. */
function bySums({ points, span, arm }: BendingSetup, force: number, stiffness: number): { moment: number; nose: number; mid: number } {
  const a = points === 3 ? span / 2 : arm!;
  const n = 120_000;
  const dx = span / n;
  const momentAt = (x: number): number => (force / 2) * Math.min(x, a, span - x);
  // slope and deflection from the left end, then turned so that the right end is on its support
  let [slope, y] = [0, 0];
  const line = new Float64Array(n + 1);
  for (let k = 0; k < n; k += 1) {
    const curvature = momentAt((k + 0.5) * dx) / stiffness;
    y += slope * dx + (curvature * dx ** 2) / 2;
    slope += curvature * dx;
    line[k + 1] = y;
  }
  const at = (x: number): number => (line[n]! * x) / span - line[Math.round(x / dx)]!;
  return { moment: momentAt(a), nose: at(a), mid: at(span / 2) };
}

test('ISO 178: the deflection for a strain is ε L²/(6 h)', () => {
  expectPrinted((0.0005 * 64 ** 2) / 24, '0.085333');
  expectPrinted((0.0025 * 64 ** 2) / 24, '0.426667');
});

describe('any span and arm, by sums over the length', () => {
  const sections: [string, Section, BendingSetup['hexagonOn']][] = [
    ['rectangle', rectangular({ width: 12, thickness: 6 }), undefined],
    ['round', round({ diameter: 7 }), undefined],
    ['square', square({ side: 5 }), undefined],
    ['tube', tube({ outerDiameter: 12, wallThickness: 1.5 }), undefined],
    ['hexagon on flats', hexagon({ acrossFlats: 8 }), 'flats'],
    ['hexagon on corners', hexagon({ acrossFlats: 8 }), 'corners'],
  ];
  const heights: Record<string, number> = {
    rectangle: 6,
    round: 7,
    square: 5,
    tube: 12,
    'hexagon on flats': 8,
    'hexagon on corners': 16 / Math.sqrt(3),
  };

  test.each(sections)('%s', (name, section, hexagonOn) => {
    for (const base of [three(100), third(120), quarter(120), { points: 4, span: 120, arm: 25 } as const]) {
      const setup: BendingSetup = { ...base, hexagonOn };
      const stiffness = 70_000 * section.secondMoment!;
      const { moment, nose, mid } = bySums(setup, 800, stiffness);
      const c = heights[name]! / 2;
      expect(flexuralStress({ force: 800, section, setup }) / ((moment * c) / section.secondMoment!)).toBeCloseTo(1, 9);
      for (const [deflection, where] of [
        [nose, setup],
        [mid, middle(setup)],
      ] as const) {
        expect(beamDeflection({ force: 800, modulus: 70_000, section, setup: where }) / deflection).toBeCloseTo(1, 7);
        expect(flexuralModulus({ stiffness: 800 / deflection, section, setup: where }) / 70_000).toBeCloseTo(1, 7);
        expect(flexuralStrain({ deflection, section, setup: where }) / ((c * moment) / stiffness)).toBeCloseTo(1, 7);
      }
    }
  });
});

describe('shear', () => {
  test('a rectangle under a force at mid-span: 3.12 (h/L)² by energy; the exact 2.85 (h/L)² (from memory) is a tenth lower', () => {
    const share = shearDeflectionShare({ section: rectangular({ width: 10, thickness: 4 }), setup: three(64) });
    expectPrinted(share * 16 ** 2, '3.12');
    // Timoshenko and Goodier: 1 + 2.85 (h/L)² - 0.84 (h/L)³ for ν = 0.3
    expect(share).toBeGreaterThan(2.85 / 16 ** 2 - 0.84 / 16 ** 3);
    expect(share).toBeLessThan(1.12 * (2.85 / 16 ** 2 - 0.84 / 16 ** 3));
  });

  test('form factors: (S/I²) ∫ Q²/b dy', () => {
    // by strips: Q is the first moment of what lies beyond y
    const byEnergy = (width: (y: number) => number, c: number, { area, secondMoment }: Section): number => {
      const n = 20_000;
      const dy = (2 * c) / n;
      let [first, sum] = [0, 0];
      for (let k = 0; k < n; k += 1) {
        const y = c - (k + 0.5) * dy;
        first += y * width(y) * dy;
        if (width(y) > 0) sum += (first ** 2 / width(y)) * dy;
      }
      return (area * sum) / secondMoment! ** 2;
    };
    const factorOf = (section: Section) =>
      (shearDeflectionShare({ section, setup: three(1), poissonRatio: 0 }) * section.area) / (24 * section.secondMoment!);
    const disc = round({ diameter: 6 });
    const bar = rectangular({ width: 5, thickness: 6 });
    expect(factorOf(disc)).toBeCloseTo(
      byEnergy((y) => 2 * Math.sqrt(9 - y * y), 3, disc),
      3,
    );
    expect(factorOf(bar)).toBeCloseTo(
      byEnergy(() => 5, 3, bar),
      3,
    );
    expect(factorOf(square({ side: 6 }))).toBeCloseTo(factorOf(bar), 12);
    // a hexagon is taken as round: 10/9 by Jourawski's formula
    expect(factorOf(hexagon({ acrossFlats: 6 }))).toBeCloseTo(10 / 9, 12);
    expect(factorOf(tube({ outerDiameter: 10, wallThickness: 0.1 }))).toBeCloseTo(2, 9);
  });
});

describe('plastic bending', () => {
  test('all by strips: first moment of both halves over the section modulus', () => {
    const byStrips = (width: (y: number) => number, c: number): number => {
      const n = 100_000;
      const dy = c / n;
      let [first, second] = [0, 0];
      for (let k = 0; k < n; k += 1) {
        const y = (k + 0.5) * dy;
        first += 2 * y * width(y) * dy;
        second += 2 * y * y * width(y) * dy;
      }
      return first / (second / c);
    };
    const disc = (d: number) => (y: number) => 2 * Math.sqrt(Math.max(0, d ** 2 / 4 - y ** 2));
    const corner = 8 / Math.sqrt(3);
    expect(plasticShapeFactor(round({ diameter: 8 }))).toBeCloseTo(byStrips(disc(8), 4), 5);
    expect(plasticShapeFactor(tube({ outerDiameter: 8, wallThickness: 1 }))).toBeCloseTo(
      byStrips((y) => disc(8)(y) - disc(6)(y), 4),
      4,
    );
    // on flats the width falls from corner to corner; on corners it is the whole width up to half a side
    expect(plasticShapeFactor(hexagon({ acrossFlats: 8 }))).toBeCloseTo(
      byStrips((y) => 2 * corner - (2 * y) / Math.sqrt(3), 4),
      5,
    );
    expect(plasticShapeFactor(hexagon({ acrossFlats: 8 }), 'corners')).toBeCloseTo(
      byStrips((y) => Math.min(8, 2 * (corner - y) * Math.sqrt(3)), corner),
      5,
    );
  });
});

test('bend test, 3 mm round a former of 12 mm: supports 21 ± 1.5 mm, the strain by the lengths', () => {
  expect(bendTestSpan({ formerDiameter: 12, thickness: 3 })).toEqual({ least: 19.5, nominal: 21, most: 22.5 });
  // the outer length over the length of the middle, at any angle
  expect(((6 + 3) * 2) / ((6 + 1.5) * 2) - 1).toBeCloseTo(bendTestStrain({ formerDiameter: 12, thickness: 3 }), 12);
});

describe('chord', () => {
  const strain = Array.from({ length: 41 }, (_, i) => i * 1e-4);

  test('of 2 GPa falling as a parabola: the slope of the chord, by hand', () => {
    const stress = strain.map((e) => 2000 * e - 50_000 * e ** 2);
    // 2000 - 50 000 (0.0005 + 0.0025)
    expect(required(chordModulus({ strain, stress })).modulus).toBeCloseTo(1850, 6);
    expect(required(chordModulus({ strain, stress })).stresses[1]).toBeCloseTo(4.6875, 9);
    expect(required(chordModulus({ strain: strain.map((e) => e + 0.01), stress }, { strainShift: 0.01 })).modulus).toBeCloseTo(1850, 6);
  });

  test('tells why there is none', () => {
    expect(chordModulus({ strain: [0, 0.001], stress: [0, 1] })).toMatchObject({ ok: false, reason: 'not-reached' });
    expect(chordModulus({ strain: [0, 0.0004, 0.003, 0.0031], stress: [0, 1, 0.5, 2] })).toMatchObject({ ok: false, reason: 'no-rise' });
    expect(chordModulus({ strain: [0, 0.0004, 0.003, 0.0031], stress: [0, 1, 1, 2] })).toMatchObject({ ok: false, reason: 'no-rise' });
    expect(refusal(() => chordModulus({ strain, stress: strain }, { from: 0 }))).toBe('out-of-range options.from');
    expect(refusal(() => chordModulus({ strain, stress: strain }, { to: 0.0004 }))).toBe('out-of-range options.to');
  });
});

test('wrong set-ups are refused by name', () => {
  const section = round({ diameter: 5 });
  const stress = (setup: object, of: object = section) => refusal(() => flexuralStress({ force: 1, section: of, setup } as never));
  expect(stress({ points: 3, span: 0 })).toBe('not-positive setup.span');
  expect(stress({ points: 5, span: 10 })).toBe('out-of-range setup.points');
  expect(stress({ points: 4, span: 10 })).toBe('missing setup.arm');
  expect(stress({ points: 4, span: 10, arm: 5 })).toBe('out-of-range setup.arm');
  expect(stress({ points: 3, span: 10, arm: 5 })).toBe('out-of-range setup.arm');
  expect(stress({ points: 3, span: 10, length: 5 })).toBe('unknown-option setup.length');
  expect(stress({ points: 3, span: 10, measuredAt: 'end' })).toBe('out-of-range setup.measuredAt');
  expect(stress({ points: 3, span: 10, hexagonOn: 'corners' })).toBe('out-of-range setup.hexagonOn');
  expect(stress({ points: 3, span: 10 }, sectionFromArea({ area: 5 }))).toBe('missing section.secondMoment');
  expect(stress({ points: 3, span: 10 }, { ...section, area: NaN })).toBe('not-finite section.area');
  expect(stress({ points: 3, span: 10 }, { ...section, dimensions: null })).toBe('wrong-type section.dimensions');
  const setup = three(10);
  expect(refusal(() => flexuralModulus({ stiffness: 0, section, setup }))).toBe('not-positive stiffness');
  expect(refusal(() => flexuralStrain({ deflection: NaN, section, setup }))).toBe('not-finite deflection');
  expect(refusal(() => beamDeflection({ force: 1, modulus: -1, section, setup }))).toBe('not-positive modulus');
  expect(refusal(() => shearDeflectionShare({ section, setup, poissonRatio: 0.6 }))).toBe('out-of-range poissonRatio');
  const plain = { ...sectionFromArea({ area: 5 }), secondMoment: 1, sectionModulus: 1 };
  expect(refusal(() => shearDeflectionShare({ section: plain, setup }))).toBe('out-of-range section.shape');
  expect(refusal(() => plasticShapeFactor(plain))).toBe('out-of-range section.shape');
  const pipe = (dimensions: Record<string, number>) =>
    refusal(() => plasticShapeFactor({ shape: 'tube', dimensions, area: 1, readings: 1 }));
  expect(pipe({ outerDiameter: 8 })).toBe('missing section.dimensions.wallThickness');
  expect(pipe({ outerDiameter: 8, wallThickness: 4.1 })).toBe('out-of-range section.dimensions.wallThickness');
  expect(refusal(() => plasticShapeFactor(section, 'edge' as never))).toBe('out-of-range on');
  expect(refusal(() => bendTestSpan({ formerDiameter: 12, thickness: 0 }))).toBe('not-positive thickness');
  expect(refusal(() => bendTestStrain({ thickness: 1 } as never))).toBe('missing formerDiameter');
});
