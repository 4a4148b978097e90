import type { BaseUnit } from '../base/index.js';
import type { Presentation } from './presentation.js';
import { shownUnit } from './shownUnit.js';

/** @internal A quantity on an axis: its metric unit as drawn, the factor to it, and its values in words. */
export interface ValueAxis {
  readonly title: string;
  /** Unit of the axis; none for a bare number. */
  readonly unit: { readonly metric?: string };
  /** From the unit of the library to that of the axis. */
  readonly factor: number;
  /** A value of the library in the reader's unit, with that unit. */
  readonly text: (value: number, figures?: number) => string;
  /** An uncertainty, to two figures, with that unit. */
  readonly doubt: (uncertainty: number) => string;
  /** A value with the decimals of the uncertainty beside it, with that unit. */
  readonly beside: (value: number, uncertainty: number, figures: number) => string;
}

/** @internal The axis of a quantity by its symbol and unit. */
export function valueAxis(symbol: string, unit: BaseUnit | undefined, show: Presentation): ValueAxis {
  const { unit: metric, factor } = shownUnit(symbol, unit);
  const other = show.unit(metric);
  const whole = factor * other.factor;
  const withUnit = (text: string): string => (metric === '' ? text : `${text}\u00a0${other.unit}`);
  return {
    title: symbol,
    unit: metric === '' ? {} : { metric },
    factor,
    text: (value, figures = 4) => withUnit(show.number(value * whole, figures)),
    doubt: (uncertainty) => withUnit(show.doubt(uncertainty * whole)),
    beside: (value, uncertainty, figures) => withUnit(show.beside(value * whole, uncertainty * whole, figures)),
  };
}
