import type { TestResult } from '../methods/index.js';
import { presentation, summarise, type DecisionsTable, type SummaryOptions, type SummaryRow } from '../report/index.js';
import { findingLines } from './findingLines.js';
import { columnsOf, fill, padded } from './padded.js';
import { plain } from './plain.js';

/** Columns of a page's table of decisions that a terminal has room for: symbol, value, limit, verdict, risk. The rule is one for all of a call. */
const DECIDED = [0, 1, 3, 6, 7];
const RULE = 5;

/** What marks an uncertainty that leaves something out. */
const LEFT_OUT = ' †';

/** Results, decisions and findings (of faults also what can be done) as text for a terminal; with their uncertainties where the test stated what is doubtful. */
export function resultTable(result: TestResult, shown: SummaryOptions, decided: DecisionsTable): string {
  const { say, doubt: inFigures } = presentation('resultTable', { language: shown.language });
  const withDoubt = 'uncertainty' in result;
  const doubt = ({ standardUncertainty: u, leftOut }: SummaryRow): string =>
    u === undefined ? '' : ` (u = ${inFigures(u)}${leftOut === undefined ? '' : LEFT_OUT})`;
  const rows = summarise(result, shown);
  const cells = rows.map((row) => {
    const { symbol, text, unit, name, stamp } = row;
    return [symbol, text, unit, `${name}${withDoubt ? doubt(row) : ''}${stamp === undefined ? '' : ' *'}`] as const;
  });
  const [first, second, third] = [0, 1, 2].map((k) => Math.max(...cells.map((row) => columnsOf(row[k]!))));
  const lines = cells.map(
    ([symbol, text, unit, name]) => `  ${fill(symbol, first!)}  ${fill(text, second!, 'right')} ${fill(unit, third!)}  ${name}`,
  );
  const stamps = [...new Set(rows.flatMap(({ stamp }) => stamp ?? []))];
  const leftOut = withDoubt ? [...new Set(rows.flatMap((row) => row.leftOut ?? []))] : [];
  const decisions = [decided.table.columns, ...decided.table.rows].map((row) => DECIDED.map((k) => row[k]!.replaceAll('\u00a0', ' ')));
  const doubts = [...decided.findings, ...result.findings].filter(({ severity }) => severity !== 'note');
  const notes = result.findings.filter(({ severity }) => severity === 'note').length;
  const all = [
    ...lines,
    ...stamps.map((stamp) => `  * ${stamp}`),
    ...leftOut.map((what) => ` ${LEFT_OUT} ${what}`),
    ...(decided.table.rows.length > 0 ? ['', `  ${say('Decisions')}`, `  ${decided.table.rows[0]![RULE]!}`, ...padded(decisions)] : []),
    ...(doubts.length > 0 ? ['', ...findingLines(doubts, shown, 'faults', result.method === 'tension').map((one) => `  ${one}`)] : []),
    ...(notes === 0
      ? []
      : [`  ${notes === 1 ? say('and one note in the report') : say('and {count} notes in the report', { count: notes })}`]),
  ];
  return `${all.map(plain).join('\n')}\n`;
}
