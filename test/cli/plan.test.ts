import { existsSync, mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { beforeEach, describe, expect, test } from 'vitest';
import { command } from '../support/command.js';

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'testpiece-'));
});

const plan = (...flags: string[]) => command('plan', ...flags);
const steel = ['--family', 'low-carbon-steel-annealed', '--round', '6'];
const frame = ['--capacity', '25000', '--bore', '40', '--rod', '20', '--frame-compliance', '2e-5', '--verified-from', '2500'];

describe('tension', () => {
  test('a table with pace, answers, findings and cautions', async () => {
    const { status, out, error } = await plan(...steel, ...frame, '--stroke-volume', '200', '--travel-step', '0.01');
    expect([status, error]).toEqual([0, '']);
    expect(out).toMatch(/share of the capacity +63\.3\s%/);
    expect(out).toMatch(/t \/ s +p \/ bar +F \/ kN/);
    expect(out).toMatch(/change to the speed for yield/);
    expect(out).toMatch(/strokes\/min/);
    expect(out).toMatch(/E +teaching only/);
    expect(out).toMatch(/caution: The frame gives/);
    expect(out).toMatch(/If the frame reaches its limit first/);
    expect(out).toMatch(/not design values/);
  });

  test('faults come first, and the sheet ends where the frame does', async () => {
    const file = join(folder, 'plan.html');
    const small = ['--capacity', '10000', '--bore', '30', '--rod', '16', '--relief-pressure', '20', '--frame-compliance', '4e-5'];
    const { out } = await plan('--family', 'structural-steel', '--rectangular', '12.5x3', ...small, '--page', file);
    expect(out).toMatch(/^fault: The greatest force to be expected/);
    expect(out.match(/fault:/g)).toHaveLength(2);
    expect(out).toMatch(/198 +10 +267 .*stop: capacity or relief valve reached, go no further\n/);
    expect(out).toMatch(/The frame ends at 10\skN, 198\sbar: stop there/);
    expect(out).not.toMatch(/after yield: /);
    const page = readFileSync(file, 'utf8');
    expect(page.indexOf('this frame may not do the test')).toBeLessThan(page.indexOf('Pace sheet'));
    expect(page.match(/this frame may not do the test/g)).toHaveLength(1);
  });

  test('strengths in place of a family; lengths, extensometer, rates', async () => {
    const { status, out } = await plan(
      '--rectangular', '12.5x3', '--modulus', '210000', '--yield-strength', '235-265', '--tensile-strength', '360-390', '--elongation', '20%-30%',
      ...frame, '--gauge-length', '35', '--parallel-length', '50', '--effective-length', '55', '--extensometer-length', '25', '--extensometer-step', '0.001',
      '--control', 'e8-b', '--sampling-rate', '5', '--use', 'structural', '--claims-standard', '--turn-travel', '0.5', '--slack', '1',
    ); // prettier-ignore
    expect(status).toBe(0);
    expect(out).toMatch(/largest flat/);
    expect(out).toMatch(/Rp0\.2 +good/);
    expect(out).toMatch(/turns\/min/);
    expect(out).toMatch(/fault: The values are to accept/);
    expect(out).toMatch(/caution: A sampling rate of 5 per second/);
  });

  test('a frame from a file, which flags correct; without oil no pressure', async () => {
    const file = join(folder, 'frame.json');
    writeFileSync(file, JSON.stringify({ capacity: 10_000, compliance: 2e-5 }));
    expect((await plan(...steel, '--frame', file)).out).toMatch(/share of the capacity +158\s%/);
    const corrected = (await plan(...steel, '--frame', file, '--capacity', '25000')).out;
    expect(corrected).toMatch(/share of the capacity +63\.3\s%/);
    expect(corrected).not.toMatch(/bar/);
  });

  test('a page to print, never over an existing one', async () => {
    const file = join(folder, 'plan.html');
    const made = await plan(...steel, ...frame, '--page', file, '--identity', 'bar <3>', '--invented');
    expect(made.status).toBe(0);
    expect(made.out).toContain(file);
    const page = readFileSync(file, 'utf8');
    expect(page).toContain('bar &lt;3&gt;');
    expect(page).toContain('Invented example');
    expect(page).toContain('<svg');
    const again = await plan(...steel, ...frame, '--page', file);
    expect(again.status).toBe(2);
    expect(again.error).toMatch(/exists/);
    expect((await plan(...steel, ...frame, '--page', file, '--overwrite')).status).toBe(0);
  });
});

