import { Linter } from 'eslint';
import { readdirSync, readFileSync } from 'node:fs';
import ts from 'typescript-eslint';
import { describe, expect, test } from 'vitest';
import { floorRules, floors, subpaths } from '../floors.js';

/** Messages of the floor rules for a line of code in a file. */
const lint = (code: string, file: string): string[] =>
  new Linter()
    .verify(code, [{ files: ['**/*.ts'], languageOptions: { parser: ts.parser } }, ...floorRules] as Linter.Config[], file)
    .map(({ message }) => message);

describe('a folder imports only from floors below it, through their door', () => {
  test.each([
    ["import { a } from '../methods/index.js';", 'src/curve/a.ts'],
    ["import type { A } from '../methods/index.js';", 'src/curve/a.ts'],
    ["import { a } from '../curve/proofStrength.js';", 'src/methods/a.ts'],
    ["import { a } from '../simulate/index.js';", 'src/methods/a.ts'],
    ["import { a } from '../simulate/index.js';", 'src/report/a.ts'],
    ["import { a } from '../teaching/index.js';", 'src/report/a.ts'],
    ["import { a } from 'testpiece/curve';", 'src/methods/a.ts'],
    ["export const a = import('../methods/index.js');", 'src/curve/a.ts'],
    ["export { a } from './curve/proofStrength.js';", 'src/index.ts'],
  ])('%s in %s is refused', (code, file) => {
    expect(lint(code, file)).toHaveLength(1);
  });

  test.each([
    ["import { a } from '../curve/index.js';", 'src/methods/a.ts'],
    ["import { a } from './other.js';", 'src/methods/a.ts'],
    ["import { a } from '../simulate/index.js';", 'src/cli/a.ts'],
    ["import { a } from '../simulate/index.js';", 'src/teaching/a.ts'],
    ["export * from './curve/index.js';", 'src/index.ts'],
  ])('%s in %s is allowed', (code, file) => {
    expect(lint(code, file)).toEqual([]);
  });
});

test('every folder of src is a floor, and every public floor has its subpath', () => {
  const folders = readdirSync('src', { withFileTypes: true }).filter((entry) => entry.isDirectory() && entry.name !== 'ambient');
  expect(folders.map(({ name }) => name).sort()).toEqual([...floors].sort());
  const { exports } = JSON.parse(readFileSync('package.json', 'utf8')) as { exports: Record<string, unknown> };
  expect(Object.keys(exports).sort()).toEqual(
    ['.', './package.json', './schema/result.schema.json', './vectors/*.json', ...subpaths.map((name) => `./${name}`)].sort(),
  );
});
