import Papa from 'papaparse';

/** What separates the cells of a row; a space stands for any run of spaces. */
export type Separator = ';' | ',' | '\t' | '|' | ' ';
/** The decimal sign. */
export type DecimalSign = '.' | ',';
/** Sign between groups of three digits; a space stands for spaces of any width, empty for none. */
export type ThousandsSign = '' | ' ' | "'" | '.' | ',';
/** A cell of a spreadsheet or of a column store. */
export type Cell = string | number | bigint | boolean | Date | null | undefined;

/** @internal What most cells of a column are. */
export type CellKind = 'number' | 'clock' | 'text' | 'empty';

/** @internal Rows of cells, and the line on which each begins, from 0. */
export interface SplitText {
  readonly rows: string[][];
  readonly lines: number[];
}

/** @internal Splits text with line feeds into rows; the one place that speaks to papaparse, for its quotes. */
export function splitCells(text: string, separator: Separator): SplitText {
  if (separator !== ' ' && text.includes('"')) {
    const rows: string[][] = [];
    const lines: number[] = [];
    let start = 0;
    let line = 0;
    const errors: string[] = [];
    Papa.parse(text, {
      delimiter: separator,
      newline: '\n',
      step: ({ data, errors: found, meta }) => {
        errors.push(...found.map(({ type }) => type));
        rows.push(data.map((cell) => cell.replaceAll('\n', ' ').trim()));
        lines.push(line);
        for (let at = text.indexOf('\n', start); at >= 0 && at < meta.cursor; at = text.indexOf('\n', at + 1)) line += 1;
        start = meta.cursor;
      },
    });
    if (!errors.includes('Quotes')) return { rows, lines };
  }
  const rows = text
    .split('\n')
    .map((line) => (separator === ' ' ? line.trim().split(/[ \t]+/) : line.split(separator).map((cell) => cell.trim())));
  return { rows, lines: rows.map((_, k) => k) };
}

/** Empty, or a text that says there is no number: of loggers, of spreadsheets (`#N/A`, `#DIV/0!`, `####`). */
const NOT_A_NUMBER = /^(?:[-+]?nan|n\/a|null|none|-+|#[¡¿]?[\p{L}\d/]*[!?]?|#+)?$/iu;
const PLAIN = /^[-+]?(?:\d+\.?\d*|\.\d+)(?:e[-+]?\d+)?$/i;
const GROUPED = {
  '.': /^[-+]?[1-9]\d{0,2}([ \u00a0\u2009\u202f'’,])\d{3}(?:\1\d{3})*(?:\.\d*)?$/,
  ',': /^[-+]?[1-9]\d{0,2}([ \u00a0\u2009\u202f'’.])\d{3}(?:\1\d{3})*(?:,\d*)?$/,
} as const;

/** @internal The sign between groups of three digits in a cell; empty where there is none. */
export function thousandsIn(cell: string, decimal: DecimalSign): ThousandsSign {
  const mark = GROUPED[decimal].exec(cell)?.[1];
  if (mark === undefined) return '';
  return mark === ',' || mark === '.' ? mark : mark === "'" || mark === '’' ? "'" : ' ';
}

/**
 * @internal A cell as a number: NaN for an empty cell or one that says there is none, undefined for any other text. Groups of three digits may
 * stand apart by `thousands`, or by any sign but the decimal one where that is not given.
 */
export function cellValue(cell: string, decimal: DecimalSign, thousands: ThousandsSign | undefined): number | undefined {
  if (NOT_A_NUMBER.test(cell)) return NaN;
  let plain = cell.startsWith('\u2212') ? `-${cell.slice(1)}` : cell;
  const mark = thousandsIn(plain, decimal);
  if (mark !== '' && mark === (thousands ?? mark)) plain = plain.replace(decimal === '.' ? /[^-+\d.]/g : /[^-+\d,]/g, '');
  if (decimal === ',') {
    if (plain.includes('.')) return undefined;
    plain = plain.replace(',', '.');
  }
  const value = PLAIN.test(plain) ? Number(plain) : NaN;
  return Number.isFinite(value) ? value : undefined;
}

/** A day and a month, as spreadsheets make of `3.2` or `2-3`, in English, German, French, Spanish; or a whole date. */
const MONTH =
  'jan|janv|ene|feb|fev|fevr|mar|mars|maerz|mrz|apr|avr|abr|mai|may|jun|juin|jul|juil|aug|aou|aout|ago|sep|sept|okt|oct|nov|dez|dec|dic';
const DATES = [
  new RegExp(`^\\d{1,2}[-. /]*(?:${MONTH})[a-z]*\\.?(?:[-. /]*\\d{2,4})?$`),
  new RegExp(`^(?:${MONTH})[a-z]*\\.?[-. /]*\\d{1,4}$`),
  /^\d{1,2}([./-])\d{1,2}\1(?:\d{2}|\d{4})$/,
  /^\d{4}-\d{2}-\d{2}(?:[t ]00:00(?::00)?)?$/,
];

/** @internal True for a date, which among numbers is the work of a spreadsheet. */
export function isDate(cell: string): boolean {
  if (cell.length > 24) return false;
  const plain = cell
    .normalize('NFKD')
    .replace(/[\u0300-\u036f]/g, '')
    .toLowerCase();
  return DATES.some((date) => date.test(plain));
}
