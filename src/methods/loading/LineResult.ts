import type { Quantity } from '../../base/index.js';
import type { LineExplanation } from '../../curve/index.js';

/** One candidate window for the elastic line. */
export interface WindowSummary {
  /** First sample. */
  readonly first: number;
  /** Last sample, included. */
  readonly last: number;
  /** Slope [MPa]. */
  readonly slope: number;
}

/** The window of the elastic line. */
export interface ModulusWindow extends WindowSummary, LineExplanation {
  /** How the window was chosen, in words. */
  readonly criterion: string;
  /** Number of samples. */
  readonly points: number;
  /** First and last strain, from the shifted origin [mm/mm]. */
  readonly strainLimits: readonly [number, number];
  /** First and last stress [MPa]. */
  readonly stressLimits: readonly [number, number];
  /** Where the line meets zero stress in the strain as recorded; the origin was moved there [mm/mm]. */
  readonly strainShift: number;
  /** Slope by which the elastic share of fillets and heads was taken off the strain [MPa]; absent where none was. */
  readonly filletSlope?: number | undefined;
  /** Coefficient of determination R² [1]. */
  readonly rSquared: number;
  /** Standard error over slope, S_m(rel) [1]. */
  readonly relativeStandardError: number;
  /** Runner-up windows, best first. */
  readonly alternatives: readonly WindowSummary[];
}

/** A strength read where the curve meets a line: at a plastic offset or at a total extension. */
export interface StrengthAtExtension extends Quantity {
  /** The offset (Rp) or the total extension (Rt) [mm/mm]. */
  readonly extension: number;
  /** Strain of the point from the shifted origin [mm/mm]. */
  readonly strain: number;
}

/** @internal What every result with an elastic line says of it, as far as doubts ask. */
export interface LineResult {
  readonly modulus?: Quantity | undefined;
  readonly modulusWindow?: ModulusWindow | undefined;
  readonly proofStrengths: readonly StrengthAtExtension[];
}
