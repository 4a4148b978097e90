import {
  failure,
  InputError,
  requireBetween,
  requireFinite,
  requireOneOf,
  requireOptions,
  success,
  type CurveColumns,
  type Outcome,
  type StressStrainCurve,
} from '../base/index.js';
import { lineFit, maximumIndex } from '../numeric/index.js';
import { coarseLine } from './coarseLine.js';
import { requireCurve } from './requireCurve.js';
import { windowSearch } from './windowSearch.js';
import type { WindowScore } from './windowTask.js';

/** How the window of the elastic line is chosen. */
export type WindowChoice =
  | {
      /** The window whose slope is highest after `z` standard errors were taken off. */
      readonly by: 'lower-bound';
      /** Standard errors taken off; default 4. */
      readonly z?: number | undefined;
      /** Least stress at the start, as a share of the 0.2 %-offset stress; default 0.2. */
      readonly startShare?: number | undefined;
      /** Least rise over the window, as a share of the same stress; default 0.2. */
      readonly spanShare?: number | undefined;
    }
  | {
      /** The window with the least relative standard error: tighter on records that are truly linear, biased low on curved ones. */
      readonly by: 'relative-error';
      /** As above; default 0.2. */
      readonly startShare?: number | undefined;
      /** As above; default 0.2. */
      readonly spanShare?: number | undefined;
    }
  | {
      /** Between two stresses on the way up. */
      readonly by: 'stress';
      /** Lower stress [MPa]. */
      readonly from: number;
      /** Upper stress [MPa]. */
      readonly to: number;
    }
  | {
      /** Between two strains as recorded. */
      readonly by: 'strain';
      /** Lower strain [mm/mm]. */
      readonly from: number;
      /** Upper strain [mm/mm]. */
      readonly to: number;
    }
  | {
      /** Between two samples, both included. */
      readonly by: 'samples';
      /** First sample. */
      readonly first: number;
      /** Last sample. */
      readonly last: number;
    };

/** Options of {@link fitModulus}. */
export interface ModulusOptions {
  /** How the window is chosen; default `{ by: 'lower-bound' }`. */
  readonly window?: WindowChoice | undefined;
}

/** A runner-up window. */
export interface AlternativeWindow {
  /** First sample. */
  readonly first: number;
  /** Last sample, included. */
  readonly last: number;
  /** Slope [MPa]. */
  readonly slope: number;
}

/** How much lower a slope is in one band of stress than in the band below. */
export interface SlopeFall {
  /** Share of the slope that is lost [1]. */
  readonly value: number;
  /** Standard error of that share [1]. */
  readonly standardError: number;
}

/** The elastic line. */
export interface ModulusFit {
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
  /** Good windows elsewhere, best first. */
  readonly alternatives: readonly AlternativeWindow[];
  /** Bounds that had to be eased because the record has too few samples: none, or `start`, `points`, `span`. */
  readonly eased: readonly ('start' | 'points' | 'span')[];
  /** Stress where the 0.2 % offset line of a first coarse line meets the curve [MPa]; only where the window was searched. */
  readonly offsetStress?: number | undefined;
  /** How much lower the slope is between 0.3 and 0.4 of that stress than between 0.2 and 0.3 [1], and its standard error. */
  readonly slopeFall?: SlopeFall | undefined;
}

/** Why there is no elastic line. */
export type ModulusReason = 'too-few-points' | 'no-rise';

/** A window needs so many samples unless the record is too sparse. */
const POINTS = 8;

const windowFields = {
  'lower-bound': ['by', 'z', 'startShare', 'spanShare'],
  'relative-error': ['by', 'startShare', 'spanShare'],
  stress: ['by', 'from', 'to'],
  strain: ['by', 'from', 'to'],
  samples: ['by', 'first', 'last'],
} as const;

