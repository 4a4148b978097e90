import { describe, expect, test } from 'vitest';
import { isInputError } from '../src/base/index.js';
import { libraryProgram, publicFunctions, type PublicFunction } from './support/exampleCalls.js';
import { absentFields, changed, madeFields, presentFields, takesList, unsound, type Mutation, type Path } from './support/mutations.js';

/** Public functions that are not called with wrong values, each with its reason. */
const exempt: Readonly<Record<string, string>> = {
  InputError: 'a class: it is what the others throw',
  plainError: 'what its error received may be anything; what is no InputError is refused in test/base',
  required: 'unwraps an outcome: its path is the reason of the failure',
  runVectors: 'a refusal of the function that a vector calls is its answer; what is no vector is refused in test/vectors',
};

const program = libraryProgram();
const checker = program.getTypeChecker();
const functions = await publicFunctions(program);

const written = (name: string, path: Path): string =>
  `${name} ${path.map((key) => (typeof key === 'number' ? `[${key}]` : `.${key}`)).join('')}`;
const shown = (value: unknown): string => String(typeof value === 'number' ? value : JSON.stringify(value)).slice(0, 40);

/** A result as JSON; null, which an option may be kept as, is what is left out. */
const told = (result: unknown): string => {
  const text: unknown = JSON.stringify(result, (_, one: unknown) => one ?? undefined);
  return typeof text === 'string' ? text : 'nothing';
};

/** What is wrong with the outcome of one wrong call; nothing where it is refused by name, or sound. */
async function violation(
  { name, call, parameters }: PublicFunction,
  args: readonly unknown[],
  { path, value, never, absent, nothing }: Mutation,
): Promise<string | undefined> {
  const what = `${written(name, [parameters[path[0] as number]!.name.getText(), ...path.slice(1)])} = ${shown(value)}`;
  let result: unknown;
  try {
    result = await call(...(changed(args, path, value) as unknown[]));
  } catch (error) {
    if (!isInputError(error)) return `${what}: throws ${String(error).slice(0, 120)}`;
    const field = [...path].reverse().find((key, i) => typeof key === 'string' || i === path.length - 1);
    const names = typeof field === 'number' ? parameters[field]!.name.getText() : String(field);
    // a field that the call did not give may need another beside it, or exclude one
    const parent = path[path.length - 2];
    const beside = typeof parent === 'number' ? parameters[parent]?.name.getText() : parent;
    const named = error.path.includes(names) || (absent === true && beside !== undefined && error.path.includes(beside));
    return !never || named ? undefined : `${what}: refused as ${error.path}`;
  }
  const places = unsound(result);
  if (places.length > 0) return `${what}: ${places[0]!} is no number`;
  if (nothing === true) {
    const without = told(await call(...(changed(args, path, undefined) as unknown[])));
    if (told(result) !== without) return `${what}: another result than without it`;
  }
  return never ? `${what}: accepted` : undefined;
}

/** Every wrong call of a function. */
function mutations({ parameters, calls }: PublicFunction): { args: readonly unknown[]; mutation: Mutation }[] {
  return calls.slice(0, 2).flatMap((args) => {
    const made = parameters.flatMap((parameter, i) => madeFields(checker, parameter, i));
    const inside = ({ path }: Mutation): boolean => made.some((one) => path.length > one.length && one.every((key, k) => key === path[k]));
    const present = args.flatMap((one, i) => presentFields(one, [i]));
    const absent = parameters
      .flatMap((parameter, i) => absentFields(checker, checker.getTypeAtLocation(parameter), args[i], [i]))
      .map((mutation) => ({ ...mutation, absent: true }));
    const signatures = checker.getTypeAtLocation(parameters[0]!.parent).getCallSignatures();
    const listed = ({ path: [place, ...rest], value }: Mutation): boolean =>
      Array.isArray(value) &&
      signatures.some(({ parameters: named }) => {
        const parameter = named[place as number];
        return parameter !== undefined && takesList(checker, checker.getTypeOfSymbol(parameter), rest);
      });
    return [...present, ...absent].filter((one) => !inside(one) && !(one.never && listed(one))).map((mutation) => ({ args, mutation }));
  });
}

test('every public function is called in its own example, or has a reason not to be', () => {
  const silent = functions.filter(({ name, calls }) => calls.length === 0 && !(name in exempt)).map(({ name }) => name);
  expect(silent).toEqual([]);
  const known = functions.map(({ name }) => name);
  expect(Object.keys(exempt).filter((name) => !known.includes(name))).toEqual([]);
  expect(known.length).toBeGreaterThan(60);
});

test('wrong values reach fields that an example gives and those that only the types know', () => {
  const tension = mutations(functions.find(({ name }) => name === 'analyseTension')!).map(({ mutation }) => mutation.path.join('.'));
  expect(tension).toEqual(expect.arrayContaining(['1.section.area', '2.frameCompliance', '2.thresholds.toeShare', '2.test.temperature']));
  expect(functions.flatMap(mutations).length).toBeGreaterThan(5000);
});

describe('a wrong argument is refused by its name, or the result is sound', () => {
  test.each(functions.filter(({ name }) => !(name in exempt)).map((one) => [one.name, one] as const))('%s', async (_, one) => {
    const found: string[] = [];
    for (const { args, mutation } of mutations(one)) {
      const wrong = await violation(one, args, mutation);
      if (wrong !== undefined) found.push(wrong);
    }
    expect(found).toEqual([]);
  });
});
