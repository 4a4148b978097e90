import {
  failure,
  requireBetween,
  requireExtension,
  requireFinite,
  requireNonNegative,
  requireOneOf,
  requireOptions,
  requirePositive,
  requireWhole,
  success,
  type CurveColumns,
  type Outcome,
  type StressStrainCurve,
} from '../../base/index.js';
import { noiseLevel } from '../../numeric/index.js';
import { endOfPlateau } from '../maximumStress.js';
import { offsetCrossing, type CurvePoint } from './proofStrength.js';
import { requireCurve } from '../requireCurve.js';
import { tangentFalls, type TangentTask } from './tangentFalls.js';

/** Four ways to say where proportionality ends; they differ by 20 to 40 %. */
export type ProportionalDefinition = 'offset' | 'deviation' | 'tangent' | 'johnson';

/** @internal All of them, as a list. */
export const proportionalDefinitions: readonly ProportionalDefinition[] = ['offset', 'deviation', 'tangent', 'johnson'];

type TangentDefinition = Extract<ProportionalDefinition, 'tangent' | 'johnson'>;

/** What the proportional limit is measured from, and by which definition. */
export interface ProportionalLine {
  /** Slope of the elastic line [MPa]. */
  readonly modulus: number;
  /** Strain where the line meets zero stress [mm/mm]; default 0. */
  readonly strainShift?: number | undefined;
  /** Default `offset`. */
  readonly definition?: ProportionalDefinition | undefined;
  /** Of `offset`: plastic extension [mm/mm], 0.05 at most; default 0.0001 (Rp0.01). */
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
  /** Of tangents: standard uncertainty by the stretches that they are taken over, and by their noise [MPa]. */
  readonly standardUncertainty?: number | undefined;
}

/** Why there is no proportional limit. */
export type ProportionalReason = 'not-reached' | 'too-few-points' | 'not-resolved';

/** Johnson's apparent elastic limit: the strain grows half as fast again with stress as at first. */
const JOHNSON_SHARE = 1 / 1.5;
/** Tangents need so many samples. */
const LEAST = 6;
/** A deviation of so many standard deviations, over so many samples, lasts. */
const DEVIATIONS = 3;
const LASTING = 5;
/** A tangent may reach over twice this share of the limit: as much as the definitions differ by at least, else it tells none of them. */
const REACH = 0.1;

/** @internal What {@link proportionalLimitsKernel} needs to know. */
export interface ProportionalTask extends TangentTask {
  readonly offset: number;
  readonly tangentShare: number;
  readonly residual: number | undefined;
}

type Limit = Outcome<ProportionalLimit, ProportionalReason>;

/** Where the curve leaves the line by more than its scatter, for good. */
function byDeviation({ strain, stress }: StressStrainCurve, task: ProportionalTask): Limit {
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

/** Where the curve crosses the line offset by a plastic extension. */
function byOffset(curve: StressStrainCurve, task: ProportionalTask): Limit {
  const proof = offsetCrossing(curve, task, task.first, task.end);
  if (!proof.ok) return failure('not-reached', proof.message);
  return success({ stress: proof.stress, strain: proof.strain, definition: 'offset' });
}

/** Where the tangent falls to a share of the slope, by either definition. */
function byTangents(curve: StressStrainCurve, task: ProportionalTask, definitions: readonly TangentDefinition[]): Limit[] {
  const samples = task.end - task.first;
  if (samples < LEAST) return definitions.map(() => failure('too-few-points', `only ${samples} samples lie below the maximum`));
  const shares = definitions.map((one) => (one === 'tangent' ? task.tangentShare : JOHNSON_SHARE));
  return tangentFalls(curve, task, shares).map((fall, k): Limit => {
    if (!fall) return failure('not-reached', `the tangent does not fall to ${shares[k]!.toPrecision(3)} of the slope`);
    const { stress, strain, reach, standardUncertainty } = fall;
    if (reach > REACH * stress) return failure('not-resolved', `noise makes a tangent reach over ${(2 * reach).toPrecision(3)} MPa`);
    return success({ stress, strain: strain - task.shift, definition: definitions[k]!, standardUncertainty });
  });
}

/** @internal {@link proportionalLimit} on a checked curve, by each of some definitions; the two by tangents share their walk. */
export function proportionalLimitsKernel(
  curve: StressStrainCurve,
  task: ProportionalTask,
  definitions: readonly ProportionalDefinition[],
): Partial<Record<ProportionalDefinition, Limit>> {
  const tangents = definitions.filter((one) => one === 'tangent' || one === 'johnson');
  const byTangent = tangents.length > 0 ? byTangents(curve, task, tangents) : [];
  const limits: Partial<Record<ProportionalDefinition, Limit>> = {};
  for (const one of definitions)
    limits[one] =
      one === 'offset' ? byOffset(curve, task) : one === 'deviation' ? byDeviation(curve, task) : byTangent[tangents.indexOf(one)]!;
  return limits;
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
 * @returns Stress [MPa], strain from the shifted origin, definition; or `not-reached`, `too-few-points`, of tangents `not-resolved`.
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
    line,
    ['modulus', 'strainShift', 'definition', 'offset', 'tangentShare', 'residualStandardDeviation', 'first'],
    'line',
  );
  const { stress } = checked;
  const end = endOfPlateau(stress);
  const { residualStandardDeviation: residual } = line;
  if (residual !== undefined) requireNonNegative(from, 'line.residualStandardDeviation', residual);
  const slope = requirePositive(from, 'line.modulus', line.modulus);
  const shift = requireFinite(from, 'line.strainShift', line.strainShift ?? 0);
  const definition = requireOneOf(from, 'line.definition', line.definition ?? 'offset', proportionalDefinitions);
  const first =
    line.first === undefined
      ? stress.findIndex((R) => R >= 0.2 * stress[end - 1]!)
      : requireWhole(from, 'line.first', line.first, 0, end - 1);
  const task = {
    slope,
    shift,
    offset: requireExtension(from, 'line.offset', line.offset ?? 0.0001),
    tangentShare: requireBetween(from, 'line.tangentShare', line.tangentShare ?? 0.9, 0, 1),
    residual,
    first,
    end,
  };
  // of numbers below zero none reaches a fifth of the highest
  if (first < 0) return failure('not-reached', 'the stress never rises to zero');
  return proportionalLimitsKernel(checked, task, [definition])[definition]!;
}
