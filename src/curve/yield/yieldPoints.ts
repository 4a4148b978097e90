import {
  failure,
  requireArray,
  requireBetween,
  requireFinite,
  requireNonNegative,
  requireOneOf,
  requireOptions,
  requirePair,
  requirePositive,
  requireWhole,
  success,
  type CurveColumns,
  type Outcome,
  type StressStrainCurve,
} from '../../base/index.js';
import { maximumIndex, resolution as stepOf } from '../../numeric/index.js';
import { lowerYieldRules, type LowerYieldRule } from './LowerYieldRule.js';
import { requireCurve } from '../requireCurve.js';
import { spoiltByPauses, upperYield, type YieldTask } from './upperYield.js';
import type { YieldPoint, YieldPoints, YieldReason } from './YieldPoint.js';
import { yieldingRange } from './yieldingRange.js';
import { yieldRule } from './yieldRule.js';

/** Options of {@link yieldPoints}. */
export interface YieldOptions {
  /** Ranges of samples in which the crosshead stood still: a fall of stress there is relaxation. */
  readonly pauses?: readonly (readonly [number, number])[] | undefined;
  /** Slope of the elastic line [MPa]; with it a yield point is looked for up to 0.5 % plastic extension only. */
  readonly modulus?: number | undefined;
  /** Strain where the elastic line meets zero stress [mm/mm]; default 0. */
  readonly strainShift?: number | undefined;
  /** Least fall of stress after ReH, as a share of it; default 0.005. */
  readonly minimumFall?: number | undefined;
  /** Strain over which no higher stress may follow ReH [mm/mm]; default 0.0005. */
  readonly minimumStrain?: number | undefined;
  /** ReL over the whole yielding range, or over the first 0.25 % strain after ReH; default `whole`. */
  readonly lowerYield?: LowerYieldRule | undefined;
}

/** @internal {@link yieldPoints} on a checked curve. */
export function yieldPointsKernel(curve: StressStrainCurve, task: YieldTask): Outcome<YieldPoints, YieldReason> {
  const { strain, stress } = curve;
  const spoilt = spoiltByPauses(curve, task.pauses);
  const found = upperYield(curve, task, spoilt);
  if (!found.ok) return found;
  const { peak } = found;
  const range = yieldingRange(curve, { ...found, end: task.end, spoilt, lowerYield: task.lowerYield });
  if (range === 'fall')
    return failure('no-hardening-after', 'after its highest point the curve only falls: that is the maximum, not a yield point');
  if (range === 'untold')
    return failure('ends-after-fall', 'the record ends after a fall, too soon to tell a level of yielding from a neck');
  const point = (index: number): YieldPoint => ({ stress: stress[index]!, strain: strain[index]! - task.strainShift, index });
  const { lowest, onset, ends, levelStart } = range;
  return success({
    upper: point(peak),
    lower: point(lowest),
    ...(onset && { extension: onset.hardeningStrain - strain[peak]!, hardeningStart: onset.hardeningStart }),
    ...(ends && { ends, levelStart }),
  });
}

/**
 * Upper and lower yield strength and the yield point extension of a curve with discontinuous yielding.
 *
 * $$ R_{eH} = \frac{F_{eH}}{S_0}, \qquad R_{eL} = \frac{F_{eL}}{S_0}, \qquad A_e = e_{\text{hardening}} - e(R_{eH}) $$
 *
 * @remarks
 * ReH: the highest stress before a fall of at least 0.5 %, with no higher stress over the next 0.05 % strain; at or above a fifth of the
 * maximum (below it a fall is seating), before 0.5 % plastic extension where the slope is known. The fall stands out of noise (by more
 * than as many normal deviates as there are samples span; where neighbours share their noise, by samples farther apart) and is two and a half steps of the reading at least. Hardening follows: it passes ReH,
 * or means over 0.2 % of strain, from 0.25 % after ReH on, rise by more than 0.1 % of ReH, than noise and than the waves of the level. A fall within noise, a fall while the crosshead stood still (`pauses`) and the
 * fall after the maximum force are none. Without hardening there is a yield point where the curve comes to a level: over 0.2 % of strain, and as long again as the way to it, on which
 * it falls by less than a quarter of the fall to it; then Ae is absent, `ends` tells whether the curve ends there or falls from it, `levelStart` where it begins, and ReL is the lowest of the level. ReL: the smallest stress of the
 * yielding range, the first dip after ReH left out where a later minimum or level is higher. Ae ends where the horizontal through the last
 * minimum, or the lowest of that level, out of noise through the mean of that level, meets the steepest line of the hardening that follows beyond 0.5 % of ReH, or a tenth of the rise where that is less, over 0.2 %
 * strain, or over twice as much and so on until its slope is six standard errors of noise; out of noise where hardening begins, within twice that width.
 *
 * @param curve - Strain [mm/mm] and stress [MPa], at least 3 samples, finite.
 * @param options - Pauses, elastic line, thresholds, rule for ReL.
 * @returns ReH, ReL, Ae, or why there is none: `no-fall`, `ends-after-fall`, `fall-within-noise`, `fall-in-pause`, `no-hardening-after`.
 * @throws {@link InputError} `not-finite`, `unequal-lengths`, `too-few`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * const strain = [0, 0.00143, 0.002, 0.003, 0.008, 0.012, 0.016, 0.03, 0.06];
 * const stress = [0, 300, 268, 282, 280, 283, 281, 309, 350];
 * required(yieldPoints({ strain, stress })).upper.stress; // => 300
 * required(yieldPoints({ strain, stress })).lower.stress; // => 280
 * ```
 *
 * @see ISO 6892-1:2019, upper yield strength; lower yield strength; percentage yield point extension; Annex A. Checked in
 * `test/handbook/tension.test.ts`.
 */
export function yieldPoints(curve: CurveColumns, options: YieldOptions = {}): Outcome<YieldPoints, YieldReason> {
  const from = 'yieldPoints';
  const checked = requireCurve(from, curve, 3);
  requireOptions(from, options, ['pauses', 'modulus', 'strainShift', 'minimumFall', 'minimumStrain', 'lowerYield']);
  const {
    pauses = [],
    modulus,
    strainShift = 0,
    minimumFall = yieldRule.minimumFall,
    minimumStrain = yieldRule.minimumStrain,
    lowerYield = 'whole',
  } = options;
  if (modulus !== undefined) requirePositive(from, 'options.modulus', modulus);
  requireFinite(from, 'options.strainShift', strainShift);
  requireBetween(from, 'options.minimumFall', minimumFall, 0, 1);
  requireNonNegative(from, 'options.minimumStrain', minimumStrain);
  requireOneOf(from, 'options.lowerYield', lowerYield, lowerYieldRules);
  const last = checked.stress.length - 1;
  requireArray(from, 'options.pauses', pauses).forEach((pause, k) => {
    const [first, end] = requirePair(from, `options.pauses[${k}]`, pause);
    requireWhole(from, `options.pauses[${k}][0]`, first, 0, last);
    requireWhole(from, `options.pauses[${k}][1]`, end, first, last);
  });
  const maximum = maximumIndex(checked.stress, 0, last + 1);
  const resolution = stepOf(checked.stress);
  const rule = { modulus, strainShift, minimumFall, minimumStrain, lowerYield };
  return yieldPointsKernel(checked, { pauses, ...rule, resolution, maximum, end: last + 1 });
}
