import {
  requireFinite,
  requireList,
  requireNonNegative,
  requireObject,
  requireOneOf,
  requirePair,
  requirePositive,
  requireText,
  requireWhole,
} from '../base/index.js';
import type { WhatIfRow } from '../methods/index.js';
import { wordsToSay, type SayOptions } from './requireLanguage.js';
import type { Words } from './wordsOf.js';

/** Lengths in a sentence have so many figures. */
const LENGTH = 5;

/** @internal What was changed, in words; how a length [mm] is shown is the reader's. */
export function changeInWords(
  { change, values }: WhatIfRow,
  { say, percent, number }: Pick<Words, 'say' | 'percent' | 'number'>,
  value: (length: number, unit: 'mm', figures: number) => string,
): string {
  if (change.kind === 'offset')
    return say('offset {offset}: {symbol}', { offset: percent(change.offset), symbol: values[0]?.symbol ?? '' });
  if (change.kind === 'parallel-length') return say('travel counted over L0 = {length}', { length: value(change.length, 'mm', LENGTH) });
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

const kinds = ['window', 'offset', 'frame-compliance', 'parallel-length', 'effective-length'] as const;
const windows = ['samples', 'stress', 'relative-error', 'lower-bound'] as const;

type WindowChange = Extract<WhatIfRow['change'], { kind: 'window' }>;

/** What the words of another window are filled with. */
function requireWindow(from: string, { window, shares, of }: WindowChange): void {
  requireObject(from, 'row.change.window', window);
  requireOneOf(from, 'row.change.window.by', window.by, windows);
  if (window.by === 'samples') {
    requireWhole(from, 'row.change.window.first', window.first, 0);
    requireWhole(from, 'row.change.window.last', window.last, window.first);
  }
  // a band of stress is told by its shares
  if (window.by !== 'stress' && shares === undefined) return;
  requirePair(from, 'row.change.shares', shares);
  requireText(from, 'row.change.of', of);
}

/** A row whose words have all that they are filled with. */
function requireRow(from: string, row: WhatIfRow): void {
  const { change, values } = requireObject(from, 'row', row) as WhatIfRow;
  requireOneOf(from, 'row.change.kind', (requireObject(from, 'row.change', change) as WhatIfRow['change']).kind, kinds);
  if (change.kind === 'window') requireWindow(from, change);
  else if (change.kind === 'offset') requirePositive(from, 'row.change.offset', change.offset);
  else if (change.kind === 'frame-compliance') requireNonNegative(from, 'row.change.factor', change.factor);
  else requirePositive(from, 'row.change.length', change.length);
  requireList(from, 'row.values', values).forEach((one, k) => {
    requireObject(from, `row.values[${k}]`, one);
    requireText(from, `row.values[${k}].symbol`, one.symbol);
    requireFinite(from, `row.values[${k}].value`, one.value);
  });
}

/**
 * A row of {@link whatIf} in a language: what was done otherwise, as the table of the report says it.
 *
 * $$ \text{change} \;\to\; \text{label} $$
 *
 * @remarks
 * Lengths are in mm. The values beside it are data: symbol, value, unit, difference.
 *
 * @param row - A row of `whatIf`.
 * @param options - The language.
 * @returns The label of the row.
 * @throws {@link InputError} `missing`, `wrong-type`, `not-finite`, `not-positive`, `unequal-lengths`, `empty`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * const stress = Array.from({ length: 2801 }, (_, i) => i / 10);
 * const record = { force: stress.map((R) => 50 * R), strain: stress.map((R) => R / 70000 + 0.002 * (R / 250) ** 20) };
 * const result = analyseTension(record, { section: sectionFromArea({ area: 50 }), gaugeLength: 40 });
 * const row = whatIf(result).find(({ change }) => change.kind === 'window' && change.window.by === 'relative-error')!;
 * sayWhatIf(row, { language: german }); // => 'Auswertefenster: kleinster relativer Standardfehler'
 * ```
 *
 * @see Checked in `test/languages/said.test.ts`.
 */
export function sayWhatIf(row: WhatIfRow, options: SayOptions = {}): string {
  const from = 'sayWhatIf';
  requireRow(from, row);
  const words = wordsToSay(from, options);
  return changeInWords(row, words, (length, unit, figures) => `${words.number(length, figures)}\u00a0${unit}`);
}
