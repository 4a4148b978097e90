import type { Quantity, TensionRecord } from '../../base/index.js';
import { stressRatesOf, testingRates, type PieceLengths, type RateLimits, type RecordedCurve } from '../../curve/index.js';
import { materialFamily, type MaterialFamilyKey, type UsualRange } from '../../materials/index.js';
import type { LoadingPart } from '../evaluation/loadingPart.js';
import {
  ANY_RATE,
  control,
  loadingBy,
  type ControlOf,
  type Loading,
  type LoadingControl,
  type LoadingStage,
} from '../loading/loadingOf.js';
import { sampleOfRecord } from '../loading/loadingRanges.js';
import { stageRates, type StageRates } from '../loading/stageRates.js';
import type { TensionNumbers } from '../loading/TensionNumbers.js';

const METHOD_A = 'ISO 6892-1 method A, range ';
const METHOD_B = 'ISO 6892-1 method B';

/** @internal The modulus of a metal, as far as it is known [MPa]: the usual one of its family, else the measured one of the piece with its doubt. */
export const modulusOfMetal = (family: MaterialFamilyKey | undefined, measured: Quantity | undefined): UsualRange | undefined => {
  if (family) return materialFamily(family).modulus;
  const doubt = 2 * (measured?.standardUncertainty ?? 0);
  return measured && [measured.value - doubt, measured.value + doubt];
};

/** The controls that concern a stage. */
function controlsOf(stage: LoadingStage['stage'], modulus: UsualRange | undefined, yieldPoint: boolean): ControlOf[] {
  const { strainRanges, methodB, e8 } = testingRates;
  const ranges = (numbers: readonly number[], before: readonly RateLimits[] = []) =>
    strainRanges
      .filter(({ range }) => numbers.includes(range))
      .map(({ range, limits }) => control(`${METHOD_A}${range}`, stage, 'strain', limits, before));
  if (stage === 'elastic')
    return [
      ...ranges([1, 2]),
      control(METHOD_B, stage, 'stress', stressRatesOf(modulus)),
      control('ASTM E8/E8M control A', stage, 'stress', e8.stressRate),
      control('ASTM E8/E8M control B', stage, 'strain', e8.strainRate),
    ];
  if (stage === 'yield')
    return [
      ...ranges(yieldPoint ? [2, 3] : [1, 2]),
      control(METHOD_B, stage, 'strain', yieldPoint ? methodB.lowerYield : [ANY_RATE, methodB.upToProof]),
      control('ASTM E8/E8M control C', stage, 'strain', e8.crosshead),
    ];
  // for Rm each of the three will do, and no place is fixed at which one goes over to the next (from memory)
  const forStrength = strainRanges.filter(({ determines }) => determines.includes('Rm')).map(({ limits }) => limits);
  return [
    ...ranges([2, 3, 4], forStrength),
    control(METHOD_B, stage, 'strain', [ANY_RATE, methodB.afterYield]),
    control('ASTM E8/E8M, tensile strength', stage, 'strain', e8.strength),
  ];
}

/** The range of method A that a stage kept to; where several came one after the other, the last. */
const rangeOf = (stage: LoadingStage['stage'], controls: readonly LoadingControl[]): string | undefined =>
  controls
    .filter((one) => one.met && one.stage === stage && one.control.startsWith(METHOD_A))
    .sort((one, other) => other.share - one.share)[0]
    ?.control.slice(METHOD_A.length);

