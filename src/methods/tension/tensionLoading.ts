import { stressRatesOf, testingRates } from '../../curve/index.js';
import type { LoadingPart } from '../evaluation/loadingPart.js';
import {
  ANY_RATE,
  control,
  loadingBy,
  stageRates,
  type ControlOf,
  type Loading,
  type LoadingControl,
  type LoadingStage,
  type StageRates,
} from '../loading/loadingOf.js';
import { sampleOfRecord } from '../loading/loadingRanges.js';
import type { TensionNumbers } from '../loading/TensionNumbers.js';

const METHOD_B = 'ISO 6892-1 method B';

/** The controls that concern a stage. */
function controlsOf(stage: LoadingStage['stage'], modulus: number | undefined, yieldPoint: boolean): ControlOf[] {
  const { strainRanges, methodB, e8 } = testingRates;
  const ranges = (numbers: readonly number[]) =>
    strainRanges
      .filter(({ range }) => numbers.includes(range))
      .map(({ range, limits }) => control(`ISO 6892-1 method A, range ${range}`, stage, 'strain', limits));
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
  return [
    ...ranges([2, 3, 4]),
    control(METHOD_B, stage, 'strain', [ANY_RATE, methodB.afterYield]),
    control('ASTM E8/E8M, tensile strength', stage, 'strain', e8.strength),
  ];
}

/** Designations by the controls that are met in every stage: three ranges of method A, or method B with its stress rate. */
function designationsOf(stages: readonly LoadingStage[], controls: readonly LoadingControl[]): string[] {
  const met = (stage: LoadingStage['stage'], what: string) =>
    controls.filter((one) => one.met && one.stage === stage && one.control.startsWith(what));
  const names = ['elastic', 'yield', 'hardening'] as const;
  if (stages.length < names.length) return [];
  const digits = names.map((stage) => /range (\d)/.exec(met(stage, 'ISO 6892-1 method A')[0]?.control ?? '')?.[1]);
  const methodB = names.every((stage) => met(stage, METHOD_B).length > 0);
  return [
    ...(digits.every((one) => one !== undefined) ? [`A${digits.join('')}`] : []),
    ...(methodB ? [`B${Math.round(stages[0]!.stressRate.median)}`] : []),
  ];
}

/** @internal The control that findings are about: method B of ISO 6892-1 in a stage. */
export const methodBOf = (loading: Loading | undefined, stage: LoadingStage['stage']): LoadingControl | undefined =>
  loading?.controls.find((one) => one.stage === stage && one.control === METHOD_B);

/** @internal Local rates of the stages of what is loading, by its time, with samples of the record. */
export function tensionStages(
  time: Float64Array | undefined,
  { numbers, input, ranges }: LoadingPart & { readonly numbers: TensionNumbers },
) {
  const { line, yielding, proofs, maximumSample } = numbers;
  const proof = proofs.find((one) => one.ok);
  const yielded = yielding?.ok === true ? (yielding.hardeningStart ?? yielding.lower.index) : (proof?.index ?? (line.ok ? line.last : 0));
  const stages = stageRates(input.curve, time, { line, yielded, end: maximumSample });
  if (!ranges) return stages;
  const onRecord = (sample: number): number => sampleOfRecord(ranges, sample);
  return stages?.map((one) => ({ ...one, range: [onRecord(one.range[0]), onRecord(one.range[1])] as const }));
}

/** @internal How a tension piece was loaded, against ISO 6892-1 and ASTM E8/E8M. */
export const tensionLoading = (
  stages: readonly StageRates[] | undefined,
  { yielding }: Pick<TensionNumbers, 'yielding'>,
  modulus: number | undefined,
): Loading | undefined =>
  stages && loadingBy(stages, { controlsOf: (stage) => controlsOf(stage, modulus, yielding?.ok === true), designationsOf });
