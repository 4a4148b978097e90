import { splitName, unitBeside, type NamedColumn } from './columnNames.js';
import { findTextLayout } from './findLayout.js';
import { isUnitsRow } from './headRows.js';
import type { Layout, LayoutHints } from './layout.js';

const withoutBrackets = (unit: string): string => unit.replace(/^[[({<]|[\])}>]$/g, '').trim();

/** @internal Columns of a table with their names and units. */
export function namedColumns({ head, namesRow, unitsRow, columns, kinds }: Layout): NamedColumn[] {
  const above = namesRow === undefined ? [] : head[namesRow]!;
  // units may stand without names
  const bare = unitsRow === undefined && isUnitsRow(above);
  const names = bare ? [] : above;
  const units = bare ? above : unitsRow === undefined ? undefined : head[unitsRow]!;
  return Array.from({ length: columns }, (_, index) => {
    const heading = (names[index] ?? '').replace(/^'(?=[=+\-@])/, '').trim();
    const below = units?.[index] === undefined ? undefined : withoutBrackets(units[index]);
    const split = below ? { name: heading, unit: below } : splitName(heading);
    const parsed = split.unit === undefined ? undefined : unitBeside(split.name, split.unit);
    const blankUnit = units !== undefined && below === '';
    return { index, name: split.name, heading, unit: parsed?.unit, dimension: parsed?.dimension, blankUnit, kind: kinds[index]! };
  });
}

/** @internal What stands above the numbers of a text whose signs are known: its columns with names and units; undefined where nothing does. */
export function headingOf(text: string, signs: LayoutHints): readonly NamedColumn[] | undefined {
  const layout = findTextLayout(text, signs);
  return layout?.head.some((row) => row.some((cell) => cell !== '')) === true ? namedColumns(layout) : undefined;
}
