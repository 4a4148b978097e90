import type { BaseUnit } from '../base/index.js';
import type { Presentation } from './presentation.js';

/** @internal A quantity on an axis: its metric unit as drawn, the factor to it, and its values in words. */
export interface ValueAxis {
  readonly title: string;
  /** Unit of the axis; none for a bare number. */
  readonly unit: { readonly metric?: string };
  /** From the unit of the library to that of the axis. */
  readonly factor: number;
  /** A value of the library in the reader's unit, with that unit. */
  readonly text: (value: number, figures?: number) => string;
}

/** Moduli are drawn in GPa, forces in kN, elongations in per cent, and whatever else in its own unit. */
function unitOf(symbol: string, unit: BaseUnit | undefined): readonly [metric: string | undefined, factor: number] {
  if (unit === 'MPa' && /^(E|mE|Em|Ef)/.test(symbol)) return ['GPa', 1e-3];
  if (unit === 'N') return ['kN', 1e-3];
  if (unit === '1') return /^(A|Z|e(?![a-z]))/.test(symbol) ? ['%', 100] : [undefined, 1];
  return [unit, 1];
}

/** @internal The axis of a quantity by its symbol and unit. */
export function valueAxis(symbol: string, unit: BaseUnit | undefined, show: Presentation): ValueAxis {
  const [metric, factor] = unitOf(symbol, unit);
  return {
    title: symbol,
    unit: metric === undefined ? {} : { metric },
    factor,
    text: (value, figures = 4) =>
      metric === undefined ? show.number(value * factor, figures) : show.value(value * factor, metric, figures),
  };
}
