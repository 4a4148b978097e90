import { describe, expect, test } from 'vitest';
import { readRecord, type ReadOptions } from '../../src/index.js';
import { assignColumns } from '../../src/record/reading/assignColumns.js';
import type { Cell } from '../../src/record/reading/cells.js';
import { splitName, type NamedColumn } from '../../src/record/reading/columnNames.js';
import { cellText, clockOf, layoutOf, numberOf } from '../../src/record/reading/layout.js';
import { metadataOf } from '../../src/record/reading/metadata.js';
import { suggestColumns } from '../../src/record/reading/suggestColumns.js';
import { parseUnit } from '../../src/units/index.js';
import { refusal, thrown } from '../support/thrown.js';

const at = new Date('2024-02-03T10:00:00Z');
const never = new Date(NaN);

test('a cell as text, as a number, as a clock', () => {
  expect([null, undefined, never, at, ' a ', 5, true, 7n].map(cellText)).toEqual([
    '',
    '',
    '',
    '2024-02-03T10:00:00.000Z',
    'a',
    '5',
    'true',
    '7',
  ]);
  expect(
    ([5, NaN, Infinity, 7n, null, undefined, '1.5', '', 'x', true, at] as Cell[]).map((cell) => numberOf(cell, '.', undefined)),
  ).toEqual([5, NaN, NaN, 7, NaN, NaN, 1.5, NaN, undefined, undefined, undefined]);
  expect([at, never, '00:00:01', 'x', 5].map(clockOf)).toEqual([at.getTime() * 1000, undefined, 1e6, undefined, undefined]);
});

/** A table of numbers below what is given. */
const numbers = (n: number, columns = 3): string[][] =>
  Array.from({ length: n }, (_, i) => Array.from({ length: columns }, (_, k) => String(i + k)));
const of = (rows: readonly (readonly Cell[])[], separator: Parameters<typeof layoutOf>[1] = ';') =>
  layoutOf(rows, separator, '.', undefined)!;

