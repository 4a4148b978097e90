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
