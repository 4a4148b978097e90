import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import type { Measured } from '../../src/cli/numberTable.js';
import { twoColumns } from '../../src/cli/twoColumns.js';

let folder = '';
let file = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'testpiece-'));
  file = join(folder, 'table.txt');
});
afterEach(() => {
  rmSync(folder, { recursive: true });
});

type Wanted = readonly [readonly Measured[], readonly Measured[]];
const frame: Wanted = [['force'], ['length']];
const channel: Wanted = [['stress', 'force'], ['force']];

async function read(text: string | Uint8Array, wanted = frame): Promise<readonly [number[], number[]]> {
  writeFileSync(file, text);
  return (await twoColumns('--calibration', file, wanted)).columns;
}
async function refused(text: string | Uint8Array, wanted = frame): Promise<string> {
  return read(text, wanted).then(
    () => '',
    (reason: unknown) => (reason as Error).message.replaceAll(file, 'FILE'),
  );
}

test.each([
  ['semicolons', '0;0.5\n1000;1.5\n'],
  ['commas', '0,0.5\n1000,1.5\n'],
  ['tabs, and the line ends of Windows', '0\t0.5\r\n1000\t1.5\r\n'],
  ['spaces', '  0   0.5\n1000 1.5'],
  ['semicolons at the end of each line', '0;0.5;\n1000;1.5;\n'],
  ['decimal commas', '0;0,5\n1000;1,5\n'],
  ['decimal commas and spaces', '0 0,5\n1000 1,5\n'],
  ['a heading and its units, empty lines', 'Kraft;Weg\nN;mm\n\n0;0.5\n\n1000;1.5\n;\n'],
  ['quotes', '"force (N)","motion (mm)"\n"0","0.5"\n"1,000","1.5"\n'],
  ['an exponent and a sign', '0;5e-1\n+1.0E3;1.5\n'],
  ['three decimals with a point', '0;0.500\n1000;1.500\n'],
])('%s', async (_, text) => {
  expect(await read(text)).toEqual([[0, 1000], [0.5, 1.5]]); // prettier-ignore
});

test('a mark at the start and two bytes a character', async () => {
  expect(await read('\ufeff0;0.5\n1000;1.5\n')).toEqual([[0, 1000], [0.5, 1.5]]); // prettier-ignore
  expect(await read(Buffer.from('\ufeff0;0.5\n1000;1.5\n', 'utf16le'))).toEqual([[0, 1000], [0.5, 1.5]]); // prettier-ignore
});

test.each([
  ['an empty cell', 'F;x\n0;0\n1000;0.1\n2000;\n', 'FILE: line 4 must be two numbers, got "2000;"'],
  ['an empty cell in front', '0;0\n1000;0.1\n;0.2\n', 'FILE: line 3 must be two numbers, got ";0.2"'],
  ['an empty cell at the start', '0;\n1000;0.1\n2000;0.2\n', 'FILE: line 1 must be two numbers, got "0;"'],
  ['a word', '0;0\n1000;n/a\n', 'FILE: line 2 must be two numbers, got "1000;n/a"'],
  ['a third column', '0;0;1\n1000;0.1;2\n', 'FILE: line 1 must be two numbers, got "0;0;1"'],
  ['a footer', '0;0\n1000;0.1\nchecked 2026\n', 'FILE: line 3 must be two numbers, got "checked 2026"'],
  ['one row', 'F;x\n1000;0.1\n', 'FILE must have at least two rows of two numbers, got 1'],
  ['no row', 'F;x\n', 'FILE must have at least two rows of two numbers, got 0'],
  ['nothing', '', 'FILE must have at least two rows of two numbers, got 0'],
  [
    'commas of either kind',
    '1,234;2,500\n2,468;5,000\n',
    'FILE: the commas may be decimal signs or stand between digits in threes; write decimal points',
  ],
])('%s is refused', async (_, text, message) => {
  expect(await refused(text)).toBe(`--calibration ${message}`);
});

test('bytes that are no text are refused, and a file that is not there', async () => {
  expect(await refused(new Uint8Array([1, 0, 0, 0, 7, 0, 0, 3, 9]))).toMatch(/^--calibration FILE: file must be text/);
  await expect(twoColumns('--frame-table', join(folder, 'none.txt'), frame)).rejects.toMatchObject({ code: 'ENOENT' });
});

test.each([
  ['bar and kN', channel, 'Druck [bar];Kraft [kN]\n10;0.9\n140;13.06\n', [[1, 14], [900, 13060]]], // prettier-ignore
  ['a row of units', channel, 'p;F\nbar;kN\n10;0.9\n140;13.06\n', [[1, 14], [900, 13060]]], // prettier-ignore
  ['units alone', channel, 'N/mm²\tkN\n10\t0.9\n', undefined],
  ['units alone of two rows', channel, 'N/mm²\tkN\n10\t0.9\n20\t1.8\n', [[10, 20], [900, 1800]]], // prettier-ignore
  ['a title above', channel, 'Channel 2, spring\nindicated (kN);reference (daN)\n1;90\n2;180\n', [[1000, 2000], [900, 1800]]], // prettier-ignore
  ['spaces', frame, 'Kraft [kN] Weg [µm]\n1 50\n2 100\n', [[1000, 2000], [0.05, 0.1]]], // prettier-ignore
  ['pounds and inches', frame, 'force lbf, motion in\n100,0.01\n200,0.02\n', [[444.82216152605, 889.6443230521], [0.254, 0.508]]], // prettier-ignore
] as const)('the units of a heading count: %s', async (_, wanted, text, columns) => {
  if (columns === undefined) {
    expect(await refused(text, wanted)).toMatch(/at least two rows/);
    return;
  }
  const came = await read(text, wanted);
  for (const k of [0, 1] as const) for (const [i, value] of columns[k].entries()) expect(came[k][i]! / value).toBeCloseTo(1, 12);
});

test.each([
  [
    'swapped',
    frame,
    'Weg [mm];Kraft [N]\n0;0\n1;1000\n',
    /heading of column 1 must name a unit of force \(N, .*got "Weg \[mm\]": the columns are swapped$/,
  ],
  [
    'no unit',
    frame,
    'force;motion\n0;0\n1000;1\n',
    /column 1 must name a unit of force .*got "force"; a table without a heading is taken as N and mm$/,
  ],
  ['one unit', frame, 'force [N];motion\n0;0\n1000;1\n', /column 2 must name a unit of length .*got "motion"/],
  [
    'a unit that nobody knows',
    channel,
    'Druck [dbar];Kraft [N]\n0;0\n10;1000\n',
    /column 1 must name a unit of pressure \(MPa, .*\) or force \(N, .*got "Druck \[dbar\]"; .* taken as MPa or N and N$/,
  ],
  ['one cell over two columns', channel, 'Druck bar gegen Kraft kN\n10;0.9\n20;1.8\n', /got "Druck bar gegen Kraft kN"/],
] as const)('a heading with %s is refused', async (_, wanted, text, message) => {
  expect(await refused(text, wanted)).toMatch(message);
});
