import {
  failure,
  requireBetween,
  requireFinite,
  requireNonNegative,
  requireObject,
  requireOneOf,
  requireOptions,
  requirePositive,
  success,
  type CurveColumns,
  type Outcome,
  type StressStrainCurve,
} from '../base/index.js';
import { cellMeans, maximumIndex, noiseLevel, slidingLine } from '../numeric/index.js';
import { proofStrengthKernel, type CurvePoint } from './proofStrength.js';
import { requireCurve } from './requireCurve.js';

/** Four ways to say where proportionality ends; they differ by 20 to 40 %. */
export type ProportionalDefinition = 'offset' | 'deviation' | 'tangent' | 'johnson';

/** What the proportional limit is measured from, and by which definition. */
export interface ProportionalLine {
  /** Slope of the elastic line [MPa]. */
  readonly modulus: number;
  /** Strain where the line meets zero stress [mm/mm]; default 0. */
  readonly strainShift?: number | undefined;
  /** Default `offset`. */
  readonly definition?: ProportionalDefinition | undefined;
  /** Of `offset`: plastic extension [mm/mm]; default 0.0001 (Rp0.01). */
  readonly offset?: number | undefined;
  /** Of `tangent`: share of the slope that the tangent falls to; default 0.9. */
  readonly tangentShare?: number | undefined;
  /** Of `deviation`: standard deviation of the residuals [MPa]; default the noise of the curve. */
  readonly residualStandardDeviation?: number | undefined;
  /** First sample to look at, for example that of the elastic window; default the first above a fifth of the maximum. */
  readonly first?: number | undefined;
}

/** A proportional limit. */
export interface ProportionalLimit extends CurvePoint {
  /** By which definition. */
  readonly definition: ProportionalDefinition;
}

/** Why there is no proportional limit. */
export type ProportionalReason = 'not-reached' | 'too-few-points';

/** Johnson's apparent elastic limit: the strain grows half as fast again with stress as at first. */
const JOHNSON_SHARE = 1 / 1.5;
/** The tangent is wanted to this share of the slope; noise widens the stretch that it is taken over. */
const TANGENT_ERROR = 0.02;
/** A deviation of so many standard deviations, over so many samples, lasts. */
const DEVIATIONS = 3;
const LASTING = 5;

/** @internal What {@link proportionalLimitKernel} needs to know. */
export interface ProportionalTask {
  readonly slope: number;
  readonly shift: number;
  readonly definition: ProportionalDefinition;
  readonly offset: number;
  readonly tangentShare: number;
  readonly residual: number | undefined;
  readonly first: number;
  /** One past the highest stress. */
  readonly end: number;
}

/** Of a long record tangents are taken on about so many means. */
const PLACES = 4000;

/** Where the local slope falls to a share of the line's, for good. */
function byTangent(curve: StressStrainCurve, task: ProportionalTask, share: number): Outcome<ProportionalLimit, ProportionalReason> {
  const { slope, shift, definition } = task;
  if (task.end - task.first < 6) return failure('too-few-points', `only ${task.end - task.first} samples lie below the maximum`);
  const long = task.end - task.first > 2 * PLACES;
  const means = long ? cellMeans(curve.strain, curve.stress, task.first, task.end - 1, PLACES) : undefined;
  const [strain, stress, first, end] = means ? [means.x, means.y, 0, means.x.length] : [curve.strain, curve.stress, task.first, task.end];
  // half-width in samples: narrow without noise, wide enough for the wanted error with it
  // that of travel less the frame is mostly in the strain
  const noise = Math.hypot(noiseLevel(stress, first, end), slope * noiseLevel(strain, first, end));
  const high = 0.9 * stress[end - 1]!;
  let elastic = first + 1;
  while (elastic < end - 1 && stress[elastic]! <= high) elastic += 1;
  const step = Math.max((strain[elastic]! - strain[first]!) / (elastic - first), Number.MIN_VALUE);
  const half = Math.max(2, Math.ceil(0.5 * (12 * (noise / (TANGENT_ERROR * slope * step)) ** 2) ** (1 / 3)));
  const slopeAt = slidingLine(strain, stress, half);
  let before = NaN;
  let lasting = 0;
  let point: CurvePoint | undefined;
  for (let i = Math.max(first, half); i + half < end; i += 1) {
    const found = slopeAt(i);
    const tangent = Number.isNaN(found) ? before : found;
    if (tangent >= share * slope || Number.isNaN(before)) {
      lasting = 0;
      point = undefined;
    } else {
      if (!point) {
        const part = before > tangent ? (before - share * slope) / (before - tangent) : 1;
        const t = Math.min(1, Math.max(0, part));
        point = {
          stress: stress[i - 1]! + t * (stress[i]! - stress[i - 1]!),
          strain: strain[i - 1]! + t * (strain[i]! - strain[i - 1]!) - shift,
        };
      }
      lasting += 1;
      if (lasting > 2 * half) return success({ stress: point.stress, strain: point.strain, definition });
    }
    before = tangent;
  }
  if (point) return success({ stress: point.stress, strain: point.strain, definition });
  return failure('not-reached', `the tangent does not fall to ${share.toPrecision(3)} of the slope`);
}

