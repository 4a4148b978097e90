import { InputError, requireFinite, requireOptions, requirePositive } from '../base/index.js';
import { transmitterPressure, type TransmitterPressure } from './transmitter.js';

/** A pressure transmitter with a voltage. */
export interface VoltageOutput {
  /** Pressure at the upper voltage [MPa]. */
  readonly fullScale: number;
  /** Voltage at no pressure [V]; default 0. */
  readonly low?: number | undefined;
  /** Voltage at full scale [V]; default 10. */
  readonly high?: number | undefined;
}

/** Signals further outside the range than this share of it are faults. */
const MARGIN = 0.05;

/**
 * Pressure from the voltage of a transmitter.
 *
 * $$ p = p_{FS} \frac{U - U_0}{U_{FS} - U_0} $$
 *
 * @remarks
 * With a live zero (for example 0.5 to 4.5 V) a broken wire shows; with 0 to 10 V it reads as no pressure. Stretches more than 5 % of the
 * range outside it are listed as faults (common practice), and the pressure ends before the first.
 *
 * @param voltage - Voltage [V], sample by sample.
 * @param output - `fullScale` [MPa] above 0; `low` and `high` [V], high above low.
 * @returns Pressure [MPa] up to the first fault, and the faults as first and last samples.
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `empty`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * voltageToPressure([0.5, 2.5, 4.5], { fullScale: 25, low: 0.5, high: 4.5 }).pressure; // => [0, 12.5, 25]
 * ```
 *
 * @see Common practice. Checked in `test/force/transmitters.test.ts`.
 */
export function voltageToPressure(voltage: ArrayLike<number>, output: VoltageOutput): TransmitterPressure {
  const from = 'voltageToPressure';
  requireOptions(from, output, ['fullScale', 'low', 'high'], 'output');
  const fullScale = requirePositive(from, 'fullScale', output.fullScale);
  const low = requireFinite(from, 'low', output.low ?? 0);
  const high = requireFinite(from, 'high', output.high ?? 10);
  if (high <= low) throw new InputError(from, 'high', 'out-of-range', `must be above low (${low})`, high);
  const margin = MARGIN * (high - low);
  return transmitterPressure(from, 'voltage', voltage, { low, high, fullScale, least: low - margin, most: high + margin });
}
