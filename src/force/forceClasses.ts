/** Class of a force-measuring system. */
export type ForceClass = 0.5 | 1 | 2 | 3;

/** The greatest values that a class allows. */
export interface ForceClassLimits {
  /** The class. */
  readonly forceClass: ForceClass;
  /** Indication error q, either way [1]. */
  readonly indicationError: number;
  /** Repeatability b [1]. */
  readonly repeatability: number;
  /** Reversibility v, either way [1]. */
  readonly reversibility: number;
  /** Zero error f0, either way, of the end of the range [1]. */
  readonly zeroError: number;
  /** Resolution a [1]. */
  readonly resolution: number;
  /** Least force, in steps of the reading r [1]. */
  readonly leastSteps: number;
}

/** Classes of verification by ISO 7500-1 with their limits, best first (figures from memory; ratios, not per cent). */
export const forceClasses: readonly ForceClassLimits[] = (
  [
    [0.5, 0.005, 0.005, 0.0075, 0.0005, 0.0025, 400],
    [1, 0.01, 0.01, 0.015, 0.001, 0.005, 200],
    [2, 0.02, 0.02, 0.03, 0.002, 0.01, 100],
    [3, 0.03, 0.03, 0.045, 0.003, 0.015, 67],
  ] as const
).map(([forceClass, indicationError, repeatability, reversibility, zeroError, resolution, leastSteps]) => ({
  forceClass,
  indicationError,
  repeatability,
  reversibility,
  zeroError,
  resolution,
  leastSteps,
}));

/** @internal Runs of rising force that a verification has at least (ISO 7500-1, from memory). */
export const LEAST_RUNS = 3;
