import { describe, expect, test } from 'vitest';
import {
  analyseReplicates,
  analyseShear,
  analyseTension,
  rectangular,
  round,
  summariseReplicates,
  type TensionResult,
  type TestInfo,
  type TestPiece,
} from '../../src/index.js';
import { brokenPiece, caseT1, COMPLIANCE } from '../support/records.js';
import { refusal } from '../support/thrown.js';

const piece: TestPiece = { section: round({ diameter: 8 }), gaugeLength: 40, parallelLength: 48 };

/** A test whose strengths are known by construction: elastic, then a line that rises to `top`, then a fall. */
function made(
  top: number,
  own: TestPiece = piece,
  options: { test?: TestInfo; by?: 'strain' | 'travel'; A?: number; seconds?: number } = {},
): TensionResult {
  const { area } = own.section;
  const strain = Array.from({ length: 400 }, (_, i) => (i < 100 ? i * 1.5e-5 : 1.5e-3 + (i - 100) * 7e-4));
  const stress = strain.map((e) => (e < 1.5e-3 ? 200_000 * e : 300 + ((top - 300) * (e - 1.5e-3)) / 0.21));
  const motion = options.by === 'travel' ? { travel: strain.map((e) => e * 48) } : { strain };
  const time = options.seconds === undefined ? {} : { time: strain.map((_, i) => (i * options.seconds!) / 400) };
  const finalLength = own.gaugeLength * (1 + (options.A ?? 0.21));
  return analyseTension(
    { force: stress.map((R) => R * area), ...motion, ...time },
    { ...own, afterFracture: { gaugeLength: finalLength, area: 0.83 * area } },
    { test: options.test ?? {} },
  );
}
const of = (results: readonly TensionResult[], symbol: string, options = {}) =>
  analyseReplicates(results, options).properties.find((one) => one.symbol === symbol);
const codes = (results: readonly TensionResult[], options = {}) =>
  analyseReplicates(results, options).findings.map(({ code, field }) => [code, field]);

describe('the statistics of each property', () => {
  const tops = [452.1, 449.8, 455.0, 451.2, 447.6];
  const results = tops.map((top, i) => made(top, piece, { test: { identity: `P${i + 1}` } }));
  const whole = analyseReplicates(results);
  const strength = whole.properties.find(({ symbol }) => symbol === 'Rm')!;

  test('are those of its values', () => {
    const values = results.map(({ tensileStrength }) => tensileStrength.value);
    expect(strength).toMatchObject({ field: 'tensileStrength', unit: 'MPa', values, tests: [0, 1, 2, 3, 4], usualVariation: 0.009 });
    expect(strength.summary).toEqual(summariseReplicates(values));
    expect(strength.outlier).toMatchObject({ flagged: false, alpha: 0.05 });
    expect(strength.tolerance!.label).toContain('B-like');
    // 455 − 451.14 over 2.7455, and 3.4066 times that below: the records hold these strengths but for their last step
    expect(strength.outlier!.statistic).toBeCloseTo(1.4059, 2);
    expect(strength.tolerance!.lower).toBeCloseTo(441.79, 0);
  });

  test('cover every property by its symbol; only strengths have a tolerance limit', () => {
    expect(whole.properties.map(({ symbol }) => symbol)).toEqual(
      expect.arrayContaining(['mE', 'E', 'Rp0.2', 'Rm', 'Agt', 'A', 'Z', 'n', 'K']),
    );
    expect(whole.properties.find(({ symbol }) => symbol === 'A')).not.toHaveProperty('tolerance');
    expect(whole).toMatchObject({ method: 'replicates', differences: [], findings: [], tests: [{ identity: 'P1' }, {}, {}, {}, {}] });
    expect(whole.provenance).toMatchObject({ package: 'testpiece', options: {}, hashes: results.map(({ provenance }) => provenance.hash) });
  });

  test('are plain data', () => {
    expect(JSON.parse(JSON.stringify(whole))).toEqual(whole);
  });

  test('two tests give a range, with a note', () => {
    const two = analyseReplicates(results.slice(0, 2));
    expect(two.properties.find(({ symbol }) => symbol === 'Rm')!.summary).not.toHaveProperty('standardDeviation');
    expect(two.properties.find(({ symbol }) => symbol === 'Rm')).not.toHaveProperty('tolerance');
    const few = two.findings.filter(({ code }) => code === 'few-replicates');
    expect(few.map(({ values }) => values['symbols'])).toEqual([two.properties.map(({ symbol }) => symbol).join(', ')]);
  });

  test('a value that some tests lack is summarised over the others', () => {
    const without = { ...results[1]!, reductionOfArea: undefined };
    expect(of([results[0]!, without, results[2]!, results[3]!], 'Z')).toMatchObject({ tests: [0, 2, 3], summary: { n: 3 } });
  });
});