describe('where the numbers are', () => {
  test('names, units, numbers', () => {
    expect(of([['some', 'words'], ['Time', 'Force', 'x'], ['s', 'kN', 'mm'], ...numbers(6)])).toMatchObject({
      namesRow: 1,
      unitsRow: 2,
      bodyRow: 3,
      columns: 3,
      kinds: ['number', 'number', 'number'],
      score: 18,
      evidence: 'none',
      thousands: '',
    });
    expect(of([['Time', 'Force', 'x'], ...numbers(6)])).toMatchObject({ namesRow: 0, unitsRow: undefined, bodyRow: 1 });
    expect(of(numbers(6))).toMatchObject({ namesRow: undefined, unitsRow: undefined, bodyRow: 0, head: [] });
    // empty rows between
    expect(of([['Time', 'Force', 'x'], [''], ['s', 'kN', 'mm'], [''], ...numbers(6)])).toMatchObject({
      namesRow: 0,
      unitsRow: 2,
      bodyRow: 4,
    });
    // units alone name nothing below them but themselves
    expect(of([['s', 'kN', 'mm'], ...numbers(6)])).toMatchObject({ namesRow: 0, unitsRow: undefined });
    expect(
      layoutOf(
        [
          ['a', 'b'],
          ['c', '1'],
        ],
        ';',
        '.',
        undefined,
      ),
    ).toBeUndefined();
    expect(layoutOf([], ';', '.', undefined)).toBeUndefined();
  });

  test('a row of names has as many cells, or one less', () => {
    const names = (row: readonly string[]) => of([row, ...numbers(6)]).namesRow;
    expect([names(['a', 'b', 'c']), names(['a', 'b']), names(['a']), names(['', '', '']), names(['', 'b', ''])]).toEqual([
      0,
      0,
      undefined,
      undefined,
      0,
    ]);
    expect(of([['a'], ...numbers(6, 2)]).namesRow).toBeUndefined();
  });

  test('the first run of five numeric rows, else the longest', () => {
    const words = ['x', 'y', 'z'];
    expect(of([...numbers(5), words, ...numbers(9)]).bodyRow).toBe(0);
    expect(of([...numbers(4), words, ...numbers(9)]).bodyRow).toBe(5);
    expect(of([...numbers(2), words, ...numbers(4), words, ...numbers(3)]).bodyRow).toBe(3);
    expect(of([...numbers(3), words, ...numbers(3)]).bodyRow).toBe(0);
    // a row of another width ends a run
    expect(of([...numbers(3, 2), ...numbers(6, 3)])).toMatchObject({ bodyRow: 3, columns: 3 });
  });

  test('two numbers make a row numeric; text may stand where it stands in the first', () => {
    expect(
      layoutOf(
        [
          ['1', 'a'],
          ['2', 'b'],
        ],
        ';',
        '.',
        undefined,
      ),
    ).toBeUndefined();
    expect(
      of([
        ['1', '2', 'a'],
        ['3', '4', 'b'],
        ['5', '6', 'c'],
      ]),
    ).toMatchObject({
      columns: 3,
      kinds: ['number', 'number', 'text'],
      body: [
        ['1', '2', 'a'],
        ['3', '4', 'b'],
        ['5', '6', 'c'],
      ],
      score: 3,
    });
    expect(
      of([
        ['1', '2', '3'],
        ['3', '4', 'b'],
        ['5', '6', '7'],
        ['8', '9', '10'],
        ['11', '12', '13'],
        ['14', '15', '16'],
        ['17', '18', '19'],
      ]).kinds,
    ).toEqual(['number', 'number', 'number']);
    expect(
      of([
        ['10:00:00', '1'],
        ['10:00:01', '2'],
        ['10:00:02', '3'],
      ]).kinds,
    ).toEqual(['clock', 'number']);
    expect(
      of([
        ['1', '2', ''],
        ['3', '4', ''],
      ]).kinds,
    ).toEqual(['number', 'number', 'empty']);
  });

  test('a column is what half of its filled cells are', () => {
    const kind = (cells: readonly string[]) => of(cells.map((cell, i) => [String(i), String(i), cell])).kinds[2];
    expect(kind(['10:00:00', '1', '2', '10:00:03'])).toBe('number');
    expect(kind(['10:00:00', '1', '10:00:02', '10:00:03'])).toBe('clock');
    expect(kind(['a', 'b', '1', 'c', '2', '10:00:00'])).toBe('text');
    expect(kind(['a', 'b', '1', '2', '3', ''])).toBe('number');
  });

  test('rows above that are spoiled in some cells belong to the numbers', () => {
    expect(of([['a', 'b', 'c'], ['1', '2', 'x'], ...numbers(6)]).bodyRow).toBe(1);
    expect(of([['a', 'b', 'c'], ['1', 'y', 'x'], ...numbers(6)]).bodyRow).toBe(2);
    expect(of([['a', 'b', 'c', 'd'], ['1', '2', 'x', 'y'], ...numbers(6, 4)]).bodyRow).toBe(1);
    expect(of([['a', 'b'], ['1', 'x'], ...numbers(6, 2)]).bodyRow).toBe(1);
    expect(of([['a', 'b', 'c'], ['1', '2', 'x', 'y'], ...numbers(6)]).bodyRow).toBe(2);
    // a row of units is none of them, even where some of its cells are numbers
    expect(of([['a', 'b', 'c'], ['1', '1', 'mm'], ...numbers(6)])).toMatchObject({ bodyRow: 2, unitsRow: 1, namesRow: 0 });
    expect(of([['a', 'b', 'c', 'd'], ['1', '1', 'mm', 'kN'], ...numbers(6).map((row) => [...row, 'z'])])).toMatchObject({
      bodyRow: 2,
      unitsRow: 1,
    });
  });

  test('rows of another width are none of the body; text counts against a layout', () => {
    expect(of([...numbers(5), ['1', '2'], ...numbers(1)]).body).toHaveLength(6);
    expect(of([['1', '2', '3', '4'], ...numbers(5)]).score).toBe(15);
    expect(of([...numbers(5), ['1', '', 'x']]).score).toBe(15);
  });

  test('names where a space separates', () => {
    const rows = [['Time', '[s]', 'Force', '[kN]'], ...numbers(6, 2)];
    const found = of(rows, ' ');
    expect(found.head[found.namesRow!]).toEqual(['Time [s]', 'Force [kN]']);
    expect(of(rows, ';').head[0]).toEqual(rows[0]);
    expect(of([['s', 'kN'], ...numbers(6, 2)], ' ')).toMatchObject({ namesRow: 0, unitsRow: undefined });
  });
});

