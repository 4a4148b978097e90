import { parseUnit } from '../../units/index.js';
import { meaningOfName } from './columnNames.js';

/** @internal True for a row of units: half of its cells at least are known, one by its letters (1 is a unit of strain, and a number), and none has a meaning as a name. */
export function isUnitsRow(row: readonly string[]): boolean {
  const filled = row.filter((cell) => cell !== '').map((cell) => cell.replace(/^[[({<]|[\])}>]$/g, ''));
  const known = filled.filter((cell) => parseUnit(cell) !== undefined);
  return (
    known.some((cell) => !/^\d/.test(cell)) &&
    2 * known.length >= filled.length &&
    filled.every((cell) => known.includes(cell) || meaningOfName(cell) === 'unknown')
  );
}

/** @internal Names of a row whose separator is a space: a unit in brackets stays with its name. */
export function joinedNames(line: readonly string[], width: number): readonly string[] {
  if (line.length === width) return line;
  const joined: string[] = [];
  for (const word of line)
    if (joined.length > 0 && (/^[[({<]/.test(word) || /[[({<][^\])}>]*$/.test(joined.at(-1)!))) joined.push(`${joined.pop()!} ${word}`);
    else joined.push(word);
  return joined.length === width ? joined : [];
}
