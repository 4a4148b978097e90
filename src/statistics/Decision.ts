import type { Finding } from '../base/index.js';
import type { RoundedValue, RoundingOptions } from './roundResult.js';

/** A measured value to decide about; a `Quantity` of a result is one. */
export interface Measured {
  /** The value, unrounded, in the unit of the limits. */
  readonly value: number;
  /** Standard uncertainty u in the same unit; 0 or absent: unknown. */
  readonly standardUncertainty?: number | undefined;
  /** Degrees of freedom of that uncertainty, above 0, as a budget states them; default infinite. */
  readonly degreesOfFreedom?: number | undefined;
  /** Symbol, for example `Rp0.2`. */
  readonly symbol?: string | undefined;
  /** Unit of the value and of its limits, for the sentences. */
  readonly unit?: string | undefined;
  /** Of an elongation: its gauge length [mm]. */
  readonly gaugeLength?: number | undefined;
  /** Of an elongation: the original area of its piece [mm²]. */
  readonly area?: number | undefined;
  /**
   * Where its strain comes from: `extensionBasis` of the result, of a bending test `motionBasis`. `travel` never gives a bare pass to a value that a strain
   * went into (by its symbol: all but forces, strengths by force alone, A and Z), and one that travel carries on none to values from the maximum on.
   */
  readonly extensionBasis?: string | undefined;
  /** True of a value that is at least so large, as a `Quantity` of a test that ended before its maximum says: it passes a lower limit alone, and fails an upper one alone. */
  readonly atLeast?: boolean | undefined;
  /** True of a strength without hardening, of the highest stress of the level of yielding, as a `Quantity` of a result says: no bare pass. */
  readonly withoutHardening?: boolean | undefined;
  /** True where its point lies beyond the last reading of the extensometer, as a `Quantity` of a result says: no bare pass either. */
  readonly beyondExtensometer?: boolean | undefined;
}

/** What was asked for, and by which rule it is decided. */
export interface Specification {
  /** Least value allowed. */
  readonly lower?: number | undefined;
  /** Greatest value allowed. */
  readonly upper?: number | undefined;
  /** Symbol that the limits are stated for; default that of the value. The index of an elongation says its gauge length: `A80mm`, `A11.3`. */
  readonly symbol?: string | undefined;
  /** Of an elongation: the gauge length [mm] that the limit is stated for. */
  readonly gaugeLength?: number | undefined;
  /** Of an elongation: coefficient of a proportional gauge length; default 5.65, which a bare A stands for. */
  readonly coefficient?: number | undefined;
  /** Agreed beforehand: the limits as they are, or drawn in by a guard band; default `simple`. */
  readonly rule?: 'simple' | 'guarded' | undefined;
  /** Width of the guard band in u, above 0; default 1.645 (5 % risk at most on one side), with few degrees of freedom Student's factor. */
  readonly guardFactor?: number | undefined;
  /** Coverage factor of U = k u, above 0; default 2, with few degrees of freedom Student's factor of the same coverage. */
  readonly coverageFactor?: number | undefined;
  /** How the value is rounded before it is compared, where the specification says so; default not at all. Against a guard band the value stays unrounded. */
  readonly rounding?: RoundingOptions | undefined;
  /** True where a structure or a person depends on it: never a bare pass. */
  readonly structuralUse?: boolean | undefined;
}

/** A decision by a named rule. */
export interface Decision {
  /** The verdict; the two in the middle only by a guard band, or where a condition stands against a bare pass. */
  readonly verdict: 'pass' | 'conditional-pass' | 'conditional-fail' | 'fail';
  /** The rule, in words that may stand in a report. */
  readonly rule: string;
  /** The value that was compared: rounded where that was asked for and no guard band drawn in. */
  readonly compared: number;
  /** The rounding, where it was asked for. */
  readonly rounding?: RoundedValue;
  /** Width of the guard band in u; absent by simple acceptance. */
  readonly guardFactor?: number;
  /** Coverage factor k of the U = k u by which value and limit were told apart; absent where the uncertainty is unknown. */
  readonly coverageFactor?: number;
  /** Least and greatest value that pass by the rule; the least above the greatest where guard bands leave no value that passes. */
  readonly acceptance: {
    /** Least value that passes. */
    readonly lower?: number;
    /** Greatest value that passes. */
    readonly upper?: number;
  };
  /** Probability that the true value keeps the limits [1]; absent where the uncertainty is unknown. */
  readonly probabilityOfConformity?: number;
  /** Of a value that is accepted: probability that it does not conform [1]. */
  readonly consumersRisk?: number;
  /** Of a value that is rejected: probability that it does conform [1]. */
  readonly producersRisk?: number;
  /** False where the value cannot be told from its nearest limit: that is within U, and no agreed guard band passed or failed the value. */
  readonly toldApart?: boolean;
  /** What stands against reading the verdict without a second thought. */
  readonly findings: readonly Finding[];
}

/** Why there is no decision. */
export type DecisionReason = 'other-quantity' | 'other-gauge-length' | 'only-at-least' | 'uncertainty-unknown';