/** Where the curve leaves the line by more than its scatter, for good. */
function byDeviation({ strain, stress }: StressStrainCurve, task: ProportionalTask): Outcome<ProportionalLimit, ProportionalReason> {
  const { first, end, slope, shift } = task;
  const scatter = Math.max(task.residual ?? noiseLevel(stress, first, end), 1e-9 * stress[end - 1]!);
  let since = -1;
  for (let i = first; i < end; i += 1) {
    if (slope * (strain[i]! - shift) - stress[i]! <= DEVIATIONS * scatter) since = -1;
    else if (since < 0) since = i;
    if (since >= 0 && (i - since + 1 >= LASTING || i === end - 1))
      return success({ stress: stress[since]!, strain: strain[since]! - shift, definition: 'deviation' });
  }
  return failure('not-reached', 'the curve does not leave its elastic line before the maximum');
}

/** @internal {@link proportionalLimit} on a checked curve. */
export function proportionalLimitKernel(curve: StressStrainCurve, task: ProportionalTask): Outcome<ProportionalLimit, ProportionalReason> {
  if (task.definition === 'tangent') return byTangent(curve, task, task.tangentShare);
  if (task.definition === 'johnson') return byTangent(curve, task, JOHNSON_SHARE);
  if (task.definition === 'deviation') return byDeviation(curve, task);
  const proof = proofStrengthKernel(curve, task.slope, task.shift, task.offset, task.first, task.end);
  if (!proof.ok) return failure('not-reached', proof.message);
  return success({ stress: proof.stress, strain: proof.strain, definition: 'offset' });
}

/**
 * Limit of proportionality, by one of four definitions.
 *
 * $$ \text{offset: } e - \tfrac{R}{m_E} = e_p, \qquad \text{tangent: } \tfrac{\mathrm{d}R}{\mathrm{d}e} = 0.9\, m_E, \qquad
 * \text{Johnson: } \tfrac{\mathrm{d}e}{\mathrm{d}R} = \tfrac{1.5}{m_E}, \qquad \text{deviation: } m_E e - R > 3 s $$
 *
 * @remarks
 * The value depends on how finely one looks: on one smooth curve the definitions differ by 20 to 40 %, so the definition belongs to the
 * value. Tangents are taken over stretches as narrow as the noise allows.
 *
 * @param curve - Strain [mm/mm] and stress [MPa] as recorded, at least 2 samples, finite.
 * @param line - `modulus` [MPa] above 0, `strainShift` [mm/mm], and the definition with its threshold.
 * @returns Stress [MPa], strain from the shifted origin, definition; or `not-reached`, `too-few-points`.
 * @throws {@link InputError} `not-finite`, `not-positive`, `missing`, `unequal-lengths`, `unknown-option`, `out-of-range`.
 *
 * @example
 * ```ts
 * const stress = Array.from({ length: 6001 }, (_, i) => i / 20);
 * const strain = stress.map((R) => R / 70000 + 0.002 * (R / 300) ** 10);
 * required(proportionalLimit({ strain, stress }, { modulus: 70000 })).stress; // => 222.340
 * required(proportionalLimit({ strain, stress }, { modulus: 70000, definition: 'johnson' })).stress; // => 234.07
 * ```
 *
 * @see ASTM E6, proportional limit. Checked in `test/handbook/ramberg-osgood.test.ts`.
 */
export function proportionalLimit(curve: CurveColumns, line: ProportionalLine): Outcome<ProportionalLimit, ProportionalReason> {
  const from = 'proportionalLimit';
  const checked = requireCurve(from, curve);
  requireOptions(
    from,
    requireObject(from, 'line', line),
    ['modulus', 'strainShift', 'definition', 'offset', 'tangentShare', 'residualStandardDeviation', 'first'],
    'line',
  );
  const { stress } = checked;
  const end = maximumIndex(stress, 0, stress.length) + 1;
  const { residualStandardDeviation: residual, first = stress.findIndex((R) => R >= 0.2 * stress[end - 1]!) } = line;
  if (residual !== undefined) requireNonNegative(from, 'line.residualStandardDeviation', residual);
  return proportionalLimitKernel(checked, {
    slope: requirePositive(from, 'line.modulus', line.modulus),
    shift: requireFinite(from, 'line.strainShift', line.strainShift ?? 0),
    definition: requireOneOf(from, 'line.definition', line.definition ?? 'offset', ['offset', 'deviation', 'tangent', 'johnson']),
    offset: requirePositive(from, 'line.offset', line.offset ?? 0.0001),
    tangentShare: requireBetween(from, 'line.tangentShare', line.tangentShare ?? 0.9, 0, 1),
    residual,
    first: Math.ceil(requireBetween(from, 'line.first', first, 0, end - 1)),
    end,
  });
}
