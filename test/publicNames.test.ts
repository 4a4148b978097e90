import { readdirSync } from 'node:fs';
import { createRequire } from 'node:module';
import { resolve } from 'node:path';
import ts from 'typescript';
import { expect, test } from 'vitest';
import { subpaths } from '../floors.js';

const require = createRequire(import.meta.url);

const doors = ['', ...subpaths.map((name) => `/${name}`)];
const declarationOf = (door: string): string => resolve(`dist${door}/index.d.ts`);
const program = ts.createProgram(doors.map(declarationOf), { skipLibCheck: true, types: [], noLib: true });
const checker = program.getTypeChecker();

/** Names of values that the declarations of a door open; types are not there when the code runs. */
function declaredValues(door: string): string[] {
  const source = checker.getSymbolAtLocation(program.getSourceFile(declarationOf(door))!)!;
  return checker.getExportsOfModule(source).flatMap((symbol) => {
    const { flags } = symbol.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(symbol) : symbol;
    return flags & ts.SymbolFlags.Value ? [symbol.name] : [];
  });
}

test.each(doors)('testpiece%s has the names of its declarations and no more, imported and required', async (door) => {
  const names = declaredValues(door).sort();
  expect(names.length).toBeGreaterThan(0);
  const imported = (await import(resolve(`dist/node${door}/index.js`))) as object;
  expect(Object.keys(imported).sort()).toEqual(names);
  expect(Object.keys(require(resolve(`dist${door}/index.cjs`)) as object).sort()).toEqual(names);
});

test('every door of the package is among them', () => {
  const folders = readdirSync('dist/node', { withFileTypes: true }).flatMap((one) => (one.isDirectory() ? [`/${one.name}`] : []));
  expect(folders.sort()).toEqual(doors.slice(1).sort());
});
