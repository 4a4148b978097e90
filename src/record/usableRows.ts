import { InputError, type ColumnName } from '../base/index.js';
import { unitFactor } from '../units/index.js';
import type { NamedColumn } from './columnNames.js';
import type { LeftOutRow, ReadOptions } from './reading.js';
import { ownUnits, unitOf } from './readOptions.js';
import { scanBody, type BodyFormat, type ScannedBody } from './scanBody.js';

const FROM = 'readRecord';
/** How well strain times length must agree with the extension, as a share of it. */
const LENGTH_AGREEMENT = 0.05;

/** @internal Rows that can be used: the load is a number; holes elsewhere are an error, or left out on request; extension may end early. */
export function usableRows(
  body: ScannedBody,
  used: readonly ColumnName[],
  options: ReadOptions,
): { readonly keep: Uint8Array; readonly leftOut: LeftOutRow[] } {
  const n = body.lines.length;
  const keep = new Uint8Array(n).fill(1);
  const leftOut: LeftOutRow[] = [];
  const leave = (i: number, why: string): void => {
    if (keep[i] === 1) leftOut.push({ line: body.lines[i]!, why });
    keep[i] = 0;
  };
  used.forEach((quantity, k) => {
    const column = body.columns[k]!;
    let end = n;
    if (quantity === 'extension' || quantity === 'strain' || quantity === 'transverseStrain')
      while (end > 0 && Number.isNaN(column[end - 1])) end -= 1;
    for (let i = 0; i < end; i += 1) {
      if (!Number.isNaN(column[i]!)) continue;
      if (quantity === 'force' || quantity === 'pressure' || options.leaveOutHoles === true) leave(i, `no number for ${quantity}`);
      else
        throw new InputError(
          FROM,
          `line ${body.lines[i]!}`,
          'not-finite',
          `must hold a number for ${quantity} (or set options.leaveOutHoles)`,
          'an empty cell',
        );
    }
  });
  return { keep, leftOut };
}

/** @internal Strain times the length must be the extension, where the file has both: else the length or a column is wrong. */
export function confirmLength(
  text: string,
  format: Omit<BodyFormat, 'wanted'>,
  used: ReadonlyMap<ColumnName, NamedColumn>,
  strain: NamedColumn,
  options: ReadOptions,
): void {
  const extension = used.get('extension');
  if (!extension || options.length === undefined) return;
  const pair = [extension, strain].sort((a, b) => a.index - b.index);
  const { columns } = scanBody(text, { ...format, wanted: pair.map(({ index }) => index) });
  const own = (column: NamedColumn, quantity: 'extension' | 'strain') =>
    columns[pair.indexOf(column)]!.map((value) => value * unitFactor(unitOf(quantity, column, options), ownUnits[quantity]));
  const x = own(extension, 'extension');
  const e = own(strain, 'strain');
  let largest = 0;
  let deviation = 0;
  for (let i = 0; i < x.length; i += 1) {
    largest = Math.max(largest, Math.abs(x[i]! - x[0]!) || 0);
    deviation = Math.max(deviation, Math.abs((e[i]! - e[0]!) * options.length - (x[i]! - x[0]!)) || 0);
  }
  if (deviation > LENGTH_AGREEMENT * largest)
    throw new InputError(
      FROM,
      'options.length',
      'ambiguous',
      `does not lead from '${strain.name}' to '${extension.name}': name the column with options.columns`,
      options.length,
    );
}
