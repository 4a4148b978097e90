import type { BaseUnit, Finding } from '../../base/index.js';
import type { InputDifference } from './comparedInputs.js';
import type { TestInfo } from '../common/MethodResult.js';
import type { TestResult } from './TestResult.js';

/** Options of {@link compareResults}. */
export interface ComparisonOptions {
  /** Standard uncertainties beyond which a difference is a caution, above 0; default 2. */
  readonly limit?: number | undefined;
}

/** One property of two results. */
export interface PropertyDifference {
  /** Field that holds it, such as `tensileStrength` or `indentations[0].hardness`. */
  readonly field: string;
  /** Symbol, for example `Rp0.2`. */
  readonly symbol: string;
  /** What it is, in words. */
  readonly name: string;
  /** Unit of the values. */
  readonly unit: BaseUnit;
  /** Value of the first result; absent where it has none. */
  readonly first?: number | undefined;
  /** Value of the second result; absent where it has none. */
  readonly second?: number | undefined;
  /** True of a first value that is only at least so large. Else absent. */
  readonly firstAtLeast?: true | undefined;
  /** True of a second value that is only at least so large. Else absent. */
  readonly secondAtLeast?: true | undefined;
  /** Second less first, where both have it; of two records only where both values are known, not bounds. */
  readonly difference?: number | undefined;
  /** The difference over the size of the first, where that is not 0 [1]. */
  readonly relativeDifference?: number | undefined;
  /** Standard uncertainty that the difference is held against, where it is known. */
  readonly standardUncertainty?: number | undefined;
  /** The difference over that uncertainty [1]. */
  readonly inUncertainties?: number | undefined;
}

/** Two results held against each other, as plain data. */
export interface ResultComparison {
  /** Method of both. */
  readonly comparisonOf: TestResult['method'];
  /** Who tested what, of both. */
  readonly tests: readonly [TestInfo, TestInfo];
  /** Properties in the order of the first result, then those that only the second has. */
  readonly properties: readonly PropertyDifference[];
  /** What was not the same: record, piece, options, version. */
  readonly differences: readonly InputDifference[];
  /** What must be said of it. */
  readonly findings: readonly Finding[];
}