describe('what the marks say about the decimal sign', () => {
  const evidence = (cells: readonly Cell[], separator: ';' | ',' = ';', decimal: '.' | ',' = '.') =>
    layoutOf(
      cells.map((cell, i) => [String(i), String(i), cell]),
      separator,
      decimal,
      undefined,
    )!.evidence;
  test.each([
    [['1.5', '2'], 'proven'],
    [['1.23', '2'], 'proven'],
    [['1.2345', '2'], 'proven'],
    [['0.123', '2'], 'proven'],
    [['1234.567', '2'], 'proven'],
    [['1.234e3', '2'], 'proven'],
    [['1', '2'], 'none'],
    [['', 'nan'], 'none'],
    [['1.234', '2'], 'open'],
    [['-12.345', '2'], 'open'],
    [['+123.456', '2'], 'open'],
    [['1.234', '2.345'], 'proven'],
    [['1.234', ''], 'proven'],
    [[1.5, 2.5], 'none'],
    [['x.y', 'z.w'], 'none'],
  ] as const)('%j: %s', (cells, is) => {
    expect(evidence(cells)).toBe(is);
  });

  test('a comma alone is open even in every cell; a point beside commas between cells is not', () => {
    expect(evidence(['1,234', '2,345'], ';', ',')).toBe('open');
    expect(evidence(['1.234', '2'], ',')).toBe('proven');
    expect(evidence(['1.234,5', '2'], ';', ',')).toBe('proven');
  });

  test('the sign between groups that was seen', () => {
    const seen = (cells: readonly Cell[], thousands?: '' | ' ') =>
      layoutOf(
        cells.map((cell, i) => [String(i), String(i), cell]),
        ';',
        '.',
        thousands,
      )!.thousands;
    expect(seen(['5', '1 234.5', "1'234.5"])).toBe(' ');
    expect(seen(['5', '6'])).toBe('');
    expect(seen([1234, 5])).toBe('');
    expect(seen(['5', '1 234.5', '7', '8', '9', '10'], '')).toBe('');
  });
});

test('lines above the columns: name and value, with a unit', () => {
  const layout = of([
    ['Piece:', 'A7'],
    ['L0', '25', 'mm'],
    ['operator = someone'],
    ['time: 10:30'],
    ['free words'],
    ['', ''],
    ['a:b', 'c', 'd', 'e'],
    ['Time', 'Force', 'x'],
    ['s', 'N', 'mm'],
    ...numbers(6),
  ]);
  expect(metadataOf(layout)).toEqual({
    Piece: { value: 'A7' },
    L0: { value: '25', unit: 'mm' },
    operator: { value: 'someone' },
    time: { value: '10:30' },
    'line 5': { value: 'free words' },
    'a:b': { value: 'c', unit: 'd e' },
  });
  expect(metadataOf(of([['Piece:', 'A7'], [': x'], ['kept ='], ['1', '2', 'x', 'y'], ...numbers(6)]))).toMatchObject({
    Piece: { value: 'A7' },
    'line 2': { value: ': x' },
    kept: { value: '' },
  });
});

