import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { analyseTension, readRecord, round, type ReadOptions, type TensionRecord } from '../../src/index.js';
import { encoded } from '../support/encoded.js';
import { refusal, thrown } from '../support/thrown.js';

const force = (text: string | Uint8Array, options?: ReadOptions): number[] => [
  ...(readRecord(text, options).record as TensionRecord).force,
];
const time = (text: string): number[] => [...readRecord(text).record.time!];
const head = 't s;F N;x mm\n';

describe('signs between groups of three digits', () => {
  test.each([
    ['1 234,5', ' '],
    ['1\u00a0234,5', ' '],
    ['1\u202f234,5', ' '],
    ['1.234,5', '.'],
    ['1,234.5', ','],
    ["1'234.5", "'"],
    ['1’234,5', "'"],
    ['+1 234,50', ' '],
  ])('%s', (cell, sign) => {
    const text = `${head}${Array.from({ length: 6 }, (_, i) => `${i};${cell};${i}`).join('\n')}\n`;
    for (const file of [text, encoded(text, 'utf-8'), encoded(text, 'utf-16le')]) {
      expect(force(file)).toEqual(Array(6).fill(1234.5));
      expect(readRecord(file).reading.thousands).toBe(sign);
    }
  });

  test('a narrow space in one byte of Latin-1', () => {
    const text = `${head}${Array.from({ length: 6 }, (_, i) => `${i};1\u00a0234,5;${i}`).join('\n')}\nEnde: geprüft\n`;
    expect(force(encoded(text, 'windows-1252'))).toEqual(Array(6).fill(1234.5));
  });

  test('millions, and groups that begin below the rows looked at', () => {
    const text = `${head}${Array.from({ length: 3000 }, (_, i) => `${i};${i < 2000 ? '5,5' : '1.234.567,25'};${i}`).join('\n')}\n`;
    expect(force(text)[2999]).toBe(1_234_567.25);
    expect(readRecord(text).reading.thousands).toBe('.');
    expect(readRecord(`${head}0;1.234.567;1\n1;2.234.567;2\n`).reading.decimal).toBe(',');
  });

  test('only the sign that is given', () => {
    const text = `${head}${Array.from({ length: 6 }, (_, i) => `${i};1 234,5;${i}`).join('\n')}\n`;
    expect(force(text, { thousands: ' ' })[0]).toBe(1234.5);
    expect(refusal(() => readRecord(text, { thousands: '' }))).toBe('missing options.columns.force');
    expect(force('F N;x mm\n1,234;5,678\n2,345;6,789\n', { thousands: '' })[0]).toBe(1.234);
    expect(force('F N;x mm\n1,234;5,678\n2,345;6,789\n', { thousands: ',' })[0]).toBe(1234);
    expect(refusal(() => readRecord(text, { thousands: ',', decimal: ',' }))).toBe('out-of-range options.thousands');
    expect(refusal(() => readRecord(text, { thousands: '_' as never }))).toBe('out-of-range options.thousands');
  });

  test('what no group is, is no number', () => {
    const text = `${head}0;1,5;0\n1;2,5;1\n2;3,5;2\n3;4,5;3\n4;5,5;4\n5;12.34,5;5\n6;0.123,5;6\n7;1.5;7\n8;6,5;8\n`;
    expect(force(text)).toEqual([1.5, 2.5, 3.5, 4.5, 5.5, 6.5]);
    expect(readRecord(text).reading.leftOut.map(({ line }) => line)).toEqual([7, 8, 9]);
  });
});

