import { readdirSync } from 'node:fs';
import { expect, test } from 'vitest';
import { run } from '../../src/cli/run.js';
import { type VectorCheck } from '../../src/index.js';
import { vectorsOf } from '../support/vectors.js';

async function command(...argv: string[]): Promise<{ status: number; out: string; error: string }> {
  let [out, error] = ['', ''];
  const status = await run(['vectors', ...argv], { out: (text) => (out += text), error: (text) => (error += text) });
  return { status, out, error };
}

test('runs every vector of the package, a line for each value', async () => {
  const { status, out } = await command();
  expect(status).toBe(0);
  const vectors = readdirSync('vectors').flatMap((file) => vectorsOf(file.replace(/\.json$/, '')));
  const values = vectors.flatMap(({ expected }) => expected).length;
  expect(out.split('\n').filter((line) => line.startsWith('pass'))).toHaveLength(values);
  expect(out).toContain(`${values} of ${values} values of ${vectors.length} vectors within their tolerance`);
  for (const { id } of vectors) expect(out).toContain(id);
});

test('only those of a function, as JSON', async () => {
  const { status, out } = await command('pistonArea', 'tubeStrip', '--json');
  expect(status).toBe(0);
  const checks = JSON.parse(out) as VectorCheck[];
  expect(new Set(checks.map((one) => one.function))).toEqual(new Set(['pistonArea', 'tubeStrip']));
  expect(checks.find(({ id }) => id === 'annulus-40-20')).toMatchObject({ expected: 942.478, passed: true });
});

test('a function without vectors is said', async () => {
  const { status, out, error } = await command('roundest');
  expect({ status, out }).toEqual({ status: 2, out: '' });
  expect(error).toContain("there is no check vector of 'roundest'");
});
