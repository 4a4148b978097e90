/**
 * @internal How windows are compared, larger is better: must not fall with the slope, nor rise with the standard error, and be greatest at an
 * end where slope and error hang on the same t as in windowBound.ts.
 */
export type WindowScore = (slope: number, standardError: number) => number;

/** A rise that reaches the least one but for rounding counts: stress in steps of a converter often does. */
const ALMOST = 1 - 1e-12;

/** @internal Least rise of a line over its window [MPa], of a share of the 0.2 %-offset stress [MPa]. */
export const leastRise = (share: number, offsetStress: number): number => ALMOST * share * offsetStress;

/** @internal Which windows count, and how; lines that fall, or are level, are none. */
export interface WindowTask {
  readonly strain: Float64Array;
  readonly stress: Float64Array;
  /** First sample that a window may start at. */
  readonly start: number;
  /** One past the last sample that a window may end at. */
  readonly end: number;
  /** A slope near the answer [MPa], taken off the stress before sums are made. */
  readonly slope: number;
  /** Least rise of the line over the window [MPa], see `leastRise`. */
  readonly span: number;
  /** Least number of samples, at least 3. */
  readonly points: number;
  readonly score: WindowScore;
  /** A window reaches a score where its slope is at least `slopeFor(score) + perError(score)` standard errors. */
  readonly slopeFor: (score: number) => number;
  readonly perError: (score: number) => number;
  /** Scores closer than 1e-9 of themselves, or of this, are equal: 0 where a score is a slope, 1 where it is a share of it. */
  readonly unit: number;
  /** Scores may miss the best by this much of it; 0 is exact. */
  readonly gap: number;
  /** How many runners-up are asked for; default 3. */
  readonly others?: number;
  /** One past the last sample that a runner-up may end at; default `end`. */
  readonly othersEnd?: number;
}

/** @internal A window found: samples first to last of the record, both included. */
export interface FoundWindow {
  readonly first: number;
  readonly last: number;
  readonly slope: number;
  readonly score: number;
}