describe('the decimal sign where nothing proves it', () => {
  test.each([
    ['1,234 alone', 'F N;x mm\n1,234;5,678\n2,345;6,789\n3,456;7,891\n'],
    ['1.234 beside numbers without a mark', 'F N;x mm\n15;1\n999;2\n1.234;3\n2.345;4\n'],
    ['1,234 beside numbers without a mark', 'F N;x mm\n15;1\n999;2\n1,234;3\n2,345;4\n'],
  ])('%s is ambiguous', (_, text) => {
    expect(refusal(() => readRecord(text))).toBe('ambiguous options.decimal');
    expect(force(text, { decimal: ',' })).not.toEqual(force(text, { decimal: '.' }));
  });

  test('a point in every cell of its columns is the decimal sign', () => {
    expect(force('F N;x mm\n1.234;5.678\n2.345;6.789\n3.456;7.891\n')[0]).toBe(1.234);
  });

  test('a long lead-in of whole numbers is read on until a mark says', () => {
    const text = `${head}${Array.from({ length: 3000 }, (_, i) => `${i};${i < 1500 ? '0' : '2,5'};${i}`).join('\n')}\n`;
    expect(force(text)[2999]).toBe(2.5);
  });

  test('a mark that comes later still is asked about, not left out', () => {
    const text = `${head}${Array.from({ length: 30_000 }, (_, i) => `${i};${i < 26_000 ? '0' : '2,5'};${i}`).join('\n')}\n`;
    expect(refusal(() => readRecord(text))).toBe('ambiguous options.decimal');
    expect(force(text, { decimal: ',' })[29_999]).toBe(2.5);
  });
});

describe('clock times', () => {
  const clocked = (...times: string[]): string => `Zeit;F N;x mm\n${times.map((one, i) => `${one};${i};${i}`).join('\n')}\n`;
  test.each([
    ['12:03:04.5', ['12:03:04.5', '12:03:04.7', '12:03:05.0', '12:04:04.5'], [0, 0.2, 0.5, 60]],
    ['12:03:04,5', ['12:03:04,5', '12:03:04,7', '12:03:05,0', '12:04:04,5'], [0, 0.2, 0.5, 60]],
    ['over midnight', ['23:59:59.5', '23:59:59.9', '00:00:00.1', '00:00:01'], [0, 0.4, 0.6, 1.5]],
    ['over noon', ['11:59:59 AM', '12:00:01 PM', '1:00:00 PM', '1:00:01 PM'], [0, 2, 3601, 3602]],
    [
      'ISO',
      ['2026-11-26T23:59:59.999', '2026-11-27T00:00:00.001', '2026-11-27 00:00:01', '2026-11-29T00:00:01Z'],
      [0, 0.002, 1.001, 172_801.001],
    ],
    ['zones', ['2026-11-26T12:00:00+01:00', '2026-11-26T11:00:01Z', '2026-11-26T10:00:02-01:00', '2026-11-26T13:00:03+0200'], [0, 1, 2, 3]],
    ['points', ['31.12.2026 23:59:59,5', '01.01.2027 00:00:00,5', '01.01.2027 00:00:01', '01.01.2027 00:00:02'], [0, 1, 1.5, 2.5]],
    ['slashes', ['12/31/2026 23:59:59.5', '1/1/2027 00:00:00.5', '1/1/2027 00:00:01', '1/1/2027 00:00:02'], [0, 1, 1.5, 2.5]],
    ['minutes and seconds', ['59:59.5', '60:00.0', '60:01.5', '61:00.0'], [0, 0.5, 2, 60.5]],
  ])('%s', (_, times, seconds) => {
    expect(time(clocked(...times))).toEqual(seconds);
    expect(readRecord(clocked(...times)).reading.columns[0]).toMatchObject({ quantity: 'time', unit: 's', clock: true });
  });

  test('12:03 alone may be minutes or hours, so it is no time', () => {
    const { record, reading } = readRecord(clocked('12:03', '12:04', '12:05', '12:06', '12:07'));
    expect(record.time).toBeUndefined();
    expect(reading.ignored[0]).toMatchObject({ name: 'Zeit' });
  });

  test('a clock without a name is the time; seconds beside a clock serve; a date alone does not matter', () => {
    const text =
      'Datum;Uhrzeit;Zeit [s];F [N];x [mm]\n26.11.2026;12:00:00;0,5;1;1\n26.11.2026;12:00:01;1,5;2;2\n26.11.2026;12:00:02;2,5;3;3\n';
    expect(time(text)).toEqual([0.5, 1.5, 2.5]);
    expect(time('when;F N;x mm\n12:00:00;1;1\n12:00:01;2;2\n12:00:03;3;3\n')).toEqual([0, 1, 3]);
  });

  test('a spoiled time leaves its row out', () => {
    const text = clocked('12:00:00', '12:00:01', '12:00:02', '12:00:03', '12:00:04', 'later', '12:00:06');
    expect(readRecord(text).reading.leftOut).toEqual([{ line: 7, why: "'later' is no number" }]);
  });
});

