import { describe, expect, test } from 'vitest';
import { exportCsv, readChunks, readRecord, readRows, type ReadOptions, type TensionRecord } from '../../src/index.js';
import { columnStore, endRow, joinColumns, leaveOdd, lineOf } from '../../src/record/reading/columnStore.js';
import { decodeBytes, findWidth, requireSize, requireText } from '../../src/record/reading/decodeText.js';
import { afterLastLine, afterLines, nothing, requireLine, wait, waitingBytes } from '../../src/record/reading/lineBuffer.js';
import { scanBody, type BodyFormat } from '../../src/record/reading/scanBody.js';
import { endsLine } from '../../src/record/reading/signs.js';
import { tellApart } from '../../src/record/reading/tellApart.js';
import { usableRows } from '../../src/record/reading/usableRows.js';
import { refusal, thrown } from '../support/thrown.js';

const bytes = (text: string) => new TextEncoder().encode(text);

describe('lines among bytes', () => {
  test('where the line after so many begins', () => {
    const text = bytes('a\nbc\r\nd\r\re');
    expect([0, 1, 2, 3, 4, 5].map((count) => afterLines('f', text, count))).toEqual([0, 2, 6, 8, 9, -1]);
    expect(afterLines('f', bytes('a\n'), 1)).toBe(2);
    expect(['', 'a', 'a\nb', 'a\r', 'a\nb\n'].map((one) => afterLastLine(bytes(one)))).toEqual([0, 0, 2, 2, 4]);
    expect([10, 13, 32, undefined].map(endsLine)).toEqual([true, true, false, false]);
  });

  test('a line of more than a mebibyte is none of numbers', () => {
    expect(() => {
      requireLine('f', 1 << 20);
    }).not.toThrow();
    expect(() => {
      requireLine('f', (1 << 20) + 1);
    }).toThrow('f: file must have lines of at most 1048576 bytes, got 1048577');
    expect(() => afterLines('f', new Uint8Array((1 << 20) + 1).fill(65), 1)).toThrow('lines of at most');
  });

  test('what waits: one piece as it is, several in one that grows', () => {
    const first = bytes('ab');
    const one = nothing();
    expect(one).toMatchObject({ length: 0, own: false });
    wait(one, first, false);
    expect(waitingBytes(one).buffer).toBe(first.buffer);
    wait(one, bytes('c'), false);
    expect(first).toEqual(bytes('ab'));
    expect(waitingBytes(one)).toEqual(bytes('abc'));
    const buffer = one.bytes;
    wait(one, bytes('d'), false);
    expect(one.bytes).toBe(buffer);
    wait(one, new Uint8Array(3000).fill(65), true);
    expect(one.length).toBe(3004);
    expect(one.bytes.length).toBe(6008);
    expect(waitingBytes(one).subarray(0, 5)).toEqual(bytes('abcdA'));
    const kept = nothing();
    wait(kept, first, true);
    first[0] = 0;
    expect(waitingBytes(kept)).toEqual(bytes('ab'));
    expect(kept.bytes).toHaveLength(1024);
  });
});

