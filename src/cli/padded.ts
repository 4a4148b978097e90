/** Rows of cells as lines, each column as wide as its widest cell. */
export const padded = (rows: readonly (readonly string[])[]): string[] => {
  const widths = rows[0]!.map((_, k) => Math.max(...rows.map((row) => row[k]!.length)));
  return rows.map((row) => `  ${row.map((cell, k) => cell.padEnd(widths[k]!)).join('  ')}`.trimEnd());
};
