import type { ColumnName, Finding, PressureRecord, TensionRecord } from '../../base/index.js';
import type { Unit } from '../../units/index.js';
import type { DecimalSign, Separator, ThousandsSign } from './cells.js';
import type { TextEncoding } from './decodeText.js';

/** Options of `readRecord`, `readChunks` and `readRows`: what decides where the file does not. */
export interface ReadOptions {
  /** Separator of cells. */
  readonly separator?: Separator | undefined;
  /** Decimal sign. */
  readonly decimal?: DecimalSign | undefined;
  /** Sign between groups of three digits, empty for none; default any that is not the decimal sign. */
  readonly thousands?: ThousandsSign | undefined;
  /** Encoding of bytes. */
  readonly encoding?: TextEncoding | undefined;
  /** Which column serves for a quantity: its name in the file (with or without its unit), or its place from 0. */
  readonly columns?: Partial<Record<ColumnName, string | number>> | undefined;
  /** Unit of a quantity, where the file names none or a wrong one. */
  readonly units?: Partial<Record<ColumnName, Unit>> | undefined;
  /** Unit of a quantity where the file names none; a unit in the file goes before it. */
  readonly fallbackUnits?: Partial<Record<ColumnName, Unit>> | undefined;
  /**
   * Length that strain is counted over [mm]. Where extension and strain are both there, they are checked against each other; of two
   * columns of displacement beside a strain, it tells which is the extension.
   */
  readonly length?: number | undefined;
  /** False where force alone is enough, as in a hardness test; default true: extension, strain or travel must be among the columns. */
  readonly motion?: boolean | undefined;
  /** Leave out rows with a hole in extension or strain, or with a date where a number should be; default they are an error. */
  readonly leaveOutHoles?: boolean | undefined;
}

/** How one column was read. */
export interface ReadColumn {
  /** What it serves for. */
  readonly quantity: ColumnName;
  /** Its name in the file; empty where it has none. */
  readonly name: string;
  /** Its place in the file, from 0. */
  readonly index: number;
  /** Its unit in the file; seconds for clock times. */
  readonly unit: Unit;
  /** Who named the unit. */
  readonly unitFrom: 'file' | 'options';
  /** True for clock times or dates, which become seconds from the first row. */
  readonly clock?: boolean | undefined;
  /** What its numbers were multiplied by. */
  readonly factor: number;
}

/** A column not in use. */
export interface IgnoredColumn {
  /** Its name in the file. */
  readonly name: string;
  /** Its place in the file, from 0. */
  readonly index: number;
  /** Why it is not in use. */
  readonly why: string;
}

/** A row left out. */
export interface LeftOutRow {
  /** Line of the file, or row, from 1. */
  readonly line: number;
  /** Why it was left out. */
  readonly why: string;
}

/** What was understood of a file. */
export interface Reading {
  /** Encoding of the text; absent for rows. */
  readonly encoding?: TextEncoding | undefined;
  /** Separator of cells; absent for rows. */
  readonly separator?: Separator | undefined;
  /** Decimal sign; of cells of text where rows were given. */
  readonly decimal: DecimalSign;
  /** Sign between groups of three digits; empty for none seen. */
  readonly thousands: ThousandsSign;
  /** Columns in use. */
  readonly columns: readonly ReadColumn[];
  /** Columns not in use, and why. */
  readonly ignored: readonly IgnoredColumn[];
  /** Rows of numbers that were read. */
  readonly rows: number;
  /** Rows of the record before which the names of the columns stand again; {@link splitTests} takes them. */
  readonly headings: readonly number[];
  /** Rows left out: line of the file, from 1, and why. */
  readonly leftOut: readonly LeftOutRow[];
}

/** One line of the text above the columns. */
export interface MetadataEntry {
  /** What stands with the name. */
  readonly value: string;
  /** Its unit, where there is one. */
  readonly unit?: string | undefined;
}

/** A file as read. */
export interface ReadResult {
  /** The columns, in N, mm, s and ratios; with `pressure` [MPa] where the file holds no force. */
  readonly record: TensionRecord | PressureRecord;
  /** What stands above the columns, by name. */
  readonly metadata: Readonly<Record<string, MetadataEntry>>;
  /** What was understood. */
  readonly reading: Reading;
  /** Doubts about the file, for `options.test.findings` of an analysis: it was cut off, or holds several tests that the record itself does not tell apart. */
  readonly findings: readonly Finding[];
}
