import type { StressStrainCurve } from '../../base/index.js';
import { stressRatesOf, testingRates } from '../../curve/index.js';
import {
  ANY_RATE,
  control,
  loadingOf,
  type ControlOf,
  type Loading,
  type LoadingControl,
  type LoadingStage,
} from '../loading/loadingOf.js';
import type { TensionNumbers } from '../loading/TensionNumbers.js';

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
      control('ISO 6892-1 method B', stage, 'stress', stressRatesOf(modulus)),
      control('ASTM E8/E8M control A', stage, 'stress', e8.stressRate),
      control('ASTM E8/E8M control B', stage, 'strain', e8.strainRate),
    ];
  if (stage === 'yield')
    return [
      ...ranges(yieldPoint ? [2, 3] : [1, 2]),
      control('ISO 6892-1 method B', stage, 'strain', yieldPoint ? methodB.lowerYield : [ANY_RATE, methodB.upToProof]),
      control('ASTM E8/E8M control C', stage, 'strain', e8.crosshead),
    ];
  return [
    ...ranges([2, 3, 4]),
    control('ISO 6892-1 method B', stage, 'strain', [ANY_RATE, methodB.afterYield]),
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
  const methodB = names.every((stage) => met(stage, 'ISO 6892-1 method B').length > 0);
  return [
    ...(digits.every((one) => one !== undefined) ? [`A${digits.join('')}`] : []),
    ...(methodB ? [`B${Math.round(stages[0]!.stressRate.median)}`] : []),
  ];
}

/** @internal How a tension piece was loaded, against ISO 6892-1 and ASTM E8/E8M. */
export function tensionLoading(
  curve: StressStrainCurve,
  time: Float64Array | undefined,
  { line, yielding, proofs, maximumSample }: TensionNumbers,
  modulus: number | undefined,
): Loading | undefined {
  if (!line.ok) return undefined;
  const yieldPoint = yielding?.ok === true;
  const proof = proofs.find((one) => one.ok);
  return loadingOf(curve, time, {
    line,
    yielded: yieldPoint ? (yielding.hardeningStart ?? yielding.lower.index) : (proof?.index ?? line.last),
    end: maximumSample,
    controlsOf: (stage) => controlsOf(stage, modulus, yieldPoint),
    designationsOf,
  });
}
