import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { calibrationFile } from '../../src/cli/calibrationFile.js';
import { forceRuns, type ForceRuns } from '../../src/cli/forceRuns.js';
import { runDirection } from '../../src/cli/runDirection.js';

let file = '';
let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'testpiece-'));
  file = join(folder, 'runs.txt');
});
afterEach(() => {
  rmSync(folder, { recursive: true });
});

const read = (text: string): Promise<ForceRuns> => {
  writeFileSync(file, text);
  return forceRuns('FILE', file, ['force', 'stress'], ['force', 'stress']);
};
const refused = (text: string): Promise<string> =>
  read(text).then(
    () => '',
    (reason: unknown) => (reason as Error).message,
  );

/** Rising 1, its falling one without the top, rising 2. */
const RUNS = [
  [10, 1, 0, false],
  [20, 2, 0, false],
  [30, 3, 0, false],
  [20, 1.8, 0, true],
  [10, 0.9, 0, true],
  [10, 1.1, 1, false],
  [20, 2.1, 1, false],
  [30, 3.1, 1, false],
];
const listed = ({ readings }: ForceRuns) => readings.map(({ held, read: own, run, falling }) => [held, own, run, falling]);

describe('runs', () => {
  test.each([
    ['columns, the falling one named', 'F [N];up 1 [N];down 1 [N];up 2 [N]\n10;1;0.9;1.1\n20;2;1.8;2.1\n30;3;;3.1\n'],
    ['a row of units, decimal commas', 'Kraft;auf 1;ab 1;auf 2\nN;N;N;N\n10;1;0,9;1,1\n20;2;1,8;2,1\n30;3;;3,1\n'],
    [
      'a direction row by row',
      'F,read,direction\nN,N,\n10,1,up\n20,2,up\n30,3,up\n20,1.8,down\n10,0.9,down\n10,1.1,up\n20,2.1,up\n30,3.1,up\n',
    ],
    ['columns from high to low', 'F [N];up 1 [N];down 1 [N];up 2 [N]\n30;3;;3.1\n20;2;1.8;2.1\n10;1;0.9;1.1\n'],
    ['a direction row by row, from high to low', '30;3;up\n30;3.1;up\n20;2;up\n20;1.8;down\n20;2.1;up\n10;1;up\n10;0.9;down\n10;1.1;up\n'],
  ])('%s', async (_, text) => {
    expect(listed(await read(text))).toEqual(RUNS);
  });

  test('both directions step by step become a way up and a way down', async () => {
    const { readings } = await read('10;1;auf\n10;0.9;ab\n20;2;auf\n20;1.8;ab\n30;3;auf\n30;2.9;ab\n');
    expect(readings.map((one) => one.read)).toEqual([1, 2, 3, 2.9, 1.8, 0.9]);
    expect(readings.map(({ falling }) => falling)).toEqual([false, false, false, true, true, true]);
  });

  test('each column by its unit; two columns are one run in their order', async () => {
    const both = await read('p [bar];F up [kN];F down [N]\n10;1;900\n20;2;1800\n');
    expect([both.held, both.read]).toEqual(['stress', 'force']);
    expect(both.readings.map(({ held, read: own }) => [held, own])).toEqual([[1, 1000], [2, 2000], [2, 1800], [1, 900]]); // prettier-ignore
    expect((await read('2;20\n1;10\n2;21\n')).readings.map(({ held }) => held)).toEqual([2, 1, 2]);
  });
});

test.each([
  ['a hole in a rising run', 'F [N];up [N];up 2 [N]\n1;1;1\n2;2;\n', /line 3 has an empty cell in a run of rising force/],
  ['a hole in the first', '1;2;3\n;2;3\n', /line 2 must be two numbers or more, or two numbers and a direction, got ";2;3"/],
  ['a word that says no direction', '1;2;sideways\n2;3;up\n', /line 1 must be two numbers or more, or two numbers and a direction/],
  ['more falling than rising', 'F [N];down [N]\n1;1\n2;2\n', /a column of rising force for each of falling force, got 0/],
  ['columns of several quantities', 'F [N];up [N];up 2 [bar]\n1;1;1\n2;2;2\n', /"up \[N\]" and "up 2 \[bar\]" must be of one quantity/],
  ['a column without a unit', 'F [N];up [N];up 2\n1;1;1\n2;2;2\n', /heading of column 3 must name a unit/],
  ['commas between whole digits', '1,5,2,5\n2,5,3,5\n', /commas may be decimal signs or stand between columns/],
])('%s is refused', async (_, text, message) => {
  expect(await refused(text)).toMatch(message);
});

test.each([
  ['rising 1 [kN]', 'rising'],
  ['unloading', 'falling'],
  ['Kraft abwärts [kN]', 'falling'],
  ['F décroissant', 'falling'],
  ['montée 2', 'rising'],
  ['descendente', 'falling'],
  ['降程', 'falling'],
  ['Kraft [kN]', undefined],
  ['downtown', undefined],
] as const)('the direction of “%s”', (text, direction) => {
  expect(runDirection(text)).toBe(direction);
});

describe('which column the channel is', () => {
  const pairs = async (text: string, held?: 'true' | 'indicated') => {
    writeFileSync(file, text);
    return calibrationFile('FILE', file, held);
  };
  test('a pressure is what it indicates, in either column', async () => {
    const first = await pairs('p [MPa];F [kN]\n1;2\n3;4\n5;6\n');
    const second = await pairs('F [kN];p [MPa]\n2;1\n4;3\n6;5\n');
    expect(first).toEqual(second);
    expect(first).toMatchObject({ indicates: 'pressure', pairs: { indicated: [1, 3, 5], reference: [2000, 4000, 6000] } });
  });
  test('of two forces the first, unless it is said that the true one was held', async () => {
    const text = 'F [N];F2 [N]\n1;2\n3;4\n5;6\n';
    expect((await pairs(text)).pairs).toEqual({ indicated: [1, 3, 5], reference: [2, 4, 6] });
    expect((await pairs(text, 'true')).pairs).toEqual({ indicated: [2, 4, 6], reference: [1, 3, 5] });
  });
  test('what contradicts itself is refused', async () => {
    await expect(pairs('p [bar];F [N]\n1;2\n3;4\n5;6\n', 'true')).rejects.toThrow(/--held true contradicts the heading/);
    await expect(pairs('p [bar];p2 [bar]\n1;2\n3;4\n5;6\n')).rejects.toThrow(/a column of the reference force, got pressures alone/);
    await expect(pairs('{"a":1}')).rejects.toThrow(/FILE must be a table, or the JSON of testpiece calibrate/);
    await expect(pairs('{"a":')).rejects.toThrow(/FILE must be a file with one JSON object/);
    await expect(pairs('{"pairs":{}}', 'true')).rejects.toThrow(/--held is of a table/);
  });
});
