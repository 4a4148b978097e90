/** What is said of a number in another unit, and of a flag or a word that is nearly one. */
import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { command } from '../support/command.js';

const folder = mkdtempSync(join(tmpdir(), 'slips-'));
const file = join(folder, 'pull.csv');
writeFileSync(file, `Time [s];Load [N];Travel [mm]\n${Array.from({ length: 40 }, (_, k) => `${k};${k * 500};${k * 0.01}`).join('\n')}\n`);
const said = async (call: string): Promise<string> => {
  const { status, error } = await command(...call.split(' ').map((one) => (one === 'FILE' ? file : one)));
  expect(status).toBe(2);
  return error.trim().replaceAll(file, 'FILE');
};

describe('a plan in another unit', () => {
  const frame = 'plan --family structural-steel --round 5 --capacity 25000 --bore 40 --rod 20';
  test.each([
    [`${frame} --relief-pressure 250`, '--relief-pressure must be in MPa, at most 200 (250 bar is 25), got 250'],
    [`${frame} --transmitter-range 250`, '--transmitter-range must be in MPa, below 250 (250 bar is 25), got 250'],
    [`${frame} --frame-compliance 20`, '--frame-compliance must be in mm/N, at most 0.01 (20 µm/kN is 0.00002), got 20'],
    [`${frame} --oil-volume 100`, '--oil-volume must be in mm³, of 1000 or more (100 cm³ is 100000), got 100'],
    ['plan --family structural-steel --round 5 --capacity 25', '--capacity must be in N, of 100 or more (25 kN is 25000), got 25'],
    [
      'plan --round 5 --capacity 25000 --modulus 206 --tensile-strength 400 --elongation 20%',
      '--modulus must be in MPa, of 1000 or more (206 GPa is 206000), got 206',
    ],
    [
      'plan --round 5 --capacity 25000 --modulus 206000 --tensile-strength 400 --elongation 20',
      '--elongation must be in mm/mm, at most 2 (20 % is 0.2), got 20',
    ],
  ])('%s', async (call, rule) => {
    expect(await said(call)).toBe(`testpiece: ${rule}`);
  });

  test('numbers that a frame may have pass', async () => {
    const { status } = await command(...`${frame} --relief-pressure 26.5 --frame-compliance 2e-5 --oil-volume 100000`.split(' '));
    expect(status).toBe(0);
  });
});

describe('a number with its unit is told in that of the flag', () => {
  test.each([
    ['plan --round 5 --family brass --capacity 25kN', 'It is in N, without the unit: 25000.'],
    ['report FILE --round 8 --gauge-length 4cm', 'It is in mm, without the unit: 40.'],
    ['plan --round 5 --family brass --capacity 25000 --frame-compliance 20µm/kN', 'It is in mm/N, without the unit.'],
    ['plan --round 5 --family brass --capacity much', 'It must be a number with a decimal point.'],
  ])('%s', async (call, rule) => {
    expect((await said(call)).endsWith(rule)).toBe(true);
  });
});

describe('a flag or a word that is nearly one', () => {
  const piece = '--round 8 --gauge-length 40';
  test.each([
    ['report FILE --round 8 --L0 40', "unknown option '--L0' (Did you mean --gauge-length?)"],
    [`report FILE ${piece} --Lc 48`, "unknown option '--Lc' (Did you mean --parallel-length?)"],
    [`report FILE ${piece} --compliance 2e-5`, "unknown option '--compliance' (Did you mean --frame-compliance?)"],
    [`report FILE ${piece} --lang de`, "unknown option '--lang' (Did you mean --language?)"],
    [`report FILE ${piece} --method A`, "unknown option '--method' (Did you mean --control?)"],
    [`report FILE ${piece} --span 60`, "unknown option '--span' (it is one of plan, bending)"],
    [`report FILE ${piece} --sampling 3`, "unknown option '--sampling'"],
    [`report FILE ${piece} --family S235`, 'Did you mean structural-steel?'],
    [`report FILE ${piece} --family steel`, 'Did you mean low-carbon-steel'],
    [`report FILE ${piece} --language Klingon`, 'Allowed choices are en, '],
    [`report FILE ${piece} --date 04.03.2026`, 'It must be of the form 2026-03-31'],
  ])('%s', async (call, rule) => {
    expect(await said(call)).toContain(rule);
  });

  test('capitals of a language do not count, and a date in words is taken', async () => {
    const { out } = await command('report', file, ...piece.split(' '), '--language', 'DE', '--json', '--date', '4 March 2026');
    expect(JSON.parse(out)).toMatchObject({ test: { date: '4 March 2026' } });
    expect((await command('plan', '--round', '5', '--family', 'BRASS', '--capacity', '25000', '--language', 'DE')).out).toContain(
      'Prüfrahmen',
    );
  });
});

test('readings beyond a calibration are told in their unit, of pressure in bar too', async () => {
  const [record, table] = [join(folder, 'p.csv'), join(folder, 'table.txt')];
  writeFileSync(record, `Pressure [bar];Travel [mm]\n${Array.from({ length: 40 }, (_, k) => `${k * 5};${k * 0.01}`).join('\n')}\n`);
  writeFileSync(table, 'bar; kN\n10; 1\n50; 5\n100; 10\n');
  const { error } = await command('report', record, '--round', '8', '--gauge-length', '40', '--calibration', table);
  // the first beyond 100 bar is 105
  expect(error).toContain('readings from 1 to 10 MPa (10 to 100 bar), and idle ones down to zero; the record has 10.5 MPa (sample [21])');
});

test('a force in kgf is told by its scale', async () => {
  const { out } = await command('brinell', '--ball', '10', '--force', '3000', '--indentation', '4.0,4.02', '--output', folder);
  expect(out).toContain('fault: Indentation 1: the force 3000 N is the number of HBW 10/3000 in kgf, which is 29420 N.');
});