describe('which column serves for what', () => {
  const columns = (...texts: readonly (string | readonly [string, NamedColumn['kind']])[]): NamedColumn[] =>
    texts.map((text, index) => {
      const [heading, kind] = typeof text === 'string' ? [text, 'number' as const] : text;
      const { name, unit } = splitName(heading);
      const parsed = unit === undefined ? undefined : parseUnit(unit);
      return { index, name, heading, unit: parsed?.unit, dimension: parsed?.dimension, blankUnit: false, kind };
    });
  const assigned = (list: readonly NamedColumn[], given: ReadOptions['columns'] = {}, lengthKnown = false) => {
    const { used, rivals, check, ignored } = assignColumns('read', list, given, lengthKnown);
    return {
      used: Object.fromEntries([...used].map(([quantity, { index }]) => [quantity, index])),
      rivals: rivals.map(({ index }) => index),
      check: check?.index,
      ignored: Object.fromEntries(ignored.map(({ column, why }) => [column.name, why])),
    };
  };

  test('by names, and why others are not in use', () => {
    expect(
      assigned(
        columns('Time s', 'Force kN', 'Crosshead mm', 'Remark', 'Stress MPa', ['Note', 'text'], ['Spare', 'empty'], ['Clock', 'clock']),
        { time: 0 },
      ),
    ).toEqual({
      used: { time: 0, force: 1, travel: 2 },
      rivals: [],
      check: undefined,
      ignored: {
        Remark: 'its name is not known',
        Stress: 'it is not needed',
        Note: "the cells of 'Note' are not all numbers",
        Spare: 'it is empty',
        Clock: 'another column was chosen for time',
      },
    });
    expect(assigned(columns(['Clock', 'clock'], 'Force kN', 'x mm')).used).toEqual({ time: 0, force: 1, travel: 2 });
  });

  test('the options decide, by place, name or whole heading', () => {
    const list = columns('a kN', 'b kN', 'x mm');
    expect(assigned(list, { force: 1 }).used).toEqual({ force: 1, travel: 2 });
    expect(assigned(list, { force: 'b' }).used['force']).toBe(1);
    expect(assigned(list, { force: 'b kN' }).used['force']).toBe(1);
    expect(assigned(list, { force: 'b', time: undefined } as object).ignored).toEqual({ a: 'another column was chosen for force' });
    const refused = (given: ReadOptions['columns'], of_ = list) => thrown(() => assignColumns('read', of_, given!, false)).message;
    expect(refused({ force: 'c' })).toBe("read: options.columns.force must name a column ('a', 'b', 'x'), got \"c\"");
    expect(refused({ force: 3 })).toBe("read: options.columns.force must name a column ('a', 'b', 'x'), got 3");
    expect(refused({ force: 'a' }, columns('a', 'b', 'a'))).toBe(
      "read: options.columns.force must give a place: 'a' (place 0), 'a' (place 2), got \"a\"",
    );
    expect(refused({}, list)).toBe('read: options.columns.force must name one of the columns \'a\', \'b\', got ["a kN", "b kN"]');
    expect(refused({}, columns('Travel mm', 'Travel mm', 'Stroke mm'))).toBe(
      'read: options.columns.travel must name one of the columns \'Travel\' (place 0), \'Travel\' (place 1), \'Stroke\', got ["Travel mm", "Travel mm", "Stroke mm"]',
    );
  });

  test('a plain displacement is the extension beside a travel, else the travel', () => {
    expect(assigned(columns('F kN', 'x mm')).used).toEqual({ force: 0, travel: 1 });
    expect(assigned(columns('F kN', 'x mm', 'Crosshead mm')).used).toEqual({ force: 0, extension: 1, travel: 2 });
    expect(assigned(columns('F kN', 'x mm', 'Extension mm')).used).toEqual({ force: 0, travel: 1, extension: 2 });
    const both = assigned(columns('F kN', 'x mm', 'Crosshead mm', 'Extension mm'));
    expect(both.used).toEqual({ force: 0, travel: 2, extension: 3 });
    expect(both.ignored).toEqual({ x: 'it is not needed' });
    // chosen by the options
    expect(assigned(columns('F kN', 'x mm', 'a mm'), { extension: 2 }).used).toEqual({ force: 0, travel: 1, extension: 2 });
    expect(assigned(columns('F kN', 'x mm', 'Crosshead mm'), { travel: 2 }).used).toEqual({ force: 0, extension: 1, travel: 2 });
    const plain = assigned(columns('F kN', 'x mm', 'Weg mm'), { travel: 2 });
    expect(plain.used).toEqual({ force: 0, travel: 2 });
    expect(plain.ignored).toEqual({ x: 'it is not needed' });
  });

  test('of several those of the right kind of unit, of these an extensometer by name', () => {
    expect(assigned(columns('F kN', 'x mm', 'Load mm')).used['force']).toBe(0);
    expect(assigned(columns('F kN', 'x mm', 'Load mm')).ignored).toEqual({ Load: "'F' serves for force" });
    const extensions = assigned(columns('F kN', 'Elongation mm', 'Extensometer mm'));
    expect(extensions.used).toEqual({ force: 0, extension: 2 });
    expect(extensions.ignored).toEqual({ Elongation: "'Extensometer' serves for extension" });
    expect(assigned(columns('F', 'x mm')).used).toEqual({ force: 0, travel: 1 });
  });

  test('the force goes before the pressure, the extension before the strain, which then checks it', () => {
    expect(assigned(columns('F kN', 'p bar', 'x mm')).ignored).toEqual({ p: 'the force serves' });
    expect(assigned(columns('p bar', 'x mm')).used).toEqual({ pressure: 0, travel: 1 });
    expect(assigned(columns('F kN', 'p bar', 'x mm'), { pressure: 1 }).used).toEqual({ pressure: 1, force: 0, travel: 2 });
    const strained = columns('F kN', 'Extension mm', 'Strain %');
    expect(assigned(strained)).toMatchObject({
      used: { force: 0, extension: 1 },
      check: undefined,
      ignored: { Strain: 'the extension serves' },
    });
    expect(assigned(strained, {}, true).check).toBe(2);
    expect(assigned(strained, { strain: 2 }, true)).toMatchObject({
      used: { force: 0, extension: 1, strain: 2 },
      check: undefined,
      ignored: {},
    });
    expect(assigned(columns('F kN', 'Strain %', 'Crosshead mm'), {}, true)).toMatchObject({
      used: { force: 0, strain: 1, travel: 2 },
      check: undefined,
    });
  });

  test('two plain displacements beside a strain are rivals where the length is known', () => {
    const rivals = columns('F kN', 'x mm', 'Weg mm', 'Strain %');
    expect(assigned(rivals, {}, true)).toMatchObject({ used: { force: 0 }, rivals: [1, 2], check: 3 });
    const code = (list: readonly NamedColumn[], lengthKnown = true) => refusal(() => assignColumns('read', list, {}, lengthKnown));
    expect(code(rivals, false)).toBe('ambiguous options.columns.travel');
    expect(code(columns('F kN', 'x mm', 'Weg mm'))).toBe('ambiguous options.columns.travel');
    expect(code(columns('F kN', 'x mm', 'Weg mm', 'Dial mm', 'Strain %'))).toBe('ambiguous options.columns.travel');
    expect(code(columns('F kN', 'x mm', 'Weg mm', 'Strain %', 'Dehnung %'))).toMatch(/^ambiguous/);
    expect(code(columns('F kN', 'Stroke mm', 'Travel mm', 'Strain %'))).toBe('ambiguous options.columns.travel');
    expect(code(columns('F kN', 'x mm', 'Weg mm', 'Strain %', 'Extension mm'))).toBe('ambiguous options.columns.travel');
    expect(code(columns('F kN', 'p bar', 'p2 bar', 'Pressure bar', 'Strain %', 'Druck bar'))).toBe('ambiguous options.columns.pressure');
  });
});

