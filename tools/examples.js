/** Writes test/examples.test.ts: every `@example` of src/ as a test, each `value; // => number` to half of its last digit. */
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { subpaths } from '../floors.js';

const literal = /(['"`]).*?\1|[a-z_$][\w$]*|-?\d+(?:\.(\d+))?(?:e([+-]?\d+))?/gi;
const close = (word, _, decimals, exponent) =>
  /^-?\d/.test(word) ? `expect.closeTo(${word}, ${decimals ? decimals.length - (exponent ?? 0) : 9 - (exponent ?? 0)})` : word;
const check = (_, source, value) => `expect(plain(${source})).toEqual(${value.replace(literal, close)});`;

const lines = [
  "import { expect, test } from 'vitest';",
  'const plain = (value: unknown) => (ArrayBuffer.isView(value) ? Array.from(value as Float64Array) : value);',
];
for (const floor of subpaths) {
  for (const file of readdirSync(`src/${floor}`).filter((one) => one.endsWith('.ts'))) {
    const path = `src/${floor}/${file}`;
    const text = readFileSync(path, 'utf8');
    if (file === 'index.ts') {
      const open = text.replace(/\/\*\* @internal \*\/\nexport [^;]*;/g, '');
      for (const [, names] of open.matchAll(/export ((type )?\{[^}]*\})/g))
        lines.unshift(`import ${names} from '../src/${floor}/index.js';`);
      continue;
    }
    const exported = [...text.matchAll(/(\/\*\*(?:(?!\*\/)[^])*\*\/\n)?export (?:async )?function (\w+)/g)];
    // of an overloaded function the first signature carries the comment
    const shown = new Set(exported.filter(([, comment]) => /@example|@internal/.test(comment ?? '')).map(([, , name]) => name));
    const bare = exported.find(([, , name]) => !shown.has(name));
    if (bare) throw new Error(`${path}: ${bare[2]} has no @example`);
    for (const { 1: block, index } of text.matchAll(/@example[^`@]*```ts\n([^]*?)```/g)) {
      const code = block.replace(/^ *\* ?/gm, '').replace(/^(.*); *\/\/ => (.*)$/gm, check);
      lines.push(`test('${path}:${text.slice(0, index).split('\n').length}', async () => {`, code, '});');
    }
  }
}
writeFileSync('test/examples.test.ts', `${lines.join('\n')}\n`);
