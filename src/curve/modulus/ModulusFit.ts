import type { LineResiduals } from './lineResiduals.js';
import type { NoiseFlattening } from './noiseFlattening.js';
import type { StrainSteps } from './strainSteps.js';
import type { WindowChoice } from '../window/windowChoice.js';
import type { WindowEnvelope } from './windowEnvelope.js';

/** A runner-up window. */
export interface AlternativeWindow {
  /** First sample. */
  readonly first: number;
  /** Last sample, included. */
  readonly last: number;
  /** Slope [MPa]. */
  readonly slope: number;
  /** What it reaches by the criterion. */
  readonly score: number;
}

/** A slope that lies above those of all windows of the envelope by more than scatter explains. */
export interface AboveOthers {
  /** How far it lies above the middle of the others, as a share of itself [1]: so much of it is in doubt. */
  readonly slopeShare: number;
}

/** What a toe that has not ended within a window takes off the slope of its line. */
export interface RemainingToe {
  /** Share of the slope that is left of the toe in the middle of the window [1]. */
  readonly slopeShare: number;
}

/** What yielding that has begun within a window takes off the slope of its line. */
export interface BeginningYield {
  /** Exponent N of the plastic strain, e_p = 0.002 (R/Rp0.2)^N, by the offsets of 0.05 % and 0.2 % [1]. */
  readonly exponent: number;
  /** Share of the slope that this plastic strain takes off within the window [1]. */
  readonly slopeShare: number;
}

/** How much lower a slope is in one band of stress than in the band below. */
export interface SlopeFall {
  /** Share of the slope that is lost [1]. */
  readonly value: number;
  /** Standard error of that share [1]. */
  readonly standardError: number;
}

/** The elastic line by itself. */
export interface ElasticLine {
  /** Slope of the line [MPa]. */
  readonly slope: number;
  /** Stress of the line at zero strain as recorded [MPa]. */
  readonly intercept: number;
  /** Strain where the line meets zero stress [mm/mm]. */
  readonly strainShift: number;
  /** First sample of the window. */
  readonly first: number;
  /** Last sample of the window, included. */
  readonly last: number;
  /** Number of samples. */
  readonly points: number;
  /** Standard error of the slope [MPa]. */
  readonly standardError: number;
  /** Standard error over slope, S_m(rel) [1]. */
  readonly relativeStandardError: number;
  /** Coefficient of determination [1]. */
  readonly rSquared: number;
  /** Standard deviation of the residuals [MPa]. */
  readonly residualStandardDeviation: number;
  /** How the window was chosen, defaults filled in. */
  readonly criterion: WindowChoice;
  /** What the window reaches by that criterion: `lower-bound` slope − z s [MPa], `relative-error` −s/slope [1]; absent for a given window. */
  readonly score?: number | undefined;
  /** Good windows elsewhere, best first, up to where those of the envelope end, of a coarse lattice of sixteenths of those samples: a better one may lie beside them. */
  readonly alternatives: readonly AlternativeWindow[];
  /** Bounds that had to be eased because no window keeps them all: none, or `start`, `points`, `span`. */
  readonly eased: readonly ('start' | 'points' | 'span')[];
  /** Stress where the 0.2 % offset line of a first coarse line meets the curve [MPa]; only where the window was searched. */
  readonly offsetStress?: number | undefined;
  /** First sample at or beyond that offset line. */
  readonly offsetSample?: number | undefined;
}

/** Whether a curve has a straight part that its elastic line rests on. */
export interface LinearPart {
  /** `none` where the record speaks against it, in one way or another; `found` where nothing does. */
  readonly verdict: 'found' | 'none';
  /**
   * What speaks against it: the slope falls within the elastic part, a toe reaches up into it and leaves no more than a short window,
   * windows by the same bounds disagree otherwise, a window that was given lies off all others, a parabola bends the window itself, or yielding has begun
   * within it; absent where nothing does.
   */
  readonly why?: 'slope-falls' | 'toe-reaches-up' | 'windows-apart' | 'window-apart' | 'window-bent' | 'yields-early' | undefined;
  /** By how much: the fall, the spread of the slopes, how far the window's own lies off them, the change of slope over the window, or what yielding and toe take off, as a share of the slope [1]. */
  readonly share?: number | undefined;
}

/** Whether the 0.2 % proof strength of a line can be trusted, told before it is used. */
export interface LineTrust {
  /** Elastic strain at the crossing over the offset, λ [1]. */
  readonly leverage: number;
  /**
   * What the doubt of the slope moves the offset by, as a share of it: λ times S_m(rel), or times the share by which other windows' slopes
   * disagree, the curve is bent, or steps of the strain reading leave the slope open, whichever is larger.
   */
  readonly offsetDoubt: number;
  /**
   * `sound` up to 5 % of the offset, `doubtful` up to 20 %, beyond that `unusable` (common practice). Never `sound` without a linear part that is known,
   * with a fragile envelope, or with fewer than 8 samples; two samples have no standard error, so their line is `unusable`.
   */
  readonly verdict: 'sound' | 'doubtful' | 'unusable';
}

/** What explains an elastic line. */
export interface LineExplanation {
  /** Runs test and quadratic departure; absent for fewer than five samples. */
  readonly residuals?: LineResiduals | undefined;
  /** What yielding that has begun within the window takes off the slope; absent for a curve with a corner or a yield point. */
  readonly beginningYield?: BeginningYield | undefined;
  /** What a toe that reaches up into the window takes off the slope; absent where the slope does not rise from 0.2-0.3 to 0.3-0.4 of the 0.2 %-offset stress. */
  readonly remainingToe?: RemainingToe | undefined;
  /** What noise of the strains takes off the slope; absent where there is none, or too few samples tell it. */
  readonly noiseFlattening?: NoiseFlattening | undefined;
  /** What steps of the strain reading leave open of the slope; absent where it was not read in steps. */
  readonly strainSteps?: StrainSteps | undefined;
  /** How much lower the slope is between 0.3 and 0.4 of the 0.2 %-offset stress than between 0.2 and 0.3 [1], and its standard error. */
  readonly slopeFall?: SlopeFall | undefined;
  /** What other windows would give; absent where the bounds leave no room, and where a given window begins beyond the 0.2 % offset line. */
  readonly envelope?: WindowEnvelope | undefined;
  /** How far the slope by an extensometer lies above those of all other windows, where more than scatter explains; absent where it does not, and where that was not looked at. */
  readonly aboveOthers?: AboveOthers | undefined;
  /** Whether the line rests on a straight part, by what stands above; absent where that is not known: by too few samples, values of strain or steps of its reading. */
  readonly linearPart?: LinearPart | undefined;
  /** Whether the 0.2 % proof strength of this line can be trusted; absent where the curve reaches none. */
  readonly trust?: LineTrust | undefined;
}

/** The elastic line, and what explains it. */
export interface ModulusFit extends ElasticLine, LineExplanation {}

/** Why there is no elastic line. */
export type ModulusReason = 'too-few-points' | 'no-rise';
