import { headedColumns, numberTable, type Measured } from './numberTable.js';

/** Two columns in N, MPa or mm, each with what its heading says that it is. */
interface TwoColumns {
  readonly columns: readonly [number[], number[]];
  readonly measured: readonly [Measured | undefined, Measured | undefined];
}

/** Two columns of numbers from a file that a flag names, by the units of their heading; without one in N, MPa or mm. */
export async function twoColumns(
  flag: string,
  path: string,
  wanted: readonly [first: readonly Measured[], second: readonly Measured[]],
): Promise<TwoColumns> {
  const isPair = ({ values }: { readonly values: readonly number[] }): boolean => values.length === 2 && values.every(Number.isFinite);
  const table = await numberTable(`${flag} ${path}`, path, isPair, 'two numbers');
  const [first, second] = headedColumns(table, wanted);
  return {
    columns: [table.rows.map(({ values }) => values[0]! * first!.factor), table.rows.map(({ values }) => values[1]! * second!.factor)],
    measured: [first!.of, second!.of],
  };
}
