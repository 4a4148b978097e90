import type { BaseUnit } from '../../base/index.js';
import { convert } from '../../units/index.js';

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

/** @internal How forces [N] are shown where no quantity says it: on axes and in sentences. */
export const FORCE = shownUnit('F', 'N');
/** @internal How small forces [N] are shown: what a reading resolves, friction, what a fit leaves over. */
export const SMALL_FORCE: MetricUnit = { unit: 'N', factor: 1 };
/** @internal How rates of the force [N/s] are shown. */
export const FORCE_RATE: MetricUnit = { unit: 'kN/s', factor: FORCE.factor };
/** @internal How slopes of elastic lines [MPa] are shown. */
export const SLOPE = shownUnit('mE', 'MPa');
/** @internal The same of strains and of shares [1]. */
export const SHARE = shownUnit('e', '1');
/** @internal The same of oil pressures [MPa]. */
export const PRESSURE: MetricUnit = { unit: 'bar', factor: convert(1, 'MPa', 'bar') };
/** @internal The same of their rates [MPa/s]. */
export const PRESSURE_RATE: MetricUnit = { unit: 'bar/s', factor: PRESSURE.factor };
/** @internal The same of speeds of the crosshead [mm/s]. */
export const SPEED: MetricUnit = { unit: 'mm/min', factor: 60 };
/** @internal The same of energies [N·mm]. */
export const ENERGY: MetricUnit = { unit: 'J', factor: 1e-3 };
/** @internal The same of strain rates [1/s] on axes. */
export const STRAIN_RATE: MetricUnit = { unit: '10⁻³ s⁻¹', factor: 1e3 };
