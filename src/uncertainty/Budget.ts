import type { BaseUnit, Finding } from '../base/index.js';
import type { InputCorrelation } from './correlations.js';
import type { UncertaintyDistribution } from './UncertaintySource.js';

/** One line of a budget: one source of one input. */
export interface BudgetLine {
  /** Name of the input. */
  readonly input: string;
  /** Name of the source, where the input has several or the source was named. */
  readonly source?: string | undefined;
  /** A: from repeated readings; B: from other knowledge. */
  readonly type: 'A' | 'B';
  /** Shape of the doubt. */
  readonly distribution: UncertaintyDistribution;
  /** Estimate of the input [its unit]. */
  readonly value: number;
  /** Unit of the input, where it was given. */
  readonly unit?: string | undefined;
  /** Standard uncertainty by this source [unit of the input]. */
  readonly standardUncertainty: number;
  /** Degrees of freedom; absent where they are infinite. */
  readonly degreesOfFreedom?: number | undefined;
  /** Partial derivative of the result [unit of the result over unit of the input]. */
  readonly sensitivity: number;
  /** Sensitivity times standard uncertainty, with its sign [unit of the result]. */
  readonly contribution: number;
  /** Share of the combined variance [1]; correlations count half for each side, so a share may be negative. */
  readonly share: number;
  /** What this source's standard uncertainty must be multiplied by for the result's to halve, all else as it is [1]; absent: cannot alone. */
  readonly toHalve?: number | undefined;
}

/** An uncertainty budget by the Guide (JCGM 100). */
export interface UncertaintyBudget {
  /** Symbol of the result, where it was given. */
  readonly symbol?: string | undefined;
  /** Unit of the result, where it was given. */
  readonly unit?: BaseUnit | undefined;
  /** The result at the estimates of the inputs. */
  readonly value: number;
  /** Combined standard uncertainty u_c [unit of the result]. */
  readonly standardUncertainty: number;
  /** u_c over the size of the value [1]; absent where the value is 0. */
  readonly relativeStandardUncertainty?: number | undefined;
  /** Effective degrees of freedom (Welch-Satterthwaite), unrounded; absent where they are infinite. */
  readonly degreesOfFreedom?: number | undefined;
  /** Coverage probability [1]. */
  readonly coverage: number;
  /** Coverage factor k [1]. */
  readonly coverageFactor: number;
  /** Expanded uncertainty k u_c [unit of the result]. */
  readonly expandedUncertainty: number;
  /** One line for each source, in the order given. */
  readonly lines: readonly BudgetLine[];
  /** The line with the largest share, as an index into `lines`; absent where nothing is uncertain. */
  readonly dominant?: number | undefined;
  /** Correlations between inputs, as given. */
  readonly correlations: readonly InputCorrelation[];
  /** Doubts about the budget. */
  readonly findings: readonly Finding[];
}
