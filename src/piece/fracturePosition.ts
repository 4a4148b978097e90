import { InputError, requireNonNegative, requireOptions, requirePositive } from '../base/index.js';

/** Where a piece broke. */
export interface FracturePositionInput {
  /** Original gauge length L0 [mm]. */
  readonly gaugeLength: number;
  /** Distance of the fracture from the nearest gauge mark [mm]. */
  readonly distance: number;
}

/** What two standards say of the place. */
export interface FracturePosition {
  /** Least distance by ISO 6892-1, a third of the gauge length [mm]. */
  readonly third: number;
  /** Least distance by ASTM E8/E8M, a quarter of the gauge length: the middle half [mm]. */
  readonly quarter: number;
  /** True where A by the marks is valid without more by ISO 6892-1. */
  readonly middleThird: boolean;
  /** True where the elongation is representative by ASTM E8/E8M. */
  readonly middleHalf: boolean;
}

/**
 * Whether a piece broke far enough from its gauge marks.
 *
 * $$ a \ge \frac{L_0}{3} \text{ (ISO 6892-1)}, \qquad a \ge \frac{L_0}{4} \text{ (ASTM E8/E8M: middle half)} $$
 *
 * @remarks
 * Outside, A is still valid where it reaches its specified minimum; else it is measured by subdivision, or another piece is tested.
 *
 * @param input - `gaugeLength` [mm] above 0; `distance` [mm] from 0 to half the gauge length after fracture.
 * @returns The least distances [mm] and both verdicts.
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `unknown-option`; `out-of-range` beyond what a broken piece can show.
 *
 * @example
 * ```ts
 * fracturePosition({ gaugeLength: 48, distance: 14 }).middleThird; // => false
 * fracturePosition({ gaugeLength: 48, distance: 14 }).middleHalf; // => true
 * ```
 *
 * @see ISO 6892-1, percentage elongation after fracture; ASTM E8/E8M, elongation. Checked in `test/handbook/after-fracture.test.ts`.
 */
export function fracturePosition(input: FracturePositionInput): FracturePosition {
  const from = 'fracturePosition';
  requireOptions(from, input, ['gaugeLength', 'distance'], 'input');
  const length = requirePositive(from, 'gaugeLength', input.gaugeLength);
  const distance = requireNonNegative(from, 'distance', input.distance);
  // a gauge length grows to at most a few times itself
  if (distance > 2 * length)
    throw new InputError(from, 'distance', 'out-of-range', `must be to the nearest mark of ${length} mm`, distance);
  const third = length / 3;
  const quarter = length / 4;
  return { third, quarter, middleThird: distance >= third * (1 - 1e-12), middleHalf: distance >= quarter };
}
