import type { BaseUnit, Finding, TrailStep } from '../../base/index.js';
import type { GrubbsResult, ReplicateSummary, ToleranceLimit } from '../../statistics/index.js';
import type { TestInfo } from '../common/MethodResult.js';
import type { TestResult } from './TestResult.js';

/** One property over several tests. */
export interface ReplicateProperty {
  /** Field of the single results. */
  readonly field: string;
  /** Symbol, for example `Rp0.2`. */
  readonly symbol: string;
  /** What it is, in words. */
  readonly name: string;
  /** Unit of the values. */
  readonly unit: BaseUnit;
  /** Places of the tests that carry it, in the list as given. */
  readonly tests: readonly number[];
  /** Its values, in the order of `tests`; none is ever left out but what is only at least so large, which a finding names. */
  readonly values: readonly number[];
  /** Mean, scatter, interval. */
  readonly summary: ReplicateSummary;
  /** Grubbs's test of the most extreme value, from three values on that differ. */
  readonly outlier?: GrubbsResult;
  /** Lower tolerance limit, of strengths from three values on that differ. */
  readonly tolerance?: ToleranceLimit;
  /** Usual coefficient of variation within a laboratory [1], where one is known. */
  readonly usualVariation?: number;
}

/** What makes tests unlike each other. */
export type ReplicateDifference = PoolableDifference | 'dwell' | 'material' | 'operator' | 'rate';

/**
 * What keeps properties apart unless it is pooled across: source of the strain; whether the give of the frame was taken out of travel; friction taken
 * off a flow curve; gauge length over √S0; height over diameter; ball and force-diameter index; section; points of loading, shear planes or tools;
 * shape of a beam; span over height; thickness of a sheet.
 */
export type PoolableDifference =
  'extensionBasis' | 'frame' | 'friction' | 'gaugeLength' | 'height' | 'scale' | 'section' | 'setup' | 'shape' | 'span' | 'thickness';

/** What reproduces the result. */
export interface ReplicatesProvenance {
  /** Name of this package. */
  readonly package: string;
  /** Its version. */
  readonly version: string;
  /** Options as given. */
  readonly options: Readonly<Record<string, unknown>>;
  /** Hashes of the records, in the order of the tests. */
  readonly hashes: readonly string[];
}

/** Several tests of one method together, as plain data. */
export interface ReplicatesResult {
  /** Which evaluation this is. */
  readonly method: 'replicates';
  /** Method of the tests; absent in results of earlier versions, which are of tension. */
  readonly replicatesOf?: TestResult['method'];
  /** Who tested what, test by test. */
  readonly tests: readonly TestInfo[];
  /** The properties, in the order of a single result; those that could not be pooled are absent, and a finding says why. */
  readonly properties: readonly ReplicateProperty[];
  /** In what the tests differ. */
  readonly differences: readonly ReplicateDifference[];
  /** Doubts about the tests beside each other; those about a single test stay with it. */
  readonly findings: readonly Finding[];
  /** What was done, in order. */
  readonly trail: readonly TrailStep[];
  /** What reproduces this result. */
  readonly provenance: ReplicatesProvenance;
}
