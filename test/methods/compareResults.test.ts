import { describe, expect, test } from 'vitest';
import {
  analyseBrinell,
  analyseShear,
  analyseTension,
  compareResults,
  fromJson,
  round,
  toJson,
  type TensionOptions,
  type TensionResult,
} from '../../src/index.js';
import { caseT1, COMPLIANCE, roundPiece } from '../support/records.js';
import { refusal } from '../support/thrown.js';

const made = (options: TensionOptions = {}, record = caseT1(), piece = roundPiece): TensionResult =>
  analyseTension(record, piece, { frameCompliance: COMPLIANCE, ...options });
const codes = (...given: Parameters<typeof compareResults>) => compareResults(...given).findings.map(({ code }) => code);
const plain = made();

test('a result and itself through JSON: nothing differs', () => {
  const { properties, differences, findings, comparisonOf } = compareResults(plain, fromJson(toJson(plain)));
  expect([differences, findings, comparisonOf]).toEqual([[], [], 'tension']);
  expect(properties.length).toBeGreaterThan(8);
  for (const { difference } of properties) expect(difference).toBe(0);
  expect(properties.map(({ symbol }) => symbol)).toEqual(expect.arrayContaining(['mE', 'Rp0.2', 'Rt0.5', 'Fm', 'Rm', 'n', 'K']));
});

test('who tested what, the order of options and what was asked as undefined are no difference', () => {
  const a = made({ test: { identity: 'A' }, offsets: [0.002], family: undefined, lowerYield: 'whole' });
  const b = made({ lowerYield: 'whole', offsets: Float64Array.of(0.002), test: { identity: 'B' } });
  expect(compareResults(a, b)).toMatchObject({ differences: [], findings: [], tests: [{ identity: 'A' }, { identity: 'B' }] });
});

describe('what differs is told', () => {
  test('options by name, with both values; a property that one result lacks', () => {
    const other = made({ totalExtensions: [0.004, 0.005], lowerYield: 'short' });
    const { differences, findings, properties } = compareResults(plain, other);
    expect(differences).toEqual([
      { of: 'options', name: 'totalExtensions', second: '[0.004,0.005]' },
      { of: 'options', name: 'lowerYield', second: '"short"' },
    ]);
    expect(findings.map(({ code, message }) => [code, message])).toEqual([
      ['compared-options-differ', 'The options of the two results differ in: totalExtensions, lowerYield.'],
      ['compared-one-lacks', 'Only result 2 of the two carries Rt0.4.'],
    ]);
    const low = properties.at(-1)!;
    expect(low).toMatchObject({ field: 'totalExtensionStrengths', symbol: 'Rt0.4' });
    expect(low).not.toHaveProperty('first');
    expect(compareResults(other, plain).findings[1]!.message).toBe('Only result 1 of the two carries Rt0.4.');
  });

  test('the piece, field by field', () => {
    const { differences } = compareResults(plain, made({}, caseT1(), { ...roundPiece, section: round({ diameter: 8.1 }) }));
    expect(differences.map(({ of, name }) => [of, name])).toEqual([['piece', 'section']]);
    const one = analyseShear({ maximumForce: 50_000 }, { diameter: 12, planes: 1 });
    const two = analyseShear({ maximumForce: 50_000 }, { diameter: 12, planes: 2 });
    expect(compareResults(one, two).differences).toEqual([{ of: 'piece', name: 'planes', first: '1', second: '2' }]);
    // half the stress on twice the area
    expect(compareResults(one, two).properties.find(({ symbol }) => symbol === 'τm')!.relativeDifference).toBeCloseTo(-0.5, 14);
    expect(codes(one, two)).toEqual(['compared-piece-differs']);
  });

  test('the record, by its hash', () => {
    const other = made({}, caseT1(2001));
    expect(codes(plain, other)).toContain('compared-record-differs');
    expect(compareResults(plain, other).findings[0]!.values).toEqual({ first: plain.provenance.hash, second: other.provenance.hash });
  });

  test('the version; a value that moved with it is a caution, one that moved without a fault', () => {
    const older = { ...plain, provenance: { ...plain.provenance, version: '0.0.1' } };
    expect(codes(older, plain)).toEqual(['compared-version-differs']);
    const strength = { ...plain.tensileStrength, value: plain.tensileStrength.value + 1 };
    const moved = compareResults({ ...older, tensileStrength: strength }, plain).findings[1]!;
    expect(moved).toMatchObject({ code: 'compared-value-moved', severity: 'caution', field: 'tensileStrength' });
    expect(moved.values).toMatchObject({ firstVersion: '0.0.1', difference: -1 });
    expect(compareResults({ ...plain, tensileStrength: strength }, plain).findings[0]).toMatchObject({
      code: 'compared-value-moved',
      severity: 'fault',
    });
    // the last digit of double precision is no change
    const same = { ...plain, tensileStrength: { ...strength, value: plain.tensileStrength.value * (1 + 4e-16) } };
    expect(codes(same, plain)).toEqual([]);
  });
});

