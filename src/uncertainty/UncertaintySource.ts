/** Shapes of doubt about a value that was not read repeatedly. */
export type UncertaintyDistribution = 'normal' | 'rectangular' | 'triangular' | 'arcsine' | 'trapezoidal';

/** Type A: repeated readings. */
export interface ReadingsSource {
  /** Readings, at least 2: the mean's uncertainty is s/√n with n − 1 degrees of freedom. */
  readonly readings: ArrayLike<number>;
  /** What it is, for the table. */
  readonly name?: string | undefined;
}

/** Type A: a standard deviation from repeated readings. */
export interface DeviationSource {
  /** Standard deviation s of single readings. */
  readonly standardDeviation: number;
  /** How many readings the value is the mean of. */
  readonly count: number;
  /** Degrees of freedom of s; default `count` − 1 (larger where s is pooled, finite: a σ that is known is a `standardUncertainty`). */
  readonly degreesOfFreedom?: number | undefined;
  /** What it is, for the table. */
  readonly name?: string | undefined;
}

/** Type B: limits, with a shape between them. */
export interface LimitsSource {
  /** Half of the width between the limits, in the unit of the value. */
  readonly halfWidth: number;
  /** Shape; default `rectangular`. `arcsine` is U-shaped: a value that swings between its limits. */
  readonly distribution?: UncertaintyDistribution | undefined;
  /** Of `trapezoidal`: width of the top over width of the base, 0 (triangular) to 1 (rectangular). */
  readonly top?: number | undefined;
  /** Of `normal`: how many standard deviations the half-width is; default 2. */
  readonly divisor?: number | undefined;
  /** Degrees of freedom; default infinite. */
  readonly degreesOfFreedom?: number | undefined;
  /** What it is, for the table. */
  readonly name?: string | undefined;
}

/** Type B: an expanded uncertainty, as certificates state it. */
export interface ExpandedSource {
  /** Expanded uncertainty U. */
  readonly expanded: number;
  /** Its coverage factor k; default 2. */
  readonly coverageFactor?: number | undefined;
  /** Degrees of freedom; default infinite. */
  readonly degreesOfFreedom?: number | undefined;
  /** What it is, for the table. */
  readonly name?: string | undefined;
}

/** A standard uncertainty as it is. */
export interface StandardSource {
  /** Standard uncertainty. */
  readonly standardUncertainty: number;
  /** Degrees of freedom; default infinite. */
  readonly degreesOfFreedom?: number | undefined;
  /** How it was evaluated; default `B`. */
  readonly type?: 'A' | 'B' | undefined;
  /** What it is, for the table. */
  readonly name?: string | undefined;
}

/** Where an uncertainty comes from; a bare number is a standard uncertainty. */
export type UncertaintySource = number | ReadingsSource | DeviationSource | LimitsSource | ExpandedSource | StandardSource;

/** One source, or several that add in quadrature, each a line of the budget. */
export type UncertaintySources = UncertaintySource | readonly UncertaintySource[];

/** An input of a model: its estimate and what is doubtful about it. */
export interface UncertainInput {
  /** Estimate; default the mean of the first source's readings. */
  readonly value?: number | undefined;
  /** Where its uncertainty comes from. */
  readonly uncertainty: UncertaintySources;
  /** Unit, for the table. */
  readonly unit?: string | undefined;
}

/** A value that carries its standard uncertainty, as a budget or a quantity of a result does; what else it carries is not read. */
export interface StatedValue {
  /** Estimate. */
  readonly value: number;
  /** Standard uncertainty; must be there. */
  readonly standardUncertainty?: number | undefined;
  /** Degrees of freedom; default infinite. */
  readonly degreesOfFreedom?: number | undefined;
  /** Unit, for the table. */
  readonly unit?: string | undefined;
}

/** What a model may be given as an input: with sources, with its uncertainty stated, or a number that counts as exact. */
export type UncertainQuantity = number | UncertainInput | StatedValue;

/** Inputs by name. */
export type UncertainInputs<Name extends string = string> = Readonly<Record<Name, UncertainQuantity>>;