describe('characters among bytes', () => {
  const zeros = (even: number, odd: number, half = 1000) => {
    const look = new Uint8Array(2 * half).fill(65);
    for (let i = 0; i < even; i += 1) look[2 * i] = 0;
    for (let i = 0; i < odd; i += 1) look[2 * i + 1] = 0;
    return look;
  };
  test('two bytes a character by a mark, or by zeros on one side', () => {
    expect(findWidth('f', Uint8Array.of(0xff, 0xfe, 1))).toBe('utf-16le');
    expect(findWidth('f', Uint8Array.of(0xfe, 0xff, 1))).toBe('utf-16be');
    expect(findWidth('f', Uint8Array.of(0xff, 65))).toBe('bytes');
    expect(findWidth('f', Uint8Array.of(65, 0xfe))).toBe('bytes');
    expect(findWidth('f', Uint8Array.of(0xfe, 65))).toBe('bytes');
    expect(findWidth('f', zeros(0, 0))).toBe('bytes');
    expect(findWidth('f', zeros(49, 601))).toBe('utf-16le');
    expect(findWidth('f', zeros(601, 49))).toBe('utf-16be');
    for (const [even, odd] of [
      [50, 601],
      [601, 50],
      [0, 600],
      [600, 0],
      [1, 1],
      [601, 601],
    ] as const)
      expect(() => findWidth('f', zeros(even, odd))).toThrow('f: file must be text, and holds zero bytes, got "binary data"');
  });

  test('control characters in more than a hundredth are no text', () => {
    const look = (count: number, byte: number) => new Uint8Array(1000).fill(65).fill(byte, 0, count);
    expect(() => {
      requireText('f', look(10, 1));
    }).not.toThrow();
    for (const byte of [0, 1, 8, 11, 14, 31])
      expect(() => {
        requireText('f', look(11, byte));
      }).toThrow('f: file must be text, and holds control characters, got "binary data"');
    for (const byte of [9, 10, 12, 13, 32])
      expect(() => {
        requireText('f', look(1000, byte));
      }).not.toThrow();
  });

  test('UTF-8, or what is none as Windows-1252; as told', () => {
    expect(decodeBytes(bytes('é'), undefined)).toEqual({ text: 'é', encoding: 'utf-8' });
    expect(decodeBytes(Uint8Array.of(0xe9, 0xb5), undefined)).toEqual({ text: 'éµ', encoding: 'windows-1252' });
    expect(decodeBytes(bytes('é'), 'windows-1252')).toEqual({ text: 'Ã©', encoding: 'windows-1252' });
    expect(decodeBytes(Uint8Array.of(65, 0xe9), 'utf-8')).toEqual({ text: 'A\ufffd', encoding: 'utf-8' });
    expect(decodeBytes(bytes('é'), 'utf-16le')).toEqual({ text: 'é', encoding: 'utf-16le' });
    expect(() => {
      requireSize('f', 2 ** 29);
    }).not.toThrow();
    expect(() => {
      requireSize('f', 2 ** 29 + 1);
    }).toThrow('f: file must be at most 536870912 bytes, got 536870913');
  });
});

describe('columns while they are read', () => {
  test('blocks, lines and rows', () => {
    const store = columnStore('f', 2, '');
    expect(store).toMatchObject({ path: 'file', thousands: '' });
    // a row on each line from 3 on, and one line more before rows 5 and 600
    for (let row = 0; row < 2000; row += 1) {
      store.columns[0]![store.at] = row;
      store.columns[1]![store.at] = 2 * row;
      endRow(store, row + 3 + (row >= 5 ? 1 : 0) + (row >= 600 ? 1 : 0));
    }
    expect(store.breaks).toEqual([
      { row: 0, ahead: 3 },
      { row: 5, ahead: 4 },
      { row: 600, ahead: 5 },
    ]);
    expect([0, 4, 5, 599, 600, 1999].map((row) => lineOf(store, row))).toEqual([3, 7, 9, 603, 605, 2004]);
    // blocks of 512 rows, 512, then as many as there are
    expect(store.full.map((block) => block[0]!.length)).toEqual([512, 512]);
    expect(store.columns[0]).toHaveLength(1024);
    const [a, b] = joinColumns(store);
    expect(Array.from(a!)).toEqual(Array.from({ length: 2000 }, (_, i) => i));
    expect(Array.from(b!)).toEqual(Array.from({ length: 2000 }, (_, i) => 2 * i));
    expect(store.full).toEqual([]);
  });

  test('rows left out: a thousand, or as many as are read', () => {
    const odd = (rows: number, count: number) => {
      const store = columnStore('f', 1, '');
      for (let row = 0; row < rows; row += 1) endRow(store, row);
      for (let k = 0; k < count; k += 1) leaveOdd(store, 7, 'why', undefined, k === 0);
      return store.odd;
    };
    expect(odd(2, 1000)).toHaveLength(1000);
    expect(odd(2, 2).map(({ date }) => date)).toEqual([true, false]);
    expect(odd(1001, 1001)).toHaveLength(1001);
    expect(() => odd(2, 1001)).toThrow('f: line 7 and most lines above must hold numbers in the columns that serve, got "why"');
    expect(() => odd(1001, 1002)).toThrow('most lines above');
  });
});

