import { Command } from 'commander';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { forceMadeBy } from '../../src/cli/calibrationFlags.js';
import { withForce, withRecordFlags, type RecordFlags } from '../../src/cli/recordFlags.js';

test('the file of a calibration is read and fitted once for all records, and not before it is asked for', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'calibration-'));
  const file = join(folder, 'calibration.txt');
  const flags = withRecordFlags(new Command()).parse(['--calibration', file], { from: 'user' }).opts<RecordFlags>();
  writeFileSync(file, '0 0\n10 1000\n20 2000\n');
  const record = { force: Float64Array.of(1, 12), travel: Float64Array.of(0, 1) };
  const first = await withForce(record, flags);
  rmSync(folder, { recursive: true });
  expect(first.force[1]).toBeCloseTo(1200, 6);
  expect((await withForce(record, flags)).force).toEqual(first.force);
  expect((await forceMadeBy(flags)).calibratedForces).toEqual([0, 2000]);
});

test('flags that would be passed over are refused', async () => {
  const record = { force: Float64Array.of(1, 12), travel: Float64Array.of(0, 1) };
  const flags = (...words: string[]) => withRecordFlags(new Command()).parse(words, { from: 'user' }).opts<RecordFlags>();
  await expect(withForce(record, flags('--calibration', 'table.txt', '--tare-force', '20'))).rejects.toThrow(
    '--tare-force has no meaning beside --calibration',
  );
  await expect(withForce(record, flags('--calibration-beyond', '0.05'))).rejects.toThrow('--calibration-beyond goes with --calibration');
});

test('a flag of the cylinder is refused where the file holds force', async () => {
  const record = { force: Float64Array.of(1, 12), travel: Float64Array.of(0, 1) };
  const flags = withRecordFlags(new Command()).parse(['--tare-force', '100'], { from: 'user' }).opts<RecordFlags>();
  await expect(withForce(record, flags)).rejects.toThrow('--tare-force has no meaning here: the file holds force');
});

test('what made the force goes with the test: the cylinder, or the calibration with its day', async () => {
  const flags = (...words: string[]) => withRecordFlags(new Command()).parse(words, { from: 'user' }).opts<RecordFlags>();
  expect(await forceMadeBy(flags('--bore', '40', '--rod', '20', '--efficiency', '0.965', '--tare-force', '68'))).toEqual({
    cylinder: { bore: 40, rod: 20, efficiency: 0.965, tareForce: 68 },
  });
  const folder = mkdtempSync(join(tmpdir(), 'calibration-'));
  const file = join(folder, 'table.txt');
  writeFileSync(file, '0 0\n10 1000\n20 2000\n');
  const made = await forceMadeBy(flags('--calibration', file, '--calibration-date', '2026-03-01'));
  rmSync(folder, { recursive: true });
  expect(made.channelCalibration).toMatchObject({ name: 'table.txt', date: '2026-03-01', span: [0, 20], points: 3 });
  // force is 100 N for each unit that was indicated
  expect(made.channelCalibration!.coefficients[1]).toBeCloseTo(100, 9);
  await expect(
    withForce({ force: Float64Array.of(1), travel: Float64Array.of(0) }, flags('--calibration-date', '2026-03-01')),
  ).rejects.toThrow('--calibration-date goes with --calibration');
});
