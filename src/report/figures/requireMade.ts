import { requireArray, requireColumn, requireFinite, requireObject } from '../../base/index.js';

/** @internal What a figure reads of a study's result. */
export interface MadeFields<Made> {
  /** Fields that hold a finite number. */
  readonly numbers?: readonly (keyof Made & string)[];
  /** Fields that hold a column of numbers. */
  readonly columns?: readonly (keyof Made & string)[];
  /** Fields that hold a list. */
  readonly lists?: readonly (keyof Made & string)[];
}

/** @internal Checks that a value is the result of a study, and not its failure or a part of it. */
export function requireMade<Made extends object>(
  from: string,
  path: string,
  made: Made,
  { numbers = [], columns = [], lists = [] }: MadeFields<Made>,
): Made {
  requireObject(from, path, made);
  for (const name of numbers) requireFinite(from, `${path}.${name}`, made[name]);
  for (const name of columns) requireColumn(from, `${path}.${name}`, made[name], { least: 0 });
  for (const name of lists) requireArray(from, `${path}.${name}`, made[name] as unknown as readonly unknown[]);
  return made;
}