describe('words of a refusal', () => {
  const body = '0;1;2\n1;2;3\n2;3;4\n3;4;5\n4;5;6\n';
  const message = (head: string, options: ReadOptions = {}, rows = body) => thrown(() => readRecord(`${head}\n${rows}`, options)).message;
  test('a unit that is missing, or is another kind', () => {
    expect(message('t s;F;x mm')).toBe(
      'readRecord: options.units.force must name a unit of force (N, mN, daN, kN, MN, kgf, tf, lbf, kip): the column \'F\' has none that is known (its numbers go up to 5), got "F"',
    );
    expect(message('t s;Force counts;x mm')).toBe(
      "readRecord: options.units.force must name a unit of force (N, mN, daN, kN, MN, kgf, tf, lbf, kip): the column 'Force counts' holds raw readings, which need a calibration (read them as 'N', then applyCalibration), got \"Force counts\"",
    );
    expect(message('t s;F kN;Travel kN')).toBe(
      "readRecord: options.units.travel must name a unit of length (mm, cm, m, µm, in, ft, mil): the column 'Travel kN' has 'kN', got \"Travel kN\"",
    );
  });

  test('a column that is missing: what could be one', () => {
    expect(message('t s;x mm;y', {}, '0;100;0,1\n1;250;0,2\n2;200;0,25\n')).toBe(
      "readRecord: options.columns.force must name a column of force or pressure (the file has 't', 'x', 'y'; by place: 0 't' goes up to 2, perhaps time or travel (it rises evenly); 1 'x' goes up to 250, perhaps force or pressure (the largest numbers); 2 'y' goes up to 0.25, perhaps strain or extension (small numbers)), got none",
    );
    expect(message('', {}, '0;5\n1;5\n1;6\n')).toBe(
      'readRecord: options.columns.force must name a column of force or pressure (the file has 2 columns without names; by place: 0 goes up to 1, perhaps travel or extension; 1 goes up to 6, perhaps force or pressure (the largest numbers)), got none',
    );
    expect(message('F N;a;b', {}, '1;2;3-Feb\n2;3;4-Feb\n3;4;5-Feb\n')).toMatch(
      /^readRecord: options\.columns\.travel must name a column of extension, strain or travel \(.*; 'b' holds dates, as spreadsheets make of numbers\), got none$/,
    );
  });

  test('a column of text or without cells that is chosen', () => {
    const chosen = (cells: readonly string[], force: string) =>
      message('t s;F N;x mm', { columns: { [force]: 1 } }, cells.map((cell, i) => `${i};${cell};${i}`).join('\n'));
    expect(chosen(['a', 'b', 'c'], 'force')).toBe(
      'readRecord: options.columns.force must name a column of numbers: \'F N\' holds other text, got "a"',
    );
    expect(chosen(['3-Feb', '4-Feb', '5-Feb'], 'force')).toBe(
      'readRecord: options.columns.force must name a column of numbers: \'F N\' holds dates, as spreadsheets make of numbers, got "3-Feb"',
    );
    expect(chosen(['', '', ''], 'force')).toBe('readRecord: options.columns.force must name a column of numbers: \'F N\' is empty, got ""');
    expect(refusal(() => readRecord('t s;F N;x mm\n0;10:00:00;1\n1;10:00:01;2\n2;10:00:02;3\n', { columns: { force: 1 } }))).toBe(
      'not-finite options.columns.force',
    );
  });

  test('options', () => {
    const refused = (options: object) => thrown(() => readRecord(`t s;F N;x mm\n${body}`, options)).message;
    expect(refused({ decimal: ',', thousands: ',' })).toBe('readRecord: options.thousands must differ from the decimal sign, got ","');
    expect(refused({ units: { force: 'mm' } })).toBe(
      'readRecord: options.units.force must be a unit of force (N, mN, daN, kN, MN, kgf, tf, lbf, kip), got "mm"',
    );
    expect(refused({ fallbackUnits: { time: 'mm' } })).toBe(
      'readRecord: options.fallbackUnits.time must be a unit of time (s, ms, min, h), got "mm"',
    );
    expect(refused({ motion: 1 })).toBe('readRecord: options.motion must be true or false, got 1');
    expect(refused({ leaveOutHoles: 'yes' })).toBe('readRecord: options.leaveOutHoles must be true or false, got "yes"');
    expect(refused({ columns: { force: -1 } })).toBe('readRecord: options.columns.force must be a whole number of 0 or more, got -1');
    expect(refused({ columns: { weight: 1 } })).toMatch(/^readRecord: options\.columns\.weight is not an option/);
    expect(refused({ fallbackUnits: { weight: 'N' } })).toMatch(/^readRecord: options\.fallbackUnits\.weight is not an option/);
    expect(refused({ separator: '#' })).toBe('readRecord: options.separator must be one of ";", ",", "\\t", "|", " ", got "#"');
    expect(refused({ thousands: '_' })).toBe('readRecord: options.thousands must be one of "", " ", "\'", ".", ",", got "_"');
    expect(refused({ encoding: 'ascii' })).toBe(
      'readRecord: options.encoding must be one of "utf-8", "utf-16le", "utf-16be", "windows-1252", got "ascii"',
    );
    expect(refused({ decimal: ';' })).toBe('readRecord: options.decimal must be one of ".", ",", got ";"');
    expect(refused({ length: -1 })).toBe('readRecord: options.length must be above 0, got -1');
  });
});