describe('what a spreadsheet spoils', () => {
  const body = (cells: readonly string[]): string => `t s;F kN;x mm\n${cells.map((cell, i) => `${i};${cell};${i}`).join('\n')}\n`;
  test.each(['03.Feb', '2-Mar', '03. Mrz', 'Feb 03', '2-mars', '3-ene', '01.02.2026', '2026-02-03', 'Mai 26', '12-Dez'])(
    '%s is a date with its line',
    (date) => {
      const text = body(['1,5', '2,5', '3,5', '4,5', '5,5', date, '6,5', date]);
      const { code, path, message } = thrown(() => readRecord(text));
      expect([code, path]).toEqual(['not-finite', 'line 7']);
      expect(message).toContain('lines 7, 9');
      const { reading } = readRecord(text, { leaveOutHoles: true });
      expect(reading.leftOut.map(({ line }) => line)).toEqual([7, 9]);
      expect(reading.rows).toBe(6);
    },
  );

  test('in the first rows too', () => {
    expect(refusal(() => readRecord(body(['1,5', '2-Mar', '3,5', '4,5', '5,5', '7,5', '6,5'])))).toBe('not-finite line 3');
    expect(force(body(['1,5', 'off', '3,5', '4,5', '5,5', '7,5', '6,5']))).toEqual([1500, 3500, 4500, 5500, 7500, 6500]);
  });

  test('a column of dates only', () => {
    const text = body(['03.Feb', '04.Feb', '05.Feb', '06.Feb', '07.Feb']);
    expect(thrown(() => readRecord(text)).message).toContain("'F kN' holds dates");
    expect(refusal(() => readRecord(text, { columns: { force: 'F' } }))).toBe('not-finite options.columns.force');
  });

  test.each(['#N/A', '#NV', '#DIV/0!', '#WERT!', '#VALUE!', '#REF!', '#¡VALOR!', '#####', 'NaN', 'n/a', '--', ''])(
    '%j is an empty cell',
    (cell) => {
      expect(readRecord(body(['1,5', '2,5', '3,5', '4,5', '5,5', cell, '7,5'])).reading.leftOut).toEqual([
        { line: 7, why: 'no number for force' },
      ]);
    },
  );

  test('a date of the test in the footer is none of that', () => {
    expect(readRecord(`${body(['1,5', '2,5', '3,5', '4,5', '5,5'])}Datum;26.11.2026;\nEnde\n`).reading).toMatchObject({
      rows: 5,
      leftOut: [{ line: 7 }, { line: 8 }],
    });
  });
});

