import { existsSync, mkdtempSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { beforeEach, describe, expect, test } from 'vitest';
import { fromJson } from '../../src/index.js';
import { simulateTension, writeRecord } from '../../src/simulate/index.js';
import { command } from '../support/command.js';
import { roundPiece } from '../support/records.js';

const simulated = simulateTension({
  material: {
    modulus: 205_000,
    yieldStress: 300,
    hardening: { law: 'swift', prestrain: 0.02, exponent: 0.2 },
    fracture: { extension: 0.3 },
  },
  piece: roundPiece,
  frame: { compliance: 2e-5, slack: 0.2, bore: 40, rod: 20 },
  logger: { rate: 10, forceNoise: 5, lead: 1, tail: 1 },
});
const columns = [
  { quantity: 'time', name: 'Time', unit: 's', decimals: 2 },
  { quantity: 'pressure', name: 'Pressure', unit: 'bar', decimals: 3 },
  { quantity: 'travel', name: 'Travel', unit: 'mm', decimals: 4 },
] as const;
const pressureFile = writeRecord(simulated.pressureRecord!, { columns });
const forceFile = writeRecord(simulated.record, {
  columns: [columns[0], { quantity: 'force', name: 'Load', unit: 'kN', decimals: 4 }, columns[2]],
});
const lengths = ['--gauge-length', '40', '--parallel-length', '48'];

let folder = '';
let file = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'testpiece-'));
  file = join(folder, 'pull.csv');
  writeFileSync(file, forceFile);
});

const report = (...flags: string[]) => command('report', file, ...flags);