/** @internal Checks the options before any work. */
export function requireModulusOptions(from: string, options: ModulusOptions, path = 'options'): WindowChoice {
  requireOptions(from, options, ['window'], path);
  const window = options.window ?? { by: 'lower-bound' };
  const at = `${path}.window`;
  const by = requireOneOf(from, `${at}.by`, window.by, Object.keys(windowFields) as WindowChoice['by'][]);
  requireOptions(from, window, windowFields[by], at);
  if (window.by === 'lower-bound' && window.z !== undefined) requireBetween(from, `${at}.z`, window.z, 0, 100);
  if (window.by === 'lower-bound' || window.by === 'relative-error') {
    if (window.startShare !== undefined) requireBetween(from, `${at}.startShare`, window.startShare, 0, 0.95);
    if (window.spanShare !== undefined) requireBetween(from, `${at}.spanShare`, window.spanShare, 0, 1);
  } else {
    const [low, high, names] =
      window.by === 'samples' ? [window.first, window.last, ['first', 'last']] : [window.from, window.to, ['from', 'to']];
    requireFinite(from, `${at}.${names[0]!}`, low);
    if (requireFinite(from, `${at}.${names[1]!}`, high) <= low)
      throw new InputError(from, `${at}.${names[1]!}`, 'out-of-range', `must be above ${names[0]!}`, high);
  }
  return window;
}

/** The line through a window, with all that describes it. */
function describe(
  { strain, stress }: StressStrainCurve,
  first: number,
  last: number,
  rest: Pick<ModulusFit, 'alternatives' | 'eased' | 'offsetStress' | 'slopeFall'>,
): Outcome<ModulusFit, ModulusReason> {
  const line = last - first < 1 ? undefined : lineFit(strain, stress, first, last);
  if (!line) return failure('too-few-points', `the window from sample ${first} to ${last} holds no line`);
  if (line.slope <= 0) return failure('no-rise', `the stress does not rise from sample ${first} to ${last}`);
  return success({
    slope: line.slope,
    intercept: line.intercept,
    strainShift: -line.intercept / line.slope,
    first,
    last,
    points: line.points,
    standardError: line.standardError,
    relativeStandardError: line.standardError / line.slope,
    rSquared: line.rSquared,
    residualStandardDeviation: line.residualStandardDeviation,
    ...rest,
  });
}

/** First and last sample whose value lies between two limits on the way up to the maximum. */
function between(column: Float64Array, from: number, to: number, maximum: number): readonly [number, number] {
  let last = 0;
  while (last <= maximum && column[last]! <= to) last += 1;
  last -= 1;
  let first = last;
  while (first > 0 && column[first - 1]! >= from) first -= 1;
  return [first, last];
}

/** Fall of slope from one stress band to the next above it. */
function slopeFall({ strain, stress }: StressStrainCurve, offsetStress: number, end: number): ModulusFit['slopeFall'] {
  const band = (low: number, high: number) => {
    const [first, last] = between(stress, low * offsetStress, high * offsetStress, end - 1);
    return last - first < 2 ? undefined : lineFit(strain, stress, first, last);
  };
  const lower = band(0.2, 0.3);
  const upper = band(0.3, 0.4);
  if (!lower || !upper || lower.slope <= 0) return undefined;
  const ratio = upper.slope / lower.slope;
  return {
    value: 1 - ratio,
    standardError: Math.hypot(upper.standardError / lower.slope, (ratio * lower.standardError) / lower.slope),
  };
}

