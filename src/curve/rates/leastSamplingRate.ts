import { requireOptions, requirePositive } from '../../base/index.js';

/** What the sampling of an upper yield point must keep up with. */
export interface SamplingInput {
  /** Stress rate before yield [MPa/s]: strain rate times E where the strain rate is known. */
  readonly stressRate: number;
  /** Upper yield strength, or another stress that must not be missed [MPa]. */
  readonly stress: number;
  /** Accepted relative error by sampling; default 0.01. */
  readonly error?: number | undefined;
}

/**
 * Least sampling rate at which the upper yield strength is not missed by more than an accepted error.
 *
 * $$ f_{min} = \frac{\dot R}{R_{eH}\, q} = \frac{\dot e\, E}{R_{eH}\, q} $$
 *
 * @remarks
 * Between two samples the stress climbs by $\dot R / f$, and that much of a peak may be missed. ISO writes $q$ in per cent, so a factor of 100.
 *
 * @param input - `stressRate` [MPa/s], `stress` [MPa], `error` [1], each above 0.
 * @returns Samples per second [1/s].
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `unknown-option`.
 *
 * @example
 * ```ts
 * leastSamplingRate({ stressRate: 0.00025 * 210000, stress: 250 }); // => 21
 * ```
 *
 * @see ISO 6892-1:2019, Annex A, data sampling frequency (from memory). Checked in `test/handbook/rates.test.ts`.
 */
export function leastSamplingRate(input: SamplingInput): number {
  const from = 'leastSamplingRate';
  requireOptions(from, input, ['stressRate', 'stress', 'error'], 'input');
  return (
    requirePositive(from, 'stressRate', input.stressRate) /
    (requirePositive(from, 'stress', input.stress) * requirePositive(from, 'error', input.error ?? 0.01))
  );
}
