import { describe, expect, test } from 'vitest';
import { eulerLoad, planCompression, planCupping, rectangular, round, sectionFromArea } from '../../src/index.js';
import { refusal } from '../support/thrown.js';

const frame = { capacity: 25_000, verifiedFrom: 1000, compliance: 2e-5, slack: 0.5 };
const codes = ({ findings }: { readonly findings: readonly { severity: string; code: string }[] }) =>
  findings.map(({ severity, code }) => `${severity} ${code}`);

describe('compression', () => {
  const expected = { modulus: 210_000, yieldStrength: 250, tensileStrength: 400, elongation: 0.3, exponent: 0.2 };
  const base = { expected, section: round({ diameter: 6 }), height: 12, frame } as const;

  test('force by Hollomon through Rm, with the area and the friction of the end', () => {
    const plan = planCompression({ ...base, toStrain: 0.2, friction: 0.1 });
    // second derivation: K from σ at the onset of the neck, Rm e^n = K n^n
    const strain = Math.log(1 / 0.8);
    const flow = 400 * Math.exp(0.2) * (strain / 0.2) ** 0.2;
    const diameter = 6 / Math.sqrt(0.8);
    const friction = 1 + (0.1 * diameter) / (3 * 9.6);
    expect(plan.force.greatest).toBeCloseTo(flow * (Math.PI / 4) * diameter ** 2 * friction, 6);
    expect(plan.frictionShare).toBeCloseTo(1 - 1 / friction, 12);
    expect(plan.force.least).toBeCloseTo(250 * base.section.area, 9);
    expect(plan.shortening).toBeCloseTo(2.4, 12);
    expect(plan.travel).toBeCloseTo(0.5 + 2e-5 * plan.force.greatest + 2.4, 12);
    expect(codes(plan)).toEqual([]);
  });

  test('small strains need the yield strength; where the exponent is a range, that of the strain is the worst', () => {
    const small = planCompression({ ...base, toStrain: 0.002, friction: 0, expected: { ...expected, yieldStrength: 380 } });
    expect(small.force.greatest).toBeCloseTo((380 * base.section.area) / 0.998, 6);
    const between = planCompression({ ...base, friction: 0, expected: { ...expected, exponent: [0.05, 0.3] } }).force.greatest;
    for (const exponent of [0.05, 0.1, 0.2, 0.3])
      expect(planCompression({ ...base, friction: 0, expected: { ...expected, exponent } }).force.greatest).toBeLessThanOrEqual(between);
    // at n = ε the flow stress is Rm e^ε = Rm / (1 − e)
    expect(between).toBeCloseTo((400 * base.section.area) / 0.9 ** 2, 6);
  });

  test('a slender piece buckles where the load of Euler with the tangent modulus meets the force', () => {
    const plan = planCompression({ ...base, height: 24 });
    const strain = -Math.log(1 - plan.bucklingStrain!);
    const stress = 400 * Math.exp(0.2) * (strain / 0.2) ** 0.2;
    const secondMoment = base.section.secondMoment! * Math.exp(2 * strain);
    const modulus = (0.2 * stress) / strain;
    const held = eulerLoad({ modulus, secondMoment, length: 24 * Math.exp(-strain), endFactor: 0.5 });
    expect(held / (stress * base.section.area * Math.exp(strain))).toBeCloseTo(1, 9);
    expect(codes(plan)).toEqual(['caution planned-buckling']);
    expect(codes(planCompression({ ...base, height: 24, toStrain: 0.02 }))).toEqual([]);
    expect(planCompression({ ...base, height: 18 })).not.toHaveProperty('bucklingStrain');
    expect(planCompression({ ...base, height: 24, section: sectionFromArea({ area: 28 }) })).not.toHaveProperty('bucklingStrain');
  });

  test('a slender piece of high yield strength buckles before it, by the load of Euler', () => {
    const strong = { modulus: 70_000, yieldStrength: 500, tensileStrength: 570, elongation: 0.1, exponent: 0.08 };
    const plan = planCompression({ ...base, expected: strong, height: 48, endFactor: 2, toStrain: 0.005 });
    // by hand: i = 1.5 mm, λ = 64, π² 70 000/64² = 168.7 MPa, far below 500
    const load = eulerLoad({ modulus: 70_000, secondMoment: base.section.secondMoment!, length: 48, endFactor: 2 });
    expect(load / base.section.area).toBeCloseTo(168.67, 2);
    expect(plan.bucklingStrain).toBeCloseTo(load / base.section.area / 70_000, 12);
    expect(plan.bucklingStrain).toBeCloseTo(0.0024096, 7);
    expect(codes(plan)).toContain('caution planned-buckling');
    // at 150 MPa it yields first, and by the little that it hardens does not stay straight
    const weak = planCompression({ ...base, expected: { ...strong, yieldStrength: 150 }, height: 48, endFactor: 2 });
    expect(weak.bucklingStrain).toBeCloseTo(150 / 70_000, 12);
  });

  test('proportions, stroke, capacity, a brittle metal', () => {
    expect(codes(planCompression({ ...base, height: 4 }))).toEqual(['caution piece-squat']);
    expect(codes(planCompression({ ...base, height: 61, toStrain: 0.001 }))).toEqual(['caution piece-slender']);
    expect(codes(planCompression({ ...base, frame: { ...frame, stroke: 1.5 } }))).toEqual(['fault travel-near-stroke']);
    expect(codes(planCompression({ ...base, section: round({ diameter: 12 }), height: 24 }))).toEqual(['fault force-above-capacity']);
    expect(planCompression({ ...base, section: rectangular({ width: 4, thickness: 8 }) }).heightRatio).toBe(3);
    const iron = planCompression({ ...base, family: 'grey-iron', expected: undefined, friction: 0, toStrain: 0.01 });
    expect(iron.force.greatest).toBeCloseTo((4 * iron.material.tensileStrength[1] * base.section.area) / 0.99, 6);
  });

  test('pace up to yield: 0.5 % a minute of piece and frame', () => {
    const plan = planCompression(base);
    const rate = 0.005 / 60;
    expect(plan.loading.time[0]).toBeCloseTo(250 / 210_000 / rate, 9);
    expect(plan.speed).toBeCloseTo(rate * 12 + 2e-5 * 210_000 * rate * base.section.area, 12);
  });

  test('the way to the strain at which to stop takes far longer: shortening over speed, and turns over the lead', () => {
    const stiff = { capacity: 25_000, drive: { kind: 'screw', travelPerTurn: 0.5 } } as const;
    const plan = planCompression({ ...base, height: 24, toStrain: 0.1, frame: stiff });
    // 0.5 % a minute up to 10 %: 20 minutes; 2.4 mm by 0.5 mm a turn
    expect(plan.duration).toBeCloseTo(20 * 60, 9);
    expect(plan.driveNumber).toBeCloseTo(4.8, 12);
    expect(plan.loading.driveNumber).toBeCloseTo(((250 / 210_000) * 24) / 0.5, 12);
    const soft = planCompression({ ...base, height: 24 });
    expect(soft.duration).toBeCloseTo((soft.travel - 0.5) / soft.speed, 9);
    expect(soft).not.toHaveProperty('driveNumber');
  });

  test('refusals', () => {
    expect(refusal(() => planCompression({ ...base, height: 0 }))).toBe('not-positive height');
    expect(refusal(() => planCompression({ ...base, toStrain: 10 }))).toBe('out-of-range toStrain');
    expect(refusal(() => planCompression({ ...base, friction: 0.6 }))).toBe('out-of-range friction');
    expect(refusal(() => planCompression({ ...base, endFactor: 3 }))).toBe('out-of-range endFactor');
    expect(refusal(() => planCompression({ ...base, expected: { modulus: 1e5, tensileStrength: 400 } }))).toBe(
      'missing expected.elongation',
    );
  });
});

