import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { finding } from '../../src/base/index.js';
import { findingLines } from '../../src/cli/findingLines.js';
import { remedyAsFlag } from '../../src/cli/remedyAsFlag.js';
import { languages } from '../../src/languages/languages.js';
import { command } from '../support/command.js';

let file = '';
let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'testpiece-'));
  file = join(folder, 'pull.csv');
});
afterEach(() => {
  rmSync(folder, { recursive: true });
});
const rows = Array.from({ length: 40 }, (_, k) => `${k};${k * 500};${(k * 0.01).toFixed(2)}`).join('\n');
const check = async (heading: string, ...flags: string[]) => {
  writeFileSync(file, `${heading}\n${rows}\n`);
  return command('check', file, ...flags);
};

describe('the place of a column counts from 1', () => {
  test('as it is given and as it is shown', async () => {
    const { status, out } = await check('Time [s];A [N];Travel [mm]', '--column', 'force=#2');
    expect(status).toBe(0);
    expect(out).toContain('force: column #2 "A" in N');
    expect(out).toContain('travel: column #3 "Travel" in mm');
  });

  test('also of a column that says the same as another', async () => {
    writeFileSync(file, `Time [s];Force [N];Force [N];Travel [mm]\n${rows.replace(/;(\d+);/g, ';$1;$1;')}\n`);
    const { out } = await command('check', file);
    expect(out).toContain('not in use: column #3 "Force", it equals column #2 in every row');
  });

  test('a plain number is a name, which may be there', async () => {
    expect((await check('Time [s];1 [N];Travel [mm]', '--column', 'force=1')).out).toContain('force: column #2 "1" in N');
    const { status, error } = await check('Time [s];A [N];Travel [mm]', '--column', 'force=1');
    expect(status).toBe(2);
    expect(error).toMatch(/--column force= must name a column \(.*\), got "1" \(the first column is #1\)$/m);
  });

  test('messages say places in the same way', async () => {
    expect((await check('Time [s];A [N];Travel [mm]', '--column', 'force=#9')).error).toMatch(/must name a column \(.*\), got #9$/m);
    const unnamed = await check('a;b;c');
    expect(unnamed.error).toMatch(/#1 'a' goes up to 39, .*#2 'b' goes up to 19500/);
    writeFileSync(file, `Force [N];Force [N];Travel [mm]\n1;2;0\n2;3;1\n3;4;2\n`);
    expect((await command('check', file)).error).toMatch(/'Force' \(#1\).*'Force' \(#2\)/);
    // columns that are alike where they begin, and differ later on
    const late = Array.from({ length: 3000 }, (_, k) => `${k};${500 + k};${500 + k + (k > 2900 ? 1 : 0)};${(k * 0.01).toFixed(2)}`);
    writeFileSync(file, `Time [s];Force [N];Force [N];Travel [mm]\n${late.join('\n')}\n`);
    expect((await command('check', file)).error).toMatch(/'Force' \(#2\), 'Force' \(#3\), which differ on line/);
  });
});

describe('a remedy names the flag', () => {
  const turned = finding('motion-jumps', { column: 'travel', count: 1, largest: 0.2, unit: 'mm', sample: 9 });

  test('in every language', () => {
    for (const language of languages) {
      expect(findingLines([turned], { language })[0]).toContain('--repair jumps');
      for (const { remedy } of Object.values(language.findings))
        expect(remedyAsFlag(remedy)).not.toMatch(/`(?:join|align|reverse|rebuild|restore|loading|columns|repairs)/);
    }
  });

  test('a function that no flag stands for stays, and so do repairs of tests without that flag', () => {
    expect(remedyAsFlag('Split (`splitTests`), or align (`alignChannels`).')).toBe('Split (`splitTests`), or align (--repair lag).');
    expect(findingLines([turned], {}, 'all', false)[0]).toContain('`joinJumps`');
  });
});

test('a least elongation says by which flag it counts, and by which it would be a limit', async () => {
  writeFileSync(file, `Time [s];Load [N];Travel [mm]\n${rows}\n`);
  const flags = ['report', file, '--round', '8', '--gauge-length', '40', '--minimum-elongation', '20%'];
  const { status, error } = await command(...flags);
  expect(status).toBe(2);
  expect(error).toMatch(/--minimum-elongation goes with --fracture-distance.* --limit A=20%-/);
  expect((await command(...flags, '--fracture-distance', '18', '--json')).status).toBe(0);
});
