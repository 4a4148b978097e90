import { mkdtempSync, readdirSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { beforeEach, expect, test } from 'vitest';
import { exportCsv, type Finding } from '../../src/index.js';
import { faultLibrary, simulateBrinell, soundTest, writeRecord } from '../../src/simulate/index.js';
import { command } from '../support/command.js';
import { caseT1 } from '../support/records.js';

let folder = '';
let file = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'testpiece-'));
  file = join(folder, 'pull.csv');
});
const lengths = ['--round', '8', '--gauge-length', '40', '--parallel-length', '48'];
const codes = (out: string) => (JSON.parse(out) as { findings: Finding[] }).findings.map(({ code }) => code);

test('how a file was read, what is in doubt, what repairs would do; nothing is written', async () => {
  const { force, travel, time } = faultLibrary.find(({ name }) => name === 'spike')!.make().record;
  writeFileSync(file, `operator;none\n${exportCsv({ time, force, travel, note: Array.from(force, () => 'n') })}end of test\n`);
  const { status, out, error } = await command('check', file);
  expect([status, error]).toEqual([0, '']);
  expect(out).toMatch(new RegExp(`${force.length} rows; utf-8, separator ;, decimal sign \\.`));
  expect(out).toContain('force: column #2 "force" in N');
  expect(out).toContain('not in use: column #4 "note"');
  expect(out).toMatch(/left out: line \d+, .*end of test/);
  expect(out).toMatch(/caution: Spikes in the force: \d+/);
  expect(out).toMatch(/--repair spikes: Spikes of the /);
  expect(readdirSync(folder)).toEqual(['pull.csv']);
});

test('a sound file has no caution; a repair that would change nothing is not listed', async () => {
  const { force, travel, time } = soundTest(0).record;
  writeFileSync(file, exportCsv({ time, force, travel }));
  expect((await command('check', file, '--fail-on', 'caution')).status).toBe(0);
  writeFileSync(file, exportCsv(caseT1(401)));
  expect((await command('check', file)).out).toMatch(/What repairs would have done \(none was made\)\n {4}none would change anything\n$/);
});

test('with section and gauge length all findings of the test, by its options', async () => {
  const { force, travel, time } = soundTest(0).record;
  writeFileSync(file, exportCsv({ time, force, travel }));
  const record = codes((await command('check', file, '--json')).out);
  const whole = codes((await command('check', file, ...lengths, '--json')).out);
  expect(record).not.toContain('modulus-includes-frame-compliance');
  expect(whole).toContain('modulus-includes-frame-compliance');
  expect(codes((await command('check', file, ...lengths, '--frame-compliance', '2e-5', '--json')).out)).not.toContain(
    'modulus-includes-frame-compliance',
  );
  expect((await command('check', file, ...lengths, '--fail-on', 'fault')).status).toBe(3);
  expect((await command('check', file, '--fail-on', 'fault')).status).toBe(0);
});

test('section and gauge length belong together', async () => {
  writeFileSync(file, exportCsv({ force: [0, 1, 2], travel: [0, 1, 2] }));
  expect((await command('check', file, '--round', '8')).error).toMatch(/--gauge-length must be given with a section/);
  expect((await command('check', file, '--gauge-length', '40')).error).toMatch(/must be given: one of --round/);
});

test('pressure stands for the force until the cylinder is known', async () => {
  const { force, travel, time } = soundTest(0).record;
  const pressure = force.map((F) => F / 942);
  const columns = [
    { quantity: 'time', name: 'Time', unit: 's', decimals: 3 },
    { quantity: 'pressure', name: 'Pressure', unit: 'MPa', decimals: 6 },
    { quantity: 'travel', name: 'Travel', unit: 'mm', decimals: 5 },
  ] as const;
  writeFileSync(file, writeRecord({ pressure, travel, time }, { columns }));
  expect((await command('check', file)).out).toContain('pressure stands for the force');
  expect((await command('check', file, '--bore', '40', '--rod', '20')).out).toContain('Findings about the record\n');
  expect((await command('check', file, ...lengths)).error).toContain('--bore or --calibration');
});

test('a file of force over time, as an indentation is, is checked as far as it goes, and what no motion shows is said', async () => {
  const { time, force } = simulateBrinell({ hardness: 120, ballDiameter: 5, force: 2452, hold: { forceNoise: 3 } }).readings
    .indentations[0]!.record;
  writeFileSync(file, exportCsv({ time, force }));
  const { status, out, error } = await command('check', file, '--fail-on', 'caution');
  expect([status, error]).toEqual([0, '']);
  expect(out).toContain('not checked: a file without extension, strain or travel does not show pauses');
  expect(JSON.parse((await command('check', file, '--json')).out) as object).toMatchObject({ of: 'record', withoutMotion: true });
  const spiked = force.slice();
  spiked[Math.floor(spiked.length / 2)] = 9000;
  writeFileSync(file, exportCsv({ time, force: spiked }));
  expect((await command('check', file)).out).toMatch(/Spikes in the force/);
  writeFileSync(file, exportCsv({ time, force, travel: time }));
  expect((await command('check', file)).out).not.toContain('not checked');
});

test('a tension test needs a motion; of the columns that serve already none is proposed for it, and the sentence is one for people', async () => {
  writeFileSync(file, exportCsv({ time: [0, 1, 2, 3], force: [0, 10, 20, 30] }));
  const { status, error } = await command('check', file, ...lengths);
  expect(status).not.toBe(0);
  expect(error).toContain("--column travel= must name a column of extension, strain or travel (the file has 'time', 'force'), got none");
  writeFileSync(file, 'time [s];force [N];gauge 2\n0;0;0\n1;10;0.1\n2;20;0.2\n3;30;0.3\n');
  expect((await command('check', file, ...lengths)).error).toContain("by place: #3 'gauge 2' goes up to 0.3");
});
