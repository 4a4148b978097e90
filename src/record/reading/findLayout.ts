import { InputError } from '../../base/index.js';
import { splitCells, type Cell, type DecimalSign, type Separator } from './cells.js';
import { layoutOf, type Layout, type LayoutHints } from './layout.js';

/** More cells in a row than this are no logger file. */
const MOST_COLUMNS = 500;
const separators: readonly Separator[] = [';', '\t', '|', ',', ' '];
const signs: readonly DecimalSign[] = ['.', ','];

/** @internal Layout of a text. */
export interface TextLayout extends Layout {
  readonly separator: Separator;
  /** First line of numbers, from 0. */
  readonly bodyLine: number;
}

/** The layout with more numbers; the simpler one, earlier in the list, where they are equal. */
function best<One extends Layout>(candidates: readonly One[]): One | undefined {
  return candidates.reduce<One | undefined>((a, b) => (a && a.score >= b.score ? a : b), undefined);
}

/** @internal True where more rows may decide what these leave open. */
export const isOpen = (layout: Layout | undefined, hints: LayoutHints): boolean =>
  layout === undefined || (hints.decimal === undefined && hints.thousands === undefined && layout.evidence !== 'proven');

/** @internal Refuses a layout that cannot be read without a word from outside. */
export function requireLayout<One extends Layout>(
  from: string,
  layout: One | undefined,
  hints: LayoutHints,
  rows: { readonly count: number; readonly first: string },
  path = 'file',
): One {
  if (!layout)
    throw new InputError(
      from,
      path,
      'no-numbers',
      `must hold rows of at least two numbers, and all it holds is text (rows: ${rows.count})`,
      rows.first,
    );
  if (layout.columns > MOST_COLUMNS)
    throw new InputError(from, path, 'too-large', `must have at most ${MOST_COLUMNS} columns`, layout.columns);
  if (layout.evidence === 'open' && isOpen(layout, hints))
    throw new InputError(
      from,
      'options.decimal',
      'ambiguous',
      "must be '.' or ',': every mark in the numbers stands before three digits, so it may be a decimal sign or one of thousands",
      layout.body[0]!.map(String).join(' '),
    );
  return layout;
}

/** @internal Layout of the first lines of a text by its most telling separator and decimal sign. */
export function findTextLayout(text: string, hints: LayoutHints): TextLayout | undefined {
  return best(
    separators
      .filter((separator) => hints.separator === undefined || separator === hints.separator)
      .flatMap((separator) => {
        const { rows, lines } = splitCells(text, separator);
        return signsOf(hints).flatMap((decimal): TextLayout[] => {
          // one sign for both can only be read where the cells stand in quotes
          const layout = separator === decimal && !text.includes('"') ? undefined : layoutOf(rows, separator, decimal, hints.thousands);
          return layout ? [{ ...layout, separator, bodyLine: lines[layout.bodyRow]! }] : [];
        });
      }),
  );
}

/** @internal Layout of rows of cells. */
export function findRowsLayout(rows: readonly (readonly Cell[])[], hints: LayoutHints): Layout | undefined {
  return best(signsOf(hints).flatMap((decimal) => layoutOf(rows, undefined, decimal, hints.thousands) ?? []));
}

const signsOf = (hints: LayoutHints): DecimalSign[] =>
  signs.filter((sign) => (hints.decimal === undefined || sign === hints.decimal) && sign !== hints.thousands);