describe('numbers of a body, without strings', () => {
  const format: BodyFormat = {
    separator: ';',
    decimal: '.',
    thousands: undefined,
    unproven: false,
    wanted: [
      { index: 0, clock: false, strict: true },
      { index: 2, clock: false, strict: true },
    ],
    decode: (cell) => new TextDecoder().decode(cell),
  };
  const scanned = (text: string, given: Partial<BodyFormat> = {}, firstLine = 0) => {
    const own = { ...format, ...given };
    const store = columnStore('f', own.wanted.length, '');
    const lines = scanBody(bytes(text), 0, bytes(text).length, firstLine, own, store);
    const rows = store.done + store.at;
    return {
      lines,
      columns: joinColumns(store).map((one) => [...one]),
      odd: store.odd.map(({ line, why }) => `${line}: ${why}`),
      thousands: store.thousands,
      rows,
      dates: store.odd.map(({ date }) => date),
      lineOf: (row: number) => lineOf(store, row),
    };
  };
  const first = (cell: string, given?: Partial<BodyFormat>) => scanned(`${cell};x;7\n`, given).columns[0]![0];

  test.each([
    ['0', 0],
    ['12', 12],
    ['-12', -12],
    ['+12', 12],
    ['1.5', 1.5],
    ['-1.25', -1.25],
    ['.5', 0.5],
    ['5.', 5],
    [' 1.5 ', 1.5],
    ['"1.5"', 1.5],
    ['"-3"', -3],
    [' "2" ', 2],
    ['1e3', 1000],
    ['1E3', 1000],
    ['1e+2', 100],
    ['1.5e-3', 0.0015],
    ['2.5E2', 250],
    ['-0', -0],
    ['9007199254740991', 2 ** 53 - 1],
    ['9007199254740993', 2 ** 53],
    ['123456789012345678901234567890', 1.2345678901234568e29],
    ['1e22', 1e22],
    ['1e-22', 1e-22],
    ['1e23', 1e23],
    ['1e-23', 1e-23],
    ['0.1e24', 1e23],
    ['1.7976931348623157e308', Number.MAX_VALUE],
    ['0.1', 0.1],
    ['0.30000000000000004', 0.1 + 0.2],
    ['1 234.5', 1234.5],
    ["1'234", 1234],
    ['\u22125', -5],
    ['0012', 12],
    ['1.000000000000000000000', 1],
  ])('%s', (cell, value) => {
    expect(first(cell)).toBe(value);
    expect(first(cell.replace('.', ','), { decimal: ',' })).toBe(value);
  });

  test.each(['a', '1.2.3', '1e', '1e+', '-', 'e5', '1"', '1a', '1-', '1,5', '--1', '9:1', '/1', '1/'])('%s is no number', (cell) => {
    const { rows, odd } = scanned(`${cell};x;7\n1;x;2\n`);
    expect(rows).toBe(cell === '-' ? 2 : 1);
    if (cell !== '-') expect(odd).toEqual([`1: '${cell.replace(/^"/, '')}' is no number`]);
  });

  test('rows, empty cells, rows without numbers, and the lines they stand on', () => {
    const { lines, columns, odd, rows, lineOf: line } = scanned('1;x;2\n\n;;\n3;;\n;;4\r\n5;x;6;more;cells\r7\n8;9\n10;;11\n', {}, 100);
    expect(lines).toBe(9);
    expect(rows).toBe(5);
    expect(columns).toEqual([
      [1, 3, NaN, 5, 10],
      [2, NaN, 4, 6, 11],
    ]);
    expect(odd).toEqual(['107: 1 cell only', '108: 2 cells only']);
    expect([0, 1, 2, 3, 4].map(line)).toEqual([101, 104, 105, 106, 109]);
  });

  test('text in a cell that serves spoils a row, in one that checks it does not', () => {
    expect(scanned('a;x;b\n1;x;b\n').odd).toEqual(["1: 'a' is no number", "2: 'b' is no number"]);
    expect(scanned(`1;x;${'b'.repeat(60)}\n`).odd).toEqual([`1: '${'b'.repeat(40)}' is no number`]);
    expect(scanned('1;x;3-Feb\nx;x;3-Feb\n')).toMatchObject({ odd: ["1: '3-Feb' is a date", "2: 'x' is no number"], dates: [true, false] });
    const lax = { wanted: [format.wanted[0]!, { index: 2, clock: false, strict: false }] };
    expect(scanned('1;x;b\n', lax)).toMatchObject({ rows: 1, columns: [[1], [NaN]], odd: [] });
  });

  test('clock times', () => {
    const wanted = [{ index: 0, clock: true, strict: true }, format.wanted[1]!];
    expect(scanned('00:00:01;x;5\n;x;6\n"00:00:02.5";x;7\n12;x;8\n', { wanted })).toMatchObject({
      columns: [
        [1e6, NaN, 2.5e6],
        [5, 6, 7],
      ],
      odd: ["4: '12' is no number"],
    });
  });

  test('separators within quotes; quotes within quotes', () => {
    expect(scanned('1;"a;b";2\n"a;1";x;3\n1;"say ""no;""";4\n"1;2\n5;x;6\n').columns).toEqual([
      [1, 1, 5],
      [2, 4, 6],
    ]);
    expect(scanned('"a ""b""";x;3\n').odd).toEqual([`1: 'a "b"' is no number`]);
    expect(scanned('"1,5","x","2,5"\n', { separator: ',', decimal: ',' }).columns).toEqual([[1.5], [2.5]]);
  });

  test('a space stands for any run of spaces and tabs', () => {
    expect(scanned('  1  x\t2 \n3 x 4\n 5\tx\t 6\n', { separator: ' ' }).columns).toEqual([
      [1, 3, 5],
      [2, 4, 6],
    ]);
    expect(scanned('1 \tx 2\n', { separator: ' ' }).columns).toEqual([[1], [2]]);
    expect(scanned('1\tx\t2\n', { separator: '\t' }).columns).toEqual([[1], [2]]);
    expect(scanned('\tx\t2\n', { separator: '\t' }).columns).toEqual([[NaN], [2]]);
    expect(scanned('a "1 2\n', { separator: ' ' }).odd).toEqual(["1: 'a' is no number"]);
  });

  test('groups of digits: the first sign that was met, and only the one allowed', () => {
    expect(scanned("5;x;1 234\n1'234;x;5\n").thousands).toBe(' ');
    expect(scanned('1 234;x;5\n', { thousands: "'" }).odd).toEqual(["1: '1 234' is no number"]);
    expect(scanned('1\u00a0234;x;5\n', { decode: (cell) => new TextDecoder().decode(cell) }).columns[0]).toEqual([1234]);
    expect(scanned(`${' '.repeat(70)}1 234${' '.repeat(70)};x;5\n`).columns[0]).toEqual([1234]);
  });

  test('where no mark was met above, a number by the other sign asks which', () => {
    const open = (text: string, decimal: '.' | ',' = '.') => refusal(() => scanned(text, { unproven: true, decimal }));
    expect(open('1;x;2,5\n')).toBe('ambiguous options.decimal');
    expect(open('1;x;2.5\n', ',')).toBe('ambiguous options.decimal');
    expect(thrown(() => scanned('1;x;2\n1;x;2,5\n', { unproven: true }, 10)).message).toBe(
      "f: options.decimal must be '.' or ',': the first mark in a number is on line 12, got \"2,5\"",
    );
    expect(scanned('1;x;a\n', { unproven: true }).odd).toHaveLength(1);
    expect(scanned('a;x;2,5\n', { unproven: true }).odd).toHaveLength(1);
  });
});

