import { describe, expect, test } from 'vitest';
import {
  analyseBending,
  analyseCompression,
  analyseTension,
  analyseUnloading,
  checkConsistency,
  rectangular,
  round,
  whatIf,
  type TensionOptions,
  type TensionRecord,
} from '../../src/index.js';
import { AREA, broken, caseT1, caseT3, COMPLIANCE, roundPiece } from '../support/records.js';

// steel of 210 GPa, ReH 300 MPa, ReL 280 MPa, Rm 430 MPa, At 30 %; the piece gives 48/(210000 S0) = 4.55e-6 mm/N, the frame 2e-5
const steel = broken(caseT3());
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
    expect({ ...of(undefined), frameRemoved: false, findings, provenance }).toEqual(result);
    const withheld = found(result, 'modulus-includes-frame-compliance');
    expect(findings.filter(({ severity }) => severity === 'fault')).toEqual([fault, withheld]);
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

describe('the doubt of a compliance is carried into every modulus that stands on it', () => {
  const curve = caseT1();
  const bar = { section: round({ diameter: 8 }), height: 48 };
  const known = { constant: COMPLIANCE, relativeStandardUncertainty: 0.05 };

  test('tension, compression and an unloading of one and the same record say the same of E', () => {
    const [pull, push] = [of(known, curve), analyseCompression(curve, bar, { frameCompliance: known })];
    const [stretched, pushed] = [pull.modulus!, push.modulus!];
    expect(pushed.value).toBe(stretched.value);
    expect(pushed.standardUncertainty! / stretched.standardUncertainty!).toBeCloseTo(1, 9);
    // 70 GPa over 48 mm: the frame gives 1.466 times as much as the piece, and 5 % of it is 7.33 % of E
    const ratio = (COMPLIANCE * AREA * 70_000) / 48;
    // the slope is the same number under another name
    for (const { value, standardUncertainty } of [stretched, pushed, pull.elasticSlope!, push.elasticSlope!])
      expect(standardUncertainty! / value).toBeCloseTo(0.05 * ratio, 5);
    const down = Float64Array.from({ length: 101 }, (_, i) => 150 - 1.5 * i);
    const stress = [...down.map((R) => 150 - R), ...down];
    const strain = stress.map((R, i) => R / 70_000 + (i > 100 ? 1e-4 : (1e-4 * R) / 150));
    const loop = analyseUnloading(
      { force: stress.map((R) => R * AREA), travel: strain.map((e, i) => 48 * e + COMPLIANCE * stress[i]! * AREA) },
      roundPiece,
      { frameCompliance: known, reversibility: 0 },
    );
    const { slope } = loop.loops[0]!;
    expect(slope.symbol).toBe('Eu');
    expect(slope.standardUncertainty! / slope.value).toBeCloseTo(0.05 * ratio, 5);
    expect(loop.findings.find(({ code }) => code === 'modulus-carries-compliance')).toMatchObject({ field: 'loops' });
  });
});

