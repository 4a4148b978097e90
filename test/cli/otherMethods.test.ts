import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { run } from '../../src/cli/run.js';
import { fromJson, rectangular, round } from '../../src/index.js';
import { simulateBending, simulateCompression, writeRecord } from '../../src/simulate/index.js';

const folder = mkdtempSync(join(tmpdir(), 'testpiece-'));
async function command(...argv: string[]): Promise<{ status: number; out: string; error: string }> {
  let [out, error] = ['', ''];
  const status = await run(argv, { out: (text) => (out += text), error: (text) => (error += text) });
  return { status, out, error };
}
const columns = [
  { quantity: 'time', name: 'Time', unit: 's', decimals: 3 },
  { quantity: 'force', name: 'Force', unit: 'N', decimals: 3 },
  { quantity: 'travel', name: 'Travel', unit: 'mm', decimals: 6 },
] as const;

describe('compression', () => {
  const { record, truth } = simulateCompression({
    material: { modulus: 70_000, yieldStress: 220, hardening: { law: 'swift', prestrain: 0.02, exponent: 0.2 } },
    piece: { section: round({ diameter: 10 }), height: 15 },
    frame: { compliance: 4e-6, slack: 0.05 },
  });
  const file = join(folder, 'puck.csv');
  // a logger that counts compression as negative
  writeFileSync(file, writeRecord({ ...record, force: record.force.map((F) => -F) }, { columns, preamble: ['invented'] }));

  test('a table, a page and data, with the signs turned', async () => {
    const flags = ['--round', '10', '--height', '15', '--frame-compliance', '4e-6', '--friction', '0', '--strains', '10%', '--invented'];
    const after = ['--final-height', '10.5', '--middle-diameter', '12', '--end-diameter', '11'];
    const { status, out, error } = await command('compression', file, ...flags, ...after);
    expect({ status, error }).toEqual({ status: 0, error: '' });
    expect(out).toMatch(/Rpc0\.2\s+\d+ MPa/);
    expect(out).toContain('1.091 times as wide');
    const result = fromJson(readFileSync(join(folder, 'puck.report.json'), 'utf8'), 'compression');
    expect(result.proofStrengths[0]!.value / truth.proofStrengths[1]!.stress).toBeCloseTo(1, 3);
    expect(result.trail[0]!.values).toEqual({ columns: 'force' });
    expect(readFileSync(join(folder, 'puck.report.html'), 'utf8')).toContain('<svg');
  });

  test('a missing height is one line of error', async () => {
    const { status, error } = await command('compression', file, '--round', '10');
    expect(status).toBe(2);
    expect(error).toContain('--height');
    expect(error.trim().split('\n')).toHaveLength(1);
  });
});

describe('bending', () => {
  const setup = { points: 4, span: 120, arm: 40 } as const;
  const { record, truth } = simulateBending({
    material: { modulus: 200_000, yieldStress: 600, tangentModulus: 2000 },
    piece: { section: rectangular({ width: 10, thickness: 5 }), setup },
    frame: { compliance: 2e-5, indentation: 1e-5 },
    logger: { extensometer: true },
  });

  test('travel of the noses, and deflection at mid-span as an extension', async () => {
    const travel = join(folder, 'bar.csv');
    const { force, time } = record;
    writeFileSync(travel, writeRecord({ force, travel: record.travel, time }, { columns }));
    const flags = ['--rectangular', '10x5', '--span', '120', '--arm', '40'];
    const first = await command('bending', travel, ...flags, '--frame-compliance', '2e-5', '--indentation-compliance', '1e-5');
    expect(first).toMatchObject({ status: 0, error: '' });
    const byTravel = fromJson(readFileSync(join(folder, 'bar.report.json'), 'utf8'), 'bending');
    expect(byTravel.modulus!.value / 200_000).toBeCloseTo(1, 3);
    expect(byTravel.proofStrengths[0]!.value / truth.proofStrengths[1]!.stress).toBeCloseTo(1, 3);

    const gauge = join(folder, 'gauge.csv');
    const extension = { quantity: 'extension', name: 'Gauge', unit: 'mm', decimals: 6 } as const;
    writeFileSync(gauge, writeRecord({ force, extension: record.deflection, time }, { columns: [columns[0], columns[1], extension] }));
    const second = await command('bending', gauge, ...flags, '--column', 'extension=Gauge', '--chord', '0.05%,0.2%');
    expect(second).toMatchObject({ status: 0, error: '' });
    const byGauge = fromJson(readFileSync(join(folder, 'gauge.report.json'), 'utf8'), 'bending');
    expect(byGauge.motionBasis).toBe('deflection');
    expect(byGauge.proofStrengths[0]!.value / truth.proofStrengthsAtMidSpan[1]!.stress).toBeCloseTo(1, 3);
    expect(byGauge.provenance.options).toMatchObject({ chord: [0.0005, 0.002] });
  });

  test('three points without an arm; a hexagon on its corners', async () => {
    const file = join(folder, 'hex.csv');
    writeFileSync(file, writeRecord({ force: record.force, travel: record.travel, time: record.time }, { columns }));
    const flags = ['--hexagon', '8', '--hexagon-on', 'corners', '--span', '100', '--offsets', '0.1%', '--poisson-ratio', '0.33'];
    expect(await command('bending', file, ...flags)).toMatchObject({ status: 0, error: '' });
    const { piece } = fromJson(readFileSync(join(folder, 'hex.report.json'), 'utf8'), 'bending');
    expect(piece.setup).toEqual({ points: 3, span: 100, hexagonOn: 'corners' });
  });
});