test('where a unit is from: options, the file, a fallback; a strain in a file with units may have none', () => {
  const rows = '0;1;2;0.1\n1;2;3;0.2\n2;3;4;0.3\n';
  const units = (head: string, options: ReadOptions = {}) =>
    Object.fromEntries(
      readRecord(`${head}\n${rows}`, options).reading.columns.map(({ quantity, unit, unitFrom }) => [quantity, `${unit} ${unitFrom}`]),
    );
  expect(units('t s;F kN;x mm;a')).toEqual({ time: 's file', force: 'kN file', travel: 'mm file' });
  expect(units('t s;F kN;x mm;a', { units: { force: 'N' } })['force']).toBe('N options');
  expect(units('t s;F kN;x mm;a', { fallbackUnits: { force: 'N' } })['force']).toBe('kN file');
  expect(units('t s;F;x mm;a', { fallbackUnits: { force: 'N' } })['force']).toBe('N options');
  expect(units('t;F;x;Strain\ns;kN;mm;')).toMatchObject({ strain: '1 file' });
  expect(refusal(() => units('t;F;x;Strain\ns;kN;;'))).toBe('missing options.units.travel');
  expect(refusal(() => units('t s;F kN;x mm;Strain'))).toBe('missing options.units.strain');
  // apostrophes that keep a spreadsheet from calculating are no part of a name
  expect(readRecord(`t s;F kN;'=x mm;a\n${rows}`, { columns: { travel: 2 } }).reading.columns[2]!.name).toBe('=x');
});

