import { requireOneOf, requireOptions } from '../../base/index.js';
import { takesPower } from '../../languages/index.js';
import type { CurveResult, TestResult } from '../../methods/index.js';
import { powerOfTen, stepOfFigures } from '../../numeric/index.js';
import { roundingStep, roundResult, type HalfRule, type RoundedValue, type RoundingRule } from '../../statistics/index.js';
import { writtenSymbol, type ShownQuantity } from './MethodPage.js';
import { frameLeftOut } from './frameLeftOut.js';
import { pageOf } from './pageOf.js';
import { presentation, presentationOptions, type Presentation, type PresentationOptions } from '../words/presentation.js';

/** Options of {@link summarise}. */
export interface SummaryOptions extends PresentationOptions {
  /** Whose steps of rounding: ISO 6892-1, or ASTM E8/E8M; default `iso`. */
  readonly rounding?: RoundingRule | undefined;
  /** Where a half goes: to the even step or away from 0; default `even`. */
  readonly half?: HalfRule | undefined;
}

/** One row of a results table. */
export interface SummaryRow {
  /** Field of the result. */
  readonly field: string;
  /** Symbol. */
  readonly symbol: string;
  /** Name. */
  readonly name: string;
  /** Rounded value as text, in `unit`; after ≥ where it is at least so large. */
  readonly text: string;
  /** Unit as shown: MPa, GPa, %, kN, MJ/m³; empty for a number. */
  readonly unit: string;
  /** The value in that unit, unrounded. */
  readonly value: number;
  /** The value rounded, in that unit. */
  readonly rounded: number;
  /** Step of the rounding, in that unit. */
  readonly step: number;
  /** Standard uncertainty in that unit, where it is known. */
  readonly standardUncertainty?: number | undefined;
  /**
   * Expanded uncertainty U = k u of the unrounded `value` in that unit, where u is known. The column U of a report is that of the value as it is printed,
   * k √(u² + s²/12) with the step s of the rounding.
   */
  readonly expandedUncertainty?: number | undefined;
  /** Coverage factor k: by the degrees of freedom of the budget, else 2. */
  readonly coverageFactor?: number | undefined;
  /** What that uncertainty leaves out although it decides: the frame, where its compliance came without an uncertainty. */
  readonly leftOut?: string | undefined;
  /** Where the rule stands. */
  readonly source: string;
  /** What must be said beside the value: that its strain is of the crosshead, or that it is at least so large. */
  readonly stamp?: string | undefined;
}

/** Largest of 1, 2 and 5 times a power of ten that is not above a step: what a step of one system becomes in another. */
function roundStep(step: number): number {
  const power = powerOfTen(Math.floor(Math.log10(step)));
  const lead = step / power;
  return (lead >= 5 ? 5 : lead >= 2 ? 2 : 1) * power;
}

/** Steps of ASTM E8/E8M for strengths in ksi (from memory): 100 psi up to 50 000 psi, 500 psi up to 100 000 psi, 1000 psi above. */
const ksiStep = (strength: number): number => (Math.abs(strength) <= 50 ? 0.1 : Math.abs(strength) <= 100 ? 0.5 : 1);

/** @internal Before a value that is only at least so large. */
export const AT_LEAST = '≥\u00a0';

/** Standard and expanded uncertainty. */
const uncertain = (standardUncertainty: number, coverageFactor: number) => ({
  standardUncertainty,
  expandedUncertainty: coverageFactor * standardUncertainty,
  coverageFactor,
});

/** A value in the unit that is shown, rounded by the rule of its kind, or by a step or a number of figures. */
function rounded(
  value: number,
  { factor, step }: Pick<ShownQuantity, 'factor' | 'step'>,
  other: number,
  { rounding = 'iso', half }: SummaryOptions,
): RoundedValue {
  if (typeof step === 'object') return roundResult(value, { step: stepOfFigures(value, step.figures), half });
  if (step === 'strength' && other !== 1 && rounding === 'astm') return roundResult(value, { step: ksiStep(value), half });
  const metric = typeof step === 'string' ? roundingStep(step, value / factor / other, rounding) * factor : step;
  return roundResult(value, { step: other === 1 ? metric : roundStep(metric * other), half });
}

/** Digits of a rounded value; those of a tiny one with a power of ten. */
const textOf = ({ text, rounded: value }: RoundedValue, { digits }: Presentation): string =>
  digits(takesPower(value) ? value.toExponential() : text);

/**
 * The results of a test as rows of a table, rounded by the standard, each with its source.
 *
 * @remarks
 * Names and decimal sign are those of the language, `rounded` and `value` are numbers. In lbf, in and ksi a step is the next round one below that of the
 * standard; for strengths ASTM E8/E8M has steps in psi of its own (from memory). Each row carries the rounded value and the unrounded one: round once, and last ({@link roundResult}). Half is told by decimal digits. Moduli
 * and slopes have three figures, and fewer where the first digit of their standard uncertainty stands before the third. Values whose strain came from the crosshead say so.
 *
 * @param result - A result of any `analyse` function.
 * @param options - Whose steps, where a half goes, language and units.
 * @returns Rows in the order of the test; in tension: elastic, yield, strength, extensions, energies, hardening.
 * @throws {@link InputError} `wrong-type` for anything else; `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * const stress = Array.from({ length: 2801 }, (_, i) => i / 10);
 * const record = { force: stress.map((R) => 50 * R), strain: stress.map((R) => R / 70000 + 0.002 * (R / 250) ** 20) };
 * const rows = summarise(analyseTension(record, { section: sectionFromArea({ area: 50 }), gaugeLength: 40 }));
 * rows.find(({ symbol }) => symbol === 'Rp0.2')?.text; // => '250'
 * ```
 *
 * @see ISO 6892-1:2019 and ASTM E8/E8M, rounding of results; ISO 80000-1, rounding of numbers. Checked in `test/report/report.test.ts`.
 */
export function summarise(result: TestResult | CurveResult, options: SummaryOptions = {}): SummaryRow[] {
  const from = 'summarise';
  const page = pageOf(from, result);
  requireOptions(from, options, ['rounding', 'half', ...presentationOptions]);
  const { rounding = 'iso', half = 'even' } = options;
  requireOneOf(from, 'options.rounding', rounding, ['iso', 'astm']);
  requireOneOf(from, 'options.half', half, ['even', 'up']);
  const show: Presentation = presentation(from, options);
  const budgets = 'uncertainty' in result ? result.uncertainty : undefined;
  return page.quantities(result).map((one) => {
    const { field, quantity, unit, factor, step, stamp } = one;
    const other = show.unit({ unit, factor });
    const value = quantity.value * other.factor;
    const shown = rounded(value, { factor, step }, other.factor / factor, options);
    const u = quantity.standardUncertainty;
    return {
      field,
      symbol: writtenSymbol(one),
      name: show.term(quantity.name),
      text: `${quantity.atLeast ? AT_LEAST : ''}${textOf(shown, show)}`,
      unit: other.unit,
      value,
      rounded: shown.rounded,
      step: shown.step,
      ...(u === undefined ? {} : uncertain(u * other.factor, budgets?.[quantity.symbol]?.coverageFactor ?? 2)),
      ...(frameLeftOut(result, one)
        ? { leftOut: show.say('u leaves out the frame: its compliance was given without an uncertainty') }
        : {}),
      source: show.term(quantity.source),
      ...(stamp === undefined ? {} : { stamp: show.say(stamp) }),
    };
  });
}
