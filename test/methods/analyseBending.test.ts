import { describe, expect, expectTypeOf, test } from 'vitest';
import {
  analyseBending,
  flexuralModulus,
  flexuralStress,
  fromJson,
  hexagon,
  rectangular,
  round,
  sectionFromArea,
  square,
  toJson,
  tube,
  type BendingColumns,
  type BendingPiece,
  type BendingResult,
  type BendingSetup,
} from '../../src/index.js';
import { figures, renderHtml, summarise } from '../../src/report/index.js';
import { simulateBending, type BendingScenario } from '../../src/simulate/index.js';
import { refusal } from '../support/thrown.js';
import { notFinite } from '../support/walk.js';

const section = rectangular({ width: 10, thickness: 5 });
const three: BendingSetup = { points: 3, span: 100 };
const four: BendingSetup = { points: 4, span: 120, arm: 40 };
const odd: BendingSetup = { points: 4, span: 130, arm: 33 };
const steel = { modulus: 200_000, yieldStress: 600, tangentModulus: 2000 };
const scenario = (piece: BendingPiece, change: Partial<BendingScenario> = {}): BendingScenario => ({
  material: steel,
  piece,
  frame: { compliance: 2e-5, indentation: 1e-5, slack: 0.1 },
  logger: { rate: 100, extensometer: true },
  ...change,
});
const removed = { frameCompliance: 2e-5, indentationCompliance: 1e-5 };
const piece: BendingPiece = { section, setup: three };
const { record, truth } = simulateBending(scenario(piece));
const result = analyseBending(record, piece);
const codes = ({ findings }: { readonly findings: BendingResult['findings'] }) => findings.map(({ code }) => code);
const find = (of: BendingResult, code: string) => of.findings.find((one) => one.code === code);
const near = (value: number | undefined, known: number | undefined) => {
  expect(Math.abs(value! / known! - 1)).toBeLessThan(1e-6);
};
/** Force and deflection of a straight line of so much stiffness. */
const straight = (stiffness: number, until: number, n = 300): BendingColumns => {
  const deflection = Array.from({ length: n }, (_, i) => (i * until) / (n - 1));
  return { force: deflection.map((s) => stiffness * s), deflection };
};

describe.each([
  ['three points', three],
  ['four points at the thirds', four],
  ['four points, any arm', odd],
])('%s: a noise-free record comes back as its truth', (_, setup) => {
  test.each([
    ['rectangle', section],
    ['round', round({ diameter: 6 })],
    ['square', square({ side: 4 })],
  ])('%s: moduli and proof strength to 1e-6, by deflection and by travel', (_name, shape) => {
    const beam = { section: shape, setup };
    const made = simulateBending(scenario(beam));
    const { force, deflection, travel, time } = made.record;
    for (const [columns, options, known] of [
      [{ force, deflection, time }, {}, made.truth.proofStrengthsAtMidSpan],
      [{ force, travel, time }, removed, made.truth.proofStrengths],
    ] as const) {
      const found = analyseBending(columns, beam, options);
      near(found.modulus?.value, 200_000);
      near(found.chordModulus?.value, 200_000);
      near(found.proofStrengths[0]?.value, known[1]?.stress);
      near(found.flexuralStrength.value, made.truth.flexuralStrength);
      near(found.maximumForce.value, made.truth.maximumForce);
    }
  });
});

