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

const guides = [
  'README.md',
  ...readdirSync('docs')
    .filter((one) => one.endsWith('.md'))
    .map((one) => `docs/${one}`),
];

test('names, codes and flags that the guides write as code stand in the source, and the files are there', () => {
  const words = new Set(sources.flatMap(({ text }) => text.match(/[a-z][A-Za-z0-9]*(?:-[a-z]+)*/g) ?? []));
  const flags = [...sources.map(({ text }) => text), readFileSync('tools/mutate.js', 'utf8')].join('\n');
  const dead = guides.flatMap((guide) =>
    [
      ...readFileSync(guide, 'utf8')
        .replaceAll(/^```[^]*?^```/gm, '')
        .matchAll(/`([^`\n]+)`/g),
    ].flatMap(([, code]) => {
      const files = code!.match(/\b(?:bench|docs|examples|schema|src|test|tools|vectors)\/[\w/.-]+/g) ?? [];
      const names = files.length > 0 ? [] : (code!.match(/(?<![\w/.-])[a-z]+(?:[A-Z]\w*|(?:-[a-z]+)+)/g) ?? []);
      const typed = code!.match(/^--[a-z-]+/) ?? [];
      return [
        ...files.filter((file) => !existsSync(file)),
        ...names.filter((name) => !words.has(name)),
        ...typed.filter((flag) => !flags.includes(flag)),
      ].map((what) => `${guide}: ${what}`);
    }),
  );
  expect(dead).toEqual([]);
});
