import { describe, expect, test } from 'vitest';
import {
  brinellHardness,
  planBending,
  planBrinell,
  planShear,
  rectangular,
  round,
  sectionFromArea,
  tube,
  type TestFrame,
} from '../../src/index.js';
import { expectPrinted } from '../support/handbook.js';
import { refusal } from '../support/thrown.js';

const frame: TestFrame = { capacity: 25_000, compliance: 2e-5, bore: 40, verifiedFrom: 2000, forceError: 0.01 };
const codes = (plan: { readonly findings: readonly { code: string; severity: string }[] }) =>
  plan.findings.map(({ code, severity }) => `${severity} ${code}`);

describe('Brinell', () => {
  const base = { ballDiameter: 10, index: 10, hardness: [60, 90], frame } as const;

  // ISO 6506-1, by the old definition of the force: 0.102 F / D²
  test.each([
    [10, 29_420, '30.008'],
    [10, 9807, '10.003'],
    [5, 1226, '5.002'],
  ])('ball %d at %d N has the index %s', (ballDiameter, force, printed) => {
    expectPrinted(planBrinell({ ballDiameter, force, hardness: 80, frame }).index, printed);
  });

  test('10/3000 is impossible at 25 kN, 10/1000 is planned', () => {
    expect(codes(planBrinell({ ...base, index: 30, hardness: 229 }))).toEqual(['fault force-above-capacity']);
    const plan = planBrinell({ ...base, hardness: 76.3 });
    expect(codes(plan)).toEqual([]);
    expect(plan.force.greatest).toBeCloseTo(9804, 0);
    // indentation of 4.00 mm: printed tables of 10/1000, from memory
    expectPrinted(plan.indentation![0], '4.00');
    expect(plan.leastThickness).toBeCloseTo(8 * 0.4174, 2);
    expect(plan.leastEdge).toBeCloseTo(2.5 * plan.indentation![1], 9);
    expect(plan.leastSpacing).toBeCloseTo(3 * plan.indentation![1], 9);
    expect(plan.dwell).toEqual([10, 15]);
    expect(plan.loading.time).toEqual([2, 8]);
    expect(plan.loading.forceRate[1]).toBeCloseTo(plan.force.greatest / 2, 9);
    expect(plan.possible.map(({ designation }) => designation)).toContain('HBW 10/1000');
    expect(plan.possible.map(({ designation }) => designation)).not.toContain('HBW 10/3000');
  });

  test('the indentation of a range gives its hardness back', () => {
    const { indentation, force } = planBrinell(base);
    expect(brinellHardness({ force: force.greatest, ballDiameter: 10, diameters: indentation![0] }).hardness).toBeCloseTo(90, 9);
    expect(brinellHardness({ force: force.greatest, ballDiameter: 10, diameters: indentation![1] }).hardness).toBeCloseTo(60, 9);
  });

  test('doubts', () => {
    expect(codes(planBrinell({ ...base, index: undefined, force: 8000 }))).toContain('caution planned-index-unusual');
    expect(codes(planBrinell({ ...base, hardness: 400 }))).toContain('caution planned-indentation-outside');
    expect(codes(planBrinell({ ...base, hardness: [20, 80] }))).toContain('caution planned-indentation-outside');
    const sunk = planBrinell({ ...base, hardness: [5, 80] });
    expect(sunk.indentation).toBeUndefined();
    expect(codes(sunk)).toContain('caution planned-indentation-outside');
    expect(codes(planBrinell({ ...base, thickness: 3 }))).toContain('caution brinell-piece-thin');
    expect(codes(planBrinell({ ...base, frame: { ...frame, forceError: 0.02 } }))).toContain('caution ball-force-error');
    expect(codes(planBrinell({ ...base, ballDiameter: 2.5, frame }))).toContain('caution force-below-verified');
  });

  test('strokes for the give of frame and oil; turns for the frame alone', () => {
    const pump = planBrinell({ ...base, frame: { ...frame, oilVolume: 100e3, drive: { kind: 'pump', volumePerStroke: 500 } } });
    const F = pump.force.greatest;
    const area = 400 * Math.PI;
    expect(pump.loading.driveNumber).toBeCloseTo((area * 2e-5 * F + (100e3 / 1400) * (F / area)) / 500, 9);
    const screw = planBrinell({ ...base, frame: { ...frame, drive: { kind: 'screw', travelPerTurn: 1 } } });
    expect(screw.loading.driveNumber).toBeCloseTo(2e-5 * F, 9);
    expect(planBrinell(base).loading).not.toHaveProperty('driveNumber');
  });

  test('refusals', () => {
    expect(refusal(() => planBrinell({ ...base, force: 100 }))).toBe('out-of-range force');
    expect(refusal(() => planBrinell({ ...base, index: undefined }))).toBe('missing force');
    expect(refusal(() => planBrinell({ ...base, ballDiameter: 0 }))).toBe('not-positive ballDiameter');
    expect(refusal(() => planBrinell({ ...base, hardness: 'soft' as never }))).toBe('wrong-type hardness');
    expect(refusal(() => planBrinell({ ...base, size: 1 } as never))).toBe('unknown-option input.size');
  });
});

