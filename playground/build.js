/** Builds the page as one file, playground/dist/index.html: script, worker (deflated) and style are in it, named by their hashes. */
import { createHash } from 'node:crypto';
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { deflateRawSync } from 'node:zlib';
import { build, transform } from 'esbuild';
import { bundledLicences } from '../tools/bundled-licences.js';

const here = new URL('.', import.meta.url);
const read = (name) => readFileSync(new URL(name, here), 'utf8');
const hashOf = (text) => `'sha256-${createHash('sha256').update(text).digest('base64')}'`;
mkdirSync(new URL('dist', here), { recursive: true });

/** One script that needs nothing else. */
async function bundled(name, options) {
  const { outputFiles } = await build({
    entryPoints: [new URL(name, here).pathname],
    bundle: true,
    write: false,
    minify: true,
    format: 'iife',
    platform: 'browser',
    target: 'es2022',
    charset: 'utf8',
    legalComments: 'none',
    logLevel: 'warning',
    ...options,
  });
  return outputFiles[0].text.trim();
}

const worker = await bundled('worker.ts', { plugins: [bundledLicences(new URL('dist/licences.txt', here).pathname, 'The page')] });
const script = await bundled('main.ts', { define: { WORKER: JSON.stringify(deflateRawSync(worker, { level: 9 }).toString('base64')) } });
const { code } = await transform(read('style.css'), { loader: 'css', minify: true });
const style = code.trim();
const parts = {
  '<!-- script -->': `<script>${script}</script>`,
  '<!-- style -->': `<style>${style}</style>`,
  '{script-hash}': hashOf(script),
  '{style-hash}': hashOf(style),
};
const page = Object.entries(parts).reduce((text, [place, part]) => text.replace(place, () => part), read('index.html'));
writeFileSync(new URL('dist/index.html', here), page);
console.log(`playground/dist/index.html: ${Math.round(page.length / 1000)} kB`);
