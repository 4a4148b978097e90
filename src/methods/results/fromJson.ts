import { InputError, requireOneOf } from '../../base/index.js';
import type { ReplicatesResult } from './ReplicatesResult.js';
import { resultColumns } from './resultColumns.js';
import type { TensionResult } from '../evaluation/TensionResult.js';
import type { TestResult } from './TestResult.js';
import { schemaVersion } from './toJson.js';

type AnyResult = TestResult | ReplicatesResult;

/** Methods that this version knows. */
const methods = Object.keys(resultColumns) as AnyResult['method'][];

type Fields = Record<string, unknown>;
const isFields = (one: unknown): one is Fields => typeof one === 'object' && one !== null && !Array.isArray(one);

/** The numbers of a column; what is none is refused, for a typed array would take text and emptiness for numbers. */
function columnOf(path: string, column: unknown): Float64Array {
  const values = column as readonly unknown[];
  const k = Array.isArray(column) ? values.findIndex((one) => typeof one !== 'number') : 0;
  if (k >= 0)
    throw new InputError('fromJson', `${path}[${k}]`, 'wrong-type', 'must be a number', Array.isArray(column) ? values[k] : column);
  return Float64Array.from(values as readonly number[]);
}

/** Refuses a quantity whose value or uncertainty is no number, wherever it stands. */
function requireQuantities(one: unknown, path: string): void {
  if (Array.isArray(one))
    one.forEach((item, k) => {
      requireQuantities(item, `${path}[${k}]`);
    });
  // the numbers of a column are checked where it is made
  if (!isFields(one) || ArrayBuffer.isView(one)) return;
  if ('symbol' in one && 'unit' in one && 'value' in one)
    for (const name of ['value', 'standardUncertainty'])
      if (name in one && typeof one[name] !== 'number')
        throw new InputError('fromJson', `${path}.${name}`, 'wrong-type', 'must be a number', one[name]);
  for (const [name, inner] of Object.entries(one)) requireQuantities(inner, path === '' ? name : `${path}.${name}`);
}

/** Turns the columns at the end of a path into typed arrays again: one column, or a group of them. */
function revive(fields: Fields, [name, ...rest]: readonly string[]): void {
  const one = name === undefined ? undefined : fields[name];
  if (name === undefined || one === undefined) return;
  if (rest[0] === '*') {
    if (Array.isArray(one)) for (const item of one as unknown[]) if (isFields(item)) revive(item, rest.slice(1));
  } else if (Array.isArray(one)) fields[name] = columnOf(name, one);
  else if (isFields(one))
    fields[name] = Object.fromEntries(Object.entries(one).map(([key, column]) => [key, columnOf(`${name}.${key}`, column)]));
}

const bad = (rule: string, received: unknown): InputError => new InputError('fromJson', 'text', 'wrong-type', rule, received);

/** @internal A result from what its JSON text holds, which becomes a part of the result. */
export function fromParsed(parsed: unknown, method?: AnyResult['method'], text: unknown = parsed): AnyResult {
  if (typeof parsed !== 'object' || parsed === null || !('schemaVersion' in parsed)) throw bad('must be a result with schemaVersion', text);
  const { schemaVersion: found, ...result } = parsed as Record<string, unknown>;
  if (found !== schemaVersion)
    throw new InputError(
      'fromJson',
      'schemaVersion',
      'out-of-range',
      `must be ${schemaVersion}, the layout that this version reads`,
      found,
    );
  const own = methods.find((one) => one === result['method']);
  if (own === undefined || (method !== undefined && own !== method))
    throw bad(`must be a result of the method ${method ?? methods.join(' or ')}`, result['method']);
  const first = own === 'replicates' ? 'properties' : resultColumns[own][0]?.split('.')[0];
  if (first !== undefined && own !== 'shear' && !(first in result)) throw bad(`must be a result with ${first}`, text);
  for (const group of resultColumns[own]) revive(result, group.split('.'));
  requireQuantities(result, '');
  const whole: object = result;
  return whole as AnyResult;
}

/**
 * A result from the text that {@link toJson} made.
 *
 * $$ \text{fromJson}(\text{toJson}(r)) = r $$
 *
 * @remarks
 * Columns become `Float64Array` again, whatever the method. Name the method to have it checked and typed; without, the text may be of any method,
 * and the type is that of a tension test. A text of another layout, newer or older, is refused.
 *
 * @param text - JSON text made by `toJson`.
 * @returns The result; of `analyseCurve` it lacks what needs a test piece.
 * @throws {@link InputError} `wrong-type` where the text is no such result, or text stands where a number belongs, `out-of-range` where its layout is another or the method unknown.
 *
 * @example
 * ```ts
 * const curve = { strain: [0, 0.001, 0.002, 0.003], stress: [0, 70, 140, 210] };
 * fromJson(toJson(analyseCurve(curve))).curve.stress; // => [0, 70, 140, 210]
 * ```
 *
 * @see ECMA-404, the JSON data interchange syntax. Checked in `test/methods/analyseTension.test.ts`.
 */
export function fromJson(text: string): TensionResult;
/**
 * A result of a named method from the text that {@link toJson} made.
 *
 * @param text - JSON text made by `toJson`.
 * @param method - Which method the result must be of.
 * @returns The result, typed by its method.
 */
export function fromJson<Method extends AnyResult['method']>(text: string, method: Method): Extract<AnyResult, Record<'method', Method>>;
export function fromJson(text: string, method?: AnyResult['method']): AnyResult {
  if (method !== undefined) requireOneOf('fromJson', 'method', method, methods);
  if (typeof text !== 'string') throw bad('must be text', text);
  let parsed: unknown;
  try {
    parsed = JSON.parse(text);
  } catch {
    throw bad('must be JSON', text);
  }
  return fromParsed(parsed, method, text);
}