describe('set-ups and sections', () => {
  test('a straight line gives the closed formulas, of every section', () => {
    for (const [shape, hexagonOn] of [
      [section, undefined],
      [tube({ outerDiameter: 12, wallThickness: 1 }), undefined],
      [hexagon({ acrossFlats: 8 }), 'flats'],
      [hexagon({ acrossFlats: 8 }), 'corners'],
    ] as const)
      for (const base of [three, four]) {
        const setup = { ...base, hexagonOn };
        const stiffness = 200;
        const found = analyseBending(straight(stiffness, 1), { section: shape, setup });
        const middle = { ...setup, measuredAt: 'mid-span' as const };
        near(found.modulus?.value, flexuralModulus({ stiffness, section: shape, setup: middle }));
        near(found.flexuralStrength.value, flexuralStress({ force: 200, section: shape, setup }));
      }
  });

  test('of four points the noses sink less than mid-span: where it is measured matters', () => {
    const columns = straight(200, 1);
    const travel = { force: columns.force, travel: Float64Array.from(columns.deflection!, (x: number, i) => x + 1e-6 * columns.force[i]!) };
    const middle = analyseBending(columns, { section, setup: four }).modulus!.value;
    const nose = analyseBending(travel, { section, setup: four }, { frameCompliance: 1e-6 }).modulus!.value;
    // 23/108 against 5/27
    expect(middle / nose).toBeCloseTo(23 / 108 / (5 / 27), 6);
    // a column measured elsewhere says so
    const moved = analyseBending(columns, { section, setup: { ...four, measuredAt: 'nose' } });
    expect(moved.modulus!.value).toBeCloseTo(nose, 3);
  });

  test('a strain gauge needs no deflection', () => {
    const strain = Array.from({ length: 200 }, (_, i) => i * 2e-5);
    const force = strain.map((e) => (70_000 * e * 4 * section.sectionModulus!) / 100);
    const found = analyseBending({ force, strain }, piece);
    near(found.modulus?.value, 70_000);
    expect(found).toMatchObject({ motionBasis: 'strain', deflectionLength: 1 });
  });

  test('a gauge that ends early is carried on by travel', () => {
    const deflection = record.deflection!.map((s) => (s > 1 ? NaN : s));
    const found = analyseBending({ ...record, deflection }, piece, removed);
    expect(found.motionBasis).toBe('deflection-then-travel');
    near(found.proofStrengths[0]?.value, truth.proofStrengths[1]?.stress);
    expect(codes(found)).toContain('extensometer-taken-off');
  });

  test('signs: a frame that counts downwards negative', () => {
    const turned = analyseBending({ force: record.force.map((F) => -F), deflection: record.deflection!.map((s) => -s) }, piece);
    near(turned.modulus?.value, 200_000);
    expect(find(turned, 'signs-turned')!.message).toContain('force, deflection');
    expect(turned.trail[0]!.code).toBe('signs-turned');
  });
});

describe('what the modulus is of', () => {
  test('raw travel holds frame and indentation: no modulus, no chord', () => {
    const { force, travel } = record;
    const raw = analyseBending({ force, travel }, piece);
    expect(raw.modulus).toBeUndefined();
    expect(raw.chordModulus).toBeUndefined();
    expect(codes(raw)).toContain('modulus-includes-frame-compliance');
    // the curve's own slope makes the offset line right all the same
    expect(Math.abs(raw.proofStrengths[0]!.value / truth.proofStrengths[1]!.stress - 1)).toBeLessThan(1e-6);
    // springs in series
    const beam = 1 / ((200_000 * 48 * section.secondMoment!) / 100 ** 3);
    expect(raw.elasticSlope!.value / (200_000 * (beam / (beam + 3e-5)))).toBeCloseTo(1, 6);
  });

  test('frame without indentation: a note, and the modulus is too low by the rest', () => {
    const { force, travel } = record;
    const found = analyseBending({ force, travel }, piece, { frameCompliance: 2e-5 });
    expect(codes(found)).toEqual(expect.arrayContaining(['indentation-not-removed', 'frame-compliance-removed']));
    expect(found.modulus!.value).toBeLessThan(200_000);
    expect(codes(analyseBending({ force, travel }, piece, { frameCompliance: 3e-5, indentationCompliance: 0 }))).not.toContain(
      'indentation-not-removed',
    );
  });

  test('tables of frame and indentation add up; the shorter one is named', () => {
    const { force, travel } = record;
    const found = analyseBending({ force, travel }, piece, {
      frameCompliance: { force: [0, 1000, 5000], travel: [0, 0.02, 0.1] },
      indentationCompliance: { force: [0, 500], travel: [0, 0.005] },
    });
    near(found.modulus?.value, 200_000);
    expect(find(found, 'force-beyond-compliance')!.values['limit']).toBe(500);
  });
});

