import { english, wordsOf } from '../languages/index.js';
import type { TestPlan } from '../planning/index.js';
import { planSheet, summarisePlan, type PresentationOptions, type TextTable } from '../report/index.js';
import { findingLines } from './findingLines.js';
import { columnsOf, fill, padded, rightOf } from './padded.js';

/** A table under its heading. */
function tableLines(table: TextTable | undefined): string[] {
  if (table === undefined) return [];
  const { heading, caption, columns, kinds, rows } = table;
  return ['', heading, `  ${caption}`, ...padded([columns, ...rows], rightOf(kinds))];
}

/** A plan as text for a terminal, in the language and units of its reader. */
export function planTable(plan: TestPlan, reader: PresentationOptions = {}): string {
  const { say } = wordsOf(reader.language ?? english);
  const { pace, speeds, answers, ifItStalls, cautions } = planSheet(plan, reader);
  const rows = summarisePlan(plan, reader);
  const wide = Math.max(...rows.map(({ name }) => columnsOf(name)));
  const parts = [...new Set(rows.map(({ part }) => part))];
  const numbers = parts.flatMap((part) => [
    '',
    part,
    ...rows.filter((one) => one.part === part).map(({ name, text, unit }) => `  ${fill(name, wide)}  ${text} ${unit}`.trimEnd()),
  ]);
  const list = (heading: string, lines: readonly string[]): string[] => ['', heading, ...lines.map((one) => `  ${one}`)];
  const faults = plan.findings.filter(({ severity }) => severity === 'fault');
  const others = plan.findings.filter(({ severity }) => severity !== 'fault');
  const all = [
    ...(faults.length > 0 ? [...findingLines(faults, reader), ''] : []),
    ...numbers.slice(1),
    ...tableLines(pace),
    ...speeds.map((one) => `  ${one}`),
    ...tableLines(answers),
    ...(faults.length > 0 && others.length === 0 ? [] : list(say('Findings'), findingLines(others, reader))),
    ...list(say('If the frame reaches its limit first'), ifItStalls),
    ...list(say('Cautions'), cautions),
  ];
  return `${all.join('\n')}\n`;
}
