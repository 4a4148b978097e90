import { InputError, requireBetween, requireColumn, requireOptions, type CurveColumns, type StressStrainCurve } from '../../base/index.js';
import { requireCurve } from '../requireCurve.js';

/** Options of {@link loadingRates}. */
export interface RateOptions {
  /** At most so many places, 2 to 10000; default 200. */
  readonly places?: number | undefined;
}

/** Local rates along a test. */
export interface LoadingRates {
  /** Middle of each stretch [s]. */
  readonly time: Float64Array;
  /** Stress rate [MPa/s]. */
  readonly stressRate: Float64Array;
  /** Strain rate [1/s]. */
  readonly strainRate: Float64Array;
}

/** A slope of fewer samples would be mostly noise. */
const LEAST = 5;
const PLACES = 200;

/** @internal {@link loadingRates} on checked columns; time never goes back. */
export function loadingRatesKernel({ strain, stress }: StressStrainCurve, clock: Float64Array, wanted = PLACES): LoadingRates {
  const n = strain.length;
  const size = Math.max(LEAST, Math.ceil(n / wanted));
  // a last stretch of fewer samples than a slope needs is none
  const most = Math.floor((n - LEAST) / size) + 1;
  const rates = { time: new Float64Array(most), stressRate: new Float64Array(most), strainRate: new Float64Array(most) };
  let places = 0;
  for (let first = 0; first + LEAST <= n; first += size) {
    const last = Math.min(first + size, n) - 1;
    // in variables, because a loop reads them again from their columns each time
    const t0 = clock[first]!;
    const e0 = strain[first]!;
    const R0 = stress[first]!;
    let middle = 0;
    for (let i = first; i <= last; i += 1) middle += clock[i]! - t0;
    middle = t0 + middle / (last - first + 1);
    let tt = 0;
    let te = 0;
    let tR = 0;
    for (let i = first; i <= last; i += 1) {
      const t = clock[i]! - middle;
      tt += t * t;
      te += t * (strain[i]! - e0);
      tR += t * (stress[i]! - R0);
    }
    if (!(tt > 0)) continue;
    rates.time[places] = (t0 + clock[last]!) / 2;
    rates.stressRate[places] = tR / tt;
    rates.strainRate[places] = te / tt;
    places += 1;
  }
  // seldom does a place fall out, where the clock stood
  const taken = (column: Float64Array): Float64Array => (places === most ? column : column.slice(0, places));
  return { time: taken(rates.time), stressRate: taken(rates.stressRate), strainRate: taken(rates.strainRate) };
}

/**
 * Local stress and strain rates along a test.
 *
 * $$ \dot R = \frac{\mathrm{d}R}{\mathrm{d}t}, \qquad \dot e = \frac{\mathrm{d}e}{\mathrm{d}t} $$
 *
 * @remarks
 * Least-squares slopes over successive stretches of equal numbers of samples, at least five each. Local slopes, never the average from
 * the start: an average hides a stretch that was too fast. Stretches in which time does not advance are left out.
 *
 * @param curve - Strain [mm/mm] and stress [MPa], at least 5 samples, finite.
 * @param time - Time [s] of each sample, never going back.
 * @param options - Largest number of places, 2 to 10000 [1]; default 200.
 * @returns Time [s], stress rate [MPa/s], strain rate [1/s].
 * @throws {@link InputError} `not-finite`, `too-few`, `unequal-lengths`, `not-increasing`, `unknown-option`, `out-of-range`.
 *
 * @example
 * ```ts
 * const time = [0, 1, 2, 3, 4, 5];
 * const curve = { strain: time.map((t) => 0.001 * t), stress: time.map((t) => 20 * t) };
 * loadingRates(curve, time, { places: 2 }).stressRate; // => [20]
 * ```
 *
 * @see ISO 6892-1:2019, testing rates. Checked in `test/curve/curve.test.ts`.
 */
export function loadingRates(curve: CurveColumns, time: ArrayLike<number>, options: RateOptions = {}): LoadingRates {
  const from = 'loadingRates';
  const checked = requireCurve(from, curve, LEAST);
  requireOptions(from, options, ['places']);
  const n = checked.strain.length;
  const clock = requireColumn(from, 'time', time, { length: n });
  for (let i = 1; i < n; i += 1)
    if (clock[i]! < clock[i - 1]!) throw new InputError(from, `time[${i}]`, 'not-increasing', 'must not go back', clock[i]);
  return loadingRatesKernel(checked, clock, requireBetween(from, 'options.places', options.places ?? PLACES, 2, 10_000));
}
