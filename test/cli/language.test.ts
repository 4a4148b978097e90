import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { run } from '../../src/cli/run.js';

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'testpiece-'));
  const rows = Array.from({ length: 400 }, (_, i) => {
    const strain = i * 5e-5;
    const stress = Math.min(70_000 * strain, 200 + 300 * strain);
    return `${(strain * 40).toFixed(6)};${(stress * 50).toFixed(2)}`;
  });
  writeFileSync(join(folder, 'a.csv'), `Extension/mm;Force/N\n${rows.join('\n')}\n`);
});
afterEach(() => {
  rmSync(folder, { recursive: true });
});

async function called(...flags: string[]): Promise<string> {
  const said: string[] = [];
  const status = await run(['report', join(folder, 'a.csv'), '--area', '50', '--gauge-length', '40', ...flags], {
    out: (text) => said.push(text),
    error: (text) => said.push(text),
  });
  expect(said.join('')).not.toContain('testpiece:');
  expect(status).toBe(0);
  return said.join('');
}

test('table and page in the language that was asked for; the data stay as they are', async () => {
  expect(await called('--language', 'de')).toContain('Zugfestigkeit');
  const page = readFileSync(join(folder, 'a.report.html'), 'utf8');
  expect(page).toContain('<html lang="de">');
  expect(page).toContain('Spannung über der Dehnung');
  expect(readFileSync(join(folder, 'a.report.json'), 'utf8')).toContain('"tensile strength"');
});

test('units of lbf, in and ksi in table, page and figures', async () => {
  expect(await called('--units', 'in-lb')).toMatch(/Rm\s+29\.\d ksi/);
  expect(readFileSync(join(folder, 'a.report.html'), 'utf8')).toContain('Stress R / ksi');
});
