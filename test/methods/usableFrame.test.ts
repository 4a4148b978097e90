import { describe, expect, test } from 'vitest';
import {
  analyseBending,
  analyseCompression,
  analyseTension,
  checkConsistency,
  rectangular,
  round,
  whatIf,
  type TensionOptions,
  type TensionRecord,
} from '../../src/index.js';
import { AREA, caseT1, caseT3, COMPLIANCE, roundPiece } from '../support/records.js';

// steel of 210 GPa, ReH 300 MPa, ReL 280 MPa, Rm 430 MPa, At 30 %; the piece gives 48/(210000 S0) = 4.55e-6 mm/N, the frame 2e-5
const steel = caseT3();
const PIECE = 48 / (210_000 * AREA);
const of = (frameCompliance: TensionOptions['frameCompliance'], record: TensionRecord = steel, options: TensionOptions = {}) =>
  analyseTension(record, roundPiece, { frameCompliance, ...options });
const codes = ({ findings }: { readonly findings: readonly { readonly code: string }[] }) => findings.map(({ code }) => code);
const found = (result: ReturnType<typeof of>, code: string) => result.findings.find((one) => one.code === code);

describe('a compliance that takes more than the travel there is', () => {
  test.each([
    ['µm/kN typed for mm/N', 20],
    ['30 % too large', 1.3 * COMPLIANCE],
    ['half as large again', 1.5 * COMPLIANCE],
    ['just what frame and piece give together', COMPLIANCE + PIECE],
    ['a piece of 500 GPa would be left', COMPLIANCE + PIECE * (1 - 21 / 50)],
    ['the same as a table', { force: [0, 50_000], travel: [0, 1.5] }],
  ])('%s: it is refused, named, and the rest is that of the travel', (_, compliance) => {
    const result = of(compliance);
    const fault = found(result, 'compliance-too-large')!;
    expect(fault).toMatchObject({ severity: 'fault', field: 'modulus' });
    const given = typeof compliance === 'number' ? compliance : 3e-5;
    expect(fault.values['share']).toBeCloseTo((100 * given) / (COMPLIANCE + PIECE), given < 1 ? 1 : -4);
    expect(fault.remedy).toContain('20 µm/kN is 2e-5 mm/N');
    const { findings, provenance } = result;
    expect({ ...of(undefined), findings, provenance }).toEqual(result);
    expect(findings.filter(({ severity }) => severity === 'fault')).toEqual([fault]);
    expect(provenance.options['frameCompliance']).toEqual(compliance);
    expect(result).not.toHaveProperty('modulus');
    expect(result.totalExtensionStrengths).toEqual([]);
    expect(result.upperYieldStrength?.value).toBe(300);
    expect(result.totalExtensionAtFracture!.value).toBeGreaterThan(0.29);
    expect(result.toughness!.value).toBeGreaterThan(0);
  });

  test('one that leaves a stiff metal, and the true one, are removed', () => {
    const stiff = of(COMPLIANCE + PIECE * (1 - 21 / 40));
    expect(stiff.modulus!.value / 400_000).toBeCloseTo(1, 3);
    expect(codes(stiff)).not.toContain('compliance-too-large');
    expect(of(COMPLIANCE).modulus!.value / 210_000).toBeCloseTo(1, 4);
    expect(of(COMPLIANCE).totalExtensionStrengths).toHaveLength(1);
  });

  test('it is seen where the curve bends from the start, and where there is no line', () => {
    const bent = caseT1();
    // 70 GPa and the frame give 3.36e-5 mm/N together
    expect(found(of(3.6e-5, bent), 'compliance-too-large')!.values['share']).toBeCloseTo(100 * (3.6 / 3.364), 0);
    expect(codes(of(2.9e-5, bent))).not.toContain('compliance-too-large');
    const short = analyseTension({ force: [0, 1000], travel: [0, 0.02] }, roundPiece, { frameCompliance: 2e-2 });
    expect(codes(short)).toContain('compliance-too-large');
    expect(Math.min(...short.curve.strain)).toBe(0);
  });

  test('with an extensometer that came off only the travel behind it is concerned', () => {
    const { force, travel } = steel;
    const extension = Float64Array.from(travel!, (x, i) => (i < 500 ? ((x - 0.15 - COMPLIANCE * force[i]!) * 40) / 48 : NaN));
    const result = of(20, { force, travel: travel!, extension });
    expect(codes(result)).toContain('compliance-too-large');
    expect(result.modulus!.value / 210_000).toBeCloseTo(1, 4);
    expect(result.totalExtensionAtFracture!.value).toBeGreaterThan(0.29);
  });

  test('other evaluations of the result know that it stayed in', () => {
    const result = of(20);
    expect(whatIf(result).map(({ change }) => change.kind)).not.toContain('frame-compliance');
    const links = (one: typeof result) => checkConsistency(one, { record: steel }).links;
    expect(links(result)).toEqual(links(of(undefined)));
  });

  test('a bar that is pushed, and a beam', () => {
    const stress = Float64Array.from({ length: 2001 }, (_, i) => i / 5);
    const strain = stress.map((R) => R / 70_000 + 0.002 * (R / 250) ** 20);
    const bar = { section: round({ diameter: 8 }), height: 16 };
    const pushed = { force: stress.map((R) => R * AREA), travel: strain.map((e, i) => 16 * e + COMPLIANCE * stress[i]! * AREA) };
    expect(codes(analyseCompression(pushed, bar, { frameCompliance: 20 }))).toContain('compliance-too-large');
    const compressed = analyseCompression(pushed, bar, { frameCompliance: COMPLIANCE });
    expect(codes(compressed)).not.toContain('compliance-too-large');
    expect(compressed.modulus!.value / 70_000).toBeCloseTo(1, 3);
    // a beam of 1e-4 mm/N in the same frame
    const force = Float64Array.from({ length: 500 }, (_, i) => 2 * i);
    const beam = { section: rectangular({ width: 10, thickness: 5 }), setup: { points: 3 as const, span: 100 } };
    const bent = { force, travel: force.map((F) => 1.2e-4 * F) };
    expect(codes(analyseBending(bent, beam, { frameCompliance: 20 }))).toContain('compliance-too-large');
    expect(codes(analyseBending(bent, beam, { frameCompliance: COMPLIANCE }))).not.toContain('compliance-too-large');
  });
});

