import type { Finding } from '../base/index.js';
import { plain } from './plain.js';
import type { SummaryRow } from '../report/index.js';

/** Uncertainty in the unit of its row, two figures. */
const doubt = ({ standardUncertainty: u }: SummaryRow): string => (u === undefined ? '' : ` (u = ${Number(u.toPrecision(2))})`);

/** Results and findings as text for a terminal; with their uncertainties where the test stated what is doubtful. */
export function resultTable(rows: readonly SummaryRow[], findings: readonly Finding[], withDoubt = false): string {
  const cells = rows.map((row) => {
    const { symbol, text, unit, name, stamp } = row;
    return [symbol, text, unit, `${name}${withDoubt ? doubt(row) : ''}${stamp === undefined ? '' : ' *'}`];
  });
  const widths = [0, 1, 2].map((k) => Math.max(...cells.map((row) => row[k]!.length)));
  const lines = cells.map(
    ([symbol, text, unit, name]) => `  ${symbol!.padEnd(widths[0]!)}  ${text!.padStart(widths[1]!)} ${unit!.padEnd(widths[2]!)}  ${name!}`,
  );
  const stamp = rows.find((row) => row.stamp !== undefined)?.stamp;
  const doubts = findings.filter(({ severity }) => severity !== 'note').map(({ severity, message }) => `  ${severity}: ${message}`);
  const notes = findings.length - doubts.length;
  const all = [
    ...lines,
    ...(stamp === undefined ? [] : [`  * ${stamp}`]),
    ...(doubts.length > 0 ? ['', ...doubts] : []),
    ...(notes > 0 ? [`  and ${notes} note${notes > 1 ? 's' : ''} in the report`] : []),
  ];
  return `${all.map(plain).join('\n')}\n`;
}