describe('what stands around the numbers', () => {
  test('names and units again in the middle, empty lines, maxima at the end: each left out with its line', () => {
    const rows = (from: number): string => Array.from({ length: 6 }, (_, i) => `${from + i};${from + i},5;${i}`).join('\n');
    const text = `Prüfung A;;\n\nZeit;Kraft;Weg\ns;kN;mm\n${rows(0)}\nZeit;Kraft;Weg\ns;kN;mm\n${rows(6)}\n\nMaximum;11,5;5\n`;
    const { reading, record } = readRecord(text);
    expect(reading.leftOut.map(({ line }) => line)).toEqual([11, 12, 20]);
    expect(record.time).toHaveLength(12);
  });

  test('a status, a comment, a date in each row', () => {
    const text = `Date;Time [s];Status;Force [kN];Stroke [mm];Note\n${Array.from({ length: 8 }, (_, i) => `2026-11-26;${i};OK;${i}.5;${i};${i === 4 ? 'hold' : ''}`).join('\n')}\n`;
    expect(force(text)).toEqual(Array.from({ length: 8 }, (_, i) => 1000 * i + 500));
    expect(readRecord(text).reading.ignored.map(({ name }) => name)).toEqual(expect.arrayContaining(['Date', 'Status']));
  });

  test('names over two lines within quotes, quotes in quotes, units that are not known beside those that are', () => {
    const text = `"Operator ""A""";;\n"Time\n[s]";"Load\n[kN]";"Stroke\n[mm]"\n${Array.from({ length: 6 }, (_, i) => `"${i}";"${i},5";"${i}"`).join('\n')}\n`;
    expect(force(text)[1]).toBe(1500);
    expect(readRecord(text).metadata).toEqual({ 'line 1': { value: 'Operator "A"' } });
    const units = `Zeit;Temperatur;Kraft;Weg\ns;°C;kN;mm\n${Array.from({ length: 6 }, (_, i) => `${i};20;${i};${i}`).join('\n')}\n`;
    expect(force(units)[1]).toBe(1000);
  });

  test('a cell in quotes that goes on over its line is refused, for its lines may look like rows', () => {
    const table = (last: (i: number) => string): string =>
      `Time [s];Load [N];Stroke [mm];Note\n${Array.from({ length: 6 }, (_, i) => `${i};${10 * i};${i};${last(i)}`).join('\n')}\n`;
    const told = (text: string): string => thrown(() => readRecord(text)).message;
    const rule = 'must close every cell in quotes that it opens: the numbers below may be part of it, got "a"';
    const note = '"a\n7;8;9;10"';
    expect(told(table(() => note))).toBe(`readRecord: line 2 ${rule}`);
    expect(told(table((i) => (i === 3 ? `x"; ${note}` : '"a ""b""";"c"')))).toBe(`readRecord: line 5 ${rule}`);
    expect(refusal(() => readRecord(table(() => note).replaceAll('\n', '\r')))).toBe('ambiguous line 2');
    const within = 'Time [s];Note;Load [N];Stroke [mm]\n0;;0;0\n1;"a\nb";1;1\n2;;2;2\n3;;3;3\n';
    expect(told(within)).toBe(`readRecord: line 3 ${rule}`);
    // no numbers follow, or the quote opens no cell
    expect(force(table((i) => (i === 5 ? '"a\nb"' : '5" pipe;')))).toEqual([0, 10, 20, 30, 40, 50]);
    expect(force(`${table(() => '')}"Remark: a\nb"\n`)).toEqual([0, 10, 20, 30, 40, 50]);
    expect(force(table((i) => (i === 5 ? '"cut off' : '')).trimEnd())).toEqual([0, 10, 20, 30, 40, 50]);
  });

  test('commas between cells and in them, by their quotes', () => {
    const text = `"t [s]","F [N]","Standardweg [mm]"\n${Array.from({ length: 6 }, (_, i) => `${i},"1.23${i},5","${i},25"`).join('\n')}\n`;
    expect(force(text)).toEqual([1230.5, 1231.5, 1232.5, 1233.5, 1234.5, 1235.5]);
    expect([...readRecord(text).record.travel!]).toEqual([0.25, 1.25, 2.25, 3.25, 4.25, 5.25]);
    expect(time(text)).toEqual([0, 1, 2, 3, 4, 5]);
  });

  test('columns aligned by spaces', () => {
    const text = `Time [s] Force [kN]  Travel [mm]\n${Array.from({ length: 6 }, (_, i) => `   ${i}.0 \t  ${i}.5  ${i}.25  `).join('\n')}\n`;
    expect(force(text)[1]).toBe(1500);
    const shifted = `Time Max Force Travel [mm]\n${Array.from({ length: 6 }, (_, i) => `${i} ${i} ${i}`).join('\n')}\n`;
    expect(refusal(() => readRecord(shifted))).toBe('missing options.columns.force');
  });

  test('a table of ten readings by hand', () => {
    const text = `Force (kN);Dial (mm)\n0;0\n2;0,02\n4;0,04\n6;0,06\n8;0,08\n10;0,1\n12;0,13\n13;0,2\n14;0,4\n13;0,7\n`;
    const record = readRecord(text).record as TensionRecord;
    expect([...record.travel!]).toEqual([0, 0.02, 0.04, 0.06, 0.08, 0.1, 0.13, 0.2, 0.4, 0.7]);
    expect(analyseTension(record, { section: round({ diameter: 8 }), gaugeLength: 40 }).maximumForce!.value).toBe(14_000);
  });

  test('no names at all: places must be given, and the numbers suggest them', () => {
    const text = Array.from({ length: 8 }, (_, i) => `${i};${(i * i * 0.4).toFixed(2)};${0.01 * i}`).join('\n');
    const { code, path, message } = thrown(() => readRecord(text));
    expect([code, path]).toEqual(['missing', 'options.columns.force']);
    expect(message).toContain('0 goes up to 7, perhaps time or travel');
    expect(message).toContain('1 goes up to 19.6, perhaps force or pressure');
    expect(message).toContain('2 goes up to 0.07, perhaps strain or extension');
    expect(force(text, { columns: { force: 1, travel: 2 }, units: { force: 'kN', travel: 'mm' } })[1]).toBe(400);
  });

  test('counts are refused without a calibration, and so is a load without a unit', () => {
    const rows = Array.from({ length: 6 }, (_, i) => `${i};${1000 + i};${i}`).join('\n');
    for (const name of ['Load [counts]', 'Load raw', 'Load ADC', 'Force [mV/V]'])
      expect(thrown(() => readRecord(`t s;${name};x mm\n${rows}`)).message).toContain('calibration');
    const { message, path } = thrown(() => readRecord(`t s;Load;x mm\n${rows}`));
    expect(path).toBe('options.units.force');
    expect(message).toContain('go up to 1005');
    expect(force(`t s;Load raw;x mm\n${rows}`, { units: { force: 'N' } })[0]).toBe(1000);
    expect(force(`t s;Load;x mm\n${rows}`, { fallbackUnits: { force: 'kN' } })[0]).toBe(1_000_000);
    expect(force(`t s;Load N;x mm\n${rows}`, { fallbackUnits: { force: 'kN' } })[0]).toBe(1000);
  });

  test('of two names the qualified one; of two equal names a place', () => {
    const two = (a: string, b: string): string =>
      `t s;F N;${a};${b}\n${Array.from({ length: 6 }, (_, i) => `${i};${i};${i};${2 * i}`).join('\n')}`;
    expect([...readRecord(two('Extension mm', 'Extensometer mm')).record.extension!]).toEqual([0, 2, 4, 6, 8, 10]);
    expect([...readRecord(two('Displacement (extensometer) mm', 'Displacement mm')).record.extension!]).toEqual([0, 1, 2, 3, 4, 5]);
    expect(thrown(() => readRecord(two('Weg mm', 'Weg mm'))).message).toContain("'Weg' (place 2), 'Weg' (place 3)");
    expect(refusal(() => readRecord(two('Weg mm', 'Weg mm'), { columns: { travel: 'Weg' } }))).toBe('ambiguous options.columns.travel');
    expect([...readRecord(two('Weg mm', 'Weg mm'), { columns: { travel: 3 } }).record.travel!]).toEqual([0, 2, 4, 6, 8, 10]);
    expect(refusal(() => readRecord(two('Extension mm', 'Elongation mm')))).toBe('ambiguous options.columns.extension');
  });

  test('an empty extension column does not serve', () => {
    const text = `t s;F N;Extension mm;Travel mm\n${Array.from({ length: 6 }, (_, i) => `${i};${i};;${i}`).join('\n')}`;
    expect(Object.keys(readRecord(text).record)).toEqual(['time', 'force', 'travel']);
    expect(refusal(() => readRecord(text, { columns: { extension: 'Extension' } }))).toBe('empty options.columns.extension');
  });
});

