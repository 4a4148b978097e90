import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { exportCsv, readRecord } from '../../src/index.js';
import { refusal } from '../support/thrown.js';

describe('there and back', () => {
  const finite = fc.double({ noNaN: true, noDefaultInfinity: true });
  test('a record is the same to the last bit, by every pair of signs', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(finite, finite, finite), { minLength: 5, maxLength: 40 }),
        fc.constantFrom([';', '.'], [';', ','], ['\t', ','], [',', '.'], ['|', '.']),
        (rows, [separator, decimal]) => {
          const record = {
            force: Float64Array.from(rows, ([one]) => one),
            travel: Float64Array.from(rows, ([, one]) => one),
            extension: Float64Array.from(rows, ([, , one], i) => (i > 0 && i >= rows.length - 2 ? NaN : one)),
            time: Float64Array.from(rows, (_, i) => i / 7),
          };
          const text = exportCsv(record, {
            separator: separator as ';',
            decimal: decimal as '.',
            provenance: { source: 'invented', pieces: 1 },
          });
          const back = readRecord(text, { decimal: decimal as '.' });
          for (const name of Object.keys(record) as (keyof typeof record)[]) {
            const column = back.record[name as 'time']!;
            expect(
              [...column].every((value, i) => Object.is(value, record[name][i])),
              name,
            ).toBe(true);
          }
          expect(back.metadata['source']?.value).toBe('invented');
        },
      ),
      { numRuns: 200 },
    );
  });

  test('a table none of whose columns has a unit has no row of units', () => {
    expect(exportCsv({ seed: [1, 2], Rm: [400.5, 401] })).toBe('seed;Rm\n1;400.5\n2;401\n');
    expect(exportCsv({ seed: [1, 2], Rm: [400.5, 401] }, { units: { Rm: 'MPa' } })).toBe('seed;Rm\n;MPa\n1;400.5\n2;401\n');
  });

  test('strain and pressure', () => {
    const record = { pressure: Float64Array.of(0, 0.1, 0.25), strain: Float64Array.of(0, 1e-7, 0.00125) };
    expect(readRecord(exportCsv(record)).record).toEqual(record);
  });
});

test('a curve, its units, what is left out, text', () => {
  expect(exportCsv({ strain: [0, 0.001], stress: [0, 206], other: undefined })).toBe('strain;stress\n1;MPa\n0;0\n0.001;206\n');
  expect(exportCsv({ a: [1.5, NaN], b: ['x;y', 'say "no"'] }, { units: { a: 'kN' }, decimal: ',' })).toBe(
    'a;b\nkN;\n1,5;"x;y"\n;"say ""no"""\n',
  );
});

test('text is never a formula', () => {
  const cells = ['=1+1', '+1', '-1', '@sum', '\t=1', '\r=1', ' =1', 'a=1'];
  const text = exportCsv({ '=name': cells }, { provenance: { '@who': '=cmd' }, units: { '=name': '-' } });
  expect(text.split('\n')).toEqual([
    "'@who;'=cmd",
    "'=name",
    "'-",
    "'=1+1",
    "'+1",
    "'-1",
    "'@sum",
    "'\t=1",
    '"\'\r=1"',
    '" =1"',
    'a=1',
    '',
  ]);
  expect(exportCsv({ force: [-1] })).toBe('force\nN\n-1\n');
});

test('what cannot be written', () => {
  const refused = (columns: unknown, options: unknown = {}): string => refusal(() => exportCsv(columns as never, options as never));
  expect(refused(undefined)).toBe('missing columns');
  expect(refused({})).toBe('missing columns');
  expect(refused({ a: 1 })).toBe('wrong-type columns.a');
  expect(refused({ a: [1, {}] })).toBe('wrong-type columns.a[1]');
  expect(refused({ a: null })).toBe('wrong-type columns.a');
  expect(refused({ force: [1, 'x'] })).toBe('wrong-type columns.force[1]');
  expect(refused({ a: [1, Infinity] })).toBe('not-finite columns.a[1]');
  expect(refused({ a: [1], b: [1, 2] })).toBe('unequal-lengths columns.b');
  expect(refused({ a: [1] }, { units: { b: 'N' } })).toBe('unknown-option options.units.b');
  expect(refused({ a: [1] }, { unit: 1 })).toBe('unknown-option options.unit');
  expect(refused({ a: [1] }, { separator: ' ' })).toBe('out-of-range options.separator');
  expect(refused({ a: [1] }, { separator: ',', decimal: ',' })).toBe('out-of-range options.separator');
});