describe('doubts', () => {
  test('an outlier is flagged by the name of its test, and stays', () => {
    const results = [450, 451, 449, 450.5, 449.5, 470].map((top, i) => made(top, piece, { test: { identity: `P${i + 1}` } }));
    const { findings, properties } = analyseReplicates(results);
    const flagged = properties.filter(({ outlier }) => outlier?.flagged === true).map(({ symbol }) => symbol);
    // one piece, one finding: all that lies out of it is listed, and nothing is said of each by itself
    const odd = findings.filter(({ code }) => code === 'replicate-odd');
    expect(odd).toHaveLength(1);
    expect(odd[0]!.message).toMatch(/^Test P6 lies farther out than chance explains in several quantities: .*Rm.* (MPa|N) \(G = /);
    for (const symbol of String(odd[0]!.values['symbols']).split(', ')) expect(flagged).toContain(symbol);
    expect(findings.filter(({ code }) => code === 'replicate-outlying' || code === 'variation-above-usual')).toEqual([]);
    expect(of(results, 'Rm')!.summary.n).toBe(6);
    // an Agt that differs by one sample of the record from the others, all but equal: flagged, and within a step of rounding
    const alike = [450, 451, 449, 452].map((top, k): TensionResult => {
      const one = made(top);
      const Agt = one.totalExtensionAtMaximumForce!;
      return { ...one, totalExtensionAtMaximumForce: { ...Agt, value: Agt.value + (k === 3 ? 7e-4 : 1e-6 * k) } };
    });
    expect(of(alike, 'Agt')!.outlier!.flagged).toBe(true);
    expect(codes(alike)).toEqual([]);
    expect(codes(results, { alpha: 1e-7 }).filter(([code]) => code === 'replicate-outlying' || code === 'replicate-odd')).toEqual([]);
  });

  test('what is alike once it is rounded makes no finding, whatever the quantity', () => {
    const one = made(450);
    const { exponent, strengthCoefficient } = one.hardening!;
    // five tests whose n and K the report shows alike; one lies out by chance, as one of the five must
    const alike = [0, 0.1, -0.1, 0.05, 3].map((away, i) => ({
      ...one,
      provenance: { ...one.provenance, hash: String(i) },
      hardening: {
        ...one.hardening!,
        exponent: { ...exponent, value: 0.174 + 1e-4 * away },
        strengthCoefficient: { ...strengthCoefficient, value: 672 + 0.1 * away },
      },
    }));
    for (const symbol of ['n', 'K']) expect(of(alike, symbol)!.outlier!.flagged).toBe(true);
    expect(codes(alike)).toEqual([]);
    const apart = alike.map((test, i) =>
      i < 4 ? test : { ...test, hardening: { ...test.hardening, exponent: { ...exponent, value: 0.195 } } },
    );
    expect(codes(apart)).toContainEqual(['replicate-outlying', 'hardeningExponent']);
  });

  test('a variation of more than three times the usual', () => {
    expect(codes([400, 440, 480].map((top) => made(top)))).toContainEqual(['variation-above-usual', 'tensileStrength']);
    expect(codes([440, 441, 442].map((top) => made(top)))).toEqual([]);
  });
});

describe('tests that differ', () => {
  const long: TestPiece = { ...piece, gaugeLength: 80, parallelLength: 90 };

  test('in gauge length: A is not pooled, unless asked', () => {
    const results = [made(450), made(451, long, { A: 0.2 }), made(452)];
    expect(of(results, 'A')).toBeUndefined();
    expect(of(results, 'Rm')!.summary.n).toBe(3);
    const said = analyseReplicates(results).findings.find(({ code }) => code === 'replicates-not-pooled')!;
    expect(said.message).toMatch(
      /^Not pooled: A, At, At − R\/mE, U, since the tests differ in the gauge length over √S0 \(5\.64 to 11\.3\)/,
    );
    expect(of(results, 'A', { pool: ['gaugeLength'] })!.summary.n).toBe(3);
    expect(codes(results, { pool: ['gaugeLength'] })).toContainEqual(['replicates-mixed', undefined]);
    expect(codes(results, { pool: ['gaugeLength'] })).not.toContainEqual(['replicates-not-pooled', undefined]);
  });

  test('in the source of strain: what strain went into is not pooled, what the force gives is', () => {
    const results = [made(450), made(451, piece, { by: 'travel' }), made(452)];
    const { properties, differences, trail } = analyseReplicates(results);
    expect(differences).toEqual(['extensionBasis']);
    expect(properties.map(({ symbol }) => symbol)).toEqual(['Fm', 'Rm', 'A', 'Z']);
    expect(trail.map(({ step }) => step)).toContain('The tests differ in the source of the strain (extensometer, travel).');
  });

  test('in the give of the frame, taken out of travel or not: slope and total extensions are not pooled, strengths are', () => {
    const pulled = (top: number, frameCompliance?: number) => analyseTension(caseT1(801, top), brokenPiece, { frameCompliance });
    const results = [pulled(280), pulled(282, COMPLIANCE), pulled(279)];
    expect(analyseReplicates(results).differences).toEqual(['frame']);
    for (const symbol of ['mE', 'Agt']) {
      expect(of(results, symbol), symbol).toBeUndefined();
      expect(of(results, symbol, { pool: ['frame'] })!.summary.n, symbol).toBe(3);
    }
    for (const symbol of ['Rp0.2', 'Rm', 'Ag']) expect(of(results, symbol)!.summary.n, symbol).toBe(3);
    expect(analyseReplicates([pulled(280, COMPLIANCE), pulled(282, COMPLIANCE)]).differences).toEqual([]);
    // trail and findings may be filtered
    expect(analyseReplicates([pulled(280, COMPLIANCE), { ...pulled(282, COMPLIANCE), trail: [], findings: [] }]).differences).toEqual([]);
  });

  test('in section: strengths are pooled with a finding, Fm and Z are not', () => {
    const flat: TestPiece = { section: rectangular({ width: 12.5, thickness: 4 }), gaugeLength: 40, parallelLength: 48 };
    const results = [made(450), made(451, flat), made(452)];
    expect(of(results, 'Fm')).toBeUndefined();
    expect(of(results, 'Z')).toBeUndefined();
    expect(of(results, 'Rm')!.summary.n).toBe(3);
    expect(codes(results).map(([code]) => code)).toEqual(['replicates-not-pooled', 'replicates-mixed']);
    const thick: TestPiece = { section: round({ diameter: 10 }), gaugeLength: 50, parallelLength: 60 };
    const found = analyseReplicates([made(450), made(451, thick), made(452.5)]).findings.find(({ code }) => code === 'replicates-mixed')!;
    expect(found.message).toContain('50.27 to 78.54 mm²');
  });

  test('in material, operator or rate: pooled with a finding', () => {
    const results = [
      made(450, piece, { test: { material: 'S235', operator: 'first' }, seconds: 100 }),
      made(451, piece, { test: { material: 'S355', operator: 'second' }, seconds: 1000 }),
      made(452, piece, { test: { material: 'S235' }, seconds: 100 }),
    ];
    const { differences, findings } = analyseReplicates(results);
    expect(differences).toEqual(['material', 'operator', 'rate']);
    expect(findings.map(({ code }) => code)).toEqual(['replicates-mixed', 'replicates-mixed', 'replicates-mixed']);
    expect(findings[0]!.message).toContain('the material ("S235", "S355")');
  });
});

test('a record that comes twice is no further test, however it is named', () => {
  const named = (top: number, identity: string) => made(top, piece, { test: { identity } });
  const results = [named(452, 'P1'), named(449, 'P2'), named(455, 'P3'), named(452, 'P4')];
  const [repeated] = analyseReplicates(results).findings;
  expect(repeated).toMatchObject({ code: 'replicates-repeated', severity: 'caution' });
  expect(repeated!.message).toBe(
    'One record is given as several tests: P1, P4. It counts 2 times, so n is too large and the scatter too small.',
  );
  expect(analyseReplicates(results.slice(0, 3)).findings).toEqual([]);
});

test('wrong arguments', () => {
  const one = made(450);
  expect(refusal(() => analyseReplicates(undefined as never))).toBe('missing results');
  expect(refusal(() => analyseReplicates([]))).toBe('empty results');
  expect(refusal(() => analyseReplicates([one]))).toBe('too-few results');
  expect(refusal(() => analyseReplicates([one, { method: 'replicates' } as never]))).toBe('wrong-type results[1].method');
  expect(refusal(() => analyseReplicates([one, { ...one, testPiece: undefined as never }]))).toBe('missing results[1].testPiece');
  const other = analyseShear({ maximumForce: 1000 }, { diameter: 5, planes: 1 });
  expect(refusal(() => analyseReplicates([one, other]))).toBe('out-of-range results[1].method');
  expect(() => analyseReplicates([other, other, one])).toThrow('results[2].method must be shear, as that of the first, got "tension"');
  expect(refusal(() => analyseReplicates([one, one], { pool: ['operator' as never] }))).toBe('out-of-range options.pool[0]');
  expect(refusal(() => analyseReplicates([one, one], { pool: 'section' as never }))).toBe('wrong-type options.pool');
  expect(refusal(() => analyseReplicates([one, one], { confidence: 0 }))).toBe('out-of-range options.confidence');
  expect(refusal(() => analyseReplicates([one, one], { level: 0 } as never))).toBe('unknown-option options.level');
});
