import type { BaseUnit } from '../base/index.js';

/** @internal The metric unit that a quantity is shown in, empty for a bare number, and the factor to it from that of the library. */
export interface MetricUnit {
  readonly unit: string;
  readonly factor: number;
}

/** Moduli and slopes of elastic lines, energies per volume, and the ratios that are elongations or shares, by the symbols that they begin with. */
const modulus = /^(E|mE|mf|mu)/;
const energy = /^(U|w)/;
const percentage = /^(A|Z|e(?![a-z])|er\b|εf|ss\/sb)/;

/** @internal Moduli are shown in GPa, forces in kN, elongations in per cent, energies per volume in MJ/m³, and whatever else in its own unit. */
export function shownUnit(symbol: string, unit: BaseUnit | undefined): MetricUnit {
  if (unit === 'MPa' && modulus.test(symbol)) return { unit: 'GPa', factor: 1e-3 };
  if (unit === 'MPa' && energy.test(symbol)) return { unit: 'MJ/m³', factor: 1 };
  if (unit === 'N') return { unit: 'kN', factor: 1e-3 };
  if (unit === '1' && percentage.test(symbol)) return { unit: '%', factor: 100 };
  return { unit: unit === undefined || unit === '1' ? '' : unit, factor: 1 };
}