describe('rows that can be used', () => {
  const used = (columns: Readonly<Record<string, readonly number[]>>, options: ReadOptions = {}) => {
    const list = Object.entries(columns).map(([quantity, column]) => ({
      quantity: quantity as 'force',
      column: Float64Array.from(column),
    }));
    const { keep, rows, leftOut } = usableRows('f', list, list[0]!.column.length, (row) => row + 10, options);
    return { keep: [...keep], rows, leftOut };
  };
  test('without a load they are left out; extension and strain may end early', () => {
    expect(used({ force: [1, NaN, 3], travel: [1, NaN, 3] })).toEqual({
      keep: [1, 0, 1],
      rows: 2,
      leftOut: [{ line: 11, why: 'no number for force' }],
    });
    expect(used({ pressure: [NaN, 2] }).leftOut).toEqual([{ line: 10, why: 'no number for pressure' }]);
    for (const name of ['extension', 'strain', 'transverseStrain']) expect(used({ force: [1, 2, 3], [name]: [1, NaN, NaN] }).rows).toBe(3);
    expect(used({ force: [1, 2], extension: [NaN, NaN] }).rows).toBe(2);
  });
  test('holes elsewhere are refused, or left out', () => {
    for (const name of ['travel', 'time'])
      expect(() => used({ force: [1, 2, 3], [name]: [1, NaN, 3] })).toThrow(
        `f: line 11 must hold a number for ${name} (or set options.leaveOutHoles), got "an empty cell"`,
      );
    expect(() => used({ force: [1, 2, 3], extension: [1, NaN, 3] })).toThrow('line 11 must hold a number for extension');
    expect(used({ force: [1, 2, 3], travel: [1, NaN, 3] }, { leaveOutHoles: true })).toEqual({
      keep: [1, 0, 1],
      rows: 2,
      leftOut: [{ line: 11, why: 'no number for travel' }],
    });
  });
});

