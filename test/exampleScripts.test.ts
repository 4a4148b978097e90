import { execFileSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { expect, test } from 'vitest';

// each script of examples/ beside the output that it must print; made anew with `-u`
const scripts = readdirSync('examples', { recursive: true })
  .map(String)
  .filter((name) => name.endsWith('.js') && !name.endsWith('class.js'));

test.each(scripts)('examples/%s prints what stands beside it', async (script) => {
  const folder = mkdtempSync(join(tmpdir(), 'testpiece-'));
  const output = execFileSync(process.execPath, [resolve('examples', script)], { cwd: folder, encoding: 'utf8' });
  await expect(output).toMatchFileSnapshot(resolve('examples', script.replace(/\.js$/, '.expected.txt')));
});

test('the demo leaves a file, a page and data for each piece, all marked as invented', () => {
  const folder = mkdtempSync(join(tmpdir(), 'testpiece-'));
  execFileSync(process.execPath, [resolve('examples/demo/run.js')], { cwd: folder });
  const files = readdirSync(join(folder, 'demo-output'));
  expect(files).toHaveLength(15);
  for (const file of files) expect(readFileSync(join(folder, 'demo-output', file), 'utf8')).toMatch(/invented/i);
});

test('examples/pull-07.csv is what the logger of the class writes of its first piece', async () => {
  const code = `
    import { simulateTension } from 'testpiece/simulate';
    import { asLogged, pieces } from './examples/demo/class.js';
    const { name, about, ...scenario } = pieces[0];
    process.stdout.write(asLogged(simulateTension(scenario).pressureRecord, about));`;
  const written = execFileSync(process.execPath, ['--input-type=module', '--eval', code], { encoding: 'utf8' });
  await expect(written).toMatchFileSnapshot(resolve('examples/pull-07.csv'));
});
