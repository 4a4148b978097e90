import { MessageChannel } from 'node:worker_threads';
import { describe, expect, test } from 'vitest';
import { InputError, isInputError, plainError, required } from '../../src/index.js';
import { catalogue, finding, requireColumn, requireFinite, requireObject, requireOneOf, requirePositive } from '../../src/base/index.js';
import { roundToStep } from '../../src/numeric/index.js';
import { refusal } from '../support/thrown.js';

describe('InputError', () => {
  test('one form of message, with what was received', () => {
    expect(new InputError('round', 'diameter', 'not-positive', 'must be above 0', -1).message).toBe(
      'round: diameter must be above 0, got -1',
    );
    expect(new InputError('f', 'x', 'wrong-type', 'must be a number', 'a "b"').message).toBe('f: x must be a number, got "a \\"b\\""');
    expect(new InputError('f', 'x', 'wrong-type', 'must be a number', { a: 1 }).message).toMatch(/got an object$/);
    expect(new InputError('f', 'x', 'missing', 'must be there', undefined)).toBeInstanceOf(RangeError);
  });

  test('is known across copies of the package, and nothing else is', () => {
    const other = Object.assign(new RangeError('x'), { name: 'InputError', code: 'missing', path: 'a' });
    expect(isInputError(other)).toBe(true);
    for (const one of [new RangeError('x'), 'InputError', null, undefined, { name: 'InputError' }]) expect(isInputError(one)).toBe(false);
  });

  test('as plain data it comes whole through JSON and out of a worker, which the error itself does not', async () => {
    const error = new InputError('round', 'diameter', 'not-positive', 'must be above 0', -1);
    const whole = { name: 'InputError', message: error.message, code: 'not-positive', path: 'diameter', received: -1 };
    expect(JSON.parse(JSON.stringify(plainError(error)))).toEqual(whole);
    const { port1, port2 } = new MessageChannel();
    const arrived = new Promise((resolve) => port2.once('message', resolve));
    port1.postMessage(plainError(error));
    expect(await arrived).toEqual(whole);
    port1.close();
    expect(structuredClone(error)).not.toHaveProperty('path');
  });

  test('what was received goes along only where any copy keeps it', () => {
    const circular: { self?: unknown } = {};
    circular.self = circular;
    const of = (received: unknown) => plainError(new InputError('f', 'x', 'wrong-type', 'must be a number', received));
    for (const one of [circular, () => 0, Symbol('x'), 10n, [1], null, undefined, NaN, Infinity]) {
      expect(of(one)).not.toHaveProperty('received');
      expect(structuredClone(of(one)).message).toBe(of(one).message);
    }
    for (const one of ['a', true, -1.5]) expect((JSON.parse(JSON.stringify(of(one))) as { received: unknown }).received).toBe(one);
    expect(refusal(() => plainError(new RangeError('x') as never))).toBe('wrong-type error');
  });
});

test('required unwraps or throws with reason and sentence', () => {
  expect(required({ ok: true, stress: 5 })).toEqual({ ok: true, stress: 5 });
  expect(() => required({ ok: false, reason: 'not-reached', message: 'no crossing' })).toThrow('required: not-reached');
});

test('no number beyond 1e100, none above 0 below 1e-100, no column that is next to nothing', () => {
  expect([1e100, -1e100].map((x) => requireFinite('f', 'x', x))).toEqual([1e100, -1e100]);
  expect([1.1e100, -1.1e100].map((x) => refusal(() => requireFinite('f', 'x', x)))).toEqual(['not-finite x', 'not-finite x']);
  expect(requirePositive('f', 'x', 1e-100)).toBe(1e-100);
  expect(refusal(() => requirePositive('f', 'x', 9e-101))).toBe('not-positive x');
  const column = (value: readonly number[], rule = {}) => refusal(() => requireColumn('f', 'x', value, rule));
  expect(column([1, 1.1e100])).toBe('out-of-range x[1]');
  expect(column([1, 1.1e30], { largest: 1e30 })).toBe('out-of-range x[1]');
  expect(column([1, 9e-101], { positive: true })).toBe('not-positive x[1]');
  expect(column([0, 9e-101, 0])).toBe('out-of-range x[1]');
  for (const sound of [[0, 0], [0, 9e-101, 1e-100], [9e-101], []])
    expect(requireColumn('f', 'x', sound, { least: 0 })).toHaveLength(sound.length);
});

test('columns: copies only where it must, names the index, allows an early end only where asked', () => {
  const own = Float64Array.of(1, 2);
  expect(requireColumn('f', 'x', own)).toBe(own);
  expect(requireColumn('f', 'x', [1, 2])).toEqual(own);
  expect(refusal(() => requireColumn('f', 'x', [1, '2']))).toBe('wrong-type x[1]');
  expect(refusal(() => requireColumn('f', 'x', [1, Infinity]))).toBe('not-finite x[1]');
  expect(refusal(() => requireColumn('f', 'x', [1, 0], { positive: true }))).toBe('not-positive x[1]');
  expect(refusal(() => requireColumn('f', 'x', 'text'))).toBe('wrong-type x');
  expect(refusal(() => requireColumn('f', 'x', undefined))).toBe('missing x');
  expect(requireColumn('f', 'x', [1, NaN], { endsEarly: true })[1]).toBeNaN();
  expect(refusal(() => requireColumn('f', 'x', [NaN, 1], { endsEarly: true }))).toBe('not-finite x[0]');
  expect(refusal(() => requireObject('f', 'x', null))).toBe('wrong-type x');
  expect(refusal(() => requireOneOf('f', 'x', 'c', ['a', 'b']))).toBe('out-of-range x');
});

test('a finding takes sentence and remedy from the catalogue, and keeps its numbers', () => {
  const one = finding('slope-scatter', { error: 1.23456 }, { field: 'elasticSlope', severity: 'fault' });
  expect(one).toMatchObject({
    code: 'slope-scatter',
    severity: 'fault',
    about: 'method',
    values: { error: 1.23456 },
    field: 'elasticSlope',
  });
  expect(one.message).toContain('1.235 %');
  expect(one.remedy).toBe(catalogue['slope-scatter'].remedy);
  // @ts-expect-error the compiler asks for every value of the sentence
  expect(finding('slope-scatter', {}).message).toContain('{error}');
});

// ISO 80000-1 rule A and ASTM E29: half to even, decided by the decimal digits
test.each([
  [2.675, 0.01, 2.68],
  [2.665, 0.01, 2.66],
  [24.25, 0.5, 24],
  [24.75, 0.5, 25],
  [0.125, 0.01, 0.12],
  [-2.5, 1, -2],
  [450.5, 1, 450],
  [451.5, 1, 452],
  [1.005, 0.01, 1],
  [7, 5, 5],
])('%f in steps of %f is %f', (value, step, rounded) => {
  expect(roundToStep(value, step)).toBe(rounded);
});
