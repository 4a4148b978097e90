import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { Finding } from '../../src/base/index.js';
import { languages } from '../../src/languages/languages.js';
import type { TensionResult } from '../../src/methods/index.js';
import type { SimulatedTruth } from '../../src/simulate/index.js';
import { command, type Called } from '../support/command.js';

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'testpiece-'));
});
afterEach(() => {
  rmSync(folder, { recursive: true });
});
const at = (name: string): string => join(folder, name);
function given(name: string, text: string): string {
  writeFileSync(at(name), text);
  return at(name);
}
function read({ status, out, error }: Called): unknown {
  expect({ status, error }).toEqual({ status: 0, error: '' });
  return JSON.parse(out) as unknown;
}

const PIECE = ['--round', '8', '--gauge-length', '40', '--parallel-length', '48'];
const FAMILY = ['--family', 'structural-steel'];
const simulated = (name: string, ...flags: string[]): Promise<Called> => command('simulate', at(name), ...FAMILY, ...PIECE, ...flags);
const reported = async (name: string, ...flags: string[]): Promise<TensionResult> =>
  read(await command('report', at(name), ...PIECE, '--json', ...flags)) as TensionResult;

describe('calibrate', () => {
  /** Rising 1200 N/MPa from zero, falling 60 N lower. */
  const steps = [2, 6, 10, 14, 18];
  const rows = (sign: number) => steps.map((p) => `${10 * p};${1.2 * p};${1.2 * p - 0.06 * sign};${1.2 * p}`).join('\n');
  const table = (sign = 1): string => `p [bar];up 1 [kN];down 1 [kN];up 2 [kN]\n${rows(sign)}\n`;

  interface Printed {
    readonly indicates: string;
    readonly calibration: { coefficients: number[]; findings: Finding[] };
    readonly standardUncertainty: number[];
  }

  test('rising and falling columns: the coefficients, and the hysteresis that they show', async () => {
    const called = await command('calibrate', given('channel.txt', table()), '--degree', '1', '--json');
    const { indicates, calibration } = read(called) as Printed;
    expect(indicates).toBe('pressure');
    // a third of the pairs, at the same readings, lies 60 N lower
    expect(calibration.coefficients[0]).toBeCloseTo(-20, 6);
    expect(calibration.coefficients[1]).toBeCloseTo(1200, 6);
    expect(calibration.findings.map(({ code }) => code)).toContain('calibration-hysteresis');
    const same = read(await command('calibrate', given('even.txt', table(0)), '--json')) as Printed;
    expect(same.calibration.findings).toEqual([]);
  });

  test.each([
    ['columns', (p: number) => [`${p};${1200 * p};${1200 * p + 60}`], 'p [MPa];up [N];down [N]'],
    ['rows', (p: number) => [`${p};${1200 * p};up`, `${p};${1200 * p + 60};down`], 'p;F;direction\nMPa;N;'],
  ])('%s written from low to high or from high to low: the same way down', async (_, rowsOf, heading) => {
    const differences = await Promise.all(
      [steps, [...steps].reverse()].map(async (forces, k) => {
        const file = given(`channel-${k}.txt`, `${heading}\n${forces.flatMap(rowsOf).join('\n')}\n`);
        const { calibration } = read(await command('calibrate', file, '--degree', '1', '--json')) as Printed;
        return calibration.findings.find(({ code }) => code === 'calibration-hysteresis')?.values['difference'];
      }),
    );
    // residuals are −30 N on the way up and 30 N on the way down, whose reading at the top still counts to the way up: 30 − (5 · (−30) + 30)/6
    expect(differences[0]).toBeCloseTo(30 + (5 * 30 - 30) / 6, 6);
    expect(differences[1]).toBe(differences[0]);
  });

  test('an exact table shows no dust of the arithmetic', async () => {
    const { out } = await command('calibrate', given('exact.txt', 'p [MPa];F [N]\n0;0\n7;8407\n11;13211\n13;15613\n19;22819\n'));
    expect(out).toMatch(/^ {2}c0 = 0\n {2}c1 = 1201\n/m);
    expect(out).toMatch(/residuals: 0\sN,/);
    expect(out).toMatch(/^ +4 +13 +15613 +0 +0$/m);
    expect(out).not.toContain('10⁻');
  });

  test('residuals of a large channel are plain numbers', async () => {
    const flags = ['--degree', '1'];
    const { out } = await command('calibrate', given('large.txt', 'p [MPa];F [N]\n1;1000000\n2;2000000\n3;3006000\n4;4000000\n'), ...flags);
    // of the 6000 N the line takes 6000/4 + 600 (3 − 2.5) with it (least squares over four even steps)
    expect(out).toMatch(/^ +3 +3 +3006000 +4200 /m);
    expect(out).not.toMatch(/× 10|e\+/);
  });

  test('its table names coefficients, residuals and findings; findings count for the status', async () => {
    const file = given('channel.txt', table());
    const { status, out } = await command('calibrate', file, '--fail-on', 'caution');
    expect(status).toBe(3);
    expect(out).toMatch(/^Calibration of degree 1 through 15 pairs\.\n {2}F = c0 \+ c1 x\n {2}c0 = −20\n {2}c1 = 1200\n/);
    expect(out).toMatch(/^ +15 +18 +21600 +20\.0 +\d+$/m);
    expect(out).toMatch(/caution: On the way down/);
  });

  test('reference and step of the reading widen the uncertainty', async () => {
    const file = given('channel.txt', table());
    const u = async (...flags: string[]) =>
      (read(await command('calibrate', file, '--json', ...flags)) as Printed).standardUncertainty.at(-1)!;
    const [alone, both] = [await u(), await u('--reference', '0.5%', '--resolution', '0.1')];
    // at 21 580 N 0.5 % of it; a step of 0.1 MPa is 120 N
    expect(both ** 2 - alone ** 2).toBeCloseTo((0.005 * 21580) ** 2 + 120 ** 2 / 12, 4);
  });

  test('a report takes the table and the JSON alike', async () => {
    await simulated('pull.csv', '--bore', '40', '--rod', '20');
    const file = given('channel.txt', 'p;F\nbar;kN\n1;0.1\n60;5.6\n120;11.2\n180;16.9\n230;21.6\n');
    writeFileSync(at('channel.json'), (await command('calibrate', file, '--degree', '2', '--json')).out);
    const wide = await reported('pull.csv', '--calibration', at('channel.json'));
    expect(wide.provenance.options).toMatchObject({ test: { channelCalibration: { name: 'channel.json', points: 5 } } });
    const coefficients = (one: TensionResult) =>
      (one.provenance.options as { test: { channelCalibration: { coefficients: number[] } } }).test.channelCalibration.coefficients;
    expect(coefficients(wide)).toHaveLength(3);
    expect(coefficients(await reported('pull.csv', '--calibration', file))).toHaveLength(2);
  });

  test('what cannot be fitted is said in a line', async () => {
    const few = await command('calibrate', given('few.txt', '1;2\n1;3\n1;4\n'));
    expect(few).toMatchObject({ status: 2, out: '' });
    expect(few.error).toMatch(/^testpiece: 3 pairs at 1 different readings do not determine degree 1\n$/);
    expect((await command('calibrate', given('two.txt', '1;2\n2;3\n'))).error).toMatch(
      /pairs\.indicated must have at least 3 samples, got 2$/m,
    );
    expect((await command('calibrate', given('few.txt', '1;2\n2;3\n3;4\n'), '--degree', '4')).error).toMatch(/--degree must be 1, 2 or 3/);
  });
});

