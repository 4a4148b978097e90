import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { deflateSync } from 'node:zlib';
import { expect, test } from 'vitest';

/** What the walk over a small site says. */
function walk(body: string, rows: readonly { url: string }[] = [], style = ''): { status: number | null; said: string[] } {
  const site = mkdtempSync(join(tmpdir(), 'testpiece-'));
  mkdirSync(join(site, 'assets'));
  writeFileSync(join(site, 'index.html'), `<!DOCTYPE html><html lang="en"><body id="top">${body}</body></html>`);
  writeFileSync(join(site, 'other.html'), '<!DOCTYPE html><p id="here">');
  writeFileSync(join(site, 'assets', 'book.css'), style);
  const packed = deflateSync(JSON.stringify({ rows })).toString('base64');
  writeFileSync(join(site, 'assets', 'search.js'), `window.searchData = "${packed}";`);
  const { status, stderr } = spawnSync(process.execPath, ['tools/checkLinks.js', site], { encoding: 'utf8' });
  return { status, said: stderr.split('\n').filter((line) => line !== '') };
}

test('a site whose links all lead somewhere passes, links to the world among them', () => {
  const body = '<a href="other.html#here">a</a><a href="#top">b</a><a href="https://example.org">c</a><img src="data:image/gif;base64,R0">';
  expect(walk(body, [{ url: 'other.html#here' }])).toEqual({ status: 0, said: [] });
});

test.each([
  ['a page', '<a href="none.html">a</a>', 'index.html: no none.html'],
  ['an anchor', '<a href="other.html#there">a</a>', 'index.html: no anchor other.html#there'],
  ['an anchor of its own', '<a href="#there">a</a>', 'index.html: no anchor #there'],
  ['an image', '<img src="none.png">', 'index.html: no none.png'],
  ['a script from outside', '<script src="https://example.org/a.js"></script>', 'index.html: asks outside for https://example.org/a.js'],
  ['a style from outside', '<link rel="stylesheet" href="//example.org/a.css">', 'index.html: asks outside for //example.org/a.css'],
])('%s that is not there fails', (_, body, words) => {
  expect(walk(body)).toEqual({ status: 1, said: [words] });
});

test('so does an entry of the search, and a font from outside', () => {
  expect(walk('', [{ url: 'none.html' }]).said).toEqual(['index.html: no none.html']);
  expect(walk('', [], '@import "https://example.org/a.css";').said).toEqual([
    'assets/book.css: asks outside for https://example.org/a.css',
  ]);
});
