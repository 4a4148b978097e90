/**
 * Walks every page of site/ and fails on a link, anchor, image or entry of the search that leads nowhere, and on whatever a page would fetch from
 * outside; then the relative links of README, DEVELOPERS and docs/ to files and headings of the repository.
 */
import { Buffer } from 'node:buffer';
import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { posix } from 'node:path';
import { inflateSync } from 'node:zlib';
import { parse } from 'parse5';

const site = process.argv[2] ?? 'site';
const problems = [];
const files = readdirSync(site, { recursive: true, encoding: 'utf8' }).filter((file) => statSync(`${site}/${file}`).isFile());
const known = new Set(files);

/** Every element of a page with its attributes. */
function* elements(node) {
  for (const child of node.childNodes ?? []) {
    if (child.attrs) yield { tag: child.tagName, at: Object.fromEntries(child.attrs.map(({ name, value }) => [name, value])) };
    yield* elements(child.content ?? child);
  }
}

const pages = new Map(
  files
    .filter((file) => file.endsWith('.html'))
    .map((file) => {
      const all = [...elements(parse(readFileSync(`${site}/${file}`, 'utf8')))];
      const ids = new Set(all.flatMap(({ at }) => [at.id, at.name].filter((one) => one !== undefined)));
      return [file, { all, ids }];
    }),
);
const svgIds = (file) => new Set([...readFileSync(`${site}/${file}`, 'utf8').matchAll(/\bid="([^"]+)"/g)].map(([, id]) => id));

/** Says what is wrong with an address that stands in a file of the site. */
function check(from, address, fetched) {
  if (address.startsWith('data:') && fetched) return;
  if (/^[a-z][a-z0-9+.-]*:|^\/\//i.test(address)) {
    if (fetched || !/^(https?|mailto):/i.test(address)) problems.push(`${from}: asks outside for ${address}`);
    return;
  }
  const [path, anchor] = address.split('#');
  const target = path === '' ? from : posix.join(posix.dirname(from), decodeURIComponent(path.split('?')[0]));
  if (!known.has(target)) problems.push(`${from}: no ${address}`);
  else if (anchor) {
    const ids = pages.get(target)?.ids ?? (target.endsWith('.svg') ? svgIds(target) : undefined);
    if (ids && !ids.has(decodeURIComponent(anchor))) problems.push(`${from}: no anchor ${address}`);
  }
}

const fetching = new Set(['img', 'script', 'iframe', 'source', 'video', 'audio', 'embed', 'use', 'image', 'track', 'input']);
let links = 0;
for (const [file, { all }] of pages)
  for (const { tag, at } of all) {
    const addresses = [
      at.href,
      at['xlink:href'],
      at.src,
      at.poster,
      at.data,
      ...(at.srcset ?? '').split(',').map((one) => one.trim().split(' ')[0]),
    ];
    for (const address of addresses.filter(Boolean)) {
      links += 1;
      check(file, address, fetching.has(tag) || tag === 'link');
    }
    for (const [, address] of (at.style ?? '').matchAll(/url\(['"]?([^'")]+)/g)) check(file, address, true);
  }

for (const file of files.filter((one) => one.endsWith('.css')))
  for (const [, address] of readFileSync(`${site}/${file}`, 'utf8').matchAll(/(?:url\(|@import\s+)['"]?([^'")\s]+)/g))
    // KaTeX names older formats of its fonts beside the one that every browser of today takes
    if (!/\.(ttf|woff)$/.test(address)) check(file, address, true);

/** What is packed into a script of TypeDoc's. */
const unpacked = (file) =>
  JSON.parse(inflateSync(Buffer.from(/"([^"]*)"/.exec(readFileSync(`${site}/${file}`, 'utf8'))[1], 'base64')).toString());
const { rows } = unpacked('assets/search.js');
for (const { url } of rows) check('index.html', url, false);

const slug = (heading) =>
  heading
    .trim()
    .toLowerCase()
    .replace(/[^\p{L}\p{N}\s_-]/gu, '')
    .replace(/\s/g, '-');
const headings = (file) => new Set([...readFileSync(file, 'utf8').matchAll(/^#+ (.*)$/gm)].map(([, heading]) => slug(heading)));
const texts = [
  'README.md',
  'DEVELOPERS.md',
  'test/handbook/SOURCES.md',
  ...readdirSync('docs')
    .filter((one) => one.endsWith('.md'))
    .map((one) => `docs/${one}`),
];
for (const file of texts) {
  const text = readFileSync(file, 'utf8').replace(/```[^]*?```|`[^`\n]*`/g, '');
  for (const [, address] of text.matchAll(/\]\(([^)\s]+)\)|src="([^"]+)"/g)) {
    if (!address || /^[a-z]+:/.test(address)) continue;
    const [path, anchor] = address.split('#');
    const target = path === '' ? file : posix.join(posix.dirname(file), path);
    if (!existsSync(target)) problems.push(`${file}: no ${address}`);
    else if (anchor && target.endsWith('.md') && !headings(target).has(anchor)) problems.push(`${file}: no heading ${address}`);
  }
}

for (const one of problems) console.error(one);
console.log(`${pages.size} pages, ${links} links, ${rows.length} entries of the search, ${texts.length} texts: ${problems.length} broken`);
process.exitCode = problems.length > 0 ? 1 : 0;