describe('doubts', () => {
  test('a short span: shear', () => {
    const short = analyseBending(straight(5000, 0.2), { section, setup: { points: 3, span: 60 } });
    const finding = find(short, 'span-short')!;
    expect(finding.values['ratio']).toBeCloseTo(12, 9);
    // 3.12 (h/L)²
    expect(finding.values['share']).toBeCloseTo((100 * 3.12) / 144, 9);
    expect(short.shearShare!.value).toBeCloseTo(3.12 / 144, 9);
    expect(codes(analyseBending(straight(5000, 0.2), { section, setup: { points: 3, span: 80 } }))).not.toContain('span-short');
    expect(codes(analyseBending(straight(5000, 0.2), { section, setup: { points: 3, span: 79.9 } }))).toContain('span-short');
  });

  test('a shape without a share of shear', () => {
    const plain = { ...sectionFromArea({ area: 50 }), secondMoment: 104, sectionModulus: 41.6 };
    const found = analyseBending(straight(5000, 0.2), { section: plain, setup: { points: 3, span: 60 } });
    expect(found.shearShare).toBeUndefined();
    expect(found.shapeFactor).toBeUndefined();
    expect(find(found, 'span-short')!.message).toContain('? %');
  });

  test('a deflection beyond a tenth of the span', () => {
    const large = analyseBending(straight(10, 12, 1201), piece);
    const finding = find(large, 'large-deflection')!;
    // first sample beyond 10 mm: 100 N
    expect(finding.range![0]).toBe(1001);
    expect(finding.message).toContain('more than 10 % of the span');
    expect(finding.values['stress']).toBeCloseTo((3 * 100.1 * 100) / (2 * 10 * 25), 6);
    expect(codes(analyseBending(straight(10, 10), piece))).not.toContain('large-deflection');
  });

  test('beyond yielding the stress is nominal, by up to the shape factor', () => {
    expect(find(result, 'flexural-stress-nominal')!.values['factor']).toBe(1.5);
    expect(result.shapeFactor!.value).toBe(1.5);
    expect(result.flexuralStrength.value / 600).toBeGreaterThan(1.4);
    expect(codes(analyseBending(straight(200, 1), piece))).not.toContain('flexural-stress-nominal');
  });

  test('chord and slope that differ, a chord that is not reached', () => {
    const soft = simulateBending(scenario(piece, { material: { modulus: 200_000, yieldStress: 300 } }));
    const found = analyseBending(soft.record, piece);
    expect(codes(found)).toContain('chord-unlike-slope');
    near(analyseBending(soft.record, piece, { chord: [0.0005, 0.001] }).chordModulus?.value, 200_000);
    const stiff = analyseBending(straight(200, 0.5), piece);
    expect(stiff.chordModulus).toBeUndefined();
    expect(find(stiff, 'not-determined')!.message).toContain('chord');
  });

  test('readings that spread; a force that falls without a break', () => {
    const uneven = rectangular({ width: 10, thickness: [4.95, 5.05] });
    expect(codes(analyseBending(straight(200, 1), { section: uneven, setup: three }))).toContain('section-spread');
    const deflection = Array.from({ length: 400 }, (_, i) => i * 0.01);
    const peaked = { force: deflection.map((s) => 500 * Math.sin(Math.min(s / 2, 1.62))), deflection };
    const falls = analyseBending(peaked, piece);
    expect(codes(falls)).toContain('stopped-before-fracture');
    expect(falls.fracture).toBeUndefined();
  });

  test('a beam twice as wide under the same force: half the stress, half the modulus', () => {
    const wide = analyseBending(straight(200, 1), { section: rectangular({ width: 20, thickness: 5 }), setup: three });
    const single = analyseBending(straight(200, 1), piece);
    expect(wide.modulus!.value / single.modulus!.value).toBeCloseTo(0.5, 9);
    expect(wide.flexuralStrength.value / single.flexuralStrength.value).toBeCloseTo(0.5, 9);
    expect(wide.strainAtMaximum.value).toBeCloseTo(single.strainAtMaximum.value, 12);
  });

  test('the chord of a curve that softens from the start counts from its start, slack or not', () => {
    const stress = (e: number) => 60 * (1 - Math.exp(-Math.max(0, e) / 0.024));
    const known = (stress(0.0025) - stress(0.0005)) / 0.002;
    for (const slack of [0, 0.003]) {
      const strain = Array.from({ length: 2000 }, (_, i) => i * 1e-5);
      const force = strain.map((e) => (stress(e - slack) * 4 * section.sectionModulus!) / 100);
      const found = analyseBending({ force: force.slice(slack === 0 ? 0 : 300), strain: strain.slice(slack === 0 ? 0 : 300) }, piece);
      expect(found.chordModulus!.value / known).toBeCloseTo(1, 6);
      expect(found.modulus!.value).toBeLessThan(known);
    }
  });

  test('stopped before it broke, or broken', () => {
    expect(codes(result)).toContain('maximum-at-end');
    for (const one of [result.flexuralStrength, result.maximumForce, result.strainAtMaximum]) expect(one.atLeast).toBe(true);
    expect(result.stressAtBreak).toBeUndefined();
    const brittle = simulateBending(
      scenario(piece, { material: { modulus: 3000 }, until: 0.02, logger: { rate: 100, extensometer: true, tail: 1 } }),
    );
    const found = analyseBending(brittle.record, piece);
    near(found.stressAtBreak?.value, 60);
    near(found.strainAtBreak?.value, 0.02);
    expect(found.fracture!.how).toBe('sudden-fall');
    expect(codes(found)).not.toContain('maximum-at-end');
    expect(found.flexuralStrength.atLeast).toBeUndefined();
    // plastics and ceramics are bent as well: that no metal has such a slope is a note
    expect(find(found, 'slope-implausible')!.severity).toBe('note');
  });

  test('on a level of its highest stress they are reached', () => {
    const { force, deflection } = straight(200, 1.6);
    // three points: strain 6 h s/L², so 0.2 % are 0.667 mm; the level is that of 0.8 mm
    const level = Array.from(force, (F) => Math.min(F, 160));
    const found = analyseBending({ force: level, deflection: deflection! }, piece);
    expect(found.proofStrengths.map(({ symbol }) => symbol)).toEqual(['σfp0.2']);
    expect(found.proofStrengths[0]!.value).toBeCloseTo(flexuralStress({ force: 160, section, setup: three }), 6);
  });

  test('proof strengths that are not reached, and noise', () => {
    expect(find(analyseBending(record, piece, { offsets: [0.05] }), 'proof-strength-not-reached')!.severity).toBe('caution');
    expect(find(analyseBending(straight(200, 1), piece), 'proof-strength-not-reached')!.severity).toBe('note');
    const noisy = simulateBending(scenario(piece, { logger: { rate: 100, extensometer: true, forceNoise: 2, motionNoise: 5e-4 } }));
    const found = analyseBending(noisy.record, piece);
    expect(Math.abs(found.modulus!.value / 200_000 - 1)).toBeLessThan(0.01);
    expect(Math.abs(found.proofStrengths[0]!.value / truth.proofStrengths[1]!.stress - 1)).toBeLessThan(0.005);
  });
});