describe('strain times the length', () => {
  const file = (a: (i: number) => number, b: (i: number) => number): string =>
    `t s;F N;Weg 1 [mm];Weg 2 [mm];Dehnung [%]\n${Array.from({ length: 8 }, (_, i) => `${i};${i};${a(i)};${b(i)};${i}`).join('\n')}\n`;
  test('leads to neither or to both of two displacements: ambiguous', () => {
    expect(
      refusal(() =>
        readRecord(
          file(
            (i) => i,
            (i) => 2 * i,
          ),
        ),
      ),
    ).toBe('ambiguous options.columns.travel');
    expect(
      refusal(() =>
        readRecord(
          file(
            (i) => i,
            (i) => 2 * i,
          ),
          { length: 25 },
        ),
      ),
    ).toBe('ambiguous options.length');
    expect(
      refusal(() =>
        readRecord(
          file(
            (i) => 0.25 * i,
            (i) => 0.25 * i,
          ),
          { length: 25 },
        ),
      ),
    ).toBe('ambiguous options.columns.extension');
  });
});

describe('limits', () => {
  test('columns, lines, and lines that are no numbers', () => {
    const wide = (n: number): string => `${Array(n).fill('1').join(';')}\n`.repeat(6);
    expect(refusal(() => readRecord(wide(501)))).toBe('too-large file');
    expect(refusal(() => readRecord(wide(500)))).toBe('missing options.columns.force');
    expect(refusal(() => readRecord(`${head}1;2;3\n1;2;3\n${'9'.repeat(1_100_000)}\n`))).toBe('too-large file');
    expect(refusal(() => readRecord(`${head}${'1;2;3\n'.repeat(1001)}${'a;b;c\n'.repeat(1100)}`))).toBe('no-numbers line 2004');
    expect(refusal(() => readRecord(`${head}${'1;1e308;3\n'.repeat(6)}`, { units: { force: 'kN' } }))).toBe('not-finite line 2');
    expect(readRecord(`${head}${'1;2;3\n'.repeat(6)}7;1e999;8\n`).reading.leftOut).toEqual([{ line: 8, why: "'1e999' is no number" }]);
  });

  test('formulas stay text', () => {
    expect(readRecord(`${head}${'1;2;3\n'.repeat(6)}1;=2+3;3\n`).reading.leftOut).toEqual([{ line: 8, why: "'=2+3' is no number" }]);
  });
});

