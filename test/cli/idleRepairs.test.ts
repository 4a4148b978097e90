import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { exportCsv, fromJson } from '../../src/index.js';
import { faultLibrary, soundTest } from '../../src/simulate/index.js';
import { command } from '../support/command.js';

const folder = mkdtempSync(join(tmpdir(), 'repairs-'));
const file = join(folder, 'pull.csv');
const piece = ['--round', '8', '--gauge-length', '40', '--parallel-length', '48'];
const report = (...flags: string[]) => command('report', file, ...piece, '--overwrite', ...flags);
const written = () => {
  const { findings } = fromJson(readFileSync(join(folder, 'pull.report.json'), 'utf8'));
  return findings.filter(({ code }) => code === 'repair-without-effect').map(({ values }) => values['repair']);
};

test('repairs that were asked for and do nothing say why, in the language of the reader', async () => {
  const { force, travel, time } = soundTest(0).record;
  writeFileSync(file, exportCsv({ time, force, travel }));
  const { out } = await report('--repair', 'zero,jumps,spikes');
  expect(written()).toEqual(['zero', 'jumps']);
  expect(out).toContain('caution: The repair zero was asked for and changed nothing: no step of the zero was found; a force that stands');
  expect((await report('--repair', 'zero', '--language', 'de')).out).toContain(
    'änderte nichts: keine Stufe des Nullpunkts gefunden; eine Kraft',
  );
  await report('--repair', 'zero=no');
  expect(written()).toEqual([]);
  expect((await command('check', file, ...piece, '--repair', 'drift')).out).toContain('The repair drift was asked for and changed nothing');
});

test('one that did something is not named', async () => {
  const { record } = faultLibrary.find(({ name }) => name === 'late tare')!.make();
  const { force, travel, time } = record;
  writeFileSync(file, exportCsv({ time, force, travel }));
  await report('--repair', 'zero,lag');
  expect(written()).toEqual(['lag']);
});