describe('the result as data, and its report', () => {
  test('no number is NaN or infinite, inputs stay', () => {
    expect(notFinite(result)).toEqual([]);
    expect(notFinite(analyseBending({ force: [0, 1], travel: [0, 1] }, piece))).toEqual([]);
    expect(notFinite(analyseBending({ force: [0, 0, 0], travel: [0, 1, 2] }, piece))).toEqual([]);
    expect(simulateBending(scenario(piece)).record).toEqual(record);
    expect(result.piece).not.toBe(piece);
    expect(analyseBending({ force: Array.from(record.force), deflection: Array.from(record.deflection!) }, piece).curve).toEqual(
      result.curve,
    );
  });

  test('JSON and back is the same, typed by the method', () => {
    const back = fromJson(toJson(result), 'bending');
    expectTypeOf(back).toEqualTypeOf<BendingResult>();
    expect(back).toEqual(result);
  });

  test('page, figure and rows', () => {
    const page = renderHtml({ ...result, test: { identity: 'bar & beam' } });
    expect(page).toContain('<h1>Bending test: <bdi>bar &amp; beam</bdi></h1>');
    for (const words of ['Span L', '3 points', 'by the elastic formulas', 'spring back when it is released', 'Shear adds about'])
      expect(page).toContain(words);
    expect(page).not.toContain('Arm a');
    expect(
      renderHtml(analyseBending(straight(10, 1), { section: hexagon({ acrossFlats: 8 }), setup: { ...four, hexagonOn: 'corners' } })),
    ).toContain('4 points, on corners');
    expect(Object.keys(figures(result))).toEqual(['bendingCurve']);
    expect(JSON.stringify(figures(result))).not.toMatch(/null,|NaN|Infinity/);
    const rows = Object.fromEntries(summarise(result).map(({ symbol, text, unit }) => [symbol, `${text} ${unit}`]));
    expect(rows).toMatchObject({ 'L/h': '20.0 ', 'Mpl/My': '1.500 ' });
    const byTravel = analyseBending({ force: record.force, travel: record.travel }, piece, removed);
    expect(summarise(byTravel).find(({ field }) => field === 'chordModulus')!.stamp).toContain('crosshead');
  });
});