describe('frame and indentation of a beam', () => {
  // steel: 10 x 5 mm over 100 mm gives 1 / 1000 mm/N
  const beam = { section: rectangular({ width: 10, thickness: 5 }), setup: { points: 3 as const, span: 100 } };
  const [FRAME, INTO] = [2e-4, 1e-4];
  const force = Float64Array.from({ length: 1001 }, (_, i) => i);
  const bent = { force, travel: force.map((F) => (1e-3 + FRAME + INTO) * F) };
  const E = 100 ** 3 / (4 * 10 * 5 ** 3) / 1e-3;
  const moduli = (frame: number, into: number) => {
    const { modulus, chordModulus } = analyseBending(bent, beam, { frameCompliance: frame, indentationCompliance: into });
    return [modulus!.value, chordModulus!.value] as const;
  };

  test.each([
    ['both known to 5 %', 0.05, 0.05],
    ['to 5 and to 20 %', 0.05, 0.2],
    ['the frame alone', 0.05, undefined],
    ['the indentation alone', undefined, 0.2],
  ])('%s: u(E) by slope and chord is what moving each compliance by its uncertainty makes of E', (_, u, v) => {
    const result = analyseBending(bent, beam, {
      frameCompliance: { constant: FRAME, relativeStandardUncertainty: u },
      indentationCompliance: { constant: INTO, relativeStandardUncertainty: v },
    });
    expect(result.modulus!.value / E).toBeCloseTo(1, 9);
    const half = (k: 0 | 1, d: number, into: boolean): number => {
      const at = (s: number) => moduli(FRAME * (into ? 1 : 1 + s), INTO * (into ? 1 + s : 1))[k];
      // a thousandth of it: the slope there, without what is bent
      return (500 * (at(d / 1000) - at(-d / 1000))) / E;
    };
    const { elasticSlope, modulus, chordModulus } = result;
    (
      [
        [elasticSlope!, 0],
        [modulus!, 0],
        [chordModulus!, 1],
      ] as const
    ).forEach(([quantity, k]) => {
      const expected = Math.hypot(half(k, u ?? 0, false), half(k, v ?? 0, true));
      expect(quantity.standardUncertainty! / quantity.value / expected).toBeCloseTo(1, 4);
    });
  });

  test('of a table and a power law the doubt goes with what each moves in the window; flat ones add none', () => {
    const table = { force: [0, 400, 800], travel: [0, 400 * FRAME, 800 * FRAME], relativeStandardUncertainty: 0.05 };
    const power = { coefficient: INTO, exponent: 1, relativeStandardUncertainty: 0.2 };
    const result = analyseBending(bent, beam, { frameCompliance: table, indentationCompliance: power });
    expect(result.modulus!.standardUncertainty! / result.modulus!.value).toBeCloseTo(Math.hypot(0.05 * 0.2, 0.2 * 0.1), 6);
    const flat = { force: [0, 800], travel: [0, 0], relativeStandardUncertainty: 0.5 };
    const none = analyseBending({ force, travel: force.map((F) => 1e-3 * F) }, beam, {
      frameCompliance: flat,
      indentationCompliance: flat,
    });
    expect(none.elasticSlope!.value / E).toBeCloseTo(1, 9);
  });

  test('together they are one number, and a doubt of half of it is said', () => {
    const half = { relativeStandardUncertainty: 0.5 };
    const both = analyseBending(bent, beam, {
      frameCompliance: { constant: FRAME, ...half },
      indentationCompliance: { constant: INTO, ...half },
    });
    const carried = both.findings.find(({ code }) => code === 'modulus-carries-compliance')!;
    expect(carried.values['uncertainty']).toBeCloseTo(50 * Math.hypot(0.2, 0.1), 6);
    expect(both.findings.find(({ code }) => code === 'frame-compliance-removed')!.values['compliance']).toBe(FRAME + INTO);
    const unknown = analyseBending(bent, beam, { frameCompliance: FRAME, indentationCompliance: INTO });
    expect(unknown.chordModulus).not.toHaveProperty('standardUncertainty');
    expect(unknown.modulus!.standardUncertainty! / E).toBeLessThan(1e-9);
  });
});

describe('an unloading with a compliance that takes next to nothing', () => {
  test('its slope is that of frame and piece, as tension withholds E', () => {
    const stress = [...Array.from({ length: 101 }, (_, i) => 2 * i), ...Array.from({ length: 101 }, (_, i) => 200 - 2 * i)];
    const strain = stress.map((R, i) => R / 70_000 + (i > 100 ? 1e-3 : 1e-3 * (R / 200) ** 20));
    const travelled = { force: stress.map((R) => R * AREA), travel: strain.map((e, i) => 48 * e + COMPLIANCE * stress[i]! * AREA) };
    const slopeBy = (frameCompliance: number) => analyseUnloading(travelled, roundPiece, { frameCompliance, reversibility: 0 });
    const vanishing = slopeBy(1e-12);
    expect(vanishing.loops[0]!.slope.symbol).toBe('mu');
    expect(vanishing.findings.find(({ code }) => code === 'compliance-vanishing')).toMatchObject({ severity: 'fault', field: 'loops' });
    const removed = slopeBy(COMPLIANCE);
    expect(removed.loops[0]!.slope.symbol).toBe('Eu');
    expect(removed.loops[0]!.slope.value / 70_000).toBeCloseTo(1, 6);
    expect(codes(removed)).toContain('frame-compliance-removed');
    expect(codes(removed)).not.toContain('compliance-vanishing');
  });
});