describe('verify', () => {
  const readings = `F [kN];up 1 [kN];up 2 [kN];up 3 [kN];down 1 [kN]
4;4.012;4.021;4.006;3.976
10;10.05;10.07;10.02;9.93
20;20.05;20.07;20.02;
`;
  const range = ['--range', '20000', '--resolution', '6'];

  interface Printed {
    readonly held: string;
    readonly steps: readonly Record<string, number>[];
  }

  test('terms by their definitions, class step by step', async () => {
    const file = given('readings.txt', readings);
    const { steps } = read(await command('verify', file, ...range, '--zeros', '0,6,6', '--reference', '0.1%', '--json')) as Printed;
    const [first, second, third] = steps;
    expect(first!['indicationError']).toBeCloseTo(13 / 4000, 12);
    expect(first!['repeatability']).toBeCloseTo(15 / 4000, 12);
    expect(first!['reversibility']).toBeCloseTo(-36 / 4000, 12);
    expect(first!['zeroError']).toBeCloseTo(6 / 20000, 12);
    expect(first!['resolution']).toBeCloseTo(6 / 4000, 12);
    expect(second).toMatchObject({ forceClass: 1, limitedBy: 'reversibility' });
    expect(second!['standardUncertainty']).toBeGreaterThan(0.001);
    expect(third!['reversibility']).toBeUndefined();
  });

  test('with the indicated force held, the errors turn their sign', async () => {
    const file = given('readings.txt', readings);
    const { held, steps } = read(await command('verify', file, ...range, '--held', 'indicated', '--json')) as Printed;
    expect(held).toBe('indicated');
    expect(steps[0]!['indicationError']).toBeCloseTo(-13 / 4013, 12);
  });

  test('a table, and a page to print', async () => {
    const file = given('readings.txt', readings);
    const { status, out } = await command('verify', file, ...range, '--page', at('page.html'), '--identity', 'frame <1>', '--invented');
    expect(status).toBe(0);
    expect(out).toMatch(/^ {2}10 kN +0\.47 % +0\.5 % +−1\.2 % +– +0\.06 % +1 +reversibility v$/m);
    expect(out).toMatch(/Falling forces +verified too, at 2 of 3 steps$/m);
    expect(out).toMatch(/no certificate of an accredited laboratory/);
    const page = readFileSync(at('page.html'), 'utf8');
    expect(page).toContain('frame &lt;1&gt;');
    expect(page).toContain('No real frame');
    expect((await command('verify', file, ...range, '--page', at('page.html'))).error).toMatch(/exists; give --overwrite/);
  });

  test.each([
    ['1;1;1\n2;2;2\n', range, /FILE: at 1 N there must be 3 readings of rising force at least, got 2$/],
    ['0;0;0;0\n1;1;1;1\n', range, /FILE: a row of 0 N is no step: leave it out; readings without force go to --zeros$/],
    [readings, [], /must be given: --range <F>; --resolution <r>$/],
    ['p [bar];a [bar]\n1;1\n2;2\n', range, /heading of column 1 must name a unit of force/],
    [
      'F [N];up [N];up [N];up [N];down 1 [N];down 2 [N]\n1;1;1;1;;1\n2;2;2;2;2;2\n',
      range,
      /FILE: at 1 N a run is empty before one that is not/,
    ],
    [readings, [...range, '--zeros', '0,6'], /--zeros 0,6 may be 0\.6 with a decimal comma/],
  ])('%j %j is refused', async (text, flags, message) => {
    const file = given('readings.txt', text);
    const { status, error } = await command('verify', file, ...flags);
    expect(status).toBe(2);
    expect(error.trim().replaceAll(file, 'FILE')).toMatch(message);
  });
});