describe('which displacement a strain was counted from', () => {
  const rival = (name: string, ...column: number[]) => ({ name, column: Float64Array.from(column) });
  const strain = rival('e', 0.1, 0.11, 0.12, NaN);
  test('that which strain times length leads to, within a twentieth', () => {
    // 50 mm: 0, 0.5, 1 mm from the first sample on
    expect(tellApart('f', [rival('a', 0, 1, 2, 3), rival('b', 7, 7.5, 8, 9)], strain, 50).name).toBe('b');
    expect(tellApart('f', [rival('a', 0, 0.5, 1.05, NaN)], strain, 50).name).toBe('a');
    expect(() => tellApart('f', [rival('a', 0, 0.5, 1.06, NaN)], strain, 50)).toThrow(
      "f: options.length does not lead from 'e' to 'a': name the column with options.columns, got 50",
    );
    expect(() => tellApart('f', [rival('a', 0, 0, 0, 0), rival('b', 0, 0, 0, 0)], strain, 50)).toThrow("to 'a' or 'b'");
    expect(() => tellApart('f', [rival('a', 0, 0.5, 1), rival('b', 1, 1.5, 2)], strain, 50)).toThrow(
      "f: options.columns.extension must name one of 'a' or 'b': 'e' times the length leads to both, got undefined",
    );
  });
});

