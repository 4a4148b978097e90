import type { StressStrainCurve } from '../base/index.js';
import type { ElasticLine, LineExplanation } from './ModulusFit.js';
import { lineResiduals } from './lineResiduals.js';
import { lineTrust } from './lineTrust.js';
import { proofStrengthKernel } from './proofStrength.js';
import { windowEnvelope } from './windowEnvelope.js';

const OFFSET = 0.002;

/** @internal Residuals, envelope of other windows and trust of a line, on the curve that it was found on. */
export function explainLine(curve: StressStrainCurve, line: ElasticLine, maximum: number): LineExplanation {
  const { slope, strainShift, criterion, offsetStress, offsetSample } = line;
  const proof = proofStrengthKernel(curve, slope, strainShift, OFFSET, line.first, maximum + 1);
  const searched = criterion.by === 'lower-bound' || criterion.by === 'relative-error';
  return {
    residuals: lineResiduals(curve, line),
    ...(proof.ok ? { trust: lineTrust(slope, line.relativeStandardError, proof.stress) } : {}),
    ...(searched && offsetStress !== undefined && offsetSample !== undefined
      ? {
          envelope: windowEnvelope(curve, line, {
            startShare: criterion.startShare ?? 0,
            spanShare: criterion.spanShare ?? 0,
            offsetStress,
            end: offsetSample,
            beyond: maximum + 1,
          }),
        }
      : {}),
  };
}