describe('a report', () => {
  test('a table in the terminal, page and data beside the file', async () => {
    const { status, out, error } = await report(
      '--round',
      '8.01,8.00,7.99',
      ...lengths,
      '--frame-compliance',
      '2e-5',
      '--final-diameter',
      '5',
      '--final-gauge-length',
      '52',
      '--invented',
    );
    expect({ status, error }).toEqual({ status: 0, error: '' });
    expect(out).toMatch(/Rm\s+397 MPa/);
    expect(out).toContain('determined from crosshead displacement');
    const page = readFileSync(join(folder, 'pull.report.html'), 'utf8');
    expect(page).toContain('<svg');
    const result = fromJson(readFileSync(join(folder, 'pull.report.json'), 'utf8'));
    expect(result.test).toMatchObject({ identity: 'pull.csv', invented: true });
    expect(result.elongationAfterFracture!.value).toBeCloseTo(0.3, 12);
    expect(result.reductionOfArea!.value).toBeGreaterThan(0.5);
    expect(readdirSync(folder).sort()).toEqual(['pull.csv', 'pull.report.html', 'pull.report.json']);
  });

  test('an existing report is replaced only when asked to, and stays untouched else', async () => {
    const page = join(folder, 'pull.report.html');
    writeFileSync(page, 'mine');
    const { status, error } = await report('--round', '8', ...lengths);
    expect(status).toBe(2);
    expect(error.split('\n')).toHaveLength(2);
    expect(error).toContain('--overwrite');
    expect(readFileSync(page, 'utf8')).toBe('mine');
    expect(existsSync(join(folder, 'pull.report.json'))).toBe(false);
    expect((await report('--round', '8', ...lengths, '--overwrite')).status).toBe(0);
    expect(readFileSync(page, 'utf8')).toContain('<!doctype html>');
  });

  test('pressure by cylinder and by calibration give the same force', async () => {
    writeFileSync(file, pressureFile);
    const cylinder = await report('--round', '8', ...lengths, '--bore', '40', '--rod', '20', '--output', join(folder, 'a'));
    expect(cylinder.error).toBe('');
    const area = (Math.PI * (1600 - 400)) / 4;
    const table = join(folder, 'calibration.txt');
    writeFileSync(
      table,
      `indicated bar; reference kN\n${[0, 5, 10, 15, 20, 25].map((p) => `${10 * p}; ${(p * area) / 1000}`).join('\n')}\n`,
    );
    const calibrated = await report('--round', '8', ...lengths, '--calibration', table, '--output', join(folder, 'b'));
    // noise about zero lies below the first row, and is carried
    expect([calibrated.status, calibrated.error]).toEqual([0, '']);
    const made = (name: string) => fromJson(readFileSync(join(folder, name, 'pull.report.json'), 'utf8'));
    expect(made('b').maximumForce.value).toBeCloseTo(made('a').maximumForce.value, 3);
    expect(made('b').trail[0]!.code).toBe('force-by-calibration-from-zero');
    // rows above the idle readings: carried to zero, and what lies below the first one is named
    const rows = (of: readonly number[]) => {
      writeFileSync(table, of.map((p) => `${p}; ${p * area}`).join('\n'));
    };
    rows([8, 10, 15, 20, 25]);
    const high = await report('--round', '8', ...lengths, '--calibration', table, '--output', join(folder, 'c'));
    expect(high.out).toContain('E lies at');
    expect(made('c').maximumForce.value).toBeCloseTo(made('a').maximumForce.value, 3);
    expect(made('c').trail[0]!.step).toContain('idle readings below it went along its slope at');
    // above the last row nothing is carried, unless a flag says how far
    rows([1, 2, 3]);
    const low = await report('--round', '8', ...lengths, '--calibration', table, '--output', join(folder, 'd'));
    expect(low.status).toBe(2);
    expect(low.error).toMatch(
      /--calibration holds readings from 1 to 3 MPa \(10 to 30 bar\), and idle ones down to zero; the record has .*--calibration-beyond/,
    );
    const wide = await report('--round', '8', ...lengths, '--calibration', table, '--calibration-beyond', '0.5');
    expect(wide.error).toContain('--calibration-beyond must be from 0 to 0.1, got 0.5');
    expect((await report('--round', '8', ...lengths)).error).toContain('--bore');
    // bar for MPa, of a table that names no unit: ten times too low, and said so
    writeFileSync(table, [0, 5, 10, 15, 20, 25].map((p) => `${10 * p}; ${p * area}`).join('\n'));
    const tenth = await report('--round', '8', ...lengths, '--calibration', table, '--output', join(folder, 'e'));
    expect(tenth.out).toContain('different units');
    expect(made('e').maximumForce.value).toBeCloseTo(made('a').maximumForce.value / 10, 3);
    writeFileSync(table, 'Kraft [kN];Kraft [kN]\n0;0\n10;10\n20;20\n');
    const ofForce = await report('--round', '8', ...lengths, '--calibration', table, '--output', join(folder, 'f'));
    expect(ofForce.error).toContain('--calibration is of a force, and the file holds pressure');
  });

  test('a misspelt flag is named before the one that it was to be is missed', async () => {
    const { status, error } = await report('--round', '8', '--gauge-lenght', '40');
    expect(status).toBe(2);
    expect(error).toMatch(/unknown option '--gauge-lenght' \(Did you mean --gauge-length\?\)/);
    expect((await report('--round', '8')).error).toContain('must be given: --gauge-length <L0>');
    for (const [window, example] of [
      ['stress=100', 'stress=100-300'],
      ['strain=0.2%-0.05%', 'strain=0.05%-0.2%'],
    ] as const) {
      const refused = (await report('--round', '8', ...lengths, '--modulus-window', window)).error;
      expect(refused).toMatch(/--modulus-window .*It must go up, for example/);
      expect(refused).toContain(example);
    }
  });

  test('a frame by its table gives the same E as by its number', async () => {
    const table = join(folder, 'frame.txt');
    writeFileSync(table, 'force N; motion mm\n0; 0\n10000; 0,2\n30000; 0,6\n');
    expect((await report('--round', '8', ...lengths, '--frame-table', table, '--output', join(folder, 'a'))).error).toBe('');
    expect((await report('--round', '8', ...lengths, '--frame-compliance', '2e-5', '--output', join(folder, 'b'))).error).toBe('');
    const modulus = (name: string) => fromJson(readFileSync(join(folder, name, 'pull.report.json'), 'utf8')).modulus!.value;
    expect(modulus('a')).toBeCloseTo(modulus('b'), 3);
    const both = await report('--round', '8', ...lengths, '--frame-table', table, '--frame-compliance', '2e-5');
    expect(both.status).toBe(2);
  });

  test.each([
    [['--rectangular', '10x5']],
    [['--square', '7']],
    [['--hexagon', '8']],
    [['--tube', '20x1']],
    [['--tube-strip', '12x40x4']],
    [['--mass', '39.5x100x7.85']],
    [['--area', '50.3']],
  ])('section %j', async (section) => {
    expect(await report(...section, ...lengths, '--offsets', '0.1%,0.2%', '--total-extensions', '0.005')).toMatchObject({
      status: 0,
      error: '',
    });
  });

  test('columns, units, separator and decimal sign where the file does not tell', async () => {
    writeFileSync(file, forceFile.replace('Time;Load;Travel\ns;kN;mm', 'a;b;c\n;;'));
    const flags = [
      '--column',
      'force=#2',
      '--column',
      'travel=c',
      '--column',
      'time=#1',
      '--unit',
      'force=kN',
      '--unit',
      'travel=mm',
      '--unit',
      'time=s',
      '--decimal',
      ',',
      '--separator',
      ';',
    ];
    expect(await report('--round', '8', ...lengths, ...flags)).toMatchObject({ status: 0, error: '' });
  });
});

