import type { TensionPlan, TestPlan } from '../planning/index.js';
import { findingLines } from './findingLines.js';
import { told } from './told.js';
import { padded } from './padded.js';
import { summarisePlan, type PresentationOptions } from '../report/index.js';

/** Speeds change and dials are read at these rows. */
function paceLines({ pace, force }: TensionPlan): string[] {
  const oil = force.pressure !== undefined;
  const rows = pace.map((row) => [
    row.time.toFixed(1),
    ...(oil ? [(10 * row.pressure!).toFixed(0)] : []),
    (row.force / 1000).toFixed(2),
    row.stress.toFixed(0),
    row.travel.toFixed(2),
    row.action,
  ]);
  return ['', 'Pace', ...padded([['t/s', ...(oil ? ['p/bar'] : []), 'F/kN', 'R/MPa', 'x/mm', 'do'], ...rows])];
}

/** A plan as text for a terminal; pace, answers and cautions in English. */
export function planTable(plan: TestPlan, reader: PresentationOptions = {}): string {
  const rows = summarisePlan(plan, reader);
  const wide = Math.max(...rows.map(({ name }) => name.length));
  const parts = [...new Set(rows.map(({ part }) => part))];
  const numbers = parts.flatMap((part) => [
    '',
    part,
    ...rows.filter((one) => one.part === part).map(({ name, text, unit }) => `  ${name.padEnd(wide)}  ${text} ${unit}`.trimEnd()),
  ]);
  const answers =
    plan.planOf === 'tension'
      ? ['', 'What this frame can answer', ...padded(plan.answers.map(({ symbols, verdict, why }) => [symbols.join(', '), verdict, why]))]
      : [];
  const list = (heading: string, lines: readonly string[]): string[] => ['', heading, ...lines.map((one) => `  ${one}`)];
  const all = [
    ...numbers.slice(1),
    ...(plan.planOf === 'tension' ? paceLines(plan) : []),
    ...answers,
    ...list('Findings', findingLines(told(plan.findings, reader))),
    ...list('If it does not give way', plan.ifItStalls),
    ...list('Cautions', plan.cautions),
  ];
  return `${all.join('\n')}\n`;
}