const table = 't s;F N;x mm\n0;1;2\n1;2;3\n2;3;4\n';
describe('pieces of a file', () => {
  const message = async (chunks: unknown, options?: object) => {
    try {
      await readChunks(chunks as never, options);
    } catch (error) {
      return (error as Error).message;
    }
    return 'no error';
  };
  test('wherever they are cut', async () => {
    const text = `\ufeff${table.replaceAll('\n', '\r\n')}`;
    const whole = readRecord(text);
    for (const size of [1, 2, 3, 7, 1000]) {
      const pieces = Array.from({ length: Math.ceil(text.length / size) }, (_, k) => text.slice(k * size, (k + 1) * size));
      expect((await readChunks(pieces)).record).toEqual(whole.record);
      expect((await readChunks(pieces.map(bytes))).reading).toEqual(whole.reading);
    }
    expect(whole.reading).toMatchObject({ encoding: 'utf-8', separator: ';', rows: 3, leftOut: [] });
    expect((await readChunks([table.trimEnd()])).record.travel).toEqual(Float64Array.of(2, 3, 4));
  });
  test('what are none', async () => {
    for (const none of [undefined, null, 5, 'text', new Uint8Array(3), {}])
      expect(await message(none)).toMatch(/^readChunks: chunks must be pieces of bytes or text that can be iterated over, got /);
    expect(await message([5])).toBe('readChunks: chunks[0] must be bytes or text, got 5');
    expect(await message(['a', bytes('b')])).toBe('readChunks: chunks[1] must be text, got an object');
    expect(await message([bytes('a'), bytes('b'), 'c'])).toBe('readChunks: chunks[2] must be bytes, got "c"');
    expect(await message([])).toBe('readChunks: file must not be empty, got 0');
    expect(await message([' \n'])).toBe('readChunks: file must not be empty, got "only white space"');
    expect(await message([table], { sep: 1 })).toMatch(/^readChunks: options\.sep is not an option/);
    expect(await message(['t s;F N;x mm\n0;1;2\n'])).toBe('readChunks: file must hold at least 2 rows of numbers, got 1');
    expect(await message(['a;b\nc;d\n'])).toBe(
      'readChunks: file must hold rows of at least two numbers, and all it holds is text (rows: 2), got "a;b"',
    );
  });
});

describe('a whole file', () => {
  const message = (text: string, options: ReadOptions = {}) => thrown(() => readRecord(text, options)).message;
  test('what cannot be read', () => {
    expect(message('F N;x mm\n1,234;5,678\n2,345;6,789\n')).toBe(
      "readRecord: options.decimal must be '.' or ',': every mark in the numbers stands before three digits, so it may be a decimal sign or one of thousands, got \"1,234 5,678\"",
    );
    const wide = (columns: number) =>
      `${Array.from({ length: columns }, (_, k) => (k === 0 ? 'F N' : k === 1 ? 'x mm' : `a${k}`)).join(';')}\n${Array(3).fill(Array(columns).fill('1.5').join(';')).join('\n')}\n`;
    expect(readRecord(wide(500)).reading.rows).toBe(3);
    expect(message(wide(501))).toBe('readRecord: file must have at most 500 columns, got 501');
    expect(message(table.replace('3;4', '3-Feb;4'))).toBe(
      'readRecord: line 4 must hold numbers, and a spreadsheet made dates of them on lines 4 (restore them, or set options.leaveOutHoles), got "\'3-Feb\' is a date"',
    );
    const dates = `t s;F N;x mm\n${Array.from({ length: 18 }, (_, i) => `${i};${i > 6 && i % 2 === 1 ? '3-Feb' : '1'};1`).join('\n')}`;
    expect(message(dates)).toContain('on lines 9, 11, 13, 15, 17 and 1 more (restore');
    expect(readRecord(dates, { leaveOutHoles: true }).reading.leftOut).toHaveLength(6);
    expect(message(`t s;F kN;x mm\n0;1e307;2\n1;2;3\n2;3;4\n`)).toBe(
      "readRecord: line 2 must hold a number for 'F' that is finite in its own unit, got 1e+307",
    );
    expect(message(`t s;F kN;x mm\n0;-1e307;2\n1;2;3\n2;3;4\n`)).toContain('line 2');
  });

  test('the more telling separator and decimal sign; as told', () => {
    expect(readRecord('F N;x mm\n1,5;2,5\n2,5;3,5\n').reading).toMatchObject({ separator: ';', decimal: ',' });
    expect(readRecord('F N,x mm\n1.5,2.5\n2.5,3.5\n').reading).toMatchObject({ separator: ',', decimal: '.' });
    expect(refusal(() => readRecord(table, { separator: '|' }))).toBe('no-numbers file');
    expect(readRecord('F N;x mm\n1,234;5,678\n2,345;6,789\n', { thousands: ',' }).reading.decimal).toBe('.');
  });

  test('of two displacements the extension by the length, the other the travel', () => {
    const rows = Array.from({ length: 8 }, (_, i) => `${i};${i / 10};${i / 100};${i / 25}`).join('\n');
    const { record, reading } = readRecord(`F N;x mm;Weg mm;Strain %\n${rows}\n`, { length: 25 });
    expect([record.travel![7], record.extension![7]]).toEqual([0.7, 0.07]);
    expect(reading.columns.map(({ quantity, index }) => [quantity, index])).toEqual([
      ['force', 0],
      ['travel', 1],
      ['extension', 2],
    ]);
    expect(reading.columns[0]).toEqual({ quantity: 'force', name: 'F', index: 0, unit: 'N', unitFrom: 'file', factor: 1 });
    expect(readRecord('t;F N;x mm\n00:00:01;1;2\n00:00:02;2;3\n').reading.columns[0]).toEqual({
      quantity: 'time',
      name: 't',
      index: 0,
      unit: 's',
      unitFrom: 'file',
      factor: 1,
      clock: true,
    });
  });
});

