import { isInputError } from '../../base/index.js';
import { changeInWords } from '../../languages/index.js';
import { whatIf, type TensionResult, type WhatIfRow } from '../../methods/index.js';
import { html, type Html } from './html.js';
import { sectionOf, tableOf } from './pageParts.js';
import type { Presentation } from '../words/presentation.js';
import { shownUnit } from '../words/shownUnit.js';

/** Columns: every field that any row has, with the symbol and unit that it is shown in. */
function columnsOf(rows: readonly WhatIfRow[], { unit }: Presentation) {
  const fields = new Map(
    rows.filter(({ change }) => change.kind !== 'offset').flatMap(({ values }) => values.map((one) => [one.field, one])),
  );
  return [...fields].flatMap(([field, { symbol, unit: own }]) => {
    if (field === LEFT_OUT) return [];
    const other = unit(shownUnit(symbol, own));
    return [{ field, title: other.unit === '' ? symbol : `${symbol} / ${other.unit}`, factor: other.factor }];
  });
}

/** A value to four figures, and its difference with the same decimals. */
function withDifference(value: number, difference: number | undefined, { digits }: Presentation): string {
  const decimals = Math.min(6, Math.max(0, 3 - Math.floor(Math.log10(Math.abs(value) || 1))));
  const text = digits(value.toFixed(decimals));
  if (difference === undefined) return text;
  const size = Math.abs(difference).toFixed(decimals);
  return Number(size) === 0 ? `${text} (0)` : `${text} (${difference < 0 ? '−' : '+'}${digits(size)})`;
}

/** The plastic extension at fracture goes with the total one. */
const LEFT_OUT = 'plasticExtensionAtFracture';

/** True where the result is of another version: an early one lacks fields that a compliance is put back by, a later one has other options. */
const ofOtherVersion = (reason: unknown): boolean =>
  isInputError(reason) &&
  (reason.code === 'unknown-option' || ['result.extensometerEnd', 'result.modulusWindow.filletSlope'].includes(reason.path));

/** The rows; nothing where this version cannot evaluate the result again. */
function rowsOf(result: TensionResult): WhatIfRow[] | undefined {
  try {
    return whatIf(result);
  } catch (reason) {
    if (ofOtherVersion(reason)) return undefined;
    throw reason;
  }
}

/** @internal What the test would give if its record were evaluated otherwise, beside what the report says. */
export function whatIfPart(result: TensionResult, show: Presentation): Html[] {
  const { say } = show;
  const rows = rowsOf(result);
  if (!rows) {
    const { version } = result.provenance;
    return [
      sectionOf(say('What if'), [
        html`<p>${say('Left out: this version of the package cannot evaluate again what version {version} wrote.', { version })}</p>`,
      ]),
    ];
  }
  const columns = columnsOf(rows, show);
  if (columns.length === 0) return [];
  return [
    tableOf({
      heading: say('What if'),
      caption: say('The same record evaluated otherwise; in brackets the difference from the value of this report.'),
      columns: [say('What is changed'), ...columns.map(({ title }) => title)],
      kinds: [undefined, ...columns.map(() => 'number' as const)],
      rows: rows.map((row) => [
        changeInWords(row, show, show.value),
        ...columns.map(({ field, factor }) => {
          const own = row.values.find((one) => one.field === field);
          if (!own) return '';
          return withDifference(own.value * factor, own.difference === undefined ? undefined : own.difference * factor, show);
        }),
      ]),
    }),
  ];
}