describe('a compliance that takes next to nothing', () => {
  test('E is withheld, and so is a strength at a total extension', () => {
    const result = of(2e-8);
    expect(found(result, 'compliance-vanishing')).toMatchObject({ severity: 'fault', field: 'modulus' });
    expect(found(result, 'compliance-vanishing')!.values['share']).toBeCloseTo(2e-6 / (COMPLIANCE + PIECE), 3);
    expect(result).not.toHaveProperty('modulus');
    expect(result).not.toHaveProperty('resilience');
    expect(result.totalExtensionStrengths).toEqual([]);
    expect(result.elasticSlope!.value).toBeCloseTo(48 / (AREA * (COMPLIANCE + PIECE - 2e-8)), 0);
  });

  test('of a compliance that a frame can have, only where E is too low for the family', () => {
    // a hundredth of the motion is 2.5e-7 mm/N
    expect(codes(of(2e-7))).not.toContain('compliance-vanishing');
    expect(codes(of(2e-7, steel, { family: 'structural-steel' }))).toContain('compliance-vanishing');
  });

  test('beside a thin wire a true compliance may vanish', () => {
    const area = Math.PI * 0.0625;
    const force = Float64Array.from({ length: 400 }, (_, i) => i / 10);
    const wire = { section: round({ diameter: 0.5 }), gaugeLength: 200 };
    const result = analyseTension({ force, travel: force.map((F) => F * (200 / (205_000 * area) + COMPLIANCE)) }, wire, {
      frameCompliance: COMPLIANCE,
      family: 'structural-steel',
    });
    expect(codes(result)).not.toContain('compliance-vanishing');
    expect(result.modulus!.value / 205_000).toBeCloseTo(1, 6);
  });
});

describe('a strength at a total extension needs the strain of the piece', () => {
  test('from travel with the frame in it it is withheld and said; by an extensometer it is given', () => {
    const raw = of(undefined);
    expect(raw.totalExtensionStrengths).toEqual([]);
    expect(raw.findings.find(({ field }) => field === 'totalExtensionStrengths')).toMatchObject({
      code: 'not-determined',
      values: { symbol: 'Rt0.5', why: 'its extension would be of frame and piece together' },
    });
    // the offset is parallel to the curve's own line: the frame drops out
    expect(raw.proofStrengths[0]!.value).toBeCloseTo(of(COMPLIANCE).proofStrengths[0]!.value, 0);
    const { force, travel } = steel;
    const extension = travel!.map((x, i) => ((x - 0.15 - COMPLIANCE * force[i]!) * 40) / 48);
    expect(analyseTension({ force, extension }, roundPiece).totalExtensionStrengths).toHaveLength(1);
  });

  test('without an elastic line strain has no origin', () => {
    const flat = analyseTension({ force: [0, 1], extension: [0, 1] }, roundPiece);
    expect([codes(flat).includes('not-determined'), flat.totalExtensionStrengths]).toEqual([true, []]);
  });
});
