import { readFileSync } from 'node:fs';
import { posix } from 'node:path';
import { globSync } from 'tinyglobby';
import { expect, test } from 'vitest';

const { files } = JSON.parse(readFileSync('package.json', 'utf8')) as { readonly files: readonly string[] };
// npm ships these whatever `files` says
const shipped = new Set([...globSync([...files], { ignore: 'dist/**' }), 'README.md', 'LICENSE', 'package.json']);
const pages = [...shipped].filter((file) => file.endsWith('.md'));

/** What stays in the repository, and the page that says so. */
const left = /^docs\/gallery\//;
const sayingSo = { 'docs/figures.md': 'the package leaves them out' };

/** Relative links and pictures of a page, as files. */
const linksOf = (page: string): string[] =>
  [...readFileSync(page, 'utf8').matchAll(/\]\(([^)#\s]+)(?:#[^)]*)?\)/g)]
    .map(([, to = '']) => to)
    .filter((to) => !/^[a-z]+:/.test(to))
    .map((to) => posix.join(posix.dirname(page), to));

test('what a page of the package links to is in the package, or the page says that it is not', () => {
  expect(pages.length).toBeGreaterThan(25);
  const dead = pages.flatMap((page) =>
    linksOf(page)
      .filter((to) => !shipped.has(to) && !(left.test(to) && page in sayingSo))
      .map((to) => `${page}: ${to}`),
  );
  expect(dead).toEqual([]);
  for (const [page, words] of Object.entries(sayingSo)) expect(readFileSync(page, 'utf8')).toContain(words);
});
