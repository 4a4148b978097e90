import { existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, relative } from 'node:path';
import { beforeEach, describe, expect, test } from 'vitest';
import { exportCsv, type TensionResult } from '../../src/index.js';
import { called, command } from '../support/command.js';
import { caseT1 } from '../support/records.js';

const text = exportCsv(caseT1(401));
const flags = ['--round', '8', '--gauge-length', '40', '--parallel-length', '48'];
const write = (...path: string[]) => {
  writeFileSync(join(folder, ...path), text);
};
const identities = (out: string) => (JSON.parse(out) as TensionResult[]).map(({ test: { identity } }) => identity);
const lines = (error: string) => error.trim().split('\n');

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'testpiece-'));
  mkdirSync(join(folder, 'deep', 'er'), { recursive: true });
  mkdirSync(join(folder, 'empty'));
  write('pull-10.csv');
  write('pull-2.csv');
  write('deep', 'pull-3.CSV');
  write('deep', 'er', 'pull-4.txt');
  writeFileSync(join(folder, 'page.html'), 'no record');
  writeFileSync(join(folder, '.hidden.csv'), text);
});

describe('what the arguments name', () => {
  const json = async (...given: string[]) =>
    identities((await command('report', ...given.map((one) => join(folder, one)), ...flags, '--json')).out);

  test.each([
    ['files in the order given, none twice', ['pull-2.csv', 'pull-10.csv', 'pull-2.csv'], ['pull-2.csv', 'pull-10.csv']],
    ['a folder: its own records by name with numbers in order', ['.'], ['pull-2.csv', 'pull-10.csv']],
    ['a pattern that no shell has expanded', ['pull-*.csv'], ['pull-2.csv', 'pull-10.csv']],
    ['folders below by two stars, endings as the pattern names them', ['**/*.{CSV,txt}'], ['pull-3.CSV', 'pull-4.txt']],
    ['a pattern without an ending takes the endings of records', ['**'], ['pull-3.CSV', 'pull-4.txt', 'pull-2.csv', 'pull-10.csv']],
    ['a folder beside a pattern', ['deep', '**/er/*'], ['pull-3.CSV', 'pull-4.txt']],
  ])('%s', async (_, given, expected) => {
    expect((await json(...given)).sort()).toEqual([...expected].sort());
    if (!given[0]!.startsWith('**')) expect(await json(...given)).toEqual(expected);
  });

  test('a file whose name looks like a pattern is a file', async () => {
    write('pull[1].csv');
    const { out } = await command('report', join(folder, 'pull[1].csv'), ...flags, '--json');
    expect((JSON.parse(out) as TensionResult).test.identity).toBe('pull[1].csv');
  });

  test('one file gives a result, whatever may be several gives a list', async () => {
    const one = await command('report', join(folder, 'pull-2.csv'), ...flags, '--json');
    expect(JSON.parse(one.out)).toMatchObject({ schemaVersion: 1, method: 'tension' });
    const list = await command('report', join(folder, 'pull-2*'), ...flags, '--json');
    expect(identities(list.out)).toEqual(['pull-2.csv']);
    expect([one.error, list.error, one.status, list.status]).toEqual(['', '', 0, 0]);
  });

  test.each(['empty', 'none/*.csv', 'pull-?.dat'])('%s holds nothing: one line, and a status', async (given) => {
    const { status, out, error } = await command('report', join(folder, given), ...flags);
    expect([status, out, lines(error).length]).toEqual([2, '', 1]);
    expect(error).toMatch(/no file/);
  });
});

describe('one bad file does not stop the others', () => {
  test('its error is one line with its name, and the status says so', async () => {
    writeFileSync(join(folder, 'pull-5.csv'), 'no numbers here');
    const { status, out, error } = await command('report', folder, join(folder, 'none.csv'), ...flags);
    expect(status).toBe(2);
    expect(lines(error)).toHaveLength(2);
    expect(error).toMatch(/pull-5\.csv: .*\n.*none\.csv: there is no such file/);
    expect(out.match(/Rm +≥\s\d+ MPa/g)).toHaveLength(2);
    expect(
      readdirSync(folder)
        .filter((name) => name.includes('report'))
        .sort(),
    ).toEqual(['pull-10.report.html', 'pull-10.report.json', 'pull-2.report.html', 'pull-2.report.json']);
  });

  test('what is wrong for all of them is said once', async () => {
    for (const own of [
      ['--uncertainty', join(folder, 'none.json')],
      ['--frame-table', join(folder, 'none.txt')],
      ['--uncertainty', 'force=x'],
    ])
      expect(lines((await command('report', folder, ...flags, ...own)).error)).toHaveLength(1);
  });

  test('a folder that cannot be written is named, and no draft', async () => {
    const { status, error } = await command('report', join(folder, 'pull-2.csv'), ...flags, '--output', join(folder, 'page.html'));
    expect(status).toBe(2);
    expect(error).toMatch(/page\.html.*no folder|page\.html.*exists/);
    expect(error).not.toContain('.part');
  });

  test('as JSON the list holds the others; a single bad file prints nothing', async () => {
    const { status, out } = await command('report', join(folder, 'none.csv'), join(folder, 'pull-2.csv'), ...flags, '--json');
    expect([status, identities(out)]).toEqual([2, ['pull-2.csv']]);
    expect(await command('report', join(folder, 'none.csv'), ...flags, '--json')).toMatchObject({ status: 2, out: '' });
  });

  test('an existing report is one of them', async () => {
    const page = join(folder, 'pull-2.report.html');
    writeFileSync(page, 'mine');
    const { status, error } = await command('report', folder, ...flags);
    expect([status, lines(error).length]).toEqual([2, 1]);
    expect(readFileSync(page, 'utf8')).toBe('mine');
    expect(existsSync(join(folder, 'pull-10.report.html'))).toBe(true);
  });
});

