import { describe, expect, test } from 'vitest';
import {
  analyseCurve,
  analyseTension,
  fromJson,
  toJson,
  whatIf,
  type TensionColumns,
  type TensionOptions,
  type TensionResult,
  type TestPiece,
  type WhatIfRow,
} from '../../src/index.js';
import { simulateTension } from '../../src/simulate/index.js';
import { COMPLIANCE, roundPiece } from '../support/records.js';
import { refusal } from '../support/thrown.js';

const { record } = simulateTension({
  material: {
    modulus: 206_000,
    yieldStress: 280,
    hardening: { law: 'swift', prestrain: 0.03, exponent: 0.25 },
    fracture: { extension: 0.35 },
  },
  piece: roundPiece,
  frame: { compliance: COMPLIANCE, slack: 0.2 },
  hand: { speed: 0.05, speedAfterYield: 0.1 },
  logger: { rate: 20, extensometer: { offAt: 0.06 }, lead: 1, tail: 1, forceNoise: 10, motionNoise: 2e-4 },
});
const travelOnly: TensionColumns = { force: record.force, travel: record.travel, time: record.time };
const table = { force: [0, 5000, 30_000], travel: [0, 0.105, 0.6] };

/** What the fields of a row are in a result. */
const fieldOf = (result: TensionResult, field: string) =>
  ({
    elasticSlope: result.elasticSlope,
    proofStrengths: result.proofStrengths[0],
    uniformExtension: result.uniformExtension,
    totalExtensionAtMaximumForce: result.totalExtensionAtMaximumForce,
    totalExtensionAtFracture: result.totalExtensionAtFracture,
    plasticExtensionAtFracture: result.plasticExtensionAtFracture,
    hardeningExponent: result.hardening?.exponent,
  })[field]?.value;

/** The analysis of the record itself with the change of a row made to it. */
function again(columns: TensionColumns, piece: TestPiece, options: TensionOptions, { change }: WhatIfRow): TensionResult {
  if (change.kind === 'window') return analyseTension(columns, piece, { ...options, modulus: { window: change.window } });
  if (change.kind === 'offset') return analyseTension(columns, piece, { ...options, offsets: [change.offset] });
  if (change.kind === 'parallel-length') return analyseTension(columns, { ...piece, parallelLength: change.length }, options);
  if (change.kind !== 'frame-compliance') return analyseTension(columns, { ...piece, effectiveLength: change.length }, options);
  const { force, travel } = table;
  const scaled = { force, travel: travel.map((x) => x * change.factor) };
  const frameCompliance = typeof options.frameCompliance === 'number' ? change.factor * options.frameCompliance : scaled;
  return analyseTension(columns, piece, { ...options, frameCompliance: change.factor === 0 ? undefined : frameCompliance });
}

const filleted = { ...roundPiece, effectiveLength: 52 };
const cases: readonly (readonly [string, TensionColumns, TestPiece, TensionOptions, readonly WhatIfRow['change']['kind'][]])[] = [
  ['extensometer', { force: record.force, extension: record.extension }, roundPiece, {}, ['window', 'offset']],
  ['extensometer, then travel', record, roundPiece, { frameCompliance: COMPLIANCE }, ['window', 'offset', 'frame-compliance']],
  ['travel', travelOnly, roundPiece, {}, ['window', 'offset', 'parallel-length']],
  [
    'travel less a frame',
    travelOnly,
    roundPiece,
    { frameCompliance: COMPLIANCE },
    ['window', 'offset', 'frame-compliance', 'parallel-length'],
  ],
  [
    'travel less a table and fillets',
    travelOnly,
    filleted,
    { frameCompliance: table },
    ['window', 'offset', 'frame-compliance', 'parallel-length', 'effective-length'],
  ],
];

describe.each(cases)('%s', (_, columns, piece, options, kinds) => {
  const result = analyseTension(columns, piece, options);
  const rows = whatIf(result);

  test('each row is what the analysis of the record gives with that change', () => {
    expect([...new Set(rows.map(({ change }) => change.kind))]).toEqual(kinds);
    for (const row of rows) {
      const other = again(columns, piece, options, row);
      for (const { field, value, difference } of row.values) {
        expect(value / fieldOf(other, field)!, `${JSON.stringify(row.change)} ${field}`).toBeCloseTo(1, 8);
        const own = fieldOf(result, field);
        expect(difference).toBe(own === undefined ? undefined : value - own);
      }
      if (row.change.kind !== 'offset')
        expect(row.values.map(({ field }) => field)).toEqual(
          expect.arrayContaining(['elasticSlope', 'proofStrengths'].filter((field) => fieldOf(other, field) !== undefined)),
        );
    }
  });

  test('the same from JSON', () => {
    expect(whatIf(fromJson(toJson(result), 'tension'))).toEqual(rows);
  });
});

test('infinite degrees of freedom are those of a source that names none, and come back from JSON', () => {
  const of = (gaugeLength: object) => analyseTension(travelOnly, roundPiece, { uncertainty: { gaugeLength } as never });
  const stated = of({ halfWidth: 0.1, degreesOfFreedom: Infinity });
  expect(stated).toEqual(of({ halfWidth: 0.1 }));
  expect(whatIf(fromJson(toJson(stated), 'tension'))).toEqual(whatIf(stated));
});

