import { finding, type Finding, type Quantity, type TensionRecord } from '../../base/index.js';
import { loadingRatesKernel, stressRatesOf, testingRates } from '../../curve/index.js';
import type { UsualRange } from '../../materials/index.js';
import { lineFit, mean } from '../../numeric/index.js';
import type { Pause } from '../../record/index.js';
import type { MissedPeak } from '../evaluation/missedPeak.js';
import { MET, shareWithin } from '../loading/loadingOf.js';
import { pauseFindings, unevenFindings } from '../loading/paceFindings.js';
import type { TensionInput, TensionNumbers } from '../loading/TensionNumbers.js';
import type { TensionSettings } from '../evaluation/tensionOptions.js';
import type { Rates, TensionResult } from '../evaluation/TensionResult.js';
import type { StageRates } from '../loading/stageRates.js';
import { keepsToMethodA, methodBOf, withinMethodA } from './tensionLoading.js';

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

/** Where the stress rate of the elastic window leaves method B of ISO 6892-1: a caution where it does so in the middle, a note where it does so here and there. It binds no test by method A. */
function stressRateFindings({ loading, stages, stressRate, loaded, part, metal }: RateEvidence): Finding[] {
  const judged = methodBOf(loading, 'elastic');
  const [lowest, highest] = judged?.limits ?? stressRatesOf(metal);
  const { line } = part.numbers;
  // a window of too few samples for local rates has one by its line
  const rate = judged ? loading!.stages.find(({ stage }) => stage === 'elastic')!.stressRate.median : stages && stressRate;
  const strainRate = line.ok && loaded.time ? lineFit(loaded.time, part.input.curve.strain, line.first, line.last)?.slope : undefined;
  if (!rate) return [];
  if (judged ? keepsToMethodA(loading, 'elastic') : withinMethodA('elastic', strainRate ?? 0)) return [];
  const outside = rate < lowest || rate > highest;
  if (!judged) return outside ? [finding('mean-stress-rate-outside', { rate, lowest, highest })] : [];
  if (judged.met) return [];
  const values = { share: 100 * judged.share, lowest, highest, rate };
  return [finding('stress-rate-outside', values, { severity: outside ? 'caution' : 'note' })];
}

/** Strain rates above what is allowed up to yield or through yielding, and after it: in more than a tenth of a stage, as its control is judged. The elastic part is judged by its stress rate. */
function strainRateFindings(
  { stages, loading, rates, numbers, time }: Timed,
  { strainRateElastic, strainRatePlastic }: TensionSettings['thresholds'],
): Finding[] {
  const { line, proofs, maximumSample, yielding } = numbers;
  if (!line.ok || !rates) return [];
  const first = proofs[0];
  const yielded = time[first?.ok === true ? first.index : line.last]!;
  const end = time[Math.min(maximumSample, time.length - 1)]!;
  const judged = [
    { stage: 'yield', highest: strainRateElastic, from: time[line.last]!, to: yielded },
    { stage: 'hardening', highest: strainRatePlastic, from: yielded, to: end },
  ] as const;
  return judged.flatMap(({ stage, highest, from, to }) => {
    const known = stages?.find((one) => one.stage === stage);
    const rate = known ? loading!.stages.find((one) => one.stage === stage)!.strainRate.highest : fastest(rates, from, to);
    if (known ? shareWithin(known.strain, [-Infinity, highest]) >= MET : rate <= highest) return [];
    const where = stage === 'hardening' ? 'after yield' : known && yielding?.ok === true ? 'during yielding' : 'up to yield';
    return [finding('strain-rate-high', { where, rate, highest })];
  });
}

/** Yielding slower than method B of ISO 6892-1 asks for ReL, in more than a tenth of the stage: a caution where its mean is, else a note. It binds no test by method A. */
function slowYieldFindings({ stages, loading }: RateEvidence, lowerYield: Quantity | undefined): Finding[] {
  const stage = stages?.find((one) => one.stage === 'yield');
  if (!stage || !lowerYield || keepsToMethodA(loading, 'yield')) return [];
  const [lowest] = testingRates.methodB.lowerYield;
  const share = shareWithin(stage.strain, [lowest, Infinity]);
  if (share >= MET) return [];
  // an extensometer that a band of yielding passes late reads slow and then fast
  const rate = mean(stage.strain);
  const severity = rate < lowest ? 'caution' : 'note';
  return [finding('strain-rate-low', { share: 100 * share, rate, lowest }, { field: 'lowerYieldStrength', severity })];
}

/** The fastest local rate between two times: of a stage of too few samples. */
function fastest({ time, strainRate }: Rates, from: number, to: number): number {
  let highest = -Infinity;
  for (let k = 0; k < time.length; k += 1) if (time[k]! >= from && time[k]! < to && strainRate[k]! > highest) highest = strainRate[k]!;
  return highest;
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
  readonly stages: readonly StageRates[] | undefined;
  readonly loading?: TensionResult['loading'];
  readonly pauses: readonly Pause[];
  /** The part that is loading: its line and its curve. */
  readonly part: { readonly numbers: Pick<TensionNumbers, 'line'>; readonly input: Pick<TensionInput, 'curve' | 'pauses'> };
  /** The record of what is loading, and its stress rate over the elastic window [MPa/s]. */
  readonly loaded: TensionRecord;
  readonly stressRate: number | undefined;
  readonly missed: MissedPeak | undefined;
  /** Modulus of the metal, as far as it is known [MPa]. */
  readonly metal: UsualRange | undefined;
}

/** The same of a record whose clock runs. */
type Timed = RateEvidence & { readonly time: Float64Array };

/** @internal Doubts about how the piece was loaded: rates, evenness, pauses. */
export function rateFindings(
  evidence: RateEvidence,
  result: Pick<TensionResult, 'upperYieldStrength' | 'lowerYieldStrength' | 'proofStrengths'>,
  settings: TensionSettings,
): Finding[] {
  const { record, curve, numbers, rates, pauses, loaded, missed, part } = evidence;
  const { line } = numbers;
  const found = pauseFindings(pauses, curve, [result.upperYieldStrength, ...result.proofStrengths], line);
  const { time } = record;
  if (!line.ok || !time || !rates) return found;
  return [
    ...found,
    ...stressRateFindings(evidence),
    ...(loaded.time && part.numbers.line.ok ? unevenFindings(loaded, loaded.time, part.numbers.line, part.input.pauses) : []),
    ...missedFindings(missed, result),
    ...strainRateFindings({ ...evidence, time }, settings.thresholds),
    ...slowYieldFindings(evidence, result.lowerYieldStrength),
  ];
}