test('force over time alone is a record only where that is asked for', () => {
  const text = 't s;F kN\n0;0\n1;1.5\n2;3\n';
  expect(refusal(() => readRecord(text))).toBe('missing options.columns.travel');
  expect(refusal(() => readRecord(text, { motion: true }))).toBe('missing options.columns.travel');
  expect(readRecord(text, { motion: false }).record).toEqual({ time: Float64Array.of(0, 1, 2), force: Float64Array.of(0, 1500, 3000) });
  expect(refusal(() => readRecord(text, { motion: 0 as never }))).toBe('wrong-type options.motion');
  // a motion that is there is read all the same
  expect(readRecord('t s;F N;x mm\n0;0;1\n1;1;2\n', { motion: false }).record.travel).toEqual(Float64Array.of(1, 2));
});

test('numbers in any notation are read as the language reads them', () => {
  const digits = fc.stringMatching(/^\d{1,25}$/);
  const cell = fc
    .tuple(
      fc.constantFrom('', '-', '+'),
      digits,
      fc.option(digits),
      fc.option(fc.tuple(fc.constantFrom('e', 'E', 'e+', 'e-'), fc.integer({ min: 0, max: 40 }))),
    )
    .map(([sign, whole, part, power]) => `${sign}${whole}${part === null ? '' : `.${part}`}${power === null ? '' : power.join('')}`);
  fc.assert(
    fc.property(fc.array(cell, { minLength: 2, maxLength: 10 }), fc.constantFrom('.', ','), (cells, decimal) => {
      const text = `${head}${['0.5', ...cells].map((one, i) => `${i};${one.replace('.', decimal)};${i}`).join('\n')}`;
      expect(force(text)).toEqual([0.5, ...cells.map(Number)]);
    }),
    { numRuns: 300 },
  );
});

