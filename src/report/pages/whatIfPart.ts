import { isInputError } from '../../base/index.js';
import { whatIf, type TensionResult, type WhatIfChange, type WhatIfRow } from '../../methods/index.js';
import { html, type Html } from './html.js';
import { sectionOf, tableOf } from './pageParts.js';
import type { Presentation } from '../words/presentation.js';
import { shownUnit } from '../words/shownUnit.js';

/** What was changed, in words. */
function changeInWords(change: WhatIfChange, symbol: string, { say, percent, number, value }: Presentation): string {
  if (change.kind === 'offset') return say('offset {offset}: {symbol}', { offset: percent(change.offset), symbol });
  if (change.kind === 'parallel-length') return say('travel counted over L0 = {length}', { length: value(change.length, 'mm', 5) });
  if (change.kind === 'frame-compliance')
    return change.factor === 0
      ? say('no compliance of the frame taken out')
      : say('compliance of the frame × {factor}', { factor: number(change.factor, 3) });
  if (change.kind !== 'window') return say('no share of the fillets taken off');
  const { window, shares, of } = change;
  if (window.by === 'samples') return say('window: runner-up, samples {first} to {last}', { first: window.first, last: window.last });
  if (shares !== undefined && of !== undefined)
    return say('window: {low} to {high} of {symbol}', { low: percent(shares[0]), high: percent(shares[1]), symbol: of });
  return window.by === 'relative-error'
    ? say('window: least relative standard error')
    : say('window: highest slope less its standard errors');
}

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
      rows: rows.map(({ change, values }) => [
        changeInWords(change, values[0]?.symbol ?? '', show),
        ...columns.map(({ field, factor }) => {
          const own = values.find((one) => one.field === field);
          if (!own) return '';
          return withDifference(own.value * factor, own.difference === undefined ? undefined : own.difference * factor, show);
        }),
      ]),
    }),
  ];
}
