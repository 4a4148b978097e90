/** The public functions of every subpath, and the arguments that each is called with in its own `@example`. */
import { readdirSync, readFileSync } from 'node:fs';
import ts from 'typescript';
import { subpaths } from '../../floors.js';
import { withoutInternal } from '../../tools/public-names.js';

type AnyFunction = (...args: unknown[]) => unknown;

/** One public function with the calls of its example. */
export interface PublicFunction {
  readonly name: string;
  readonly call: AnyFunction;
  /** Names of its parameters. */
  readonly parameters: readonly ts.ParameterDeclaration[];
  /** Arguments of each call in its example. */
  readonly calls: readonly (readonly unknown[])[];
}

const AsyncFunction = (async () => {}).constructor as new (...names: string[]) => AnyFunction;

/** Names that a folder's door opens to the public: not those behind `@internal`. */
function publicNames(floor: string): string[] {
  const open = withoutInternal(readFileSync(`src/${floor}/index.ts`, 'utf8'));
  return [...open.matchAll(/export \{([^}]*)\}/g)].flatMap(([, list]) =>
    list!
      .split(',')
      .map((name) => name.trim())
      .filter((name) => name !== '' && !name.startsWith('type ')),
  );
}

/** Declaration and first example of every exported function of a folder. */
function declared(program: ts.Program, floor: string): Map<string, { declaration: ts.FunctionDeclaration; example: string }> {
  const found = new Map<string, { declaration: ts.FunctionDeclaration; example: string }>();
  for (const file of readdirSync(`src/${floor}`, { recursive: true, encoding: 'utf8' }).filter(
    (one) => one.endsWith('.ts') && one !== 'index.ts',
  )) {
    const source = program.getSourceFile(`src/${floor}/${file}`)!;
    for (const node of source.statements) {
      if (!ts.isFunctionDeclaration(node) || !node.name || found.has(node.name.text)) continue;
      const comment = source.text.slice(node.getFullStart(), node.getStart());
      const example = [...comment.matchAll(/@example[^`@]*```ts\n([^]*?)```/g)]
        .map(([, code]) => code!.replace(/^ *\* ?/gm, ''))
        .join('\n');
      found.set(node.name.text, { declaration: node, example });
    }
  }
  return found;
}

/** The program of the library, for the types of parameters; what comes from packages is not looked up, since no parameter needs it. */
export function libraryProgram(): ts.Program {
  const roots = subpaths.concat('numeric').flatMap((floor) =>
    readdirSync(`src/${floor}`)
      .filter((file) => file.endsWith('.ts'))
      .map((file) => `src/${floor}/${file}`),
  );
  const options: ts.CompilerOptions = {
    target: ts.ScriptTarget.ES2022,
    lib: ['lib.es2023.d.ts'],
    module: ts.ModuleKind.NodeNext,
    strict: true,
    types: [],
    noEmit: true,
  };
  const host = ts.createCompilerHost(options);
  host.resolveModuleNameLiterals = (literals, from) =>
    literals.map(({ text }) => (text.startsWith('.') ? ts.resolveModuleName(text, from, options, host) : { resolvedModule: undefined }));
  return ts.createProgram(roots, options, host);
}

/** Runs every example with its function under watch. */
export async function publicFunctions(program: ts.Program): Promise<PublicFunction[]> {
  const scope = new Map<string, unknown>();
  const functions: { name: string; call: AnyFunction; floor: string }[] = [];
  for (const floor of subpaths) {
    const door = (await import(`../../src/${floor}/index.ts`)) as Record<string, unknown>;
    for (const name of publicNames(floor)) {
      scope.set(name, door[name]);
      if (typeof door[name] === 'function') functions.push({ name, call: door[name] as AnyFunction, floor });
    }
  }
  const all = new Map(subpaths.map((floor) => [floor, declared(program, floor)]));
  const found: PublicFunction[] = [];
  for (const { name, call, floor } of functions) {
    const one = all.get(floor)!.get(name);
    const calls: unknown[][] = [];
    if (one?.example) {
      const watched: AnyFunction = (...args) => {
        calls.push(args);
        return call(...args);
      };
      const { outputText } = ts.transpileModule(one.example, { compilerOptions: { target: ts.ScriptTarget.ES2022 } });
      const names = [...scope.keys()];
      await new AsyncFunction(...names, `{${outputText}\n}`)(...names.map((each) => (each === name ? watched : scope.get(each))));
    }
    found.push({ name, call, parameters: one ? [...one.declaration.parameters] : [], calls });
  }
  return found;
}
