import { describe, expect, test } from 'vitest';
import {
  bendingForce,
  largestSection,
  oilEnergy,
  oilFlow,
  pistonArea,
  rectangular,
  round,
  storedEnergy,
  threadStressArea,
  travelNeeded,
  tube,
  wedgeGripMargin,
} from '../../src/index.js';
import { expectPrinted } from '../support/handbook.js';
import { refusal } from '../support/thrown.js';
import { checkVectors } from '../support/vectors.js';

checkVectors('planning', 'largestSection', 'storedEnergy', 'oilEnergy', 'threadStressArea');

const d8 = round({ diameter: 8 });

// second derivation: the force of the printed diameter is within 80 % of 25 kN, that of the next tenth is not
test.each([
  [250, '10.0'],
  [400, '7.9'],
  [500, '7.1'],
  [600, '6.5'],
  [800, '5.6'],
  [1000, '5.0'],
  [1200, '4.6'],
])('of a strength of %i MPa a frame of 25 kN breaks %s mm at 80 %', (strength, printed) => {
  const { dimension, area, shape } = largestSection({ capacity: 25_000, strength });
  expect(shape).toBe('round');
  const force = (d: number) => round({ diameter: d }).area * strength;
  expect(area * strength).toBeCloseTo(force(dimension), 6);
  expect(force(Number(printed))).toBeLessThanOrEqual(20_000);
  expect(force(Number(printed) + 0.1)).toBeGreaterThan(20_000);
});

test('squares and flats by their areas; a whole number of steps is kept', () => {
  expect(largestSection({ capacity: 25_000, strength: 500, shape: 'square' })).toMatchObject({
    dimension: 6.3,
    area: expect.closeTo(39.69, 9) as number,
  });
  expect(largestSection({ capacity: 25_000, strength: 500, shape: 'flat', thickness: 2 })).toMatchObject({ dimension: 20, area: 40 });
  expect(largestSection({ capacity: 30_000, strength: 100, shape: 'flat', thickness: 10, utilisation: 1, step: 0.1 }).dimension).toBe(30);
  expect(refusal(() => largestSection({ capacity: 1, strength: 1000 }))).toBe('out-of-range input.step');
  expect(refusal(() => largestSection({ capacity: 1, strength: 1, shape: 'flat' }))).toBe('missing input.thickness');
  expect(refusal(() => largestSection({ capacity: 1, strength: 1, shape: 'tube' as never }))).toBe('out-of-range input.shape');
  expect(refusal(() => largestSection({ capacity: 1, strength: 1, utilisation: 1.1 }))).toBe('out-of-range input.utilisation');
});

// elementary mechanics: half force times way
test('20 kN on 8 x 48 of steel and 20 µm/kN', () => {
  const input = { force: 20_000, compliance: 2e-5, length: 48, area: d8.area, modulus: 210_000 };
  const way = 20_000 * 2e-5 + ((20_000 / d8.area) * 48) / 210_000;
  expect(storedEnergy(input)).toBeCloseTo((20_000 * way) / 2, 8);
  expect(storedEnergy({ ...input, force: 0 })).toBe(0);
  expect(refusal(() => storedEnergy({ ...input, compliance: -1 }))).toBe('out-of-range compliance');
});

