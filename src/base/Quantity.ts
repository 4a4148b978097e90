/** Units of results: N, mm, MPa and s throughout; strains are ratios. */
export type BaseUnit = '1' | '1/s' | 'HBW' | 'MPa' | 'MPa/s' | 'N' | 'N·mm' | 'N/s' | 'mm' | 'mm/N' | 'mm/s' | 'mm²' | 'mm³' | 'mm⁴' | 's';

/** @internal The same as a list. */
export const baseUnits: readonly BaseUnit[] = [
  '1',
  '1/s',
  'HBW',
  'MPa',
  'MPa/s',
  'N',
  'N·mm',
  'N/s',
  'mm',
  'mm/N',
  'mm/s',
  'mm²',
  'mm³',
  'mm⁴',
  's',
];

/** A determined quantity: its value, its unit, what it is called, and where the rule for it stands. */
export interface Quantity {
  /** Symbol as in ISO 6892-1, for example `Rp0.2`, `Rm`, `Agt`. */
  readonly symbol: string;
  /** What it is, in words. */
  readonly name: string;
  /** The value, unrounded, in `unit`. */
  readonly value: number;
  /** Unit of `value`. */
  readonly unit: BaseUnit;
  /** Standard uncertainty in the same unit, where it is known: by the budget of the test; without one by the record alone: scatter, and of a slope the bends of its curve and the noise of the strain too. */
  readonly standardUncertainty?: number | undefined;
  /** Degrees of freedom of that uncertainty by the budget of the test; absent where they are infinite, or there is no budget. */
  readonly degreesOfFreedom?: number | undefined;
  /** The standard and clause by title, or the paper or book. */
  readonly source: string;
  /** True of a value that the test shows to be at least so large: it ended before its maximum. Else absent. */
  readonly atLeast?: true | undefined;
  /** True of Fm and Rm where no hardening follows yielding: of the highest stress of the level, as ISO 6892-1 defines none there. Else absent. */
  readonly withoutHardening?: true | undefined;
  /** True where its point lies beyond the last reading of the extensometer: its strain is that of the crosshead from there on. Else absent. */
  readonly beyondExtensometer?: true | undefined;
}

/** @internal A unit as a sentence names it: nothing for a bare number. */
export const unitInWords = (unit: string): string => (unit === '1' ? '' : unit);