/** @internal {@link fitModulus} on a checked curve. */
export function fitModulusKernel(
  curve: StressStrainCurve,
  window: WindowChoice,
  maximum = maximumIndex(curve.stress),
): Outcome<ModulusFit, ModulusReason> {
  const { strain, stress } = curve;
  const given = { alternatives: [], eased: [] };
  if (window.by === 'samples') {
    const last = Math.min(window.last, strain.length - 1);
    return describe(curve, Math.max(0, window.first), last, given);
  }
  if (window.by === 'stress' || window.by === 'strain') {
    const [first, last] = between(curve[window.by], window.from, window.to, maximum);
    return describe(curve, first, last, given);
  }
  const coarse = coarseLine(strain, stress, maximum);
  if (!coarse) return failure('too-few-points', 'fewer than 3 samples lie on any rising part below the maximum');
  const { end, offsetStress } = coarse;
  const startShare = window.startShare ?? 0.2;
  const spanShare = window.spanShare ?? 0.2;
  const z = window.by === 'lower-bound' ? (window.z ?? 4) : 0;
  const score: WindowScore =
    window.by === 'lower-bound' ? (slope, error) => slope - z * error : (slope, error) => (slope > 0 ? -error / slope : -Infinity);
  let start = end;
  while (start > 0 && stress[start - 1]! >= startShare * offsetStress) start -= 1;
  const tries = [
    { start, span: spanShare, points: POINTS, eased: [] },
    { start: 0, span: spanShare, points: POINTS, eased: ['start'] },
    { start, span: spanShare, points: 3, eased: ['points'] },
    { start: 0, span: spanShare, points: 3, eased: ['start', 'points'] },
    { start: 0, span: 0, points: 3, eased: ['start', 'points', 'span'] },
  ] as const;
  for (const { eased, ...bounds } of tries) {
    const found = windowSearch({ ...bounds, span: bounds.span * offsetStress, strain, stress, end, slope: coarse.slope, score, gap: 0 });
    if (!found) continue;
    const alternatives = found.runnersUp.map(({ first, last, slope }) => ({ first, last, slope }));
    return describe(curve, found.best.first, found.best.last, {
      alternatives,
      eased,
      offsetStress,
      slopeFall: slopeFall(curve, offsetStress, end),
    });
  }
  return failure('too-few-points', `only ${end} samples lie before the 0.2 % offset line`);
}

/**
 * The elastic line of a curve: slope, where it meets zero stress, and the window that it rests on.
 *
 * $$ m_E = \frac{\sum (e_i - \bar e)(R_i - \bar R)}{\sum (e_i - \bar e)^2}, \qquad J = m_E - z\, s(m_E) \to \max $$
 *
 * @remarks
 * A toe and yielding both lower a slope, so the window with the highest lower confidence bound $J$ avoids both. All windows are
 * compared that start at or above a share (0.2) of the 0.2 %-offset stress, span at least a share (0.2) of it, hold at least 8
 * samples and end before the offset line; the search is exact. Of windows whose $J$ agree within 1e-9 the widest counts. Where
 * too few samples lie between the bounds, `eased` tells which of them was given up. The method is explained in the guide "The elastic line".
 *
 * @param curve - Strain [mm/mm] and stress [MPa] as recorded, at least 3 samples, finite.
 * @param options - How the window is chosen.
 * @returns The line, or why there is none: `too-few-points`, `no-rise`.
 * @throws {@link InputError} `not-finite`, `too-few`, `unequal-lengths`, `unknown-option`, `out-of-range`.
 *
 * @example
 * ```ts
 * const strain = Array.from({ length: 200 }, (_, i) => i * 1e-5);
 * const stress = strain.map((e) => Math.min(70000 * (e - 1e-4), 70));
 * required(fitModulus({ strain, stress })).slope; // => 70000.0
 * required(fitModulus({ strain, stress })).strainShift; // => 0.0001
 * ```
 *
 * @see ISO 6892-1:2019, Annex G (modulus of elasticity by tension test); ASTM E111. Checked in `test/handbook/elastic-line.test.ts`.
 */
export function fitModulus(curve: CurveColumns, options: ModulusOptions = {}): Outcome<ModulusFit, ModulusReason> {
  const window = requireModulusOptions('fitModulus', options);
  return fitModulusKernel(requireCurve('fitModulus', curve, 3), window);
}
