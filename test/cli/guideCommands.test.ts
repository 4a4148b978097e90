import { copyFileSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { command } from '../support/command.js';

const SHIPPED = 'pull-07.csv';
let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'testpiece-'));
  copyFileSync(`examples/${SHIPPED}`, join(folder, SHIPPED));
});
afterEach(() => {
  rmSync(folder, { recursive: true });
});

/** Calls that name the shipped file, in the `sh` blocks of guides and in the examples of help texts. */
const callsIn = (text: string): string[] =>
  [...text.matchAll(/^\s*(?:npx )?testpiece (.*)$/gm)].flatMap(([, call]) => (call!.includes(` ${SHIPPED}`) ? [call!.trim()] : []));
const pages = ['README.md', ...readdirSync('docs').flatMap((name) => (name.endsWith('.md') ? [join('docs', name)] : []))];
const guides = pages.flatMap((guide) =>
  [...readFileSync(guide, 'utf8').matchAll(/^```sh\n([^]*?)^```$/gm)].flatMap(([, block]) => callsIn(block!)),
);
const helps = await Promise.all(['check', 'report'].map(async (name) => callsIn((await command(name, '--help')).out)));

test.each([...new Set([...guides, ...helps.flat()])])('%s', async (call) => {
  const { status, error } = await command(...call.split(' ').map((word) => (word === SHIPPED ? join(folder, SHIPPED) : word)));
  expect({ status, error }).toEqual({ status: 0, error: '' });
});

test('guides and help texts have such calls', () => {
  expect(guides.length).toBeGreaterThan(3);
  for (const calls of helps) expect(calls.length).toBeGreaterThan(0);
});
