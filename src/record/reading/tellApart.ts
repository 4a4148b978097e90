import { InputError } from '../../base/index.js';

/** How well strain times length must agree with the extension, as a share of it. */
const AGREEMENT = 0.05;

/** Largest deviation of strain times length from an extension, as a share of the largest extension; both count from their first sample. */
function deviation(extension: Float64Array, strain: Float64Array, length: number): number {
  let largest = 0;
  let most = 0;
  for (let i = 0; i < extension.length; i += 1) {
    const x = extension[i]! - extension[0]!;
    largest = Math.max(largest, Math.abs(x) || 0);
    most = Math.max(most, Math.abs((strain[i]! - strain[0]!) * length - x) || 0);
  }
  return largest > 0 ? most / largest : Infinity;
}

/** @internal Columns that may be the extension, by name. */
export interface Rival {
  readonly name: string;
  readonly column: Float64Array;
}

/**
 * @internal Which of the columns is the extension that a strain was counted from: the one place that strain times length leads to. None or
 * two of them leave it open, and that is refused.
 */
export function tellApart<One extends Rival>(from: string, rivals: readonly One[], strain: Rival, length: number): One {
  const [one, ...more] = rivals.filter(({ column }) => deviation(column, strain.column, length) <= AGREEMENT);
  const names = rivals.map(({ name }) => `'${name}'`).join(' or ');
  if (!one)
    throw new InputError(
      from,
      'options.length',
      'ambiguous',
      `does not lead from '${strain.name}' to ${names}: name the column with options.columns`,
      length,
    );
  if (more.length > 0)
    throw new InputError(
      from,
      'options.columns.extension',
      'ambiguous',
      `must name one of ${names}: '${strain.name}' times the length leads to both`,
      undefined,
    );
  return one;
}
