import { describe, expect, test } from 'vitest';
import {
  analyseCurve,
  analyseTension,
  materialFamilies,
  materialFamily,
  rectangular,
  round,
  type Finding,
  type FindingCode,
  type MaterialFamilyKey,
  type TensionOptions,
  type TensionRecord,
  type TestPiece,
} from '../../src/index.js';
import { simulateTension } from '../../src/simulate/index.js';
import { metals } from '../support/metals.js';
import { refusal } from '../support/thrown.js';

const own: readonly FindingCode[] = [
  'dimension-looks-wrong',
  'unit-looks-wrong',
  'strain-looks-wrong',
  'unlike-family',
  'properties-contradict',
  'force-looks-like-kilonewton',
  'strain-looks-like-percent',
];
const COMPLIANCE = 2e-5;
const piece: TestPiece = { section: round({ diameter: 8 }), gaugeLength: 40, parallelLength: 48 };

/** A clean test of a metal, on a stiff or a soft frame. */
function clean(key: MaterialFamilyKey, extensometer: boolean, compliance = COMPLIANCE, of = piece) {
  return simulateTension({
    material: metals[key],
    piece: of,
    frame: { compliance, slack: 0.2 },
    hand: { speed: 0.02, speedAfterYield: 0.1 },
    logger: { rate: 30, extensometer, lead: 1, tail: 1, forceNoise: 5, motionNoise: 2e-4 },
    seed: 4,
  });
}
const about = (record: TensionRecord, of: TestPiece, options: TensionOptions): Finding[] =>
  analyseTension(record, of, options).findings.filter(({ code }) => own.includes(code));
/** The likeliest cause of the first finding. */
const first = (found: readonly Finding[]): string => String(found[0]?.values['causes'] ?? '').replace(/ .*/, '');

describe.each(materialFamilies.map(({ key }) => key))('%s', (family) => {
  const { record, truth } = clean(family, true);
  const broken = { ...piece, afterFracture: truth.afterFracture };
  const strain = record.extension!.map((x) => x / 40);

  test('a clean test is like its family, by extensometer and by travel without the frame', () => {
    expect(about(record, broken, { family })).toEqual([]);
    expect(about(clean(family, false).record, broken, { family, frameCompliance: COMPLIANCE })).toEqual([]);
    expect(
      analyseCurve({ strain, stress: record.force.map((F) => F / piece.section.area) }, { family }).findings.filter(({ code }) =>
        own.includes(code),
      ),
    ).toEqual([]);
  });

  test.each([
    ['extensometer', true, COMPLIANCE],
    ['travel, stiff frame', false, 2e-6],
    ['travel, soft frame', false, 2e-4],
  ])('without a family a clean test says nothing: %s', (_, extensometer, compliance) => {
    const sheet = { section: rectangular({ width: 12.5, thickness: 2 }), gaugeLength: 50, parallelLength: 60 };
    for (const of of [piece, sheet]) {
      const one = clean(family, extensometer, compliance, of);
      expect(about(one.record, { ...of, afterFracture: one.truth.afterFracture }, { offsets: [0.001, 0.002, 0.01] })).toEqual([]);
    }
  });

  test.each<[string, Finding[]]>([
    ['radius-for-diameter', about(record, { ...piece, section: round({ diameter: 4 }) }, { family })],
    ['section-in-inches', about(record, { ...piece, section: round({ diameter: 8 / 25.4 }) }, { family })],
    [
      'piece-in-inches',
      about(record, { section: round({ diameter: 8 / 25.4 }), gaugeLength: 40 / 25.4, parallelLength: 48 / 25.4 }, { family }),
    ],
    ['force-in-kilonewtons', about({ ...record, force: record.force.map((F) => F / 1000) }, piece, { family })],
    ['strain-in-percent', about({ force: record.force, time: record.time, strain: strain.map((e) => 100 * e) }, piece, { family })],
    ['frame-compliance-left-in', about(clean(family, false, 4e-5).record, piece, { family })],
  ])('%s is named first', (cause, found) => {
    expect(first(found)).toBe(cause);
  });
});

test.each(['low-carbon-steel-annealed', 'aluminium-age-hardened', 'titanium'] as const)(
  'a slip in the grips is named first: %s',
  (family) => {
    const { record, truth } = clean(family, false);
    const yields = record.force.findIndex((F) => F > 0.9 * truth.maximumForce);
    const way = 2.2 * 48 * materialFamily(family).elongation[1];
    const travel = record.travel!.map(
      (x, i) => x + (i < yields ? 0 : way * Math.min(1, (i - yields) / (0.5 * (record.force.length - yields)))),
    );
    const found = about({ ...record, travel }, { ...piece, afterFracture: truth.afterFracture }, { family, frameCompliance: COMPLIANCE });
    expect(first(found)).toBe('grip-slip');
  },
);

describe('what is said', () => {
  const { record } = clean('structural-steel', true);

  test('each finding by its subject, with the causes in rank, and nothing corrected', () => {
    const small = { ...piece, section: round({ diameter: 4 }) };
    const result = analyseTension(record, small, { family: 'structural-steel' });
    const [dimension] = result.findings.filter(({ code }) => own.includes(code));
    expect(dimension).toMatchObject({ code: 'dimension-looks-wrong', about: 'piece', severity: 'fault' });
    expect(dimension!.message).toMatch(/radius was entered as the diameter/);
    expect(dimension!.values['factor']).toBe(4);
    expect(result.testPiece.section.area).toBeCloseTo(small.section.area, 12);
    expect(
      about({ ...record, force: record.force.map((F) => F / 4.4482216152605) }, piece, { family: 'structural-steel' })[0],
    ).toMatchObject({
      code: 'unit-looks-wrong',
      severity: 'caution',
    });
    expect(about(record, piece, { family: 'aluminium-soft' })[0]).toMatchObject({ code: 'unlike-family', about: 'method' });
  });

  test('a frame left in travel is a note beside the fault of the missing modulus', () => {
    const found = about(clean('structural-steel', false).record, piece, { family: 'structural-steel' });
    expect(found).toHaveLength(1);
    expect(found[0]).toMatchObject({ code: 'strain-looks-wrong', about: 'frame', severity: 'note' });
  });

  test('without a family a property that no metal has is a fault', () => {
    const found = about(record, { ...piece, section: round({ diameter: 8 / 25.4 }) }, {});
    // 645 times too much in truth; a thousandth of it fits some metal as well, and N for kN is commoner than inches
    expect(found[0]).toMatchObject({ code: 'unit-looks-wrong', severity: 'fault' });
    expect(found[0]!.message).toMatch(/any metal/);
    expect(found[0]!.values['causes']).toMatch(/section-in-inches/);
  });

  test('the margin is an option, and an unknown family is refused', () => {
    const soft = { family: 'copper-annealed' } as const;
    expect(about(record, piece, soft).map(({ code }) => code)).toContain('unlike-family');
    expect(about(record, piece, { ...soft, thresholds: { familyMargin: 20 } }).map(({ code }) => code)).toEqual([]);
    expect(refusal(() => analyseTension(record, piece, { family: 'wood' as never }))).toBe('out-of-range options.family');
  });

  test('readings that contradict each other', () => {
    const short = { ...piece, afterFracture: { gaugeLength: 41, area: 30 } };
    expect(about(record, short, {}).map(({ code, values }) => `${code} ${String(values['left'])}`)).toContain('properties-contradict Ag');
  });
});
