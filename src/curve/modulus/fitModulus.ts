import { failure, success, type CurveColumns, type Outcome, type StressStrainCurve } from '../../base/index.js';
import { lineFit, maximumIndex, reachedSince, resolution } from '../../numeric/index.js';
import { coarseLine } from './coarseLine.js';
import { explainLine } from './explainLine.js';
import type { ElasticLine, ModulusFit, ModulusReason } from './ModulusFit.js';
import { requireCurve } from '../requireCurve.js';
import { between } from './between.js';
import {
  LEAST_WINDOW_POINTS,
  requireModulusOptions,
  WINDOW_SHARE,
  STANDARD_ERRORS_OFF,
  type ModulusOptions,
  type WindowChoice,
} from '../window/windowChoice.js';
import { windowSearch } from '../window/windowSearch.js';
import { othersEnd } from './windowEnvelope.js';
import { leastRise, type WindowTask } from '../window/windowTask.js';

/** A searched window's criterion with its defaults, and how it scores a line. */
function criterionOf(
  window: Extract<WindowChoice, { by: 'lower-bound' | 'relative-error' }>,
  startShare: number,
  spanShare: number,
): readonly [WindowChoice, Pick<WindowTask, 'score' | 'slopeFor' | 'perError' | 'unit' | 'gap'>] {
  if (window.by === 'relative-error')
    return [
      { by: window.by, startShare, spanShare },
      {
        score: (slope, error) => (slope > 0 ? -error / slope : -Infinity),
        slopeFor: () => 0,
        perError: (score) => -1 / score,
        unit: 1,
        gap: 0,
      },
    ];
  const { z = STANDARD_ERRORS_OFF, gap = 0 } = window;
  return [
    { by: window.by, z, startShare, spanShare, gap },
    { score: (slope, error) => slope - z * error, slopeFor: (score) => score, perError: () => z, unit: 0, gap },
  ];
}

/** The line through a window, with all that describes it. */
function describe(
  { strain, stress }: StressStrainCurve,
  first: number,
  last: number,
  rest: Pick<ElasticLine, 'criterion' | 'score' | 'alternatives' | 'eased' | 'offsetStress' | 'offsetSample'>,
): Outcome<ElasticLine, ModulusReason> {
  const line = lineFit(strain, stress, first, last);
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

/** What a record has where limits hold no two of its samples. */
function nothingBetween(
  column: Float64Array,
  { by, from, to }: Extract<WindowChoice, { by: 'stress' | 'strain' }>,
  maximum: number,
): string {
  const way = column.subarray(0, maximum + 1);
  const [least, most] = [way.reduce((a, b) => Math.min(a, b)), way.reduce((a, b) => Math.max(a, b))].map((x) => Number(x.toPrecision(4)));
  return by === 'stress'
    ? `no two samples up to the highest stress lie between ${from} and ${to} MPa, and the record has ${least} to ${most} MPa`
    : `no two samples up to the highest stress lie between the strains ${from} and ${to}, and the record has ${least} to ${most}`;
}

/** Why there is no coarse line. */
function noLine(strain: Float64Array, stress: Float64Array, maximum: number): Outcome<never, ModulusReason> {
  if (!(stress[maximum]! > stress[0]!)) return failure('no-rise', 'the stress does not rise from the first sample on');
  return strain.subarray(0, maximum + 1).every((e) => e === strain[0])
    ? failure('too-few-points', 'all samples up to the highest stress have the same strain')
    : failure('too-few-points', 'above a fifth of the highest stress no line through 3 samples or more rises');
}

/** @internal {@link fitModulus} on a checked curve; a trial asks for the line alone, not for other windows. */
export function fitModulusKernel(
  curve: StressStrainCurve,
  window: WindowChoice,
  maximum = maximumIndex(curve.stress),
  alone = false,
): Outcome<ElasticLine, ModulusReason> {
  const { strain, stress } = curve;
  const given = { criterion: window, alternatives: [], eased: [] };
  if (window.by === 'samples') {
    const last = Math.min(window.last, strain.length - 1);
    if (window.first >= last)
      return failure(
        'too-few-points',
        `samples ${window.first} to ${window.last} were asked for, and the record ends with sample ${strain.length - 1}`,
      );
    return describe(curve, window.first, last, given);
  }
  if (window.by === 'stress' || window.by === 'strain') {
    const column = curve[window.by];
    const [first, last] = between(column, window.from, window.to, maximum);
    if (first >= last) return failure('too-few-points', nothingBetween(column, window, maximum));
    return describe(curve, first, last, given);
  }
  const coarse = coarseLine(strain, stress, maximum);
  if (!coarse) return noLine(strain, stress, maximum);
  const { end, offsetStress } = coarse;
  const { startShare = WINDOW_SHARE, spanShare = WINDOW_SHARE } = window;
  const [criterion, scoring] = criterionOf(window, startShare, spanShare);
  const others = alone ? { others: 0 } : { othersEnd: othersEnd(stress, { startShare, spanShare, offsetStress, offsetSample: end }) };
  const start = reachedSince(stress, startShare * offsetStress, end);
  const tries = [
    { start, span: spanShare, points: LEAST_WINDOW_POINTS, eased: [] },
    { start: 0, span: spanShare, points: LEAST_WINDOW_POINTS, eased: ['start'] },
    { start, span: spanShare, points: 3, eased: ['points'] },
    { start: 0, span: spanShare, points: 3, eased: ['start', 'points'] },
    { start: 0, span: 0, points: 3, eased: ['start', 'points', 'span'] },
  ] as const;
  for (const { start: from, span, points, eased } of tries) {
    const task = {
      strain,
      stress,
      start: from,
      end,
      slope: coarse.slope,
      span: leastRise(span, offsetStress),
      points,
      ...others,
      ...scoring,
    };
    const found = windowSearch(task);
    if (!found) continue;
    return describe(curve, found.best.first, found.best.last, {
      criterion,
      score: found.best.score,
      alternatives: found.runnersUp,
      eased,
      offsetStress,
      offsetSample: end,
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
 * compared that start at or above a share (0.2) of the 0.2 %-offset stress, rise by at least a share (0.2) of it (but for 1e-12, for rounding), hold at least 8
 * samples and end before the offset line; the search is exact. Of windows whose $J$ agree within 1e-9 the widest counts. Where
 * no window keeps all bounds, `eased` tells which of them were given up: the start, the number of samples (3 are enough then), both, or all three. Strain that repeats or goes back is taken as it
 * stands, sample by sample in order of time. With the line come the runner-up windows, a runs test and the quadratic departure of its
 * residuals, the envelope of slope and Rp0.2 over other windows (`robust` or `fragile`), the verdict
 * whether there is a linear part at all (`linearPart`; where it is `none` the slope is no modulus), and the leverage of the slope on Rp0.2. The
 * method is explained in the guide "The elastic line".
 *
 * @param curve - Strain [mm/mm] and stress [MPa] as recorded, at least 3 samples, finite.
 * @param options - How the window is chosen.
 * @returns The line, or why there is none: `too-few-points`, `no-rise`.
 * @throws {@link InputError} `not-finite`, `too-few`, `unequal-lengths`, `unknown-option`, `out-of-range`, `missing`, `wrong-type`.
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
  const checked = requireCurve('fitModulus', curve, 3);
  const maximum = maximumIndex(checked.stress);
  const line = fitModulusKernel(checked, window, maximum);
  return line.ok ? { ...line, ...explainLine(checked, line, maximum, resolution(checked.strain)) } : line;
}