describe('what else loggers write', () => {
  const rows = (n: number, row: (i: number) => string): string => Array.from({ length: n }, (_, i) => `${row(i)}\n`).join('');
  const headed = (unit: string) => `TIME (S);FORCE (${unit});TRAVEL (MM)\n`;

  test.each([
    ['daN', 10],
    ['mN', 1e-3],
    ['MN', 1e6],
    ['tf', 9806.65],
    ['KN', 1e3],
    ['N', 1],
  ])('forces in %s under headings in capitals', (unit, factor) => {
    const { record, reading } = readRecord(`${headed(unit)}${rows(6, (i) => `${i};${i};${2 * i}`)}`);
    expect([...(record as TensionRecord).force][5]).toBeCloseTo(5 * factor, 9);
    expect(record.time?.[5]).toBe(5);
    expect(reading.columns.map(({ unit: one }) => one)).toEqual(['s', unit === 'KN' ? 'kN' : unit, 'mm']);
  });

  test('letters that may be either of two units are no unit, and the message names those that are known', () => {
    expect(refusal(() => readRecord(`t s;F [mn];x mm\n${rows(6, (i) => `${i};${i};${i}`)}`))).toBe('missing options.units.force');
    expect(thrown(() => readRecord(`t s;F (xx);x mm\n${rows(6, (i) => `${i};${i};${i}`)}`)).message).toContain(
      'a unit of force (N, mN, daN, kN, MN, kgf, tf, lbf, kip)',
    );
  });

  test('a summary without a time below the record is left out, a clock that stops is not', () => {
    const body = rows(50, (i) => `${i};${i};${i}`);
    const { record, reading } = readRecord(`${head}${body};60150.0;99\n;20;9\n`);
    expect((record as TensionRecord).force.length).toBe(50);
    expect(reading.leftOut).toEqual([52, 53].map((line) => ({ line, why: 'after the last row with a time: a summary' })));
    expect(refusal(() => readRecord(`${head}${body}${rows(11, () => ';5;5')}`))).toBe('not-finite line 52');
    expect(refusal(() => readRecord(`${head}0;0;0\n;5;5\n${body}`))).toBe('not-finite line 3');
  });

  test('two columns that are equal in every row are one, and two that part are not', () => {
    const twice = (last: number) => `t s;F N;F N;x mm\n${rows(9000, (i) => `${i};${i};${i === 8999 ? last : i};${i}`)}`;
    const { record, reading } = readRecord(twice(8999));
    expect((record as TensionRecord).force[8999]).toBe(8999);
    expect(reading.ignored).toEqual([{ name: 'F', index: 2, why: 'it equals column 1 in every row' }]);
    expect(thrown(() => readRecord(twice(0))).message).toBe(
      'readRecord: options.columns.force must name one of the columns \'F\' (place 1), \'F\' (place 2), which differ on line 9001, got ["F", "F"]',
    );
    // other units are other numbers
    expect(refusal(() => readRecord(`t s;F N;F kN;x mm\n${rows(9, (i) => `${i};${i};${i};${i}`)}`))).toBe(
      'ambiguous options.columns.force',
    );
  });

  test('of a long file without a heading the beginning alone says nothing of small numbers', () => {
    const message = (n: number) => thrown(() => readRecord(rows(n, (i) => `${i};${10 * i};${0.001 * i}`))).message;
    expect(message(300)).toContain('2 goes up to 0.299, perhaps strain or extension (small numbers)');
    expect(message(9000)).toContain('in the first 400 rows 2 goes up to 0.399, perhaps travel, extension or strain');
  });
});