describe('compliance', () => {
  /** A bar of 20 mm over 100 mm and 206 GPa, in a frame of 20 µm/kN with 0.3 mm of slack, pulled to 20 kN and let down again. */
  const AREA = Math.PI * 100;
  const barOf = (length: number): string => {
    const way = (F: number): string => `${F};${(0.3 + F * (2e-5 + length / (206000 * AREA))).toFixed(9)}`;
    const up = Array.from({ length: 41 }, (_, k) => way(500 * k));
    return ['Force [N];Travel [mm]', '0;0', '0;0.1', '0;0.2', ...up, '10000;0.9', '0;0.7'].join('\n');
  };
  const bar = ['--round', '20', '--effective-length', '100'];
  interface Printed {
    readonly shape: string;
    readonly modulus?: number;
    readonly compliance: { constant: number; range: number[]; force: number[]; travel: number[] };
  }

  test('slack and the way down do not count', async () => {
    const file = given('bar.csv', barOf(100));
    const { compliance } = read(await command('compliance', file, ...bar, '--modulus', '206000', '--json')) as Printed;
    expect(compliance.constant / 2e-5).toBeCloseTo(1, 5);
    expect(compliance.range).toEqual([2000, 20000]);
    const { out } = await command('compliance', file, ...bar, '--modulus', '206000', '--grips', 'wedges');
    expect(out).toMatch(/^The frame gives 0\.36\smm up to 20000\sN/);
    expect(out).toMatch(/^ {2}--frame-compliance 2e-5$/m);
  });

  test('two lengths find the modulus as well', async () => {
    const [short, long] = [given('a.csv', barOf(100)), given('b.csv', barOf(300))];
    const lengths = ['--effective-length', '100', '--effective-length', '300'];
    const { compliance, modulus } = read(await command('compliance', short, long, '--round', '20', ...lengths, '--json')) as Printed;
    expect(compliance.constant / 2e-5).toBeCloseTo(1, 4);
    expect(modulus! / 206000).toBeCloseTo(1, 4);
  });

  test('a report takes the JSON as it takes the number', async () => {
    await simulated('pull.csv');
    const file = given('bar.csv', barOf(100));
    for (const shape of ['constant', 'table']) {
      writeFileSync(at('frame.json'), (await command('compliance', file, ...bar, '--modulus', '206000', '--shape', shape, '--json')).out);
      const by = await reported('pull.csv', '--frame-table', at('frame.json'));
      const direct = await reported('pull.csv', '--frame-compliance', '2e-5');
      expect(by.elasticSlope!.value / direct.elasticSlope!.value).toBeCloseTo(1, 3);
    }
  });

  test.each([
    [[...bar], /^testpiece: the samples do not tell the frame from the pieces: give a modulus, other lengths or a wider range$/],
    [[...bar, '--effective-length', '50', '--modulus', '206000'], /--effective-length must be given once, or once for each of the 1 files/],
    [['--round', '20', '--modulus', '206000'], /must be given: --effective-length <Leff>$/],
    [[...bar, '--modulus', '206000', '--column', 'extension=Travel'], /FILE: must have the travel of the crosshead/],
  ])('%j is refused', async (flags, message) => {
    const file = given('bar.csv', barOf(100));
    const { status, out, error } = await command('compliance', file, ...flags);
    expect([status, out]).toEqual([2, '']);
    expect(error.trim().replaceAll(file, 'FILE')).toMatch(message);
  });

  test('a JSON of something else is no compliance', async () => {
    await simulated('pull.csv');
    const { error } = await command('report', at('pull.csv'), ...PIECE, '--frame-table', given('other.json', '{"a":1}'));
    expect(error).toMatch(/--frame-table .* must be a table, or the JSON of testpiece compliance/);
  });
});

