import type { Quantity } from '../../base/index.js';

/** The hardening law fitted between yielding and maximum force. */
export interface HardeningSummary {
  /** Name of the law. */
  readonly law: 'Hollomon';
  /** Exponent n. */
  readonly exponent: Quantity;
  /** Strength coefficient K. */
  readonly strengthCoefficient: Quantity;
  /** True plastic strain where the fit begins and ends [mm/mm]. */
  readonly range: readonly [number, number];
  /** Samples in the fit. */
  readonly points: number;
  /** Coefficient of determination R² [1]. */
  readonly rSquared: number;
}
