import { requireOptions, requirePositive } from '../base/index.js';
import { LONG_COEFFICIENT, USUAL_COEFFICIENT } from './gaugeLengthRule.js';

/** What a proportional gauge length follows from. */
export interface GaugeLengthInput {
  /** Original cross-sectional area S0 [mm²]. */
  readonly area: number;
  /** Coefficient of proportionality k; default 5.65, or 11.3 where that would give less than 15 mm. */
  readonly coefficient?: number | undefined;
}

/** Below this length the longer coefficient applies [mm] (ISO 6892-1, from memory). */
const LEAST = 15;

/**
 * Proportional gauge length of a section.
 *
 * $$ L_0 = k \sqrt{S_0}, \qquad k = 5.65 $$
 *
 * @remarks
 * Where 5.65 gives less than 15 mm, 11.3 is used instead unless a coefficient is asked for. The nominal 5.65 stands for
 * 5.642 (five diameters); E8M uses 5 d, E8 4 d ($k$ = 4.51). See `roundedGaugeLength` for the 5 mm rule.
 *
 * @param input - `area` [mm²] above 0; `coefficient` above 0.
 * @returns Gauge length [mm].
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `unknown-option`.
 *
 * @example
 * ```ts
 * proportionalGaugeLength({ area: 78.5398 }); // => 50.072
 * ```
 *
 * @see ISO 6892-1:2019, original gauge length. Checked in `test/handbook/lengths.test.ts`.
 */
export function proportionalGaugeLength(input: GaugeLengthInput): number {
  const from = 'proportionalGaugeLength';
  requireOptions(from, input, ['area', 'coefficient'], 'input');
  const root = Math.sqrt(requirePositive(from, 'area', input.area));
  if (input.coefficient !== undefined) return requirePositive(from, 'coefficient', input.coefficient) * root;
  return (USUAL_COEFFICIENT * root < LEAST ? LONG_COEFFICIENT : USUAL_COEFFICIENT) * root;
}
