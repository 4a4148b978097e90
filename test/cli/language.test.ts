import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { run } from '../../src/cli/run.js';
import { languages } from '../../src/languages/languages.js';
import { analyseTension, cautionsOf, toJson } from '../../src/methods/index.js';
import { command } from '../support/command.js';
import { caseT1, roundPiece } from '../support/records.js';

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
  expect(await called('--units', 'in-lb')).toMatch(/Rm\s+≥\s29\.\d ksi/);
  expect(readFileSync(join(folder, 'a.report.html'), 'utf8')).toContain('Stress R / ksi');
});

test('sign and words of an uncertainty, of findings and of notes', async () => {
  const out = await called('--language', 'de', '--uncertainty', 'force=0.7%');
  // 0.7 % of 207 MPa and of 10.36 kN; two figures, zeros at the end too
  expect(out).toMatch(/Rm .* Zugfestigkeit \(u = 1,4\)/);
  expect(await called('--language', 'de', '--uncertainty', 'force=0.386%', '--overwrite')).toMatch(/Fm .* \(u = 0,040\)/);
  expect(out).toMatch(/und (ein Hinweis|\d+ Hinweise) im Bericht/);
  expect(out).not.toMatch(/fault:|caution:|in the report/);
});

describe('a plan', () => {
  const plan = (...flags: string[]) =>
    command('plan', '--family', 'structural-steel', '--round', '5', '--capacity', '25000', '--bore', '40', '--rod', '20', '--frame-compliance', '2e-5', '--stroke-volume', '200', ...flags); // prettier-ignore

  test.each(languages.filter(({ tag }) => tag !== 'en').map((one) => [one.tag, one] as const))('is all in %s', async (tag, language) => {
    const { status, out } = await plan('--language', tag);
    expect(status).toBe(0);
    for (const english of [
      'Pace',
      'dial',
      'What this frame',
      'good',
      'Findings',
      'caution:',
      'note:',
      'its limit',
      'Cautions',
      'Stop at',
      'strokes',
    ])
      expect(out).not.toContain(english);
    const { phrases, cautions } = language;
    for (const phrase of [
      'Pace sheet',
      'read the dial',
      'What this frame can answer',
      'If the frame reaches its limit first',
      'Findings',
      'caution:',
    ] as const)
      expect(out).toContain(phrases[phrase]);
    for (const one of cautionsOf('tension')) expect(out).toContain(cautions[one.tag]);
  });

  test('has pace and speeds in lbf, in and ksi where they were asked for', async () => {
    const { out } = await plan('--units', 'in-lb');
    expect(out).toMatch(/t \/ s +p \/ psi +F \/ lbf +R \/ ksi +travel \/ in/);
    expect(out).toMatch(/through yield: [\d.]+\sin\/min, [\d.]+ strokes a minute/);
    // sentences of findings keep the units of the data
    expect(out.slice(0, out.indexOf('Findings'))).not.toMatch(/ (bar|kN|MPa|mm)\b/);
  });
});

describe.each(languages.filter(({ tag }) => tag !== 'en').map((one) => [one.tag, one] as const))('in %s', (tag, { phrases, findings }) => {
  test('check says how a file was read, its findings and repairs', async () => {
    const rows = Array.from({ length: 60 }, (_, i) => `${i * 100};${i / 100};${i === 20 ? 'x' : 'note'};;${i * 100}`);
    rows.push('1;2', '6000;2;a;;1');
    writeFileSync(join(folder, 'odd.csv'), `Force;Travel;Remark;Void;Force\nN;mm;;;N\n${rows.join('\n')}\nend;of;test;;\n`);
    const { status, out } = await command(
      'check',
      join(folder, 'odd.csv'),
      '--column',
      'force=#1',
      '--unit',
      'force=kN',
      '--language',
      tag,
    );
    expect(status).toBe(0);
    for (const phrase of [
      'Reading',
      'Findings about the record',
      'What repairs would have done (none was made)',
      'force',
      'travel',
      'it is empty',
      'caution:',
    ] as const)
      // prettier-ignore
      expect(out).toContain(phrases[phrase]);
    expect(out).toContain(phrases['{unit} (as told)']!.replace('{unit}', 'kN'));
    // only names of the file stay
    const own = out.replace(join(folder, 'odd.csv'), '').replace(/["“„«].*?["”“»]/g, '');
    expect(own).not.toMatch(/\b(not|column|rows|separator|left out|cells|number|every|another|note:|record)\b/i);
    expect(out).toContain(findings['time-missing'].remedy);
  });

  test('replicates and compare', async () => {
    const results = [280, 282, 300].map((top, k) => analyseTension(caseT1(801, top), roundPiece, { test: { identity: `P${k + 1}` } }));
    results.forEach((one, k) => {
      writeFileSync(join(folder, `p${k}.result`), toJson(one));
    });
    const paths = [0, 1, 2].map((k) => join(folder, `p${k}.result`));
    const together = (await command('replicates', ...paths, '--language', tag)).out;
    for (const phrase of ['Tension test', 'Symbol', 'Mean', 'Smallest', 'Limit', 'Findings'] as const)
      expect(together).toContain(phrases[phrase]);
    expect(together).not.toMatch(/\b(tests|mean|interval|standard|least|limit:|caution:|note:)\b/i);
    const both = (await command('compare', paths[0]!, paths[2]!, '--language', tag, '--units', 'in-lb')).out;
    for (const phrase of ['Difference', 'What differs', 'Record', 'Findings'] as const) expect(both).toContain(phrases[phrase]);
    expect(both).toMatch(/Rm +ksi/);
    expect(both).not.toMatch(/\b(difference|what|findings|note:|caution:|differs)\b/i);
  });
});
