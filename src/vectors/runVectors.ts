import { InputError, requireArray, requireFinite, requireList, requireOneOf, requireOptions, requirePositive } from '../base/index.js';
import type { CheckVector, ExpectedValue, VectorCheck, VectorStatus } from './CheckVector.js';
import { isMissing, runCall, valueAt } from './runCall.js';

const FUNCTION = 'runVectors';
const statuses: readonly VectorStatus[] = ['published', 'from memory', 'second derivation'];

function requireWord(path: string, value: unknown): string {
  if (typeof value !== 'string' || value.trim() === '')
    throw new InputError(FUNCTION, path, value === undefined ? 'missing' : 'wrong-type', 'must be a text', value);
  return value;
}

/** An expected value that is sound. */
function requireExpected(path: string, expected: ExpectedValue): ExpectedValue {
  requireOptions(FUNCTION, expected, ['at', 'value', 'tolerance', 'unit'], path);
  requireFinite(FUNCTION, `${path}.value`, expected.value);
  requirePositive(FUNCTION, `${path}.tolerance`, expected.tolerance);
  for (const key of ['at', 'unit'] as const) if (expected[key] !== undefined) requireWord(`${path}.${key}`, expected[key]);
  return expected;
}

/** The checks of one vector. */
function check(path: string, vector: CheckVector): VectorCheck[] {
  requireOptions(FUNCTION, vector, ['id', 'function', 'arguments', 'expected', 'source', 'status'], path);
  const id = requireWord(`${path}.id`, vector.id);
  requireWord(`${path}.source`, vector.source);
  requireOneOf(FUNCTION, `${path}.status`, vector.status, statuses);
  const values = requireList(FUNCTION, `${path}.expected`, vector.expected).map((one, i) => requireExpected(`${path}.expected[${i}]`, one));
  const result = runCall(path, { function: vector.function, arguments: vector.arguments });
  return values.map(({ at, value, tolerance, unit }) => {
    const got = valueAt(result, at);
    const known = typeof got === 'number' && Number.isFinite(got);
    // the last bit of binary rounding is no reason to fail
    const passed = known && Math.abs(got - value) <= tolerance * (1 + 1e-9);
    return {
      id,
      function: vector.function,
      ...(at === undefined ? {} : { at }),
      expected: value,
      tolerance,
      ...(unit === undefined ? {} : { unit }),
      ...(known ? { got } : {}),
      passed,
      ...(known ? {} : { problem: isMissing(result) ? result.withoutValue : `no number at ${at ?? 'the result'}` }),
    };
  });
}

/**
 * Runs check vectors: calls each function with the arguments that stand there and compares what comes with what is expected.
 *
 * $$ \lvert y - y_0 \rvert \le \delta $$
 *
 * @remarks
 * The vectors of the handbook are in the package as JSON, a file for each topic (`testpiece/vectors/sections.json` and so on); the command
 * `testpiece vectors` runs them all. Each says its source and whether the number was seen in print, is from memory, or was derived a second
 * way. A vector of your own has the same form: arguments are plain data, and a value with `function` and `arguments` in it is a call, made
 * first. A vector whose function refuses its arguments, or finds nothing, has failed and says why; it does not throw.
 *
 * @param vectors - Vectors, in any number.
 * @returns One check for each expected value, in their order, with the number that came.
 * @throws {@link InputError} `missing`, `wrong-type`, `not-finite`, `not-positive`, `out-of-range`, `unknown-option` for what is no vector,
 * and for a name that is no function of the library.
 *
 * @example
 * ```ts
 * const disc: CheckVector = {
 *   id: 'disc',
 *   function: 'round',
 *   arguments: [{ diameter: 10 }],
 *   expected: [{ at: 'area', value: 78.5398, tolerance: 0.00005, unit: 'mm²' }],
 *   source: 'area of a disc',
 *   status: 'second derivation',
 * };
 * runVectors([disc])[0]?.passed; // => true
 * runVectors([disc])[0]?.got; // => 78.53982
 * ```
 *
 * @see Common practice: check values that travel with a formula. Checked in `test/vectors/runVectors.test.ts`.
 */
export function runVectors(vectors: readonly CheckVector[]): VectorCheck[] {
  return requireArray(FUNCTION, 'vectors', vectors).flatMap((vector, i) => check(`vectors[${i}]`, vector));
}
