/**
 * Writes test/examples.test.ts: every `@example` of src/ as a test, each `value; // => number` to half of its last digit; and every block of code
 * in the guides. A block that declares something (`declare const record`) stands for data that only a reader has, so it is compiled and not run.
 */
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { subpaths } from '../floors.js';
import { withoutInternal } from './public-names.js';

const literal = /(['"`]).*?\1|[a-z_$][\w$]*|-?\d+(?:\.(\d+))?(?:e([+-]?\d+))?/gi;
const close = (word, _, decimals, exponent) =>
  /^-?\d/.test(word) ? `expect.closeTo(${word}, ${decimals ? decimals.length - (exponent ?? 0) : 9 - (exponent ?? 0)})` : word;
const check = (_, source, value) =>
  `expect(plain(${source.replace(/^console\.log\((.*)\)$/, '$1')})).toEqual(${value.replace(literal, close)});`;
const checked = (code) => code.replace(/^(.*); *\/\/ => (.*)$/gm, check);
/** A guide's code as the body of a function: what it imports from the package is in scope, and what it declares is only a type. */
const body = (code) =>
  checked(code)
    .replace(/^import [^;]*from 'testpiece[^']*';\n/gm, '')
    .replaceAll('node_modules/testpiece/', '') // what the package ships stands here in the repository
    .replace(/^import (\{[^}]*\}) from ('[^']*');/gm, 'const $1 = await import($2);')
    .replace(/^declare const (\w+): ([^;]+);/gm, 'const $1 = undefined as unknown as $2;');

const lines = [
  "import { expect, test } from 'vitest';",
  'const plain = (value: unknown) => (ArrayBuffer.isView(value) ? Array.from(value as Float64Array) : value);',
];
for (const floor of subpaths) {
  for (const file of readdirSync(`src/${floor}`, { recursive: true })
    .sort()
    .filter((one) => one.endsWith('.ts'))) {
    const path = `src/${floor}/${file}`;
    const text = readFileSync(path, 'utf8');
    if (file === 'index.ts') {
      for (const [, names] of withoutInternal(text).matchAll(/export ((type )?\{[^}]*\})/g))
        lines.unshift(`import ${names} from '../src/${floor}/index.js';`);
      continue;
    }
    const exported = [...text.matchAll(/(\/\*\*(?:(?!\*\/)[^])*\*\/\n)?export (?:async )?function (\w+)/g)];
    // of an overloaded function the first signature carries the comment
    const shown = new Set(exported.filter(([, comment]) => /@example|@internal/.test(comment ?? '')).map(([, , name]) => name));
    const bare = exported.find(([, , name]) => !shown.has(name));
    if (bare) throw new Error(`${path}: ${bare[2]} has no @example`);
    for (const { 1: block, index } of text.matchAll(/@example[^`@]*```ts\n([^]*?)```/g)) {
      const code = checked(block.replace(/^ *\* ?/gm, ''));
      lines.push(`test('${path}:${text.slice(0, index).split('\n').length}', async () => {`, code, '});');
    }
  }
}
const guides = readdirSync('docs').filter((one) => one.endsWith('.md'));
for (const path of ['README.md', ...guides.map((one) => `docs/${one}`)]) {
  const text = readFileSync(path, 'utf8');
  for (const { 1: code, index } of text.matchAll(/^```ts\n([^]*?)^```/gm)) {
    const place = `${path}:${text.slice(0, index).split('\n').length}`;
    lines.push(/^declare /m.test(code) ? `void (async () => { // ${place}` : `test('${place}', async () => {`, body(code), '});');
  }
}
writeFileSync('test/examples.test.ts', `${lines.join('\n')}\n`);