describe('oil', () => {
  // the definition of the bulk modulus: dV = V dp / K; work is half of pressure times volume
  test('100 cm³ at 20 MPa with K = 1.4 GPa', () => {
    const energy = oilEnergy({ pressure: 20, volume: 100e3, bulkModulus: 1400 });
    expect(energy).toBeCloseTo((20 * ((100e3 * 20) / 1400)) / 2, 8);
    expect(oilEnergy({ pressure: 20, volume: 100e3 })).toBe(energy);
    expect(oilEnergy({ pressure: 20, volume: 0, hoseGrowth: 10 })).toBe(2000);
    expect(refusal(() => oilEnergy({ pressure: 20, volume: 1, bulkModulus: 0 }))).toBe('not-positive bulkModulus');
  });

  // stress rate 52.5 MPa/s on 8 mm, over the piston; 50 to 150 cm³ take 75 to 225 mm³/s beside the 81 of the piston
  test('in the elastic part the oil takes as much as the piston or more', () => {
    const area = pistonArea({ bore: 40 });
    const pressureRate = (0.00025 * 210_000 * d8.area) / area;
    const flow = (volume: number) => oilFlow({ speed: 0.0647788, area, pressureRate, volume });
    expectPrinted(flow(0), '81');
    expectPrinted(flow(50e3) - flow(0), '75');
    expectPrinted(flow(150e3) - flow(0), '225');
    expect(oilFlow({ speed: 0, area, pressureRate: 2, volume: 0, hoseGrowth: 5 })).toBe(10);
    expect(refusal(() => oilFlow({ speed: 0, area: 0, pressureRate: 2, volume: 0 }))).toBe('not-positive area');
  });
});

test('travel is the sum of its parts; the neck is half a diameter', () => {
  const input = { slack: 1, force: 20_000, compliance: 2e-5, parallelLength: 48, uniformExtension: 0.2, area: d8.area };
  const parts = travelNeeded(input);
  expect(parts).toEqual({
    slack: 1,
    frame: 0.4,
    uniform: expect.closeTo(9.6, 12) as number,
    neck: expect.closeTo(4, 12) as number,
    travel: expect.closeTo(15, 12) as number,
  });
  expect(travelNeeded({ ...input, necks: false }).neck).toBe(0);
  expect(refusal(() => travelNeeded({ ...input, slack: -1 }))).toBe('out-of-range slack');
});

test('a thread without a core is refused', () => {
  expect(refusal(() => threadStressArea({ diameter: 1, pitch: 2 }))).toBe('out-of-range pitch');
});

// balance of a half wedge, written with normal and friction forces instead of the angle of friction
test('wedge: margin and pressure by the balance of forces', () => {
  const [angle, back, face, force] = [0.15, 0.12, 0.35, 20_000];
  const { margin, pressure } = wedgeGripMargin({ force, angle, backFriction: back, faceFriction: face, area: 400 });
  // normal force B on the back: along the axis B (sin + μ cos) = F / 2, across it B (cos - μ sin) = N
  const onBack = force / 2 / (Math.sin(angle) + back * Math.cos(angle));
  const press = onBack * (Math.cos(angle) - back * Math.sin(angle));
  expect(pressure).toBeCloseTo(press / 400, 9);
  expect(margin).toBeCloseTo((face * press) / (force / 2), 9);
  expect(wedgeGripMargin({ force: 1, angle, area: 400 }).margin).toBe(wedgeGripMargin({ force: 5000, angle, area: 400 }).margin);
  expect(refusal(() => wedgeGripMargin({ force, angle: 0, area: 400 }))).toBe('out-of-range angle');
  expect(refusal(() => wedgeGripMargin({ force, angle, area: 0 }))).toBe('not-positive area');
});

// ISO 178: 3 F L / (2 b h²); two noses at a third: F L / (b h²); a round bar: 8 F L / (π d³)
test('bending by the formulas of rectangle and round', () => {
  const flat = rectangular({ width: 20, thickness: 5 });
  const F = bendingForce({ section: flat, span: 100, stress: 300 });
  expect((3 * F * 100) / (2 * 20 * 25)).toBeCloseTo(300, 9);
  const third = bendingForce({ section: flat, span: 90, arm: 30, stress: 300 });
  expect((third * 90) / (20 * 25)).toBeCloseTo(300, 9);
  const bar = bendingForce({ section: d8, span: 100, stress: 300 });
  expect((8 * bar * 100) / (Math.PI * 512)).toBeCloseTo(300, 9);
  expect(refusal(() => bendingForce({ section: tube({ outerDiameter: 10, wallThickness: 1 }), span: 100, arm: 51, stress: 1 }))).toBe(
    'out-of-range arm',
  );
});