describe('what belongs to one piece, or to one report', () => {
  test.each([
    ['--identity', 'A'],
    ['--final-gauge-length', '50'],
    ['--final-diameter', '5'],
  ])('%s is refused for several files', async (...own) => {
    const { status, out, error } = await command('report', folder, ...flags, ...own);
    expect([status, out]).toEqual([2, '']);
    expect(error).toContain(`${own[0]} must not be given for several files`);
  });

  test('two files never write the same report', async () => {
    write('deep', 'pull-2.csv');
    const output = join(folder, 'out');
    const { status, error } = await command('report', folder, join(folder, 'deep'), ...flags, '--output', output, '--overwrite');
    expect([status, existsSync(output)]).toEqual([2, false]);
    expect(error).toMatch(/would have the same report/);
  });

  test('one folder written in two ways is one', async () => {
    const here = relative(process.cwd(), join(folder, 'pull-2.csv'));
    write('pull-2.txt');
    const { status, error } = await command('report', here, join(folder, 'pull-2.txt'), ...flags, '--overwrite');
    expect([status, existsSync(join(folder, 'pull-2.report.html'))]).toEqual([2, false]);
    expect(error).toMatch(/would have the same report/);
  });
});

describe('output and status for scripts', () => {
  test('--json writes no files, unless a folder is named', async () => {
    const before = readdirSync(folder);
    await command('report', folder, ...flags, '--json');
    expect(readdirSync(folder)).toEqual(before);
    const output = join(folder, 'out');
    await command('report', folder, ...flags, '--json', '--output', output);
    expect(readdirSync(output)).toHaveLength(4);
  });

  test('--fail-on: 3 from that severity on, never instead of an error', async () => {
    const file = join(folder, 'pull-2.csv');
    const run = (...more: string[]) => command('report', file, ...flags, '--json', ...more);
    // without the frame's compliance E is withheld, which is a fault; with it cautions are left
    expect((await run()).status).toBe(0);
    expect((await run('--fail-on', 'fault')).status).toBe(3);
    expect((await run('--frame-compliance', '2e-5', '--fail-on', 'fault')).status).toBe(0);
    expect((await run('--frame-compliance', '2e-5', '--fail-on', 'caution')).status).toBe(3);
    expect((await run('--fail-on', 'note')).status).toBe(2);
    expect((await command('report', file, join(folder, 'none.csv'), ...flags, '--json', '--fail-on', 'fault')).status).toBe(2);
  });

  test('progress on a terminal where there are several files, wiped again; none else', async () => {
    const argv = ['check', folder];
    const { error, out } = await called(argv, true);
    expect(error).toContain('1 of 2: ');
    expect(error).toContain('2 of 2: ');
    expect(error.endsWith('\r\u001b[K')).toBe(true);
    expect(out).not.toContain('\u001b');
    expect((await called([...argv, '--quiet'], true)).error).toBe('');
    expect((await called(argv)).error).toBe('');
    expect((await called(['check', join(folder, 'pull-2.csv')], true)).error).toBe('');
    expect((await called(['check', join(folder, 'none.csv')], true)).error).toMatch(/^testpiece: /);
  });

  test('a single large file is announced', async () => {
    const large = join(folder, 'large.csv');
    writeFileSync(large, `${text}${'# a footer of the logger\n'.repeat(170_000)}`);
    expect((await called(['check', large], true)).error).toContain('1 of 1: ');
  });

  test.each(['plan', 'check', 'report', 'compression', 'bending', 'shear', 'brinell', 'cupping', 'replicates', 'compare'])(
    'the help of %s has an example, the flags of all commands and the exit status',
    async (name) => {
      const { status, out, error } = await command(name, '--help');
      expect([status, error]).toEqual([0, '']);
      for (const part of [
        `Example:\n  testpiece ${name === 'replicates' ? 'report' : name}`,
        '--json',
        '--fail-on',
        '--quiet',
        'Exit status:',
      ])
        expect(out).toContain(part);
    },
  );

  test('no command at all, and wrong usage, are one line', async () => {
    for (const argv of [[], ['rep'], ['report'], ['report', 'x.csv', ...flags, '--rond', '8']]) {
      const { status, out, error } = await called(argv);
      expect([status, out, lines(error).length]).toEqual([2, '', 1]);
      expect(error).toMatch(/^testpiece: (?!error)/);
    }
  });

  test('text from a file does not drive the terminal', async () => {
    const odd = join(folder, 'odd\u001b[2J.csv');
    writeFileSync(odd, 'nothing');
    const { error } = await command('check', odd);
    expect(error).not.toContain('\u001b');
  });
});
