import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { command } from '../support/command.js';

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'testpiece-'));
  // 70 GPa up to 200 MPa, then 300 MPa a strain of 1, up to 204.8 MPa at a strain of 0.02
  const rows = Array.from({ length: 401 }, (_, i) => {
    const strain = i * 5e-5;
    return `${(strain * 40).toFixed(6)};${(50 * Math.min(70_000 * strain, 200 + 300 * (strain - 200 / 70_000))).toFixed(2)}`;
  });
  writeFileSync(join(folder, 'a.csv'), `Extension/mm;Force/N\n${rows.join('\n')}\n`);
});
afterEach(() => {
  rmSync(folder, { recursive: true });
});

// it broke at its highest force
const piece = ['--area', '50', '--gauge-length', '40', '--final-gauge-length', '40.6'];
const report = (...flags: string[]) => command('report', join(folder, 'a.csv'), ...piece, ...flags);
const page = () => readFileSync(join(folder, 'a.report.html'), 'utf8');

describe('limits', () => {
  test('stand in table and page with verdict and risk, by the rule as it is', async () => {
    const limits = ['--limit', 'Rm=190-230,Rp0.2=235-', '--limit', 'Agt=-50%'];
    const { status, out, error } = await report(...limits, '--uncertainty', 'force=0.5%');
    expect([status, error]).toEqual([0, '']);
    expect(out).toContain('simple acceptance');
    expect(out).toMatch(/Rm +20\d\.\d+ MPa +≥ 190 MPa, ≤ 230 MPa +passes +probability of conformity/);
    expect(out).toMatch(/Rp0\.2 +20\d\.\d+ MPa +≥ 235 MPa +fails +probability of conformity/);
    expect(out).toMatch(/Agt +2\.?\d* % +≤ 50 % +passes/);
    expect(page()).toContain('<h2>Decisions</h2>');
  });

  test('by a guard band, in the language and units of the reader', async () => {
    const flags = ['--limit', 'Rm=190-230', '--decision-rule', 'guarded', '--language', 'de', '--units', 'in-lb'];
    const { out } = await report(...flags, '--uncertainty', 'force=0.5%');
    expect(out).toContain('Schutzband von 1,645 u');
    expect(out).toMatch(/Rm +29,\d+ ksi +≥ 27,\d+ ksi/);
  });

  test('a doubt of a decision stands among the findings', async () => {
    const doubt = ['--uncertainty', 'force=5%'];
    expect((await report(...doubt)).out).not.toContain('told apart');
    const { out } = await report(...doubt, '--limit', 'Rm=204-', '--overwrite');
    expect(out).toMatch(/≥ 204 MPa +passes; cannot be told apart from the limit/);
    expect(out).toMatch(/caution: Rm is 1\.1\d* MPa from its limit/);
  });

  test.each([
    ['Rm', /must be symbol=lowest-highest/],
    ['Rm=400', /must be symbol=lowest-highest/],
    ['Rm=360,5-510', /must be symbol=lowest-highest/],
    ['=360-510', /must be symbol=lowest-highest/],
    ['Rm=360-510-600', /one number, or lowest-highest/],
    ['Rm=-', /must be a number/],
    ['Rm=510-360', /--limit .*The lowest must come first: Rm=360-510\./],
    ['ReX=235-', /--limit names ReX, and the test gave .*Rp0\.2, .*Rm/],
  ])('%s is refused in one line, and nothing is written', async (limit, message) => {
    const { status, out, error } = await report('--limit', limit);
    expect([status, out]).toEqual([2, '']);
    expect(error).toMatch(message);
    expect(error.trim().split('\n')).toHaveLength(1);
    expect(page).toThrow();
  });
});

describe('an elongation by its gauge length', () => {
  const short = (...flags: string[]) =>
    // 7.07 √S0: not proportional
    command('report', join(folder, 'a.csv'), '--area', '50', '--gauge-length', '50', '--final-gauge-length', '58', ...flags);

  test.each([
    ['A50mm=10%-', /A50mm +16 % +≥ 10 % +passes/],
    ['A50mm=20%-', /A50mm +16 % +≥ 20 % +fails/],
    ['A80mm=10%-', /No decision: the limit is stated for another gauge length/],
    ['A=10%-', /No decision: the limit is stated for another gauge length/],
    ['A11.3=10%-', /No decision: the limit is stated for another gauge length/],
  ])('%s', async (limit, said) => {
    const { status, out, error } = await short('--limit', limit);
    expect([status, error]).toEqual([0, '']);
    expect(out).toMatch(/ A50mm +16\.0 +% /);
    expect(out).toMatch(said);
  });

  test('an index without its unit is refused with the way to write it', async () => {
    expect((await short('--limit', 'A80=10%-')).error).toContain('a gauge length of 80 mm is written A80mm');
  });
});

test('the sheet of a page, of a plan too', async () => {
  await report('--paper', 'Letter');
  expect(page()).toMatch(/size: *letter/i);
  const file = join(folder, 'plan.html');
  await command('plan', '--family', 'brass', '--round', '5', '--capacity', '25000', '--page', file, '--paper', 'Letter');
  expect(readFileSync(file, 'utf8')).toMatch(/size: *letter/i);
  expect((await report('--paper', 'A3')).error).toMatch(/choices are A4, Letter/i);
});

test('a half to the even step, or up', async () => {
  expect((await report('--half', 'up')).status).toBe(0);
  expect(page()).toContain('half up');
  expect((await report('--half', 'even', '--overwrite')).status).toBe(0);
  expect(page()).toContain('half to even');
});
