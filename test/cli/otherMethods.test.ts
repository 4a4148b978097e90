import { existsSync, mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { exportCsv, fromJson, rectangular, round } from '../../src/index.js';
import {
  simulateBending,
  simulateBrinell,
  simulateCompression,
  simulateCupping,
  simulateShear,
  writeRecord,
} from '../../src/simulate/index.js';
import { command } from '../support/command.js';

const folder = mkdtempSync(join(tmpdir(), 'testpiece-'));
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

/** A result that a call printed. */
const printed = <Method extends 'shear' | 'brinell' | 'cupping'>(out: string, method: Method) => fromJson(out, method);

describe('shear', () => {
  const { record, truth } = simulateShear({ strength: 310, diameter: 8, planes: 2, push: { compliance: 2e-5, rate: 50 } });
  const file = join(folder, 'pin.csv');
  writeFileSync(file, exportCsv(record));

  test('from a record, with the ratio to a tensile strength', async () => {
    const more = ['--tensile-strength', '450', '--shear-family', 'steel', '--clearance', '0.25'];
    const { status, out, error } = await command('shear', file, '--round', '8', '--planes', '2', ...more);
    expect([status, error]).toEqual([0, '']);
    expect(out).toMatch(/τm +310 MPa/);
    expect(out).toMatch(/caution: A clearance of 0\.25 mm/);
    const result = fromJson(readFileSync(join(folder, 'pin.report.json'), 'utf8'), 'shear');
    expect(result.shearStrength.value / truth.shearStrength).toBeCloseTo(1, 5);
    expect(result.piece).toEqual({ diameter: 8, planes: 2, clearance: 0.25 });
  });

  test('a spike is replaced unless the flag says no', async () => {
    const spiked = join(folder, 'spiked.csv');
    writeFileSync(spiked, exportCsv({ ...record, force: record.force.map((F, i) => (i === 100 ? 90_000 : F)) }));
    const strength = async (...more: string[]) => {
      const flags = ['--round', '8', '--planes', '2', '--json', '--overwrite', ...more];
      return printed((await command('shear', spiked, ...flags)).out, 'shear').shearStrength.value;
    };
    expect((await strength()) / truth.shearStrength).toBeCloseTo(1, 5);
    expect(await strength('--repair', 'spikes=no')).toBeGreaterThan(800);
    expect(await command('shear', spiked, '--round', '8', '--planes', '2', '--repair', 'zero')).toMatchObject({
      status: 2,
      error: expect.stringMatching(/--repair.*must be spikes or spikes=no/) as string,
    });
  });

  test('from the maximum force alone, of any section; a name becomes a file name', async () => {
    const output = join(folder, 'shear');
    const flags = ['--rectangular', '10x5', '--planes', '1', '--maximum-force', '15000', '--bent', '--identity', 'key 1/2'];
    const { out } = await command('shear', ...flags, '--output', output, '--json');
    const result = printed(out, 'shear');
    expect(result.shearStrength.value).toBe(300);
    expect(result.findings.map(({ code }) => code)).toContain('shear-bending');
    expect(readFileSync(join(output, 'key-1-2.report.html'), 'utf8')).toContain('key 1/2');
  });

  test.each([
    [['--round', '8'], /--planes/],
    [['--round', '8', '--planes', '3'], /must be 1 or 2/],
    [['--round', '8', '--planes', '1'], /either files or --maximum-force/],
    [[file, '--round', '8', '--planes', '1', '--maximum-force', '9'], /either files or --maximum-force/],
  ])('%j is refused', async (flags, message) => {
    expect(await command('shear', ...flags)).toMatchObject({ status: 2, error: expect.stringMatching(message) as unknown });
  });
});

describe('brinell', () => {
  test('from diameters and a force that was set', async () => {
    const flags = ['--ball', '10', '--force', '9807', '--indentation', '3.98,4.02', '--indentation', '4.06', '--thickness', '12'];
    const group = ['--group', 'copper alloys', '--edge-distance', '5', '--spacing', '30'];
    const { out, error } = await command('brinell', ...flags, ...group, '--json');
    expect(error).toBe('');
    const result = printed(out, 'brinell');
    expect(result.indentations.map(({ diameter }) => diameter.value)).toEqual([4, 4.06]);
    expect(result.designation).toBe('HBW 10/1000');
    expect(result.findings.some(({ code }) => code.startsWith('brinell-'))).toBe(true);
  });

  test('with the force of each indentation as it was recorded', async () => {
    const { readings } = simulateBrinell({ hardness: 92, ballDiameter: 10, force: 9806.65, hold: { drift: -0.02 } });
    const given = readings.indentations.map(({ record, diameters }, k) => {
      const file = join(folder, `press-${k + 1}.csv`);
      writeFileSync(file, exportCsv({ time: record.time, force: record.force }));
      return { file, diameters: Array.from(diameters as ArrayLike<number>).join(',') };
    });
    const files = given.map(({ file }) => file);
    const flags = ['--ball', '10', ...given.flatMap(({ diameters }) => ['--indentation', diameters])];
    const { out, error } = await command('brinell', ...files, ...flags, '--strength-of', 'other', '--json');
    expect(error).toBe('');
    expect(printed(out, 'brinell').hardness!.value / 92).toBeCloseTo(1, 2);
    expect((await command('brinell', files[0]!, ...flags, '--json')).error).toMatch(/one file for each --indentation/);
  });
});

describe('cupping', () => {
  const files = [10.3, 10.5].map((depth, k) => {
    const file = join(folder, `blank-${k + 1}.csv`);
    writeFileSync(file, exportCsv(simulateCupping({ depth, force: 9500, push: { compliance: 2e-5, rate: 50 }, seed: k + 1 }).record));
    return file;
  });
  const flags = ['--thickness', '0.8', '--width', '90', '--frame-compliance', '2e-5', '--holding-force', '10000'];

  test('the blanks of a sheet make one report', async () => {
    const { status, out } = await command('cupping', join(folder, 'blank-*.csv'), ...flags);
    expect(status).toBe(0);
    expect(out).toMatch(/IE +10\.4 mm +cupping index, mean of 2/);
    const result = fromJson(readFileSync(join(folder, 'blank-1.report.json'), 'utf8'), 'cupping');
    expect(result.blanks).toHaveLength(2);
  });

  test('without one of them nothing is evaluated: a mean of fewer blanks is another result', async () => {
    const output = join(folder, 'cups');
    const { status, out, error } = await command('cupping', ...files, join(folder, 'none.csv'), ...flags, '--output', output);
    expect([status, out]).toEqual([2, '']);
    expect(error).toMatch(/none\.csv: there is no such file/);
    expect(existsSync(output)).toBe(false);
  });
});