test('the offset that was asked for is no other one, and a larger one gives more', () => {
  const result = analyseTension({ force: record.force, extension: record.extension }, roundPiece);
  const rows = whatIf(result, { offsets: [0.002, 0.005], bands: [] });
  const offsets = rows.filter(({ change }) => change.kind === 'offset').map(({ values }) => values[0]!);
  expect(offsets).toMatchObject([{ symbol: 'Rp0.5', unit: 'MPa' }]);
  expect(offsets[0]!.difference).toBeGreaterThan(0);
  expect(rows.some(({ change }) => change.kind === 'window' && change.shares !== undefined)).toBe(false);
});

test('the doubt of the compliance is the one that the test states', () => {
  const factors = (options: TensionOptions, asked = {}) =>
    whatIf(analyseTension(travelOnly, roundPiece, options), asked).flatMap(({ change }) =>
      change.kind === 'frame-compliance' ? [change.factor] : [],
    );
  expect(factors({ frameCompliance: COMPLIANCE })).toEqual([0.9, 1.1, 0]);
  expect(factors({ frameCompliance: { constant: COMPLIANCE, relativeStandardUncertainty: 0.25 } })).toEqual([0.75, 1.25, 0]);
  expect(factors({ frameCompliance: COMPLIANCE, uncertainty: { frameCompliance: 0.5 } })).toEqual([0.5, 1.5, 0]);
  expect(factors({ frameCompliance: COMPLIANCE }, { complianceDoubt: 0.2 })).toEqual([0.8, 1.2, 0]);
});

test('no factor stands twice, and the least compliance is none', () => {
  const factors = (uncertainty: number, asked = {}) =>
    whatIf(
      analyseTension(travelOnly, roundPiece, { frameCompliance: COMPLIANCE, uncertainty: { frameCompliance: uncertainty } }),
      asked,
    ).flatMap(({ change }) => (change.kind === 'frame-compliance' ? [change.factor] : []));
  expect(factors(0.99)).toEqual([0.01, 1.99, 0].map((factor) => expect.closeTo(factor, 12) as number));
  expect(factors(0.5, { complianceDoubt: 1 })).toEqual([0, 2]);
  expect(factors(0.5, { complianceDoubt: 0 })).toEqual([0]);
});

test('a curve without a line still has what it has', () => {
  const rows = whatIf(analyseTension({ force: [0, 1], travel: [0, 1] }, roundPiece));
  expect(rows.every(({ values }) => values.length > 0)).toBe(true);
});

test('a result of an early version is refused where its fields do not tell how a compliance was taken out, and is evaluated elsewhere', () => {
  const old = ({ interruptions, extensometerEnd, frameRemoved, modulusWindow, ...rest }: TensionResult) => {
    expect(interruptions).toBeUndefined();
    const { filletSlope, ...window } = modulusWindow!;
    expect([typeof extensometerEnd, typeof frameRemoved, typeof filletSlope]).toContain('undefined');
    return fromJson(toJson({ ...rest, modulusWindow: window }), 'tension');
  };
  const refused = (columns: TensionColumns, piece: TestPiece, options: TensionOptions) =>
    refusal(() => whatIf(old(analyseTension(columns, piece, options))));
  expect(refused(record, roundPiece, { frameCompliance: COMPLIANCE })).toBe('missing result.extensometerEnd');
  expect(refused(travelOnly, filleted, { frameCompliance: COMPLIANCE })).toBe('missing result.modulusWindow.filletSlope');
  // travel alone, without fillets, needs none of them
  const plain = analyseTension(travelOnly, roundPiece, { frameCompliance: COMPLIANCE });
  expect(whatIf(old(plain))).toEqual(whatIf(plain));
});

test('what is no result of a tension test is refused, and so are bands that are none', () => {
  const result = analyseTension(travelOnly, roundPiece);
  const curve = { strain: [0, 0.001, 0.002, 0.003], stress: [0, 70, 140, 210] };
  expect(refusal(() => whatIf(analyseCurve(curve) as never))).toBe('wrong-type result.method');
  expect(refusal(() => whatIf(undefined as never))).toBe('missing result');
  expect(refusal(() => whatIf(result, { bands: [[0.4, 0.1]] }))).toBe('not-increasing options.bands[0][1]');
  expect(refusal(() => whatIf(result, { bands: [[-0.1, 0.1]] }))).toBe('out-of-range options.bands[0][0]');
  expect(refusal(() => whatIf(result, { bands: {} as never }))).toBe('wrong-type options.bands');
  expect(refusal(() => whatIf(result, { offsets: [0] }))).toBe('not-positive options.offsets[0]');
  expect(refusal(() => whatIf(result, { complianceDoubt: 2 }))).toBe('out-of-range options.complianceDoubt');
  expect(refusal(() => whatIf(result, { window: {} } as never))).toBe('unknown-option options.window');
});
