import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { command } from '../support/command.js';

const folder = mkdtempSync(join(tmpdir(), 'testpiece-'));
const file = join(folder, 'pull.csv');
const rows = Array.from({ length: 40 }, (_, k) => `${k};${k * 500};${k * 0.01}`);
writeFileSync(file, `Time [s];Load [N];Travel [mm]\n${rows.join('\n')}\n`);

const said = async (call: string): Promise<string> => {
  const { status, error } = await command(...call.split(' ').map((one) => (one === 'FILE' ? file : one)));
  expect(status).toBe(2);
  return error.trim().replaceAll(file, 'FILE');
};
const SECTION = 'one of --round, --rectangular, --square, --hexagon, --tube, --tube-strip, --mass, --area';

describe('all that is missing is said at once', () => {
  test.each([
    ['report FILE', `${SECTION}; --gauge-length <L0>`],
    ['bending FILE', `${SECTION}; --span <L>`],
    ['brinell', '--ball <D>; --indentation <d1,d2>'],
    ['plan', `${SECTION}; --family, or --modulus and --tensile-strength and --elongation; --capacity, or capacity in the file of --frame`],
    ['plan --round 8 --elongation 20%', '--family, or --modulus and --tensile-strength; --capacity, or capacity in the file of --frame'],
    ['plan brinell', '--ball; --hardness; --force or --index; --capacity, or capacity in the file of --frame'],
    ['plan bending --family structural-steel', `${SECTION}; --span; --capacity, or capacity in the file of --frame`],
    ['plan shear --round 8', '--family, or --tensile-strength; --capacity, or capacity in the file of --frame'],
  ])('%s', async (call, missing) => {
    expect(await said(call)).toBe(`testpiece: must be given: ${missing}`);
  });

  test('a pin is planned from its strength alone', async () => {
    const { status, out } = await command(...'plan shear --round 5 --tensile-strength 360-720 --capacity 25000 --json'.split(' '));
    expect(status).toBe(0);
    // two planes of 19.635 mm² at 0.8 of 720 MPa
    expect((JSON.parse(out) as { force: { greatest: number } }).force.greatest).toBeCloseTo((2 * 0.8 * 720 * Math.PI * 25) / 4, 6);
  });
});

describe('a wrong value is said by its flag', () => {
  const piece = '--round 8 --gauge-length 40';
  test.each([
    ['report FILE --round 0 --gauge-length 40', '--round: diameter must be above 0, got 0'],
    ['report FILE --tube 8x5 --gauge-length 40', '--tube: wallThickness must be at most half of outerDiameter (4), got 5'],
    ['report FILE --round 8 --gauge-length 0', 'FILE: --gauge-length must be above 0, got 0'],
    [`report FILE ${piece} --final-gauge-length 0`, 'FILE: --final-gauge-length must be above 0, got 0'],
    [`report FILE ${piece} --extensometer-length 0`, 'FILE: --extensometer-length must be above 0, got 0'],
    [`report FILE ${piece} --offsets -0.1%`, 'FILE: --offsets must be above 0, got -0.001'],
    [`report FILE ${piece} --window-start 2`, 'FILE: --window-start must be from 0 to 0.95, got 2'],
    [
      `report FILE ${piece} --window-start 0.7 --window-span 0.7`,
      'FILE: --window-span must leave room: --window-start and --window-span are 1 together at most, got 0.7',
    ],
    [`report FILE ${piece} --uncertainty force=-1`, 'FILE: --uncertainty force must be 0 or more, got -1'],
    [`report FILE ${piece} --repair rate=-1`, 'FILE: --repair rate must be above 0, got -1'],
    [`report FILE ${piece} --force-verified 2026`, 'FILE: --force-verified must be a day of the form 2026-03-31, got "2026"'],
    ['shear --round 8 --planes 1 --maximum-force -2', '--maximum-force must be above 0, got -2'],
    ['brinell --ball 0 --force 9807 --indentation 4', '--ball must be above 0, got 0'],
    ['brinell --ball 10 --indentation 4', '--force must be given, here or for all, or recorded, got undefined'],
    ['brinell --ball 10 --force 9807 --indentation 12', '--indentation must be below that of the ball (10), got 12'],
    ['cupping FILE --thickness 0', '--thickness must be above 0, got 0'],
    ['plan --round 5 --family structural-steel --capacity 9000 --rod 20', '--bore must be given with rod, got undefined'],
    ['plan --round 5 --family structural-steel --capacity 9000 --frame-compliance -1', '--frame-compliance must be 0 or more, got -1'],
    ['plan --round 5 --family structural-steel --capacity 9000 --turn-travel 0', '--turn-travel must be above 0, got 0'],
    ['plan --round 5 --family structural-steel --capacity 0', '--capacity must be above 0, got 0'],
  ])('%s', async (call, rule) => {
    expect(await said(call)).toBe(`testpiece: ${rule}`);
  });

  test.each([
    ['compression FILE --round 8 --height 0', /option '--height <h0>' argument '0' is invalid\. It must be above 0\.$/],
    ['bending FILE --rectangular 10x4 --span 60 --chord 0.1%', /It must be two strains with a comma between them/],
    [
      'plan torsion',
      /^testpiece: test 'torsion' is not known\. Allowed choices are tension, brinell, shear, bending, compression, cupping\.$/,
    ],
    ['report FILE --diameter 8', /unknown option '--diameter' \(Did you mean --round\?\)$/],
    ['vectors trueStress', /no check vector of 'trueStress'; there are some of .*round, .*tube/],
    ['replicates FILE', /FILE: is no JSON: give the \.json files that report, .* wrote$/],
    ['compare FILE', /FILE: is no JSON: give the \.json files that report, .* wrote$/],
  ])('%s', async (call, message) => {
    expect(await said(call)).toMatch(message);
  });
});
