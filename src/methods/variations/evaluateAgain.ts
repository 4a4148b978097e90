import { failure, success, type StressStrainCurve } from '../../base/index.js';
import { maximumIndex, resolution } from '../../numeric/index.js';
import { requireBrokenPiece } from '../common/brokenPiece.js';
import { elasticQuantities } from '../loading/elasticQuantities.js';
import { extensionQuantities } from '../evaluation/extensionQuantities.js';
import { hardeningQuantities } from '../loading/hardeningQuantities.js';
import type { CurveAsRecorded } from './recordedCurve.js';
import { departuresOf } from '../loading/departures.js';
import { measuredBreak } from '../evaluation/brokeAtEnd.js';
import { evaluateLoading } from '../evaluation/loadingPart.js';
import type { TensionSettings } from '../evaluation/tensionOptions.js';
import type { TensionResult } from '../evaluation/TensionResult.js';
import { yieldQuantities } from '../evaluation/yieldQuantities.js';

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
  // the curve may end before the record that told where the piece broke
  const broken = result.fracture ? success(result.fracture) : failure('not-fractured', 'the test had no fracture');
  const measured = measuredBreak(result.testPiece, requireBrokenPiece('evaluateAgain', result.testPiece));
  // a result of 0.1.0 has none, and none is right there: that version left nothing out, and only the pauses that it knew are lost
  const { excursions, ...where } = departuresOf(result.interruptions ?? []);
  return ({ strain = recorded.strain, elasticLengthRatio = recorded.elasticLengthRatio, settings: other }) => {
    const curve: StressStrainCurve = { strain: strain.slice(), stress };
    const asked = { ...settings, ...other };
    const input = { curve, stress, highest, broken, measured, ...where, alone: true, resolution: step, elasticLengthRatio };
    const { numbers } = evaluateLoading(input, asked, excursions);
    return {
      ...elasticQuantities(numbers, curve, false, {}),
      ...yieldQuantities(numbers, asked),
      ...extensionQuantities(numbers),
      ...hardeningQuantities(numbers),
    };
  };
}