test('wrong arguments are refused by name, before any work', () => {
  const setup = (change: object) => refusal(() => analyseBending(record, { section, setup: { ...three, ...change } }));
  expect(setup({ span: 0 })).toBe('not-positive piece.setup.span');
  expect(setup({ points: 4 })).toBe('missing piece.setup.arm');
  expect(setup({ length: 1 })).toBe('unknown-option piece.setup.length');
  expect(refusal(() => analyseBending(record, { section } as never))).toBe('missing piece.setup');
  expect(refusal(() => analyseBending(record, { section: sectionFromArea({ area: 5 }), setup: three }))).toBe(
    'missing piece.section.secondMoment',
  );
  expect(refusal(() => analyseBending(record, { ...piece, height: 5 } as never))).toBe('unknown-option piece.height');
  expect(refusal(() => analyseBending({ force: [0, 1] }, piece))).toBe('missing record');
  expect(refusal(() => analyseBending({ force: [0, 1], extension: [0, 1] } as never, piece))).toBe('unknown-option record.extension');
  expect(refusal(() => analyseBending({ force: [0, 1], deflection: [0, 1, 2] }, piece))).toBe('unequal-lengths record.deflection');
  expect(refusal(() => analyseBending({ force: [0, 1, 2], deflection: [0, NaN, NaN] }, piece))).toBe('too-few record.deflection');
  expect(refusal(() => analyseBending({ force: [0, NaN], deflection: [0, 1] }, piece))).toBe('not-finite record.force[1]');
  const option = (options: object) => refusal(() => analyseBending(record, piece, options));
  expect(option({ chord: [0.0025, 0.0005] })).toBe('out-of-range options.chord[1]');
  expect(option({ chord: [0.001] })).toBe('unequal-lengths options.chord');
  expect(option({ chord: [0.001, 0.002, 0.003] })).toBe('unequal-lengths options.chord');
  expect(option({ poissonRatio: 1 })).toBe('out-of-range options.poissonRatio');
  expect(option({ indentationCompliance: -1 })).toBe('out-of-range options.indentationCompliance');
  expect(option({ thresholds: { spanRatio: -1 } })).toBe('not-positive options.thresholds.spanRatio');
  expect(option({ span: 10 })).toBe('unknown-option options.span');
});
