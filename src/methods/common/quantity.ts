import type { BaseUnit, Quantity } from '../../base/index.js';

/** @internal The standard that most quantities are named in. */
export const ISO = 'ISO 6892-1:2019';

/** @internal A quantity; its uncertainty only where it is known. */
export const quantity = (
  symbol: string,
  name: string,
  value: number,
  unit: BaseUnit,
  source: string,
  standardUncertainty?: number,
): Quantity =>
  standardUncertainty === undefined ? { symbol, name, value, unit, source } : { symbol, name, value, unit, source, standardUncertainty };

/** @internal 0.002 as the index of a symbol: 0.2, without what rounding leaves of the product. */
export const percent = (strain: number): string => String(Math.round(1e12 * strain) / 1e10);

/** @internal Fm; only tension tests have a standard that names it so. */
export const maximumForce = (force: number, source = `${ISO}, maximum force`): Quantity =>
  quantity('Fm', 'maximum force', force, 'N', source);