describe('shear', () => {
  const base = { family: 'structural-steel', section: round({ diameter: 5 }), frame } as const;

  test('two planes of the strongest pin, one of the weakest ratio', () => {
    const plan = planShear(base);
    expect(plan.shearStrength).toEqual([expect.closeTo(0.6 * 360, 9), expect.closeTo(0.8 * 720, 9)]);
    expect(plan.force.greatest).toBeCloseTo(2 * base.section.area * 576, 6);
    expect(plan.force.least).toBeCloseTo(2 * base.section.area * 216, 6);
    expect(plan.loading.time[0]).toBeCloseTo(57.6, 9);
    expect(codes(plan)).toEqual(['caution force-near-capacity']);
    expect(plan.ifItStalls.at(-1)).toMatch(/one plane/);
    expect(planShear({ ...base, planes: 1, shearRatio: 0.7 }).force.greatest).toBeCloseTo(base.section.area * 504, 6);
  });

  test('refusals', () => {
    expect(refusal(() => planShear({ ...base, planes: 3 as never }))).toBe('out-of-range planes');
    expect(refusal(() => planShear({ ...base, stressRate: 0 }))).toBe('not-positive stressRate');
    expect(refusal(() => planShear({ ...base, family: undefined }))).toBe('missing expected.tensileStrength');
  });
});

describe('bending', () => {
  const section = rectangular({ width: 20, thickness: 5 });
  const base = { family: 'structural-steel', section, span: 100, frame } as const;

  test('plastic throughout at the greatest strength, first yield at the least', () => {
    const plan = planBending(base);
    // W = 20 * 25 / 6; 4 W / L
    expect(plan.force.greatest).toBeCloseTo((1.5 * 4 * (500 / 6) * 720) / 100, 9);
    expect(plan.force.least).toBeCloseTo((4 * (500 / 6) * 235) / 100, 9);
    expect(plan.deflectionAtYield).toBeCloseTo(((550 / 207_500) * 100 ** 2) / (6 * 5), 9);
    // second derivation of the frame's share: force rate times compliance
    const strainRate = 0.01 / 60;
    const forceRate = (4 * (500 / 6) * 207_500 * strainRate) / 100;
    expect(plan.speed).toBeCloseTo((strainRate * 100 ** 2) / 30 + 2e-5 * forceRate, 12);
    expect(plan.loading.time[0]).toBeCloseTo(550 / 207_500 / strainRate, 9);
    expect(codes(plan)).toEqual(['caution force-below-verified']);
  });

  test('two noses; a round; a brittle bar breaks at its strength', () => {
    const third = planBending({ ...base, span: 90, arm: 30 });
    expect(third.force.greatest).toBeCloseTo((1.5 * 20 * 25 * 720) / 90, 9);
    // deflection in the middle of a bar with thirds: 4.70 h s / L² is the strain (ISO 178 style)
    expect((4.7 * 5 * third.deflectionAtYield) / 90 ** 2).toBeCloseTo(550 / 207_500, 5);
    const bar = planBending({ ...base, section: round({ diameter: 8 }) });
    expectPrinted((bar.force.greatest * 8 * 100) / (720 * Math.PI * 512), '1.698');
    const iron = planBending({ ...base, family: 'grey-iron' });
    expect(iron.force.greatest).toBeCloseTo((4 * (500 / 6) * iron.material.tensileStrength[1]) / 100, 9);
    expect(planBending({ ...base, section: tube({ outerDiameter: 20, wallThickness: 2 }) }).span).toBe(100);
  });

  test('a short span, and too strong a bar', () => {
    expect(codes(planBending({ ...base, span: 70 }))).toContain('caution planned-span-short');
    expect(codes(planBending({ ...base, span: 80 }))).not.toContain('caution planned-span-short');
    expect(codes(planBending({ ...base, section: rectangular({ width: 40, thickness: 15 }) }))).toContain('fault force-above-capacity');
  });

  test('refusals', () => {
    expect(refusal(() => planBending({ ...base, arm: 60 }))).toBe('out-of-range arm');
    expect(refusal(() => planBending({ ...base, section: sectionFromArea({ area: 20 }) }))).toBe('missing section.sectionModulus');
    expect(refusal(() => planBending({ ...base, strainRate: 0 }))).toBe('not-positive strainRate');
  });
});
