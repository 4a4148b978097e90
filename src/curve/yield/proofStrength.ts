import {
  PROOF_OFFSET,
  failure,
  requireExtension,
  requireFinite,
  requireOptions,
  requirePositive,
  success,
  type CurveColumns,
  type Outcome,
  type StressStrainCurve,
} from '../../base/index.js';
import { maximumIndex, noiseOfCurve, noiseReach, parabolaNear, resolution } from '../../numeric/index.js';
import { endOfPlateau } from '../maximumStress.js';
import { requireCurve } from '../requireCurve.js';
import { sustainedCrossing } from '../sustainedCrossing.js';
import { yieldRule } from './yieldRule.js';

/** The line that a proof strength is drawn from. */
export interface ProofLine {
  /** Slope of the curve's own elastic line [MPa]. */
  readonly modulus: number;
  /** Strain where that line meets zero stress [mm/mm]; default 0. */
  readonly strainShift?: number | undefined;
  /** Plastic extension [mm/mm], 0.05 at most; default 0.002. */
  readonly offset?: number | undefined;
}

/** A point where the curve meets a line. */
export interface CurvePoint {
  /** Stress [MPa]. */
  readonly stress: number;
  /** Strain from the shifted origin [mm/mm]. */
  readonly strain: number;
}

/** A proof strength. */
export interface ProofStrength extends CurvePoint {
  /** First sample beyond the line. */
  readonly index: number;
}

/** Why there is no proof strength. */
export type ProofReason = 'not-reached' | 'starts-beyond';

/**
 * Where the curve meets the line, better than between two samples: in noise by a parabola through the samples around, without noise by
 * the chord of the two samples.
 */
function meet({ strain, stress }: StressStrainCurve, slope: number, origin: number, index: number, offset: number): CurvePoint {
  const gap = (i: number) => stress[i]! - slope * (strain[i]! - origin);
  const before = gap(index - 1);
  const share = before / (before - gap(index));
  const at = strain[index - 1]! + share * (strain[index]! - strain[index - 1]!);
  const near = parabolaNear(strain, stress, index, at, [offset / 16, offset / 8, offset / 4, offset / 2]);
  if (near) {
    // the root of value + slope u + bend u² - line, nearest to `at`
    const b = near.slope - slope;
    const c = near.value - slope * (at - origin);
    const root = (-2 * c) / (b - Math.sqrt(Math.max(0, b * b - 4 * near.bend * c)));
    if (Math.abs(root) <= near.width) return { strain: at + root, stress: slope * (at + root - origin) };
  }
  return { strain: at, stress: stress[index - 1]! + share * (stress[index]! - stress[index - 1]!) };
}

/** @internal The line of an offset: its slope [MPa], the strain where the elastic line meets zero stress, and the plastic extension [mm/mm]. */
export interface OffsetLine {
  readonly slope: number;
  readonly shift: number;
  readonly offset: number;
}

/** @internal The first lasting meeting of a curve with the line of an offset, between two samples. */
export function offsetCrossing(
  curve: StressStrainCurve,
  { slope, shift, offset }: OffsetLine,
  first: number,
  end: number,
): Outcome<ProofStrength, ProofReason> {
  const { strain, stress } = curve;
  const origin = shift + offset;
  const index = sustainedCrossing(strain, stress, slope, origin, first, end);
  if (index < 0) return failure('not-reached', `the curve does not cross the line offset by ${offset} before its maximum`);
  if (index === first) return failure('starts-beyond', `the curve lies below the line offset by ${offset} from sample ${first} on`);
  const point = meet(curve, slope, origin, index, offset);
  return success({ stress: point.stress, strain: point.strain - shift, index });
}

/** @internal Where a proof strength is looked for: from a sample on; the sample of the maximum, one step of the reading [MPa], and one past the last sample that may count. */
export interface ProofRange {
  readonly from: number;
  readonly peak: number;
  readonly resolution: number;
  readonly end: number;
}

/**
 * @internal {@link proofStrength} on a checked curve: up to the end of the plateau of the maximum. Noise puts the highest sample anywhere on a level:
 * where the line is not reached there, it may be up to where the stress has fallen by as much as a yield point does, and out of noise.
 */
export function proofStrengthKernel(
  curve: StressStrainCurve,
  line: OffsetLine,
  { from, peak, resolution, end }: ProofRange,
): Outcome<ProofStrength, ProofReason> {
  const { strain, stress } = curve;
  const beyond = endOfPlateau(stress, peak, resolution, end);
  const found = offsetCrossing(curve, line, from, beyond);
  if (found.ok || found.reason === 'starts-beyond' || beyond >= end) return found;
  const fall = Math.max(yieldRule.minimumFall * stress[peak]!, noiseReach(end) * noiseOfCurve(strain, stress, from, end).level);
  return offsetCrossing(curve, line, from, endOfPlateau(stress, peak, fall, end));
}

/**
 * Proof strength, plastic extension: the stress where the curve meets a line parallel to its elastic line, offset by a plastic extension.
 *
 * $$ R_p = R \quad\text{where}\quad e - \frac{R}{m_E} = e_p $$
 *
 * @remarks
 * The line must have the curve's own slope: then a linear frame in the extension cancels, and handbook values of E do not. The first
 * crossing that lasts (five samples or 0.05 % strain) up to the maximum counts, or up to the end of its plateau: of the samples after it that equal
 * it within one step of the reading; where it is not reached there, before the stress has fallen from the maximum by half a per cent, and out of noise. The point is interpolated between samples; in
 * noise a parabola through the samples around it is used, over the widest stretch (at most the offset) where it fits. A relative error $s$
 * of the slope moves the result by about $-(\lambda/n)\,s$ of itself, with the leverage $\lambda = (R/m_E)/e_p$ and the Ramberg-Osgood exponent $n$.
 *
 * @param curve - Strain [mm/mm] and stress [MPa] as recorded, at least 2 samples, finite.
 * @param line - `modulus` [MPa] above 0, `strainShift` [mm/mm] default 0, `offset` [mm/mm] above 0 and 0.05 at most, default 0.002.
 * @returns Stress [MPa] and strain from the shifted origin, or why not: `not-reached`, `starts-beyond`.
 * @throws {@link InputError} `not-finite`, `out-of-range`, `not-positive`, `unequal-lengths`, `missing`, `unknown-option`.
 *
 * @example
 * ```ts
 * const stress = Array.from({ length: 3001 }, (_, i) => i / 10);
 * const strain = stress.map((R) => R / 70000 + 0.002 * (R / 250) ** 20);
 * required(proofStrength({ strain, stress }, { modulus: 70000 })).stress; // => 250.000
 * ```
 *
 * @see ISO 6892-1:2019, proof strength, plastic extension. Checked in `test/handbook/tension.test.ts`.
 */
export function proofStrength(curve: CurveColumns, line: ProofLine): Outcome<ProofStrength, ProofReason> {
  const checked = requireCurve('proofStrength', curve);
  requireOptions('proofStrength', line, ['modulus', 'strainShift', 'offset'], 'line');
  const slope = requirePositive('proofStrength', 'line.modulus', line.modulus);
  const shift = requireFinite('proofStrength', 'line.strainShift', line.strainShift ?? 0);
  const offset = requireExtension('proofStrength', 'line.offset', line.offset ?? PROOF_OFFSET);
  const { stress } = checked;
  const range = { from: 0, peak: maximumIndex(stress), resolution: resolution(stress), end: stress.length };
  return proofStrengthKernel(checked, { slope, shift, offset }, range);
}