describe('cupping', () => {
  const base = { expected: { tensileStrength: [300, 350] }, thickness: 1, frame } as const;

  test('the force that tears a ring of the sheet; depth, pace and travel', () => {
    const plan = planCupping(base);
    // a tube of 20 mm bore and 1 mm wall pulled apart
    expect(plan.force.greatest).toBeCloseTo((350 * Math.PI * (22 ** 2 - 20 ** 2)) / 4, 6);
    expect(plan.force.least).toBeCloseTo((300 * Math.PI * (22 ** 2 - 20 ** 2)) / 8, 6);
    expect(plan.travel).toBeCloseTo(0.5 + 2e-5 * plan.force.greatest + 15, 12);
    expect(plan.loading.time.map((t) => t / 60)).toEqual([expect.closeTo(0.75, 9), expect.closeTo(3, 9)]);
    expect(codes(plan)).toEqual(['caution force-near-capacity']);
  });

  test('sheet, blank, tools, stroke and capacity', () => {
    expect(codes(planCupping({ ...base, thickness: 0.05 }))).toContain('caution cupping-sheet-outside');
    expect(codes(planCupping({ ...base, width: 80 }))).toContain('caution cupping-blank-narrow');
    expect(codes(planCupping({ ...base, ballDiameter: 15 }))).toContain('caution cupping-tools-other');
    expect(codes(planCupping({ ...base, frame: { ...frame, stroke: 15 } }))).toContain('fault travel-near-stroke');
    expect(codes(planCupping({ ...base, thickness: 2 }))).toContain('fault force-above-capacity');
  });

  test('refusals', () => {
    expect(refusal(() => planCupping({ ...base, thickness: 0 }))).toBe('not-positive thickness');
    expect(refusal(() => planCupping({ ...base, expected: undefined }))).toBe('missing expected.tensileStrength');
    expect(refusal(() => planCupping({ ...base, depth: NaN }))).toBe('not-finite depth');
  });
});
