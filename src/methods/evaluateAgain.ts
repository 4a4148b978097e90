import { failure, success, type StressStrainCurve } from '../base/index.js';
import { maximumIndex } from '../numeric/index.js';
import { recordOutline, resolution, unloadedFrom } from '../record/index.js';
import { elasticQuantities } from './elasticQuantities.js';
import { extensionQuantities } from './extensionQuantities.js';
import { hardeningQuantities } from './hardeningQuantities.js';
import type { CurveAsRecorded } from './recordedCurve.js';
import { departuresFrom } from './departures.js';
import { evaluateLoading } from './loadingPart.js';
import type { TensionSettings } from './tensionOptions.js';
import { pausesIn } from './paceFindings.js';
import type { TensionResult } from './TensionResult.js';
import { yieldQuantities } from './yieldQuantities.js';

/** @internal What another evaluation of a curve can change. */
export type EvaluatedValues = Pick<
  TensionResult,
  | 'elasticSlope'
  | 'proofStrengths'
  | 'uniformExtension'
  | 'totalExtensionAtMaximumForce'
  | 'totalExtensionAtFracture'
  | 'plasticExtensionAtFracture'
  | 'hardening'
>;

/** @internal The curve with strains that were changed, and what else the evaluation then goes by. */
export interface Changed {
  readonly strain?: Float64Array;
  readonly elasticLengthRatio?: number;
  readonly settings?: Partial<TensionSettings>;
}

/** @internal Evaluates the curve of a result again, as it was recorded, with something changed. */
export function evaluateAgain(
  result: TensionResult,
  recorded: CurveAsRecorded,
  settings: TensionSettings,
): (changed: Changed) => EvaluatedValues {
  const { stress, lengths } = recorded;
  const highest = result.maximumIndex < stress.length ? maximumIndex(stress) : result.maximumIndex;
  const step = resolution(stress.map((R) => R * lengths.area)) / lengths.area;
  const outline = recordOutline({ force: stress, strain: recorded.strain });
  const unloaded = outline && unloadedFrom(outline);
  // the curve may end before the record that told where the piece broke
  const broken = result.fracture ? success(result.fracture) : failure('not-fractured', 'the test had no fracture');
  const pauses = pausesIn(result.findings);
  const { excursions, slips, zeroMoves } = departuresFrom(result);
  return ({ strain = recorded.strain, elasticLengthRatio = recorded.elasticLengthRatio, settings: other }) => {
    const curve: StressStrainCurve = { strain: strain.slice(), stress };
    const asked = { ...settings, ...other };
    const where = { highest, broken, unloadedFrom: unloaded, pauses, slips, zeroMoves };
    const input = { curve, stress, ...where, alone: true, resolution: step, elasticLengthRatio };
    const { numbers } = evaluateLoading(input, asked, excursions);
    return {
      ...elasticQuantities(numbers, curve, false, {}),
      ...yieldQuantities(numbers, asked),
      ...extensionQuantities(numbers),
      ...hardeningQuantities(numbers),
    };
  };
}