describe('in standard uncertainties', () => {
  /** A hardness of 3 or 4 of doubt, as a result states it. */
  const hard = (value: number, standardUncertainty: number, force = 9807) => {
    const result = analyseBrinell({ ballDiameter: 10, force, indentations: [{ diameters: 4 }] });
    return { ...result, hardness: { ...result.hardness!, value, standardUncertainty } };
  };
  const mean = (...given: Parameters<typeof compareResults>) =>
    compareResults(...given).properties.find(({ field }) => field === 'hardness')!;

  test('of two records the doubts add in quadrature, of one the larger counts', () => {
    expect(mean(hard(70, 3), hard(80, 4, 9808))).toMatchObject({ difference: 10, standardUncertainty: 5, inUncertainties: 2 });
    expect(mean(hard(70, 3), hard(80, 4))).toMatchObject({ standardUncertainty: 4, inUncertainties: 2.5 });
    expect(mean(hard(80, 0), hard(70, 0, 9808))).toMatchObject({ difference: -10, standardUncertainty: 0 });
    expect(mean(hard(80, 0), hard(70, 0, 9808))).not.toHaveProperty('inUncertainties');
  });

  test('exactly at the limit nothing is said; beyond it a caution; the limit is an option', () => {
    const pair = [hard(70, 3), hard(80, 4, 9808)] as const;
    expect(codes(...pair)).not.toContain('compared-beyond-uncertainty');
    expect(codes(...pair, { limit: 1.9 })).toContain('compared-beyond-uncertainty');
    expect(codes(hard(69.9, 3), hard(80, 4, 9808))).toContain('compared-beyond-uncertainty');
  });

  test('indentations are paired by their place', () => {
    const two = analyseBrinell({ ballDiameter: 10, force: 9807, indentations: [{ diameters: 4 }, { diameters: 4.1 }] });
    const fields = compareResults(two, two).properties.map(({ field }) => field);
    expect(fields).toEqual(expect.arrayContaining(['indentations[0].hardness', 'indentations[1].depth', 'hardness']));
  });

  test('one record in which only one result knows its doubt', () => {
    const { properties } = compareResults(plain, made({ uncertainty: { force: 0.005 } }));
    const strength = properties.find(({ symbol }) => symbol === 'Rm')!;
    expect(strength.standardUncertainty! / (0.005 * strength.first!)).toBeCloseTo(1, 6);
    expect(strength.inUncertainties).toBe(0);
  });
});

describe('a test that ended before its maximum force', () => {
  const sheared = (most: number, parts: boolean) =>
    analyseShear(
      { force: [...Array.from({ length: 50 }, (_, i) => (most * (i + 1)) / 50), ...(parts ? [0] : [])] },
      { diameter: 5, planes: 1 },
    );
  const [known, larger] = [sheared(1000, true), sheared(1200, true)];
  const [bound, largerBound] = [sheared(1000, false), sheared(1200, false)];
  const strength = (...given: Parameters<typeof compareResults>) =>
    compareResults(...given).properties.find(({ field }) => field === 'shearStrength')!;

  test('has a bound, of which no difference is stated, and a finding names what and whose', () => {
    expect(strength(known, larger).relativeDifference).toBeCloseTo(0.2, 12);
    for (const [pair, numbers] of [
      [[known, largerBound], '2'],
      [[bound, larger], '1'],
      [[bound, largerBound], '1, 2'],
    ] as const) {
      const one = strength(...pair);
      expect([one.first, one.second]).toEqual(pair.map((result) => result.shearStrength.value));
      expect([one.firstAtLeast, one.secondAtLeast]).toEqual(pair.map((result) => result.shearStrength.atLeast));
      for (const name of ['difference', 'relativeDifference', 'standardUncertainty', 'inUncertainties'])
        expect(one).not.toHaveProperty(name);
      const said = compareResults(...pair).findings.filter(({ code }) => code === 'compared-at-least');
      expect(said.map(({ values }) => values)).toEqual([{ symbols: 'Fm, τm', numbers }]);
    }
    expect(codes(known, larger)).not.toContain('compared-at-least');
  });

  test('evaluated twice reached the same: of one record the difference is stated', () => {
    expect(strength(bound, bound)).toMatchObject({ difference: 0, firstAtLeast: true, secondAtLeast: true });
    expect(codes(bound, bound)).toEqual([]);
  });
});

test('what is no pair of results is refused', () => {
  const shear = analyseShear({ maximumForce: 1000 }, { diameter: 5, planes: 1 });
  const wrong = (first: unknown, second: unknown, options?: object) =>
    refusal(() => compareResults(first as TensionResult, second as TensionResult, options));
  expect(wrong(undefined, plain)).toBe('missing first');
  expect(wrong(plain, 3)).toBe('wrong-type second');
  expect(wrong({}, plain)).toBe('missing first.method');
  expect(wrong({ method: 'replicates' }, plain)).toBe('wrong-type first.method');
  expect(wrong(plain, { ...plain, provenance: undefined })).toBe('missing second.provenance');
  expect(wrong(plain, { ...plain, provenance: { ...plain.provenance, options: undefined } })).toBe('missing second.provenance.options');
  expect(wrong(plain, { ...plain, provenance: { ...plain.provenance, hash: 7 } })).toBe('wrong-type second.provenance.hash');
  expect(wrong(plain, shear)).toBe('out-of-range second.method');
  expect(wrong(plain, plain, { limit: 0 })).toBe('not-positive options.limit');
  expect(wrong(plain, plain, { most: 1 })).toBe('unknown-option options.most');
});