describe('simulate', () => {
  interface Truth {
    readonly invented: true;
    readonly truth: SimulatedTruth;
  }
  const truthOf = (name: string): Truth => JSON.parse(readFileSync(at(name), 'utf8')) as Truth;

  test('a file that a report reads, with the truth beside it, both marked as invented', async () => {
    const { status, out, error } = await simulated('pull.csv', '--seed', '7');
    expect([status, error]).toEqual([0, '']);
    expect(out).toMatch(/^Invented data\.\n/);
    expect(out).toMatch(/Rm +403\.3 MPa +tensile strength/);
    expect(readFileSync(at('pull.csv'), 'utf8')).toMatch(/^Invented data: .*seed 7\nTime;Load;Travel\ns;N;mm\n/);
    const { invented, truth } = truthOf('pull.truth.json');
    expect(invented).toBe(true);
    const { maximumForce, upperYieldStrength } = await reported('pull.csv', '--frame-compliance', '2e-5');
    // four standard deviations of the noise of a load cell of 25 kN, 0.05 % of it
    expect(Math.abs(maximumForce.value - truth.maximumForce)).toBeLessThan(4 * 12.5);
    expect(Math.abs(upperYieldStrength!.value - truth.upperYieldStrength!) * 16 * Math.PI).toBeLessThan(4 * 12.5);
  });

  test('the same seed is the same file, another one is another metal', async () => {
    await simulated('a.csv', '--seed', '3');
    await simulated('b.csv', '--seed', '3');
    await simulated('c.csv', '--seed', '4');
    expect(readFileSync(at('a.csv'), 'utf8')).toBe(readFileSync(at('b.csv'), 'utf8'));
    expect(truthOf('c.truth.json').truth.tensileStrength).not.toBe(truthOf('a.truth.json').truth.tensileStrength);
  });

  test('a cylinder writes pressure, an extensometer its column; the truth on standard output too', async () => {
    const called = await simulated('pull.csv', '--bore', '40', '--rod', '20', '--extensometer-length', '40', '--strokes', '20', '--json');
    expect((read(called) as Truth).truth.modulus).toBe(207000);
    expect(readFileSync(at('pull.csv'), 'utf8')).toMatch(/\nTime;Pressure;Travel;Extension\ns;bar;mm;mm\n/);
  });

  test.each([
    ['pull', [], /must have an ending/],
    ['pull.json', [], /must not end in \.json/],
    ['pull.csv', ['--rod', '20'], /must be given: --bore with --rod/],
    ['pull.csv', ['--seed', '1.5'], /seed must be/],
    ['pull.csv', ['--family', 'lead'], /Allowed choices are .*structural-steel/],
  ])('%s %j is refused', async (name, flags, message) => {
    const { status, error } = await simulated(name, ...flags);
    expect(status).toBe(2);
    expect(error).toMatch(message);
  });

  test('nothing is replaced unasked', async () => {
    await simulated('pull.csv');
    expect((await simulated('pull.csv', '--seed', '2')).error).toMatch(/pull\.csv exists; give --overwrite/);
    expect((await simulated('pull.csv', '--seed', '2', '--overwrite')).status).toBe(0);
  });
});

test.each(languages.filter(({ tag }) => tag !== 'en').map(({ tag }) => tag))('all in %s', async (tag) => {
  const channel = given('channel.txt', '1;1000\n2;2000\n3;3010\n4;4000\n5;5000\n');
  const readings = given('readings.txt', '4000;4012;4021;4006\n8000;8012;8021;8006\n');
  const rows = Array.from({ length: 20 }, (_, k) => `${1000 * k};${0.03 * k}`);
  const bar = given('bar.csv', `Force [N];Travel [mm]\n${rows.join('\n')}\n`);
  const said = await Promise.all([
    command('calibrate', channel, '--language', tag),
    command('verify', readings, '--range', '8000', '--resolution', '4', '--language', tag),
    command('compliance', bar, '--round', '20', '--effective-length', '100', '--modulus', '206000', '--language', tag),
    simulated('pull.csv', '--language', tag),
  ]);
  for (const { status, out } of said) {
    expect(status).toBe(0);
    expect(out.replaceAll(folder, '')).not.toMatch(
      /\b(calibration of|the|pairs|findings|steps|class|frame gives|invented|strength|caution:|note:)\b/i,
    );
  }
});