describe('options of the evaluation', () => {
  const json = async (...flags: string[]) => {
    const { out, error } = await report('--round', '8', ...lengths, '--frame-compliance', '2e-5', '--json', ...flags);
    expect(error).toBe('');
    return fromJson(out);
  };

  test('the window of the elastic line', async () => {
    const window = async (...flags: string[]) => (await json(...flags)).provenance.options['modulus'];
    expect(await window()).toBeUndefined();
    expect(await window('--modulus-window', 'relative-error')).toEqual({ window: { by: 'relative-error' } });
    expect(await window('--modulus-window', 'stress=100-200')).toEqual({ window: { by: 'stress', from: 100, to: 200 } });
    expect(await window('--window-start', '0.3', '--window-span', '0.25')).toEqual({
      window: { by: 'lower-bound', startShare: 0.3, spanShare: 0.25 },
    });
    const { modulusWindow } = await json('--modulus-window', 'samples=300-400');
    expect([modulusWindow!.first, modulusWindow!.last]).toEqual([300, 400]);
    const strain = await json('--modulus-window', 'strain=0.7%-0.75%');
    expect(strain.provenance.options['modulus']).toEqual({ window: { by: 'strain', from: 0.007, to: 0.0075 } });
  });

  test('repairs, also several in one flag', async () => {
    const { provenance } = await json('--repair', 'zero,drift', '--repair', 'spikes=no', '--repair', 'lag=0,rate=10');
    expect(provenance.options['repairs']).toEqual({ zero: true, drift: true, spikes: false, lag: 0, rate: 10 });
    writeFileSync(
      file,
      writeRecord(
        { ...simulated.record, force: simulated.record.force.map((F) => -F) },
        { columns: [columns[0], { quantity: 'force', name: 'Load', unit: 'kN', decimals: 4 }, columns[2]] },
      ),
    );
    expect((await json('--repair', 'reverse=force')).tensileStrength.value).toBeGreaterThan(390);
  });

  test('what is doubtful, by pairs and from a file; pairs count before it', async () => {
    const doubts = join(folder, 'doubts.json');
    writeFileSync(doubts, JSON.stringify({ force: 0.01, gaugeLength: { halfWidth: 0.1 } }));
    const result = await json('--uncertainty', doubts, '--uncertainty', 'force=0.5%,section.diameter=0.01');
    expect(result.provenance.options['uncertainty']).toEqual({
      force: 0.005,
      gaugeLength: { halfWidth: 0.1 },
      section: { diameter: 0.01 },
    });
    // 0.5 % and twice 0.01 over 8
    const { value, standardUncertainty } = result.tensileStrength;
    expect(standardUncertainty! / value).toBeCloseTo(Math.hypot(0.005, 0.0025), 4);
    expect((await report('--round', '8', ...lengths, '--uncertainty', 'forceClass=1')).out).toMatch(/Rm .*tensile strength \(u = 2\.\d\)/);
  });

  test('family, limits and definitions', async () => {
    const { provenance, findings } = await json(
      ...[
        '--family',
        'copper-annealed',
        '--proportional-limit',
        'johnson',
        '--lower-yield',
        'short',
        '--minimum-elongation',
        '20%',
        '--fracture-distance',
        '18',
      ],
    );
    expect(provenance.options).toMatchObject({
      family: 'copper-annealed',
      proportionalLimit: 'johnson',
      lowerYield: 'short',
      minimumElongation: 0.2,
    });
    expect(findings.some(({ message }) => message.includes('copper'))).toBe(true);
  });
});

