import Papa from 'papaparse';

/** What separates the cells of a row; a space stands for any run of spaces. */
export type Separator = ';' | ',' | '\t' | '|' | ' ';
/** The decimal sign. */
export type DecimalSign = '.' | ',';

/** @internal Cells of rows of text; the one place that speaks to papaparse, for its quotes. */
export function splitCells(text: string, separator: Separator): string[][] {
  if (separator === ' ') return text.split('\n').map((line) => line.trim().split(/\s+/));
  return Papa.parse(text, { delimiter: separator, skipEmptyLines: false }).data.map((row) => row.map((cell) => cell.trim()));
}

const NOT_A_NUMBER = /^(?:[-+]?nan|n\/a|#n\/a|null|-+)?$/i;

/** @internal A cell as a number: NaN for an empty cell or one that says there is none, undefined for any other text. */
export function cellValue(cell: string, decimal: DecimalSign, thousands: string): number | undefined {
  if (NOT_A_NUMBER.test(cell)) return NaN;
  let plain = cell;
  if (thousands !== '') {
    const mark = thousands === ' ' ? '[ \\u00a0\\u202f]' : `\\${thousands}`;
    if (new RegExp(`^[-+]?\\d{1,3}(?:${mark}\\d{3})+(?:\\${decimal}\\d*)?$`).test(plain)) plain = plain.replace(new RegExp(mark, 'g'), '');
  }
  if (decimal === ',') {
    if (plain.includes('.')) return undefined;
    plain = plain.replace(',', '.');
  }
  return /^[-+]?(?:\d+\.?\d*|\.\d+)(?:e[-+]?\d+)?$/i.test(plain) ? Number(plain) : undefined;
}
