import { InputError, requireObject } from '../../base/index.js';

/** @internal Version of the layout of a result as JSON, raised when a field is removed, renamed or given another meaning; `fromJson` reads this one alone. */
export const schemaVersion = 1;

/**
 * A result as JSON text, from which {@link fromJson} makes the same result again.
 *
 * $$ \text{fromJson}(\text{toJson}(r)) = r $$
 *
 * @remarks
 * Typed arrays become arrays of numbers. Every number is written with all its digits, so the round trip is exact. The text carries
 * `schemaVersion`.
 *
 * @param result - A result of any `analyse` function.
 * @returns JSON text.
 * @throws {@link InputError} `missing`, `wrong-type`; `not-finite` for a number that JSON does not have.
 *
 * @example
 * ```ts
 * const curve = { strain: [0, 0.001, 0.002, 0.003], stress: [0, 70, 140, 210] };
 * fromJson(toJson(analyseCurve(curve))).tensileStrength?.value; // => 210
 * ```
 *
 * @see ECMA-404, the JSON data interchange syntax. Checked in `test/methods/analyseTension.test.ts`.
 */
export function toJson(result: object): string {
  requireObject('toJson', 'result', result);
  return JSON.stringify({ schemaVersion, ...result }, (name, value: unknown) => {
    // JSON would say null
    if (typeof value === 'number' && !Number.isFinite(value))
      throw new InputError('toJson', `result…${name}`, 'not-finite', 'must be a finite number', value);
    return ArrayBuffer.isView(value) ? Array.from(value as Float64Array) : value;
  });
}