describe('what the numbers of a column could be', () => {
  const guesses = (...columns: readonly (readonly (number | string)[])[]) => {
    const rows = columns[0]!.map((_, i) => columns.map((column) => column[i]!));
    const kinds = columns.map((column): NamedColumn['kind'] => (column.some((cell) => cell === 'a') ? 'text' : 'number'));
    const named = columns.map((_, index) => ({
      index,
      name: '',
      heading: '',
      unit: undefined,
      dimension: undefined,
      blankUnit: false,
      kind: kinds[index]!,
    }));
    return suggestColumns(
      {
        ...of([
          ['1', '2'],
          ['2', '3'],
        ]),
        body: rows,
      },
      named,
      true,
    )
      .split('; ')
      .map((text) => text.replace(/.*perhaps /, '').replace(/ \(.*/, ''));
  };
  test('time rises evenly: each step within half of the mean one', () => {
    expect(guesses([0, 1, 2, 3], [9, 8, 9, 8])).toEqual(['time or travel', 'travel or extension']);
    // steps of 1, 1 and 4 have a mean of 2; steps of 1, 1 and 2.5 one of 1.5
    expect(guesses([0, 1, 2, 6], [5, 5, 5, 5])[0]).toBe('force or pressure');
    expect(guesses([0, 1, 2, 4.5], [5, 5, 5, 5])[0]).toBe('travel or extension');
    expect(guesses([0, 1, 4], [5, 5, 5])[0]).toBe('time or travel');
    expect(guesses([3, 2, 1, 0], [5, 5, 5, 5])[0]).toBe('travel or extension');
    expect(guesses([3, 3, 3, 3], [5, 5, 5, 5])[0]).toBe('travel or extension');
    expect(guesses([3], [5])).toEqual(['travel or extension', 'force or pressure']);
    // cells without a number are passed over
    expect(guesses([0, 1, '', 2], [9, 8, 9, 8])[0]).toBe('time or travel');
    // of two that rise evenly the first
    expect(guesses([0, 1, 2, 3], [0, 2, 4, 6], [9, 8, 9, 8])).toEqual(['time or travel', 'travel or extension', 'force or pressure']);
  });
  test('force is the largest of the rest, strain is small; text is none', () => {
    expect(guesses([0, 1, 2, 3], [9, 8, 9, 8], [-20, -10, 0, -5], [0.4, 0.1, 0.3, -0.49], [0.5, 0.1, 0.3, 0.2])).toEqual([
      'time or travel',
      'travel or extension',
      'force or pressure',
      'strain or extension',
      'travel or extension',
    ]);
    expect(guesses(['a', 'b', 'a', 'b'], [9, 8, 9, 8])).toEqual(['travel or extension']);
  });
});

describe('what must be among the columns', () => {
  const read = (head: string, options: ReadOptions = {}) =>
    Object.keys(readRecord(`${head}\n0;1;0.1\n1;2;0.2\n2;3;0.3\n3;5;0.4\n`, options).record).sort();
  test('a load, and one motion unless none is wanted', () => {
    expect(read('t s;F N;x mm')).toEqual(['force', 'time', 'travel']);
    expect(read('t s;F N;Extension mm')).toEqual(['extension', 'force', 'time']);
    expect(read('t s;F N;Strain %')).toEqual(['force', 'strain', 'time']);
    expect(read('t s;p bar;x mm')).toEqual(['pressure', 'time', 'travel']);
    expect(refusal(() => read('t s;F N;a'))).toBe('missing options.columns.travel');
    expect(thrown(() => read('t s;F N;a')).message).not.toContain('dates');
    expect(refusal(() => read('t s;F N;a', { motion: true }))).toBe('missing options.columns.travel');
    expect(read('t s;F N;a', { motion: false })).toEqual(['force', 'time']);
    expect(refusal(() => read('t s;a;x mm', { motion: false }))).toBe('missing options.columns.force');
    expect(read('t s;Transverse %;F N', { motion: false })).toEqual(['force', 'time', 'transverseStrain']);
  });
  test('units in a row below, with brackets or without, and where its cell is empty in the name', () => {
    const factors = (head: string) =>
      readRecord(`${head}\n0;1;0.1\n1;2;0.2\n2;3;0.3\n`).reading.columns.map(({ name, unit }) => `${name} ${unit}`);
    expect(factors('t;F;x\n[s];(kN);{µm}')).toEqual(['t s', 'F kN', 'x µm']);
    expect(factors('t;F [kN];x mm\ns;;')).toEqual(['t s', 'F kN', 'x mm']);
    expect(factors('t ; F ; x \n s ; kN ; mm ')).toEqual(['t s', 'F kN', 'x mm']);
  });
  test('a strain beside an extension is read as its check where the length is known', () => {
    const text = `F N;Extension mm;Strain %\n${Array.from({ length: 6 }, (_, i) => `${i};${i / 100};${i / 25}`).join('\n')}\n`;
    expect(readRecord(text, { length: 25 }).reading).toMatchObject({
      rows: 6,
      columns: [{ quantity: 'force' }, { quantity: 'extension' }],
    });
    expect(refusal(() => readRecord(text, { length: 30 }))).toBe('ambiguous options.length');
    expect(readRecord(text).reading.columns).toHaveLength(2);
    expect(readRecord(text).reading.ignored).toEqual([{ name: 'Strain', index: 2, why: 'the extension serves' }]);
  });
});

test('a row of units without names is of units', () => {
  const rows = Array.from({ length: 6 }, (_, k) => `${k};${k / 10}`).join('\n');
  const { record, reading } = readRecord(`kN;µm\n${rows}\n`, { columns: { force: 0, travel: 1 } });
  expect(record).toMatchObject({ force: Float64Array.of(0, 1000, 2000, 3000, 4000, 5000) });
  expect(reading.columns.map(({ unit, unitFrom }) => `${unit} ${unitFrom}`)).toEqual(['kN file', 'µm file']);
});
