import { InputError } from '../base/index.js';
import { whatIf, type TensionResult, type WhatIfChange, type WhatIfRow } from '../methods/index.js';
import type { PageTable } from './MethodPage.js';
import type { Presentation } from './presentation.js';
import { shownUnit } from './shownUnit.js';

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

/** The rows, and none where the result cannot be evaluated again: one of another version, or changed by hand. */
function rowsOf(result: TensionResult): WhatIfRow[] {
  try {
    return whatIf(result);
  } catch (error) {
    if (error instanceof InputError) return [];
    throw error;
  }
}

/** @internal What the test would give if its record were evaluated otherwise, beside what the report says. */
export function whatIfTable(result: TensionResult, show: Presentation): PageTable[] {
  const rows = rowsOf(result);
  const columns = columnsOf(rows, show);
  if (columns.length === 0) return [];
  const { say } = show;
  return [
    {
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
    },
  ];
}
