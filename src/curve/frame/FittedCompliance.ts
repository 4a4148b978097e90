import type { Finding } from '../../base/index.js';
import type { ComplianceConditions, ComplianceTable, CompliancePower, ConstantCompliance } from './frameTravel.js';

/** One elastic pull of a piece in the frame. */
export interface CompliancePull {
  /** Force [N]. */
  readonly force: ArrayLike<number>;
  /** Crosshead travel [mm], from any origin. */
  readonly travel: ArrayLike<number>;
  /** Length of the piece that stretches elastically [mm]. */
  readonly effectiveLength: number;
  /** Area of its section [mm²]. */
  readonly area: number;
  /** Standard uncertainty of length over area, of itself [1]; default 0. */
  readonly relativeUncertainty?: number | undefined;
}

/** Options of `fitCompliance`. */
export interface ComplianceOptions extends ComplianceConditions {
  /** What the compliance is to be; default `constant`. */
  readonly shape?: 'constant' | 'table' | 'power' | undefined;
  /** Modulus of the pieces [MPa]; without it pieces of different length find it. */
  readonly modulus?: number | undefined;
  /** Relative standard uncertainty of that modulus [1], 0.02 for 2 %: 0 to below 1; default 0. */
  readonly modulusUncertainty?: number | undefined;
  /** Lowest force that counts [N]; default the lowest that all pulls reach. */
  readonly from?: number | undefined;
  /** Highest force that counts [N]; default the highest that all pulls reach. */
  readonly to?: number | undefined;
  /** Points of a table: how many, evenly spaced, or their forces [N] from the lowest to the highest; default 9. */
  readonly points?: number | ArrayLike<number> | undefined;
}

/** A measured compliance: plain data. */
export interface FittedCompliance {
  /** What it is. */
  readonly shape: 'constant' | 'table' | 'power';
  /** For `removeCompliance` and `analyseTension`, with its range and uncertainty. */
  readonly compliance: ConstantCompliance | ComplianceTable | CompliancePower;
  /** Forces between which it holds [N]. */
  readonly range: readonly [number, number];
  /** Forces of the columns below [N]: the points of a table, else eleven. */
  readonly force: Float64Array;
  /** Motion of the frame from the lowest force to each [mm]. */
  readonly travel: Float64Array;
  /** Standard uncertainty of that motion [mm]. */
  readonly standardUncertainty: Float64Array;
  /** The last of them over its motion [1]. */
  readonly relativeStandardUncertainty: number;
  /** Modulus of the pieces [MPa], where it was found. */
  readonly modulus?: number | undefined;
  /** Its standard uncertainty by scatter [MPa]. */
  readonly modulusStandardError?: number | undefined;
  /** Standard deviation of travel about the fit [mm]. */
  readonly residualStandardDeviation: number;
  /** Samples in the fit. */
  readonly samples: number;
  /** Doubts. */
  readonly findings: readonly Finding[];
}

/** Why there is no compliance. */
export type ComplianceReason = 'too-few-points' | 'not-determined' | 'not-rising';