describe('rows of cells', () => {
  const head = ['t s', 'F N', 'x mm'];
  const message = (rows: unknown, options: ReadOptions = {}) => thrown(() => readRows(rows as never, options)).message;
  test('what are none', () => {
    expect(message(5)).toBe('readRows: rows must be rows of cells, or columns by name, got 5');
    expect(message([5])).toBe('readRows: rows[0] must be an array of cells, got 5');
    for (const cell of [{}, () => 1, Symbol('a')])
      expect(message([head, [1, cell]])).toMatch(/^readRows: rows\[1\]\[1\] must be a string, a number, a date, true, false or null, got/);
    expect(message({ a: 5 })).toBe('readRows: rows.a must be an array of cells, got 5');
    expect(message({ a: null })).toBe('readRows: rows.a must be an array of cells, got null');
    expect(message({ a: [1, 2], b: [1] })).toBe('readRows: rows.b must have 2 cells like the other columns, got 1');
    expect(message([])).toBe('readRows: rows must not be empty, got 0');
    expect(message([['', null]])).toBe('readRows: rows must not be empty, got 1');
    expect(message([['a', 'b']])).toBe(
      'readRows: rows must hold rows of at least two numbers, and all it holds is text (rows: 1), got "a b"',
    );
    expect(message({ a: ['x', 'y'], b: [1, 2] })).toBe(
      'readRows: rows.a must hold rows of at least two numbers, and all it holds is text (rows: 3), got "a"',
    );
    expect(message({ b: [1, 2], a: ['x', 'y'] })).toContain('rows.a must hold');
    expect(message([head, [1, 2, 3]], { separator: ';' })).toBe('readRows: options.separator has no meaning for rows, got ";"');
    expect(message([head, [1, 2, 3]], { encoding: 'utf-8' })).toBe('readRows: options.encoding has no meaning for rows, got "utf-8"');
    expect(message([head, [1, 2, 3]])).toBe('readRows: rows must hold at least 2 rows of numbers, got 1');
  });

  test('numbers, text, dates, what is left out', () => {
    const at = (second: number) => new Date(Date.UTC(2024, 0, 1, 0, 0, second));
    const { record, reading } = readRows(
      [
        ['t', 'F N', 'x mm'],
        ...[0, 1, 2, 3, 4].map((i) => [at(i), i, ` ${i} `]),
        [at(5), 'a', 3],
        [at(6), at(3), 4],
        [at(7), 9n, 5],
        [null, null, null],
        [null, 4, 6],
      ],
      { leaveOutHoles: true },
    );
    expect([...(record as TensionRecord).force]).toEqual([0, 1, 2, 3, 4, 9]);
    expect([...record.travel!]).toEqual([0, 1, 2, 3, 4, 5]);
    expect([...record.time!]).toEqual([0, 1, 2, 3, 4, 7]);
    expect(reading.leftOut).toEqual([
      { line: 7, why: "'a' is no number" },
      { line: 8, why: "'2024-01-01T00:00:03.000Z' is a date" },
      { line: 11, why: 'after the last row with a time: a summary' },
    ]);
    expect(reading).not.toHaveProperty('separator');
    expect(refusal(() => readRows([head, [0, 1, 2], [1, '3-Feb', 3], [2, 3, 4]]))).toBe('not-finite line 3');
    expect(readRows([head, [0, 1, 2], [1, 'x'.repeat(60), 3], [2, 3, 4]]).reading.leftOut[0]!.why).toBe(`'${'x'.repeat(40)}' is no number`);
    expect(readRows([head, [0, '1 234,5', 2], [1, '2,5', 3]]).reading).toMatchObject({ thousands: ' ', decimal: ',' });
  });

  test('a strain that only checks may hold text', () => {
    const rows = Array.from({ length: 6 }, (_, i) => [i, i / 100, i === 3 ? 'x' : i / 25]);
    expect(readRows([['F N', 'Extension mm', 'Strain %'], ...rows], { length: 25 }).reading.rows).toBe(6);
  });
});

