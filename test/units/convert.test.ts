import { expect, test } from 'vitest';
import { convert, isInputError } from '../../src/index.js';
import { parseUnit } from '../../src/units/index.js';

const thrown = (call: () => unknown): unknown => {
  try {
    call();
  } catch (error) {
    return isInputError(error) ? `${error.code} ${error.path}` : error;
  }
  return undefined;
};

test('units of two dimensions do not compile together, and throw', () => {
  // @ts-expect-error: a force is no stress
  expect(thrown(() => convert(1, 'kN', 'MPa'))).toBe('out-of-range to');
  // @ts-expect-error: a length is no strain
  expect(thrown(() => convert(1, 'mm', '%'))).toBe('out-of-range to');
  // @ts-expect-error: there is no such unit
  expect(thrown(() => convert(1, 'stone', 'N'))).toBe('unknown-unit from');
  // @ts-expect-error: there is no such unit
  expect(thrown(() => convert(1, 'N', 7))).toBe('unknown-unit to');
});

test('no number passes silently that is none', () => {
  expect(thrown(() => convert(NaN, 'kN', 'N'))).toBe('not-finite value');
  expect(thrown(() => convert(Infinity, 'kN', 'N'))).toBe('not-finite value');
  // @ts-expect-error: text is no number
  expect(thrown(() => convert('1', 'kN', 'N'))).toBe('wrong-type value');
});

test('the sign of zero stays', () => {
  expect(Object.is(convert(-0, 'kN', 'N'), -0)).toBe(true);
});

test.each([
  ['KN', 'kN'],
  ['N/mm^2', 'N/mm²'],
  ['n/mm2', 'N/mm²'],
  ['sec', 's'],
  ['\u03bcm', 'µm'],
  ['um/m', 'µm/m'],
  ['Prozent', '%'],
  ['inches', 'in'],
  ['lbs', 'lbf'],
  [' kgf / mm² ', 'kgf/mm²'],
  ['MPA', 'MPa'],
  ['psi', 'psi'],
  ['N.mm', 'N·mm'],
  ['-', '1'],
])('%s is read as %s', (text, unit) => {
  expect(parseUnit(text)?.unit).toBe(unit);
});

test.each(['mn', 'stone', '', 'constructor', 'toString', 'M'])('%s is no unit', (text) => {
  expect(parseUnit(text)).toBeUndefined();
});