describe('errors are one line, with an exit status, and leave nothing behind', () => {
  test.each([
    ['no section', [...lengths], /must be given: one of --round, .*--area$/m],
    ['two sections', ['--round', '8', '--area', '50', ...lengths], /got --round and --area/],
    ['a dimension that is no number', ['--round', 'eight', ...lengths], /--round must be numbers/],
    ['a dimension too few', ['--tube', '20', ...lengths], /2 dimensions/],
    ['a negative diameter', ['--round', '-8', ...lengths], /diameter(\[0\])? must be above 0/],
    ['gauge length zero', ['--round', '8', '--gauge-length', '0'], /ength must be above 0/],
    ['no gauge length', ['--round', '8'], /gauge-length/],
    ['an unknown option', ['--round', '8', ...lengths, '--colour', 'red'], /unknown option/],
    ['an unknown unit', ['--round', '8', ...lengths, '--unit', 'force=stone'], /must be a unit of force/],
    ['a unit without quantity', ['--round', '8', ...lengths, '--unit', 'kN'], /of the form quantity=value/],
    ['a window that is none', ['--round', '8', ...lengths, '--modulus-window', 'best'], /--modulus-window.*must be lower-bound/],
    [
      'a window of half samples',
      ['--round', '8', ...lengths, '--modulus-window', 'samples=100-300.25'],
      /--modulus-window.*whole numbers from 0/,
    ],
    ['a window before the first sample', ['--round', '8', ...lengths, '--modulus-window', 'samples=-50-300'], /whole numbers from 0/],
    [
      'a share of the search beside a stretch',
      ['--round', '8', ...lengths, '--modulus-window', 'stress=100-300', '--window-start', '0.1'],
      /leave them out beside --modulus-window stress=/,
    ],
    ['an unknown repair', ['--round', '8', ...lengths, '--repair', 'magic'], /--repair.*must be spikes, zero/],
    ['a doubt without a number', ['--round', '8', ...lengths, '--uncertainty', 'force=much'], /must give a number to force/],
    [
      'a doubt with a decimal comma',
      ['--round', '8', ...lengths, '--uncertainty', 'gaugeLength=0,05'],
      /must have decimal points, and commas only between several, got ',05'/,
    ],
    ['an unknown doubt', ['--round', '8', ...lengths, '--uncertainty', 'colour=1'], /--uncertainty colour is not an option/],
    ['a length that is no number', ['--round', '8', '--gauge-length', 'forty'], /must be a number/],
  ])('%s', async (_, flags, message) => {
    const { status, out, error } = await report(...flags);
    expect(status).toBe(2);
    expect(out).toBe('');
    expect(error).toMatch(message);
    expect(error.trim().split('\n')).toHaveLength(1);
    expect(readdirSync(folder)).toEqual(['pull.csv']);
  });

  test('a file that is not there, an empty one, a binary one', async () => {
    expect(await command('report', join(folder, 'none.csv'), '--round', '8', ...lengths)).toMatchObject({ status: 2, out: '' });
    writeFileSync(file, '');
    expect((await report('--round', '8', ...lengths)).error).toContain('must not be empty');
    writeFileSync(
      file,
      new Uint8Array(300).map((_, i) => (i * 31) % 256),
    );
    expect((await report('--round', '8', ...lengths)).error).toContain('must be text');
    expect(readdirSync(folder)).toEqual(['pull.csv']);
  });

  test('help and version', async () => {
    expect(await command('--help')).toMatchObject({ status: 0, error: '' });
    expect((await command('report', '--help')).out).toContain('Example:');
    expect((await command('--version')).out).toMatch(/^\d+\.\d+\.\d+/);
    expect((await command('plot')).status).toBe(2);
  });
});
