import { InputError } from '../base/index.js';
import type { TensionResult } from './TensionResult.js';
import { schemaVersion } from './toJson.js';

/** The groups of columns in a result. */
const columnGroups = ['curve', 'rates'];

/**
 * A result from the text that {@link toJson} made.
 *
 * $$ \text{fromJson}(\text{toJson}(r)) = r $$
 *
 * @remarks
 * The columns of `curve` and `rates` become `Float64Array` again. A text of a newer layout is refused.
 *
 * @param text - JSON text made by `toJson`.
 * @returns The result; of `analyseCurve` it lacks what needs a test piece.
 * @throws {@link InputError} `wrong-type` where the text is no such result, `out-of-range` where its layout is newer.
 *
 * @example
 * ```ts
 * const curve = { strain: [0, 0.001, 0.002, 0.003], stress: [0, 70, 140, 210] };
 * fromJson(toJson(analyseCurve(curve))).curve.stress; // => [0, 70, 140, 210]
 * ```
 *
 * @see ECMA-404, the JSON data interchange syntax. Checked in `test/methods/analyseTension.test.ts`.
 */
export function fromJson(text: string): TensionResult {
  const bad = (rule: string, received: unknown) => new InputError('fromJson', 'text', 'wrong-type', rule, received);
  if (typeof text !== 'string') throw bad('must be text', text);
  let parsed: unknown;
  try {
    parsed = JSON.parse(text);
  } catch {
    throw bad('must be JSON', text);
  }
  if (typeof parsed !== 'object' || parsed === null || !('schemaVersion' in parsed) || !('curve' in parsed))
    throw bad('must be a result with schemaVersion and curve', text);
  const { schemaVersion: found, ...result } = parsed as Record<string, unknown>;
  if (found !== schemaVersion)
    throw new InputError(
      'fromJson',
      'schemaVersion',
      'out-of-range',
      `must be ${schemaVersion}, the layout that this version reads`,
      found,
    );
  for (const group of columnGroups) {
    const columns = result[group];
    if (typeof columns !== 'object' || columns === null) continue;
    result[group] = Object.fromEntries(Object.entries(columns).map(([name, one]) => [name, Float64Array.from(one as number[])]));
  }
  const whole: object = result;
  return whole as TensionResult;
}
