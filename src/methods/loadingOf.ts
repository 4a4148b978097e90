import type { StressStrainCurve } from '../base/index.js';
import { loadingRates, testingRates, type RateLimits } from '../curve/index.js';
import type { TensionNumbers } from './tensionKernel.js';

/** How a local rate spreads over a stage. */
export interface RateSpread {
  /** Its median. */
  readonly median: number;
  /** Rate that a twentieth of the stretches stay below. */
  readonly lowest: number;
  /** Rate that a twentieth of the stretches exceed. */
  readonly highest: number;
}

/** One stage of the test as it was loaded. */
export interface LoadingStage {
  /** The elastic window; from there to the proof strength or through yielding; from there to the maximum. */
  readonly stage: 'elastic' | 'yield' | 'hardening';
  /** First and last sample. */
  readonly range: readonly [number, number];
  /** Local stress rate [MPa/s]. */
  readonly stressRate: RateSpread;
  /** Local strain rate [1/s]; with travel that of the crosshead over the parallel length. */
  readonly strainRate: RateSpread;
}

/** A control of a standard, and how far a stage kept to it. */
export interface LoadingControl {
  /** Standard and control, in words. */
  readonly control: string;
  /** Which stage it is for. */
  readonly stage: LoadingStage['stage'];
  /** Which rate it limits. */
  readonly rate: 'stress' | 'strain';
  /** Lowest and highest rate [MPa/s or 1/s]. */
  readonly limits: RateLimits;
  /** Share of the stretches that lie within [1]. */
  readonly share: number;
  /** True where nine tenths of them do. */
  readonly met: boolean;
}

/** How the piece was loaded, stage by stage, against the testing rates of the standards. */
export interface Loading {
  /** The stages that the record supports. */
  readonly stages: readonly LoadingStage[];
  /** The controls of ISO 6892-1 (methods A and B) and ASTM E8/E8M that concern them. */
  readonly controls: readonly LoadingControl[];
  /** What a report may write after the standard where the controls are met, as A222 or B20 (ISO 6892-1, designation of test conditions, from memory). */
  readonly designations: readonly string[];
}

const PLACES = 40;
const LEAST_PLACES = 3;
const MET = 0.9;
const ANY = 1e-12;

type StageRates = Pick<LoadingStage, 'stage' | 'range'> & { readonly stress: Float64Array; readonly strain: Float64Array };

function spread(rates: Float64Array): RateSpread {
  const sorted = Float64Array.from(rates).sort();
  const at = (share: number): number => sorted[Math.round(share * (sorted.length - 1))]!;
  return { median: at(0.5), lowest: at(0.05), highest: at(0.95) };
}

function ratesOfStage(
  stage: LoadingStage['stage'],
  curve: StressStrainCurve,
  time: Float64Array,
  first: number,
  last: number,
): StageRates[] {
  const part = (column: Float64Array): Float64Array => column.subarray(first, last + 1);
  if (last - first < 5 * LEAST_PLACES) return [];
  const { stressRate, strainRate } = loadingRates({ strain: part(curve.strain), stress: part(curve.stress) }, part(time), {
    places: PLACES,
  });
  return stressRate.length < LEAST_PLACES ? [] : [{ stage, range: [first, last], stress: stressRate, strain: strainRate }];
}

/** The controls that concern a stage. */
function controlsOf(
  stage: LoadingStage['stage'],
  modulus: number | undefined,
  yieldPoint: boolean,
): Omit<LoadingControl, 'share' | 'met'>[] {
  const { strainRanges, methodB, e8 } = testingRates;
  const limit = (control: string, rate: LoadingControl['rate'], limits: RateLimits) => ({ control, stage, rate, limits });
  const ranges = (numbers: readonly number[]) =>
    strainRanges
      .filter(({ range }) => numbers.includes(range))
      .map(({ range, limits }) => limit(`ISO 6892-1 method A, range ${range}`, 'strain', limits));
  if (stage === 'elastic')
    return [
      ...ranges([1, 2]),
      limit(
        'ISO 6892-1 method B',
        'stress',
        modulus === undefined ? [methodB.soft[0], methodB.stiff[1]] : modulus < methodB.stiffFrom ? methodB.soft : methodB.stiff,
      ),
      limit('ASTM E8/E8M control A', 'stress', e8.stressRate),
      limit('ASTM E8/E8M control B', 'strain', e8.strainRate),
    ];
  if (stage === 'yield')
    return [
      ...ranges(yieldPoint ? [2, 3] : [1, 2]),
      limit('ISO 6892-1 method B', 'strain', yieldPoint ? methodB.lowerYield : [ANY, methodB.upToProof]),
      limit('ASTM E8/E8M control C', 'strain', e8.crosshead),
    ];
  return [
    ...ranges([2, 3, 4]),
    limit('ISO 6892-1 method B', 'strain', [ANY, methodB.afterYield]),
    limit('ASTM E8/E8M, tensile strength', 'strain', e8.strength),
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

/** @internal How the piece was loaded; undefined where the clock or the line is missing. */
export function loadingOf(
  curve: StressStrainCurve,
  time: Float64Array | undefined,
  numbers: TensionNumbers,
  modulus: number | undefined,
): Loading | undefined {
  const { line, yielding, maximumSample } = numbers;
  if (!time || !line.ok) return undefined;
  const proof = numbers.proofs.find((one) => one.ok);
  const yieldPoint = yielding?.ok === true;
  const end = Math.min(maximumSample, curve.strain.length - 1);
  const yielded = Math.min(yieldPoint ? yielding.hardeningStart : (proof?.index ?? line.last), end);
  const rates = [
    ...ratesOfStage('elastic', curve, time, line.first, line.last),
    ...ratesOfStage('yield', curve, time, line.last, yielded),
    ...ratesOfStage('hardening', curve, time, yielded, end),
  ];
  const stages = rates.map(({ stage, range, stress, strain }) => ({
    stage,
    range,
    stressRate: spread(stress),
    strainRate: spread(strain),
  }));
  const controls = rates.flatMap(({ stage, stress, strain }) =>
    controlsOf(stage, modulus, yieldPoint).map((control) => {
      const list = control.rate === 'stress' ? stress : strain;
      const share = list.filter((rate) => rate >= control.limits[0] && rate <= control.limits[1]).length / list.length;
      return { ...control, share, met: share >= MET };
    }),
  );
  return { stages, controls, designations: designationsOf(stages, controls) };
}
