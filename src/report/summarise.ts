import { roundToStep } from '../numeric/index.js';
import type { TestResult } from '../methods/index.js';
import type { Shown } from './MethodPage.js';
import { pageOf } from './pageOf.js';

/** One row of a results table. */
export interface SummaryRow {
  /** Field of the result. */
  readonly field: string;
  /** Symbol. */
  readonly symbol: string;
  /** Name. */
  readonly name: string;
  /** Rounded value as text, in `unit`. */
  readonly text: string;
  /** Unit as shown: MPa, GPa, %, kN, MJ/m³; empty for a number. */
  readonly unit: string;
  /** The value in that unit, unrounded. */
  readonly value: number;
  /** Standard uncertainty in that unit, where it is known. */
  readonly standardUncertainty?: number | undefined;
  /** Where the rule stands. */
  readonly source: string;
  /** What must be said beside the value: that its strain is of the crosshead. */
  readonly stamp?: string | undefined;
}

/** Rounded text with as many decimals as the step has. */
function rounded(value: number, step: Shown['step']): string {
  if (typeof step === 'number') return roundToStep(value, step).toFixed(Math.max(0, -Math.floor(Math.log10(step))));
  if (value === 0) return '0';
  // 99.97 to three figures is 100, so the place of the first figure is that of the rounded value
  const size = 10 ** (Math.floor(Math.log10(Math.abs(Number(value.toPrecision(step.figures))))) + 1 - step.figures);
  return roundToStep(value, size).toFixed(Math.max(0, -Math.round(Math.log10(size))));
}

/**
 * The results of a test as rows of a table, rounded by the standard, each with its source.
 *
 * @remarks
 * Each row carries the rounded text and the unrounded value: round once, and last. Half is rounded to even, by decimal digits. E has
 * three figures, two where a frame compliance was removed. Values whose strain came from the crosshead say so.
 *
 * @param result - A result of any `analyse` function.
 * @returns Rows in the order of the test; in tension: elastic, yield, strength, extensions, energies, hardening.
 * @throws {@link InputError} `wrong-type` for anything else.
 *
 * @example
 * ```ts
 * const stress = Array.from({ length: 2801 }, (_, i) => i / 10);
 * const record = { force: stress.map((R) => 50 * R), strain: stress.map((R) => R / 70000 + 0.002 * (R / 250) ** 20) };
 * const rows = summarise(analyseTension(record, { section: sectionFromArea({ area: 50 }), gaugeLength: 40 }));
 * rows.find(({ symbol }) => symbol === 'Rp0.2')?.text; // => '250'
 * ```
 *
 * @see ISO 6892-1:2019, rounding of the results; ISO 80000-1, rounding of numbers. Checked in `test/report/report.test.ts`.
 */
export function summarise(result: TestResult): SummaryRow[] {
  return pageOf('summarise', result)
    .quantities(result)
    .map(({ field, quantity, unit, factor, step, stamp }) => {
      const value = quantity.value * factor;
      return {
        field,
        symbol: quantity.symbol,
        name: quantity.name,
        text: rounded(value, step),
        unit,
        value,
        ...(quantity.standardUncertainty === undefined ? {} : { standardUncertainty: quantity.standardUncertainty * factor }),
        source: quantity.source,
        ...(stamp === undefined ? {} : { stamp }),
      };
    });
}
