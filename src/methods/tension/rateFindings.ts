import { finding, type Finding, type TensionRecord } from '../../base/index.js';
import { loadingRatesKernel, stressRatesOf } from '../../curve/index.js';
import type { Pause } from '../../record/index.js';
import type { MissedPeak } from '../evaluation/missedPeak.js';
import { pauseFindings, unevenFindings } from '../loading/paceFindings.js';
import type { TensionNumbers } from '../loading/TensionNumbers.js';
import type { TensionSettings } from '../evaluation/tensionOptions.js';
import type { Rates, TensionResult } from '../evaluation/TensionResult.js';

/** Samples that local rates rest on at most. */
const RATE_SAMPLES = 20_000;
/** Accepted error of ReH by sampling (ISO 6892-1, Annex A, from memory). */
const SAMPLING_ERROR = 0.01;

/** @internal Local rates up to fracture; undefined where there is no usable time. */
export function ratesOf(curve: TensionResult['curve'], time: Float64Array, end: number): Rates | undefined {
  if (end < 5) return undefined;
  // of a long record samples at equal intervals will do
  const stride = Math.max(1, Math.floor(end / RATE_SAMPLES));
  const some = (column: Float64Array): Float64Array => {
    if (stride === 1) return column.subarray(0, end);
    const taken = new Float64Array(Math.floor(end / stride));
    for (let k = 0; k < taken.length; k += 1) taken[k] = column[k * stride]!;
    return taken;
  };
  return loadingRatesKernel({ strain: some(curve.strain), stress: some(curve.stress) }, some(time));
}

/** Rate and evenness over the elastic window, of the loading alone: going back and coming again is told for itself. */
function windowFindings(
  { loaded, stressRate: rate, part }: Pick<RateEvidence, 'loaded' | 'stressRate' | 'part'>,
  { modulus }: Pick<TensionResult, 'modulus'>,
): Finding[] {
  const { line } = part.numbers;
  if (!line.ok || !loaded.time) return [];
  const [lowest, highest] = stressRatesOf(modulus?.value);
  const outside = rate !== undefined && (rate < lowest || rate > highest);
  return [...(outside ? [finding('stress-rate-outside', { rate, lowest, highest })] : []), ...unevenFindings(loaded, loaded.time, line)];
}

/** A peak that the samples may have missed by more than is accepted. */
const missedFindings = (
  missed: MissedPeak | undefined,
  { upperYieldStrength: upper }: Pick<TensionResult, 'upperYieldStrength'>,
): Finding[] =>
  missed && upper && missed.loss > SAMPLING_ERROR * upper.value
    ? [
        finding(
          'sampling-slow-for-yield',
          { frequency: 1 / missed.longest, rate: missed.rate, loss: missed.loss },
          { field: 'upperYieldStrength' },
        ),
      ]
    : [];

/** What the doubts about the loading rest on. */
interface RateEvidence {
  readonly record: TensionRecord;
  readonly curve: TensionResult['curve'];
  readonly numbers: TensionNumbers;
  readonly rates: Rates | undefined;
  readonly pauses: readonly Pause[];
  /** The part that is loading: the line that was found on it, its record, and the stress rate over the elastic window [MPa/s]. */
  readonly part: { readonly numbers: Pick<TensionNumbers, 'line'> };
  readonly loaded: TensionRecord;
  readonly stressRate: number | undefined;
  readonly missed: MissedPeak | undefined;
}

/** @internal Doubts about how the piece was loaded: rates, evenness, pauses. */
export function rateFindings(
  evidence: RateEvidence,
  result: Pick<TensionResult, 'modulus' | 'upperYieldStrength' | 'proofStrengths'>,
  settings: TensionSettings,
): Finding[] {
  const { record, curve, numbers, rates, pauses, missed } = evidence;
  const { line } = numbers;
  const found = pauseFindings(pauses, curve, [result.upperYieldStrength, ...result.proofStrengths], line);
  const { time } = record;
  if (!line.ok || !time || !rates) return found;
  found.push(...windowFindings(evidence, result), ...missedFindings(missed, result));
  const first = numbers.proofs[0];
  const yieldTime = time[first?.ok === true ? first.index : line.last]!;
  const { strainRateElastic, strainRatePlastic } = settings.thresholds;
  const fastest = (from: number, to: number): number => {
    let highest = -Infinity;
    for (let k = 0; k < rates.time.length; k += 1)
      if (rates.time[k]! >= from && rates.time[k]! < to && rates.strainRate[k]! > highest) highest = rates.strainRate[k]!;
    return highest;
  };
  const start = time[line.first]!;
  const before = fastest(start, yieldTime);
  if (before > strainRateElastic)
    found.push(finding('strain-rate-high', { where: 'up to yield', rate: before, highest: strainRateElastic }));
  const end = time[Math.min(numbers.maximumSample, time.length - 1)]!;
  const after = fastest(yieldTime, end);
  if (after > strainRatePlastic) found.push(finding('strain-rate-high', { where: 'after yield', rate: after, highest: strainRatePlastic }));
  return found;
}
