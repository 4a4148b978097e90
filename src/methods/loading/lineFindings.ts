import { finding, type Finding, type StressStrainCurve } from '../../base/index.js';
import { isGiven, POINTS, SHARE, type ElasticLine, type LinearPart } from '../../curve/index.js';
import { metalModuli } from '../../materials/index.js';
import { reachedSince } from '../../numeric/index.js';
import type { LineResult } from './LineResult.js';
import { MOST_SCATTER } from './slopeIsModulus.js';
import type { TensionNumbers } from './TensionNumbers.js';
import type { LineThresholds } from '../common/thresholds.js';

const SCATTER_FAULT = 0.03;
/** A slope is flattened from what an extensometer of class 1 is allowed to be off (ISO 9513); common practice where it is a caution. */
const FLATTENED = 0.01;
const FLATTENED_MUCH = 0.05;
/** Residuals below this share of the stress are rounding; a runs test and a bend count from so many standard deviations on. */
const EXACT = 1e-7;
const ALIKE = 5;
const BENT = 4;

/** What speaks against a linear part, in words; its share in per cent. */
const againstLine: Readonly<Record<NonNullable<LinearPart['why']>, (share: number) => string>> = {
  // a fall by more than all of it
  'slope-falls': (share) =>
    share > 100
      ? 'the slope is negative between 0.3 and 0.4 of the offset stress'
      : `the slope falls by ${share} % from one band of stress to the next`,
  'windows-apart': (share) => `the slopes of other windows lie ${share} % apart`,
  'toe-reaches-up': (share) => `a toe reaches up to the window, the slopes of others lie ${share} % apart`,
  'window-apart': (share) => `its slope lies ${share} % off those of other windows`,
  'window-bent': (share) => `the slope changes by ${share} % over the window`,
  'yields-early': (share) => `yielding and toe take about ${share} % off the slope of the window`,
};

/** Why no window keeps the bounds of a searched line. */
function noWindow({ criterion, offsetSample = 0, offsetStress = 0 }: ElasticLine, stress: Float64Array): string {
  const { startShare = SHARE, spanShare = SHARE } = criterion as { readonly startShare?: number; readonly spanShare?: number };
  const count = offsetSample - reachedSince(stress, startShare * offsetStress, offsetSample);
  return count < POINTS
    ? `only ${count} samples lie between the start bound and the 0.2 % offset line`
    : `no line through ${POINTS} or more of the ${count} samples between the start bound and the 0.2 % offset line rises by ${Number((spanShare * offsetStress).toPrecision(3))} MPa`;
}

/** What speaks against the curve, whichever window was chosen. */
const OF_CURVE: ReadonlySet<LinearPart['why']> = new Set(['slope-falls', 'toe-reaches-up', 'windows-apart'] as const);

