import { baseUnits, requireOneOf, requireText, type BaseUnit } from '../../base/index.js';
import type { Presentation } from '../words/presentation.js';
import { valueAxis, type ValueAxis } from './valueAxis.js';

/** What the values of a figure are, where its data does not say. */
export interface QuantityOptions {
  /** Symbol of the values, for the axis; default none. */
  readonly symbol?: string | undefined;
  /** Unit of the values; default a bare number. */
  readonly unit?: BaseUnit | undefined;
}

/** @internal Their names. */
export const quantityOptions = ['symbol', 'unit'] as const;

/** @internal The axis of values by the options, with other words where there is no symbol. */
export function requireQuantity(from: string, { symbol, unit }: QuantityOptions, show: Presentation, title: string): ValueAxis {
  if (symbol !== undefined) requireText(from, 'options.symbol', symbol);
  if (unit !== undefined) requireOneOf(from, 'options.unit', unit, baseUnits);
  return { ...valueAxis(symbol ?? '', unit ?? '1', show), title: symbol ?? title };
}