test('every other test', async () => {
  const ball = await plan('brinell', '--ball', '10', '--index', '30', '--hardness', '200-250', '--thickness', '20', ...frame);
  expect(ball.out).toMatch(/fault: The greatest force to be expected/);
  const pin = await plan('shear', '--family', 'brass', '--round', '5', '--planes', '1', ...frame);
  expect(pin.out).toMatch(/planes +1/);
  const upset = await plan('compression', '--family', 'brass', '--round', '6', '--height', '24', '--to-strain', '20%', ...frame);
  expect(upset.out).toMatch(/strain at which to stop +20/);
  expect(upset.out).toContain('caution: With height over diameter 4 the piece may buckle');
  const cup = await plan('cupping', '--family', 'brass', '--thickness', '0.8', '--width', '90', ...frame);
  expect(cup.out).toMatch(/greatest depth to be expected +15/);
  expect((await plan('cupping', '--family', 'brass', ...frame)).error).toContain('--thickness');
  const bar = await plan('bending', '--family', 'brass', '--rectangular', '20x5', '--span', '90', '--arm', '30', ...frame);
  expect(bar.out).toMatch(/span between the supports +90 mm/);
  for (const { status } of [ball, pin, bar]) expect(status).toBe(0);
});

test.each([
  [[...steel], /must be given: --capacity, or capacity in the file of --frame/],
  [['--round', '6', ...frame], /must be given: --family, or --modulus and --tensile-strength and --elongation$/m],
  [[...steel, ...frame, '--control', 'iso-c'], /control/],
  [[...steel, ...frame, '--tensile-strength', '1-2-3'], /lowest-highest/],
  [[...steel, ...frame, '--yield-strength', '235,5'], /must be one number, or lowest-highest, with decimal points/],
  [[...steel, ...frame, '--elongation', '20,5%'], /must be one number, or lowest-highest/],
  [[...steel, ...frame, '--elongation', '20%-'], /must be a number with a decimal point/],
  [[...steel, ...frame, '--tensile-strength', 'much'], /must be a number/],
  [['unloading', ...frame], /choices/],
  [['brinell', '--index', '10', '--hardness', '80', ...frame], /must be given: --ball$/m],
  [['bending', ...steel, ...frame], /span/],
  [[...steel, ...frame, '--stroke-volume', '1', '--turn-travel', '1'], /cannot be used/],
])('%j is refused in one line', async (flags, message) => {
  const { status, out, error } = await plan(...flags);
  expect([status, out]).toEqual([2, '']);
  expect(error).toMatch(message);
  expect(error.trim().split('\n')).toHaveLength(1);
});

test('as JSON, and with an exit status for findings', async () => {
  const { status, out, error } = await plan(...steel, ...frame, '--json', '--fail-on', 'caution');
  expect([status, error]).toEqual([3, '']);
  expect(JSON.parse(out)).toMatchObject({ planOf: 'tension', findings: expect.any(Array) as unknown });
  expect((await plan(...steel, ...frame, '--fail-on', 'fault')).status).toBe(0);
});

test('a frame file that is no object is refused', async () => {
  const file = join(folder, 'frame.json');
  writeFileSync(file, '[1]');
  expect((await plan(...steel, '--frame', file)).error).toMatch(/--frame/);
  writeFileSync(file, '{');
  expect((await plan(...steel, '--frame', file)).status).toBe(2);
  expect((await plan(...steel, '--frame', join(folder, 'none.json'))).status).toBe(2);
  expect(existsSync(join(folder, 'none.json'))).toBe(false);
});
