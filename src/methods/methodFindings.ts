import { finding, type Finding } from '../base/index.js';
import { offsetLeverage, sustainedCrossing } from '../curve/index.js';
import type { TensionNumbers } from './tensionKernel.js';
import type { TensionSettings } from './tensionOptions.js';
import { percent } from './tensionQuantities.js';
import type { TensionResult } from './TensionResult.js';

/** Slopes of metals, from lead to tungsten, with a margin [MPa] (common practice). */
const METALS = [10_000, 450_000] as const;
/** Samples between the end of the elastic window and the proof point that are wanted (common practice). */
const POINTS_BEFORE_PROOF = 5;
/** Stress within this share of the maximum counts as its neighbourhood, and may be this wide (common practice). */
const NEAR_MAXIMUM = 0.001;
const WIDEST_MAXIMUM = 0.02;
/** The doubt of the offset at which a proof strength is worth a fault. */
const DOUBT_FAULT = 0.2;
const SCATTER_FAULT = 0.03;
/** Correlation wanted of a hardening fit, and how far n may lie from the true uniform strain (common practice). */
const HARDENING_CORRELATION = 0.995;
const NECKING_AGREEMENT = 0.05;
/** The curve's onset of necking and the law's differ by so many standard uncertainties and by this share (common practice). */
const NECKING_SURE = 3;
const NECKING_SHARE = 0.1;

/** Residuals below this share of the stress are rounding; a runs test and a bend count from so many standard deviations on. */
const EXACT = 1e-7;
const ALIKE = 5;
const BENT = 4;

type Result = Pick<
  TensionResult,
  | 'modulus'
  | 'modulusWindow'
  | 'proofStrengths'
  | 'tensileStrength'
  | 'totalExtensionAtMaximumForce'
  | 'upperYieldStrength'
  | 'hardening'
  | 'necking'
>;

/** @internal True where the slope falls within the elastic part by more than its scatter allows: no linear part. */
export function isCurved(numbers: TensionNumbers, limit: number): boolean {
  const fall = numbers.line.ok ? numbers.line.slopeFall : undefined;
  return fall !== undefined && fall.value > limit && fall.value > 4 * fall.standardError;
}

function lineFindings(numbers: TensionNumbers, curve: TensionResult['curve'], result: Result, { thresholds }: TensionSettings): Finding[] {
  const { line } = numbers;
  if (!line.ok)
    return [
      finding('not-determined', { symbol: 'mE', why: line.message }, { field: 'elasticSlope' }),
      ...['Rp', 'Rt', 'Ag', 'n'].map((symbol) => finding('not-determined', { symbol, why: 'there is no elastic line' })),
    ];
  const found: Finding[] = [];
  const field = 'elasticSlope';
  const range = [line.first, line.last] as const;
  for (const bound of line.eased) found.push(finding('window-bound-eased', { bound }, { field: 'modulusWindow', range }));
  if (isCurved(numbers, thresholds.slopeFall))
    found.push(finding('no-linear-part', { fall: 100 * (line.slopeFall?.value ?? 0) }, { field: 'modulus', range }));
  if (line.points < thresholds.elasticPoints)
    found.push(
      finding(
        'few-points-in-elastic-part',
        { points: line.points },
        { field, range, severity: line.points < thresholds.leastElasticPoints ? 'fault' : 'caution' },
      ),
    );
  const scatter = line.relativeStandardError;
  if (scatter > thresholds.slopeScatter)
    found.push(finding('slope-scatter', { error: 100 * scatter }, { field, severity: scatter > SCATTER_FAULT ? 'fault' : 'caution' }));
  const { envelope, residuals } = result.modulusWindow ?? {};
  if (envelope?.verdict === 'fragile') {
    const [lowest, highest] = envelope.slope;
    const [low, high] = envelope.proofStrength ?? [NaN, NaN];
    found.push(
      envelope.proofStrength
        ? finding('windows-disagree', { lowest, highest, low, high, windows: envelope.windows }, { field })
        : finding('window-slopes-disagree', { lowest, highest, windows: envelope.windows }, { field }),
    );
  }
  if (residuals && line.residualStandardDeviation > EXACT * curve.stress[line.last]!) {
    const { runs, expectedRuns, runsDeviation, slopeChange, slopeChangeError } = residuals;
    if (runsDeviation < -ALIKE) found.push(finding('residuals-alike', { runs, expected: expectedRuns }, { field: 'modulusWindow', range }));
    if (Math.abs(slopeChange) > Math.max(thresholds.windowBend, BENT * slopeChangeError))
      found.push(finding('window-bent', { change: 100 * slopeChange }, { field: 'modulusWindow', range }));
  }
  if (result.modulus && (line.slope < METALS[0] || line.slope > METALS[1]))
    found.push(finding('slope-implausible', { slope: line.slope, lowest: METALS[0], highest: METALS[1] }, { field: 'modulus' }));
  return found;
}

