import type { BaseUnit } from '../../base/index.js';
import type { Presentation } from '../words/presentation.js';
import { shownUnit, type MetricUnit } from '../words/shownUnit.js';

/** @internal A quantity on an axis: its metric unit as drawn, the factor to it, and its values in words. */
export interface ValueAxis {
  readonly title: string;
  /** How it is shown along the axis; nothing for a bare number, or where the symbol says it. */
  readonly unit: { readonly metric?: MetricUnit };
  /** From the unit of the library to the metric one that is shown. */
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
  const metric = shownUnit(symbol, unit);
  const { unit: own, factor: whole } = show.unit(metric);
  const withUnit = (text: string): string => (own === '' ? text : `${text}\u00a0${own}`);
  return {
    title: symbol,
    // HBW is symbol and unit in one
    unit: own === '' || own === symbol ? {} : { metric },
    factor: metric.factor,
    text: (value, figures = 4) => withUnit(show.number(value * whole, figures)),
    doubt: (uncertainty) => withUnit(show.doubt(uncertainty * whole)),
    beside: (value, uncertainty, figures) => withUnit(show.beside(value * whole, uncertainty * whole, figures)),
  };
}
