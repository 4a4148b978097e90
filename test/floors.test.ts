import { Linter } from 'eslint';
import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { preProcessFile } from 'typescript';
import ts from 'typescript-eslint';
import { describe, expect, test } from 'vitest';
import { floorRules, floors, rooms, subpaths } from '../floors.js';
import { circles } from './support/circles.js';

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
    ["import { a } from '../../methods/index.js';", 'src/curve/window/a.ts'],
    ["import { a } from '../../record/checks/clock.js';", 'src/curve/window/a.ts'],
    ["import { a } from '../window/deeper/a.js';", 'src/curve/modulus/a.ts'],
    ["import { a } from '../index.js';", 'src/curve/window/a.ts'],
    ["import { a } from '../modulus/a.js';", 'src/curve/window/a.ts'],
    ["import type { A } from '../modulus/a.js';", 'src/curve/window/a.ts'],
    ["import { a } from './window/a.js';", 'src/curve/a.ts'],
  ])('%s in %s is refused', (code, file) => {
    expect(lint(code, file)).toHaveLength(1);
  });

  test.each([
    ["import { a } from '../curve/index.js';", 'src/methods/a.ts'],
    ["import { a } from './other.js';", 'src/methods/a.ts'],
    ["import { a } from '../simulate/index.js';", 'src/cli/a.ts'],
    ["import { a } from '../simulate/index.js';", 'src/teaching/a.ts'],
    ["export * from './curve/index.js';", 'src/index.ts'],
    ["export { a } from './window/a.js';", 'src/curve/index.ts'],
    ["import { a } from '../window/a.js';", 'src/curve/modulus/a.ts'],
    ["import { a } from '../requireCurve.js';", 'src/curve/window/a.ts'],
    ["import { a } from '../../numeric/index.js';", 'src/curve/window/a.ts'],
  ])('%s in %s is allowed', (code, file) => {
    expect(lint(code, file)).toEqual([]);
  });
});

const foldersOf = (path: string): string[] =>
  readdirSync(path, { withFileTypes: true }).flatMap((entry) => (entry.isDirectory() ? [entry.name] : []));

test('every folder of src is a floor, and every public floor has its subpath', () => {
  const folders = foldersOf('src').filter((name) => name !== 'ambient');
  expect(folders.sort()).toEqual([...floors].sort());
  const { exports } = JSON.parse(readFileSync('package.json', 'utf8')) as { exports: Record<string, unknown> };
  expect(Object.keys(exports).sort()).toEqual(
    ['.', './package.json', './schema/result.schema.json', './vectors/*.json', ...subpaths.map((name) => `./${name}`)].sort(),
  );
});

test('every folder of a floor is a room, in the order of the table for contributors', () => {
  const own = floors.flatMap((floor) => {
    const folders = foldersOf(`src/${floor}`);
    return folders.length > 0 ? [[floor, folders.sort()]] : [];
  });
  expect(Object.fromEntries(own)).toEqual(Object.fromEntries(Object.entries(rooms).map(([floor, names]) => [floor, [...names].sort()])));
  const guide = readFileSync('DEVELOPERS.md', 'utf8');
  for (const [floor, names] of Object.entries(rooms)) {
    const [, row = ''] = new RegExp(`^\\| floor \\| rooms[^]*?^\\| \`${floor}\` \\| (.*) \\|$`, 'm').exec(guide) ?? [];
    expect([...row.matchAll(/`(\w+)`/g)].map(([, name]) => name)).toEqual(names);
  }
});

test('no files import each other in a circle, types included', () => {
  expect(circles(new Map(Object.entries({ a: ['b', 'd'], b: ['c'], c: ['d'], d: [] })))).toEqual([]);
  expect(circles(new Map(Object.entries({ a: ['b'], b: ['c', 'd'], c: ['b'], d: ['d'] })))).toEqual([
    ['b', 'c', 'b'],
    ['d', 'd'],
  ]);
  const files = readdirSync('src', { recursive: true }).map((file) => join('src', String(file)));
  const imports = files
    .filter((file) => file.endsWith('.ts'))
    .map((file): [string, string[]] => {
      const { importedFiles } = preProcessFile(readFileSync(file, 'utf8'));
      return [file, importedFiles.map(({ fileName }) => join(dirname(file), fileName).replace(/\.js$/, '.ts'))];
    });
  expect(imports.flatMap(([, named]) => named).filter((file) => file === join('src', 'base', 'index.ts')).length).toBeGreaterThan(100);
  expect(circles(new Map(imports))).toEqual([]);
});

test('what is internal leaves a public floor by a line that says so: the declarations of the package are made without it', () => {
  const open: string[] = [];
  for (const floor of subpaths) {
    const doorway = readFileSync(`src/${floor}/index.ts`, 'utf8');
    for (const [, internal, names, file] of doorway.matchAll(
      /(\/\*\* @internal \*\/\n)?export (?:type )?\{([^}]*)\} from '\.\/([^']+)\.js'/g,
    )) {
      if (internal) continue;
      const source = readFileSync(`src/${floor}/${file}.ts`, 'utf8');
      for (const name of names!.split(',').map((one) => one.trim().replace(/^type /, ''))) {
        const [, comment] =
          new RegExp(`(/\\*\\*(?:(?!\\*/)[^])*\\*/)\\nexport (?:\\w+ )*(?:function|const|interface|type) ${name}\\b`).exec(source) ?? [];
        if (comment?.includes('@internal')) open.push(`${floor}: ${name}`);
      }
    }
  }
  expect(open).toEqual([]);
});
