import { finding, type Finding, type TensionRecord } from '../base/index.js';
import { loadingRates } from '../curve/index.js';
import { lineFit } from '../numeric/index.js';
import type { Pause } from '../record/index.js';
import type { TensionNumbers } from './tensionKernel.js';
import type { TensionSettings } from './tensionOptions.js';
import type { Rates, TensionResult } from './TensionResult.js';

/** Stress rates of ISO 6892-1 method B (from memory): slower for materials of low modulus. */
const METHOD_B = { soft: [2, 20], stiff: [6, 60] } as const;
const STIFF = 150_000;
/** Speeds vary by so much: a note, a caution (common practice). */
const UNEVEN = [0.2, 0.5] as const;
/** Stretches of the elastic window whose speeds are compared. */
const STRETCHES = 20;
/** A pause this close to a yield value in strain spoils it. */
const NEAR = 0.002;
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
    const taken = new Float64Array(Math.floor(end / stride));
    for (let k = 0; k < taken.length; k += 1) taken[k] = column[k * stride]!;
    return taken;
  };
  return loadingRates({ strain: some(curve.strain), stress: some(curve.stress) }, some(time));
}

/** How much the speed varies over the elastic window: standard deviation over mean of the slopes of stretches, less what noise makes of it. */
function unevenness(motion: Float64Array, time: Float64Array, first: number, last: number): number | undefined {
  const size = Math.floor((last - first + 1) / STRETCHES);
  if (size < 3) return undefined;
  const speeds: number[] = [];
  let noise = 0;
  for (let k = 0; k < STRETCHES; k += 1) {
    const line = lineFit(time, motion, first + k * size, first + (k + 1) * size - 1);
    if (!line) continue;
    speeds.push(line.slope);
    noise += line.standardError ** 2;
  }
  const mean = speeds.reduce((sum, one) => sum + one, 0) / speeds.length;
  const squares = speeds.reduce((sum, one) => sum + (one - mean) ** 2, 0);
  const spread = squares / (speeds.length - 1) - noise / speeds.length;
  return mean > 0 ? Math.sqrt(Math.max(0, spread)) / mean : undefined;
}

/** Pauses, each as a note; near a yield value as a caution. */
function pauseFindings(
  pauses: readonly Pause[],
  curve: TensionResult['curve'],
  result: Pick<TensionResult, 'upperYieldStrength' | 'proofStrengths'>,
): Finding[] {
  const yields = [...(result.upperYieldStrength ? [result.upperYieldStrength] : []), ...result.proofStrengths];
  return pauses.flatMap(({ range, duration }) => {
    const last = Math.min(range[1], curve.strain.length - 1);
    const first = Math.min(range[0], last);
    const strain = curve.strain[first]!;
    const fall = curve.stress[first]! - curve.stress[last]!;
    const note = finding('pause', { duration, strain, fall }, { range });
    const spoilt = yields.find((one) => Math.abs(one.strain - strain) <= NEAR);
    return spoilt ? [note, finding('pause-near-yield', { duration, symbol: spoilt.symbol }, { range })] : [note];
  });
}

/** @internal Doubts about how the piece was loaded: rates, evenness, pauses. */
export function rateFindings(
  record: TensionRecord,
  curve: TensionResult['curve'],
  result: Pick<TensionResult, 'modulus' | 'upperYieldStrength' | 'proofStrengths'>,
  numbers: TensionNumbers,
  rates: Rates | undefined,
  pauses: readonly Pause[],
  settings: TensionSettings,
): Finding[] {
  const found = pauseFindings(pauses, curve, result);
  const { line } = numbers;
  const { time } = record;
  if (!line.ok || !time || !rates) return found;
  const rate = lineFit(time, curve.stress, line.first, line.last)?.slope;
  if (rate !== undefined) {
    const ranges =
      result.modulus === undefined
        ? ([METHOD_B.soft[0], METHOD_B.stiff[1]] as const)
        : result.modulus.value < STIFF
          ? METHOD_B.soft
          : METHOD_B.stiff;
    const [lowest, highest] = ranges;
    if (rate < lowest || rate > highest) found.push(finding('stress-rate-outside', { rate, lowest, highest }));
    const upper = result.upperYieldStrength;
    const usual = (time[line.last]! - time[line.first]!) / (line.last - line.first);
    if (upper && usual > 0 && rate * usual > SAMPLING_ERROR * upper.value)
      found.push(finding('sampling-slow-for-yield', { frequency: 1 / usual, rate, loss: rate * usual }, { field: 'upperYieldStrength' }));
  }
  const motion = record.travel ?? record.extension ?? record.strain;
  const variation = motion && unevenness(motion, time, line.first, line.last);
  if (variation !== undefined && variation > UNEVEN[0])
    found.push(finding('uneven-loading', { variation: 100 * variation }, variation > UNEVEN[1] ? { severity: 'caution' } : {}));

  const first = numbers.proofs[0];
  const yieldTime = time[first?.ok === true ? first.index : line.last]!;
  const { strainRateElastic, strainRatePlastic } = settings.thresholds;
  const fastest = (from: number, to: number): number => {
    let highest = -Infinity;
    rates.time.forEach((t, k) => {
      if (t >= from && t < to && rates.strainRate[k]! > highest) highest = rates.strainRate[k]!;
    });
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