function proofFindings(numbers: TensionNumbers, curve: TensionResult['curve'], result: Result, settings: TensionSettings): Finding[] {
  const { line } = numbers;
  if (!line.ok) return [];
  const found: Finding[] = [];
  const field = 'proofStrengths';
  numbers.proofs.forEach((proof, k) => {
    const offset = settings.offsets[k]!;
    const symbol = `Rp${percent(offset)}`;
    if (!proof.ok) {
      found.push(
        proof.reason === 'not-reached'
          ? finding('proof-strength-not-reached', { symbol }, { field })
          : finding('not-determined', { symbol, why: proof.message }, { field }),
      );
      return;
    }
    const leverage = offsetLeverage({ stress: proof.stress, modulus: line.slope, offset });
    const share = leverage * line.relativeStandardError;
    if (share > settings.thresholds.offsetDoubt)
      found.push(
        finding(
          'offset-leverage',
          { leverage, symbol, share: 100 * share },
          { field, severity: share > DOUBT_FAULT ? 'fault' : 'caution' },
        ),
      );
    const between = proof.index - line.last - 1;
    if (between < POINTS_BEFORE_PROOF) found.push(finding('few-points-before-proof', { points: Math.max(between, 0), symbol }, { field }));
    // back above the line and below it again: a yield point, or a slip
    let count = 1;
    const last = Math.min(numbers.highest, curve.stress.length - 1);
    // so far out that even the highest stress lies below the line
    const out = 2 * offset + curve.stress[last]! / line.slope;
    for (let i = proof.index + 1; i <= last && curve.strain[i]! <= out; i += 1) {
      if (curve.stress[i]! <= line.slope * (curve.strain[i]! - offset) + 3 * line.residualStandardDeviation) continue;
      i = sustainedCrossing(curve.strain, curve.stress, line.slope, offset, i, last + 1);
      if (i < 0) break;
      count += 1;
    }
    if (count > 1) found.push(finding('several-crossings', { symbol, count }, { field }));
  });
  numbers.totals.forEach((total, k) => {
    if (!total.ok)
      found.push(
        finding(
          'total-extension-not-reached',
          { symbol: `Rt${percent(settings.totalExtensions[k]!)}` },
          { field: 'totalExtensionStrengths' },
        ),
      );
  });
  return found;
}

function yieldFindings({ yielding, proportional }: TensionNumbers): Finding[] {
  const found: Finding[] = [];
  if (yielding?.ok === false) {
    found.push(
      yielding.reason === 'fall-in-pause'
        ? finding('yield-fall-in-pause', {}, { field: 'upperYieldStrength' })
        : finding('no-yield-point', { why: yielding.message }, { field: 'upperYieldStrength' }),
    );
  }
  const limits = Object.values(proportional ?? {}).flatMap((one) => (one.ok ? [one.stress] : []));
  if (limits.length > 1)
    found.push(
      finding(
        'proportional-limit-by-definition',
        { lowest: Math.min(...limits), highest: Math.max(...limits) },
        { field: 'proportionalLimit' },
      ),
    );
  else if (limits.length === 0 && proportional)
    found.push(
      finding('not-determined', { symbol: 'the proportional limit', why: 'no definition finds one' }, { field: 'proportionalLimit' }),
    );
  return found;
}

