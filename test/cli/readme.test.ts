import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { command } from '../support/command.js';

// the first result of a newcomer; made anew with `-u`
test('the first command of the README prints what stands below it', async () => {
  const readme = readFileSync('README.md', 'utf8');
  const [, before, line, between, after] =
    /^([^]*?\nnpx testpiece )(report node_modules\/testpiece\/[^\n]*)( --output \.\n```\n\n```text\n)[^]*?(```\n[^]*)$/.exec(readme)!;
  const folder = mkdtempSync(join(tmpdir(), 'testpiece-'));
  const { status, out, error } = await command(...line!.replace('node_modules/testpiece/', '').split(' '), '--output', folder);
  rmSync(folder, { recursive: true });
  expect({ status, error }).toEqual({ status: 0, error: '' });
  const printed = out.replaceAll(`${folder}/`, '').replace(/^\n+/, '');
  await expect([before, line, between, printed, after].join('')).toMatchFileSnapshot('../../README.md');
});