describe('columns as text', () => {
  const message = (columns: unknown, options: object = {}) => thrown(() => exportCsv(columns as never, options)).message;
  test('units by names, given ones first; provenance; signs', () => {
    expect(
      exportCsv({
        force: [1],
        pressure: [1],
        extension: [1],
        travel: [1],
        strain: [1],
        transverseStrain: [1],
        time: [1],
        stress: [1],
        energy: [1],
        other: [1],
      }),
    ).toBe(
      'force;pressure;extension;travel;strain;transverseStrain;time;stress;energy;other\nN;MPa;mm;mm;1;1;s;MPa;N·mm;\n1;1;1;1;1;1;1;1;1;1\n',
    );
    expect(
      exportCsv({ force: [1.5, -0] }, { units: { force: 'kN' }, provenance: { by: 'a;b', rate: 5 }, decimal: ',', separator: '\t' }),
    ).toBe('by\ta;b\nrate\t5\nforce\nkN\n1,5\n-0\n');
    expect(exportCsv({ a: ['x,y', ' z', 'q"q', 'l\nm', 'l\rm'] }, { separator: ',' })).toBe('a\n"x,y"\n" z"\n"q""q"\n"l\nm"\n"l\rm"\n');
    expect(exportCsv({ a: [1, 2], b: ['x', 'y'] }, { separator: '|' })).toBe('a|b\n1|x\n2|y\n');
    expect(exportCsv({ a: [] })).toBe('a\n');
  });
  test('what cannot be written', () => {
    expect(message(undefined)).toBe('exportCsv: columns must be an object, got undefined');
    expect(message({ a: undefined })).toBe('exportCsv: columns must hold at least one column, got undefined');
    expect(message({ a: 1 })).toBe('exportCsv: columns.a must be an array of numbers or of text, got 1');
    expect(message({ a: null })).toBe('exportCsv: columns.a must be an array of numbers or of text, got null');
    expect(message({ a: {} })).toBe('exportCsv: columns.a must be an array of numbers or of text, got an object');
    expect(message({ a: [1], b: [1, 2] })).toBe('exportCsv: columns.b must have 1 samples like the other columns, got 2');
    expect(message({ force: ['x'] })).toBe('exportCsv: columns.force[0] must be a number, got "x"');
    expect(message({ a: [true] })).toBe('exportCsv: columns.a[0] must be a number or text, got true');
    expect(message({ a: [1, -Infinity] })).toBe('exportCsv: columns.a[1] must be finite, got -Infinity');
    expect(message({ a: [1] }, { separator: ',', decimal: ',' })).toBe(
      'exportCsv: options.separator must differ from the decimal sign, got ","',
    );
    expect(message({ a: [1] }, { separator: ' ' })).toBe('exportCsv: options.separator must be one of ";", ",", "\\t", "|", got " "');
    expect(message({ a: [1] }, { decimal: ';' })).toBe('exportCsv: options.decimal must be one of ".", ",", got ";"');
    expect(message({ a: [1] }, { units: { b: 'N' } })).toBe('exportCsv: options.units.b is not an option (known: a), got "b"');
    expect(message({ a: [1] }, { unit: 1 })).toBe(
      'exportCsv: options.unit is not an option (known: units, provenance, separator, decimal), got "unit"',
    );
    expect(message({ a: [1] }, { provenance: 5 })).toBe('exportCsv: options.provenance must be an object, got 5');
  });
});