function maximumFindings(numbers: TensionNumbers, curve: TensionResult['curve'], result: Result): Finding[] {
  const found: Finding[] = [];
  const { maximumSample, fracture, highest } = numbers;
  const top = result.tensileStrength.value;
  const field = 'totalExtensionAtMaximumForce';
  if (!numbers.maximum)
    found.push(finding('not-determined', { symbol: 'Agt', why: 'the extensometer ends before the maximum force' }, { field }));
  else {
    let first = maximumSample;
    let last = maximumSample;
    while (first > 0 && curve.stress[first - 1]! >= (1 - NEAR_MAXIMUM) * top) first -= 1;
    while (last < curve.stress.length - 1 && curve.stress[last + 1]! >= (1 - NEAR_MAXIMUM) * top) last += 1;
    const width = curve.strain[last]! - curve.strain[first]!;
    if (width > WIDEST_MAXIMUM) found.push(finding('maximum-wide', { width }, { field, range: [first, last] }));
  }
  const upper = result.upperYieldStrength;
  if (upper && highest === upper.index)
    found.push(finding('maximum-below-upper-yield', { strength: top, upper: upper.value }, { field: 'tensileStrength' }));
  if (!fracture.ok) {
    if (maximumSample === curve.stress.length - 1) found.push(finding('maximum-at-end', {}, { field: 'tensileStrength' }));
    else
      found.push(
        finding('stopped-before-fracture', { share: (100 * curve.stress[curve.stress.length - 1]!) / top }, { field: 'fracture' }),
      );
    found.push(finding('not-determined', { symbol: 'At', why: fracture.message }, { field: 'totalExtensionAtFracture' }));
  } else if (fracture.how === 'end-of-record') found.push(finding('fracture-not-recorded', {}, { field: 'fracture' }));
  return found;
}

function hardeningFindings({ line, hardening, necking, maximum }: TensionNumbers, result: Result): Finding[] {
  const found: Finding[] = [];
  if (hardening?.ok === false) found.push(finding('not-determined', { symbol: 'n', why: hardening.message }, { field: 'hardening' }));
  if (necking?.ok === false) found.push(finding('not-determined', { symbol: 'εu', why: necking.message }, { field: 'necking' }));
  if (!result.hardening) return found;
  const { rSquared, exponent } = result.hardening;
  if (rSquared < HARDENING_CORRELATION) found.push(finding('hardening-correlation-low', { correlation: rSquared }, { field: 'hardening' }));
  // both answers count total strain: the law's has the elastic part at its own stress added
  if (necking?.ok === true && hardening?.ok === true && line.ok) {
    const law = hardening.exponent + (hardening.strengthCoefficient * hardening.exponent ** hardening.exponent) / line.slope;
    const apart = Math.abs(necking.strain - law);
    if (apart > Math.max(NECKING_SURE * necking.standardUncertainty, NECKING_SHARE * necking.strain))
      found.push(
        finding('necking-answers-differ', { curve: necking.strain, uncertainty: necking.standardUncertainty, law }, { field: 'necking' }),
      );
  }
  const uniform = maximum && maximum.strain > 0 ? Math.log1p(maximum.strain) : undefined;
  if (uniform !== undefined && Math.abs(exponent.value - uniform) > NECKING_AGREEMENT)
    found.push(finding('necking-unlike-exponent', { exponent: exponent.value, strain: uniform }, { field: 'hardening' }));
  return found;
}

/** @internal Doubts about the evaluation: line, yield, maximum, fracture, hardening. */
export function methodFindings(
  numbers: TensionNumbers,
  curve: TensionResult['curve'],
  result: Result,
  settings: TensionSettings,
): Finding[] {
  return [
    ...lineFindings(numbers, curve, result, settings),
    ...proofFindings(numbers, curve, result, settings),
    ...yieldFindings(numbers),
    ...maximumFindings(numbers, curve, result),
    ...hardeningFindings(numbers, result),
  ];
}