/** Designations by the controls that are met in every stage: three ranges of method A, or method B with its stress rate. */
function designationsOf(stages: readonly LoadingStage[], controls: readonly LoadingControl[]): string[] {
  const names = ['elastic', 'yield', 'hardening'] as const;
  if (stages.length < names.length) return [];
  const digits = names.map((stage) => rangeOf(stage, controls));
  const methodB = names.every((stage) => controls.some((one) => one.met && one.stage === stage && one.control === METHOD_B));
  // of a metal that is not known the stress rate is one of method B only where that of any metal would be
  const { soft, stiff } = testingRates.methodB;
  const [softest, fastest] = methodBOf({ controls }, 'elastic')!.limits;
  const { lowest, highest, median } = stages[0]!.stressRate;
  const ofAny = softest > soft[0] || fastest < stiff[1] || (lowest >= stiff[0] && highest <= soft[1]);
  return [
    ...(digits.every((one) => one !== undefined) ? [`A${digits.join('')}`] : []),
    ...(methodB && ofAny ? [`B${Math.round(median)}`] : []),
  ];
}

/** @internal True for a strain rate that lies within a range of method A for a stage [1/s]. */
export const withinMethodA = (stage: LoadingStage['stage'], rate: number): boolean =>
  controlsOf(stage, undefined, false).some(
    ({ control: words, limits: [lowest, highest] }) => words.startsWith(METHOD_A) && rate >= lowest && rate <= highest,
  );

/** @internal True where a stage keeps to a range of method A: what method B asks of it does not bind then. */
export const keepsToMethodA = (loading: Loading | undefined, stage: LoadingStage['stage']): boolean =>
  loading !== undefined && rangeOf(stage, loading.controls) !== undefined;

/** @internal The control that findings are about: method B of ISO 6892-1 in a stage. */
export const methodBOf = (loading: Pick<Loading, 'controls'> | undefined, stage: LoadingStage['stage']): LoadingControl | undefined =>
  loading?.controls.find((one) => one.stage === stage && one.control === METHOD_B);

/** Travel over the parallel length beside an extensometer, which sees a band of yielding only as it passes; undefined where it does not advance from first to last sample. */
function strainOfTravel(
  { travel }: TensionRecord,
  { basis }: Pick<RecordedCurve, 'basis'>,
  { parallelLength }: Pick<PieceLengths, 'parallelLength'>,
  [first, last]: readonly [number, number],
): Float64Array | undefined {
  if (basis === 'travel' || !travel || !(travel[last]! > travel[first]!)) return undefined;
  return travel.map((one) => one / parallelLength);
}

/** @internal Local rates of the stages of a record of what is loading, with samples of the whole record. From ReL on the rate is that over the parallel length (ISO 6892-1, from memory). */
export function tensionStages(
  loaded: TensionRecord,
  { numbers, input, ranges }: LoadingPart & { readonly numbers: TensionNumbers },
  recorded: Pick<RecordedCurve, 'basis'>,
  lengths: Pick<PieceLengths, 'parallelLength'>,
) {
  const { line, yielding, proofs, maximumSample } = numbers;
  const proof = proofs.find((one) => one.ok);
  const yielded = yielding?.ok === true ? (yielding.hardeningStart ?? yielding.lower.index) : (proof?.index ?? (line.ok ? line.last : 0));
  const through = line.ok && yielding?.ok === true ? ([line.last, yielded] as const) : undefined;
  const parallelStrain = through && strainOfTravel(loaded, recorded, lengths, through);
  const { pauses } = input;
  const stages = stageRates(input.curve, loaded.time, { line, yielded, end: maximumSample, pauses, parallelStrain });
  if (!ranges) return stages;
  const onRecord = (sample: number): number => sampleOfRecord(ranges, sample);
  return stages?.map((one) => ({ ...one, range: [onRecord(one.range[0]), onRecord(one.range[1])] as const }));
}

/** @internal How a tension piece was loaded, against ISO 6892-1 and ASTM E8/E8M. */
export const tensionLoading = (
  stages: readonly StageRates[] | undefined,
  { yielding }: Pick<TensionNumbers, 'yielding'>,
  modulus: UsualRange | undefined,
): Loading | undefined =>
  stages && loadingBy(stages, { controlsOf: (stage) => controlsOf(stage, modulus, yielding?.ok === true), designationsOf });