/** @internal Doubts about the elastic line and its window; without a line, what else there is none of. */
export function lineFindings(
  numbers: Pick<TensionNumbers, 'line'>,
  curve: StressStrainCurve,
  result: LineResult,
  { thresholds }: { readonly thresholds: LineThresholds },
  others: readonly string[] = ['Rp', 'Rt', 'Ag', 'n'],
  modulus = 'E',
): Finding[] {
  const { line } = numbers;
  if (!line.ok)
    return [
      // all that hangs on the line is withheld with it
      finding('not-determined', { symbol: 'mE', why: line.message }, { field: 'elasticSlope', severity: 'fault' }),
      finding('not-determined', { symbol: modulus, why: 'there is no elastic line' }, { field: 'modulus' }),
      ...others.map((symbol) => finding('not-determined', { symbol, why: 'there is no elastic line' })),
    ];
  const found: Finding[] = [];
  const field = 'elasticSlope';
  const range = [line.first, line.last] as const;
  for (const bound of line.eased)
    found.push(finding('window-bound-eased', { bound, why: noWindow(line, curve.stress) }, { field: 'modulusWindow', range }));
  const { envelope, residuals, linearPart, noiseFlattening, strainSteps } = result.modulusWindow ?? {};
  if (linearPart?.why) {
    const falls = linearPart.why === 'windows-apart' && (envelope?.slope[0] ?? 1) <= 0;
    const why = falls
      ? 'some other windows have negative slopes'
      : againstLine[linearPart.why](Number((100 * (linearPart.share ?? 0)).toPrecision(3)));
    const ofWindow = isGiven(line) && !OF_CURVE.has(linearPart.why);
    found.push(finding(ofWindow ? 'window-not-linear' : 'no-linear-part', { why }, { field: 'modulus', range }));
    const symbols = result.proofStrengths.map(({ symbol }) => symbol).join(', ');
    if (symbols) found.push(finding('proof-strength-without-line', { symbols }, { field: 'proofStrengths' }));
  }
  const { points } = line;
  if (points < thresholds.leastElasticPoints)
    found.push(finding('modulus-of-few-points', { points, least: thresholds.leastElasticPoints }, { field: 'modulus', range }));
  else if (points < thresholds.elasticPoints)
    found.push(finding('few-points-in-elastic-part', { points, wanted: thresholds.elasticPoints }, { field, range }));
  const scatter = line.relativeStandardError;
  if (scatter > MOST_SCATTER)
    found.push(finding('modulus-of-scatter', { error: 100 * scatter, limit: 100 * MOST_SCATTER }, { field: 'modulus', range }));
  else if (scatter > thresholds.slopeScatter)
    found.push(finding('slope-scatter', { error: 100 * scatter }, { field, severity: scatter > SCATTER_FAULT ? 'fault' : 'caution' }));
  const flattened = noiseFlattening?.slopeShare ?? 0;
  if (flattened > FLATTENED)
    found.push(
      finding(
        'strain-noise-flattens',
        { noise: noiseFlattening!.strainNoise, share: 100 * flattened },
        { field, range, severity: flattened > FLATTENED_MUCH ? 'caution' : 'note' },
      ),
    );
  const open = strainSteps?.slopeShare ?? 0;
  if (strainSteps && open > FLATTENED) {
    const values = { steps: strainSteps.steps, step: strainSteps.step, share: 100 * open };
    found.push(
      open > thresholds.stepDoubt
        ? finding('strain-steps-few', { ...values, limit: 100 * thresholds.stepDoubt }, { field: 'modulus', range })
        : finding('strain-steps-open', values, { field, range, severity: open > FLATTENED_MUCH ? 'caution' : 'note' }),
    );
  }
  if (result.modulusWindow && !linearPart && !(open > thresholds.stepDoubt)) {
    const strains = new Set(curve.strain.subarray(line.first, line.last + 1)).size;
    found.push(finding('linear-part-unknown', { points, strains }, { field: 'modulus', range }));
  }
  if (envelope?.verdict === 'fragile') {
    const [lowest, highest] = envelope.slope;
    const [low, high] = envelope.proofStrength ?? [NaN, NaN];
    found.push(
      lowest <= 0
        ? finding('windows-fall', { slope: line.slope, windows: envelope.windows, highest }, { field })
        : envelope.proofStrength
          ? finding('windows-disagree', { slope: line.slope, lowest, highest, low, high, windows: envelope.windows }, { field })
          : finding('window-slopes-disagree', { slope: line.slope, lowest, highest, windows: envelope.windows }, { field }),
    );
  }
  if (residuals && line.residualStandardDeviation > EXACT * curve.stress[line.last]!) {
    const { runs, expectedRuns, runsDeviation, slopeChange, slopeChangeError } = residuals;
    if (runsDeviation < -ALIKE) found.push(finding('residuals-alike', { runs, expected: expectedRuns }, { field: 'modulusWindow', range }));
    if (Math.abs(slopeChange) > Math.max(thresholds.bendCaution, BENT * slopeChangeError))
      found.push(finding('window-bent', { change: 100 * slopeChange }, { field: 'modulusWindow', range }));
  }
  const [lowest, highest] = metalModuli;
  if (result.modulus && (line.slope < lowest || line.slope > highest))
    found.push(finding('slope-implausible', { slope: line.slope, lowest, highest }, { field: 'modulus' }));
  return found;
}
