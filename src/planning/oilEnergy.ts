import { requireNonNegative, requireOptions, requirePositive } from '../base/index.js';

/** Oil that gives way under pressure. */
export interface OilVolume {
  /** Volume under pressure V [mm³]. */
  readonly volume: number;
  /** Bulk modulus K of the oil [MPa]; default 1400 (common practice for mineral oil with a little air). */
  readonly bulkModulus?: number | undefined;
  /** Growth of the hoses with pressure [mm³/MPa]; default 0. */
  readonly hoseGrowth?: number | undefined;
}

/** @internal */
export const oilFields = ['volume', 'bulkModulus', 'hoseGrowth'] as const;

/** @internal Volume that a rise of pressure takes up [mm³/MPa]: the oil's own compression and the growth of hoses. */
export function oilGive(from: string, { volume, bulkModulus = 1400, hoseGrowth = 0 }: OilVolume): number {
  return (
    requireNonNegative(from, 'volume', volume) / requirePositive(from, 'bulkModulus', bulkModulus) +
    requireNonNegative(from, 'hoseGrowth', hoseGrowth)
  );
}

/**
 * Energy stored in oil under pressure, and in hoses that grow with it.
 *
 * $$ U = \frac{p^2}{2} \left( \frac{V}{K} + \frac{\mathrm{d}V_h}{\mathrm{d}p} \right) $$
 *
 * @remarks
 * Taken as linear. Air in the oil lowers $K$ and stores more.
 *
 * @param input - `pressure` [MPa] and `volume` [mm³] of 0 or more, `bulkModulus` [MPa], `hoseGrowth` [mm³/MPa].
 * @returns Energy [N·mm].
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * oilEnergy({ pressure: 20, volume: 100e3, bulkModulus: 1400 }) / 1000; // => 14.29
 * ```
 *
 * @see Definition of the bulk modulus. Checked in `test/handbook/planning.test.ts`.
 */
export function oilEnergy(input: OilVolume & { readonly pressure: number }): number {
  const from = 'oilEnergy';
  requireOptions(from, input, ['pressure', ...oilFields], 'input');
  return (requireNonNegative(from, 'pressure', input.pressure) ** 2 * oilGive(from, input)) / 2;
}
