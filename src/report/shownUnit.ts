import type { BaseUnit } from '../base/index.js';

/** @internal The metric unit that a quantity is shown in, empty for a bare number, and the factor to it from that of the library. */
export interface MetricUnit {
  readonly unit: string;
  readonly factor: number;
}

/** @internal Moduli are shown in GPa, forces in kN, elongations in per cent, energies per volume in MJ/m³, and whatever else in its own unit. */
export function shownUnit(symbol: string, unit: BaseUnit | undefined): MetricUnit {
  if (unit === 'MPa' && /^(E|mE|Em|Ef)/.test(symbol)) return { unit: 'GPa', factor: 1e-3 };
  if (unit === 'MPa' && /^U/.test(symbol)) return { unit: 'MJ/m³', factor: 1 };
  if (unit === 'N') return { unit: 'kN', factor: 1e-3 };
  if (unit === '1' && /^(A|Z|e(?![a-z]))/.test(symbol)) return { unit: '%', factor: 100 };
  return { unit: unit === undefined || unit === '1' ? '' : unit, factor: 1 };
}
