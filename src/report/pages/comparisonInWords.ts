import type { PropertyDifference, ResultComparison, TestResult } from '../../methods/index.js';
import { differencesInWords } from './differencesInWords.js';
import { presentation, unsigned, type Presentation, type PresentationOptions } from '../words/presentation.js';
import { shownUnit } from '../words/shownUnit.js';
import { AT_LEAST, summarise, type SummaryRow } from './summarise.js';

/** @internal Two results against each other for a terminal: rows of text under their columns. */
export interface ComparisonInWords {
  readonly columns: readonly string[];
  readonly rows: readonly (readonly string[])[];
  /** What is not the same of record, piece, options and version, under the names of both; empty where nothing is. */
  readonly differences: readonly (readonly string[])[];
}

const NONE = '–';
/** Relative difference up to which two numbers are one. */
const SAME = 1e-12;

/** Field of the elongation after fracture, whose symbol reports write with its gauge length. */
const ELONGATION = 'elongationAfterFracture';

/** Names of the tests where they tell them apart. */
function namesOf({ tests }: ResultComparison, { say }: Presentation): readonly [string, string] {
  const [first, second] = tests.map(({ identity }) => identity);
  const number = (k: number): string => say('Result {number}', { number: k });
  return first === second ? [number(1), number(2)] : [first ?? number(1), second ?? number(2)];
}

/** A value as the report of its result rounds it; one that the report does not show has the figures of its pages. */
function textOf(
  value: number,
  symbol: string,
  atLeast: boolean | undefined,
  rows: readonly SummaryRow[] | undefined,
  { number }: Presentation,
): string {
  const row = rows?.find(
    (one) =>
      (one.symbol === symbol || (symbol === 'A' && one.field === ELONGATION)) && Math.abs(one.value - value) <= SAME * Math.abs(value),
  );
  return row?.text ?? `${atLeast ? AT_LEAST : ''}${number(value, 4)}`;
}

/** The symbol as the reports write it, where all write it alike. */
function writtenBy(symbol: string, summaries: readonly (readonly SummaryRow[])[]): string {
  if (symbol !== 'A') return symbol;
  const written = new Set(summaries.flatMap((rows) => rows.filter(({ field }) => field === ELONGATION).map((one) => one.symbol)));
  return written.size === 1 ? [...written][0]! : symbol;
}

function rowOf(one: PropertyDifference, summaries: readonly (readonly SummaryRow[])[], show: Presentation): string[] {
  const [first, second] = summaries;
  const { unit, factor } = show.unit(shownUnit(one.symbol, one.unit));
  const { symbol, difference, relativeDifference, standardUncertainty: u, inUncertainties } = one;
  const value = (own: number | undefined, atLeast: boolean | undefined, rows: readonly SummaryRow[] | undefined): string =>
    own === undefined ? NONE : textOf(own * factor, symbol, atLeast, rows, show);
  return [
    writtenBy(symbol, summaries),
    unit,
    value(one.first, one.firstAtLeast, first),
    value(one.second, one.secondAtLeast, second),
    difference === undefined
      ? NONE
      : u === undefined
        ? show.number(difference * factor, 3)
        : show.beside(difference * factor, u * factor, 3),
    relativeDifference === undefined ? NONE : show.percent(Number(relativeDifference.toFixed(5))),
    u === undefined ? NONE : show.doubt(u * factor),
    inUncertainties === undefined ? NONE : show.digits(unsigned(inUncertainties.toFixed(2))),
  ];
}

/** @internal Two results against each other in the language and units of one reader: values as the report of each rounds them, their difference from the unrounded ones. */
export function comparisonInWords(
  comparison: ResultComparison,
  results: readonly TestResult[],
  options: PresentationOptions = {},
): ComparisonInWords {
  const show = presentation('comparisonInWords', options);
  const { say } = show;
  const names = namesOf(comparison, show);
  const summaries = results.map((result) => summarise(result, options));
  const told = differencesInWords(comparison.differences, show);
  return {
    columns: [say('Symbol'), say('Unit'), ...names, say('Difference'), '', 'u', say('Difference over u')],
    rows: comparison.properties.map((one) => rowOf(one, summaries, show)),
    differences: told.length === 0 ? [] : [['', '', ...names], ...told],
  };
}
