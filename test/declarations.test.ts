import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

// a change of the public declarations is meant: `npx vitest run declarations -u`
test('public declarations', async () => {
  const files = readdirSync('dist', { recursive: true })
    .map(String)
    .filter((file) => file.endsWith('.d.ts'));
  const texts = files
    .map((file) => `// ${file}\n${readFileSync(`dist/${file}`, 'utf8')}`)
    .map((text) => text.replace(/^ *\/\*\*[^]*?\*\/\n/gm, '').replace(/-[\w-]{8}(?=\.(d\.ts|js))/g, ''));
  await expect(texts.sort().join('\n')).toMatchFileSnapshot('declarations.txt');
});
