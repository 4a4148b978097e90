import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

const sources = readdirSync('src', { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('.ts'))
  .map((file) => ({ file, text: readFileSync(`src/${file}`, 'utf8') }));

test('every test that a page names as its check exists, and calls the function', () => {
  const named = sources.flatMap(({ file, text }) =>
    [...text.replaceAll(/\n \* ?/g, ' ').matchAll(/`(test\/[\w/.-]+\.ts)`/g)].map(([, path]) => ({ file, path: path! })),
  );
  expect(named.length).toBeGreaterThan(50);
  const missing = named.filter(({ path }) => !existsSync(path));
  expect(missing).toEqual([]);
  const silent = named.filter(({ file, path }) => {
    const name = /(\w+)\.ts$/.exec(file)![1]!;
    return !new RegExp(`\\b${name}\\b`).test(readFileSync(path, 'utf8'));
  });
  expect(silent).toEqual([]);
});
