/** Letters that a terminal draws two columns wide: Chinese characters and signs of full width. */
const WIDE = /[\p{Script=Han}\u3000-\u303f\uff01-\uff60]/gu;

/** Columns that a text takes in a terminal. */
export const columnsOf = (text: string): number => text.length + (text.match(WIDE)?.length ?? 0);

/** A text with spaces after it, or before it, up to so many columns. */
export const fill = (text: string, width: number, side: 'left' | 'right' = 'left'): string => {
  const spaces = ' '.repeat(Math.max(0, width - columnsOf(text)));
  return side === 'left' ? `${text}${spaces}` : `${spaces}${text}`;
};

/** Rows of cells as lines, each column as wide as its widest cell; a number of columns stands to the right. */
export const padded = (rows: readonly (readonly string[])[], right: readonly number[] = []): string[] => {
  const widths = (rows[0] ?? []).map((_, k) => Math.max(...rows.map((row) => columnsOf(row[k]!))));
  return rows.map((row) => `  ${row.map((cell, k) => fill(cell, widths[k]!, right.includes(k) ? 'right' : 'left')).join('  ')}`.trimEnd());
};

/** Which columns stand to the right, of those of a table that are shown. */
export const rightOf = (kinds: readonly (string | undefined)[] = [], shown: readonly number[] = kinds.map((_, k) => k)): number[] =>
  shown.flatMap((at, k) => (kinds[at] === 'number' ? [k] : []));
