import type { StressStrainCurve } from '../../base/index.js';
import type { RateLimits } from '../../curve/index.js';
import { stageRates, type StageRates, type StagesTask } from './stageRates.js';

/** How a local rate spreads over a stage. */
export interface RateSpread {
  /** Its median. */
  readonly median: number;
  /** Rate that a twentieth of the stretches stay below. */
  readonly lowest: number;
  /** Rate that a twentieth of the stretches exceed. */
  readonly highest: number;
}

/** One stage of the test as it was loaded: without its pauses. */
export interface LoadingStage {
  /** The elastic window; from there to the proof strength or through yielding; from there to the maximum. */
  readonly stage: 'elastic' | 'yield' | 'hardening';
  /** First and last sample. */
  readonly range: readonly [number, number];
  /** Time of the two [s]. */
  readonly time: readonly [number, number];
  /** Local stress rate [MPa/s]. */
  readonly stressRate: RateSpread;
  /** Local strain rate [1/s]; with travel that of the crosshead over the parallel length, so too through a yield point where travel was recorded beside an extensometer. */
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
  /** Share of the stretches that lie within [1]; of a range of method A for the tensile strength also those before it that lie in another range allowed there. */
  readonly share: number;
  /** True where nine tenths of them do. */
  readonly met: boolean;
}

/** How the piece was loaded, stage by stage, against the testing rates of the standards. */
export interface Loading {
  /** The stages that the record supports. */
  readonly stages: readonly LoadingStage[];
  /** The controls of the standards that concern them: of tension ISO 6892-1 (methods A and B) and ASTM E8/E8M, of compression ASTM E9, of bending ISO 178, ASTM D790 and ISO 7438. */
  readonly controls: readonly LoadingControl[];
  /** What a report may write after the standard where the controls are met, as A222 or B20 (ISO 6892-1, designation of test conditions, from memory); of other tests none. */
  readonly designations: readonly string[];
}

/** @internal Share of the stretches that must lie within the limits of a control. */
export const MET = 0.9;
/** @internal The lowest rate of a control that has none: above standing still. */
export const ANY_RATE = 1e-12;

/** The spread of some rates. */
function spread(rates: Float64Array): RateSpread {
  const sorted = rates.slice().sort();
  const at = (share: number): number => sorted[Math.round(share * (sorted.length - 1))]!;
  return { median: at(0.5), lowest: at(0.05), highest: at(0.95) };
}

const isWithin = (rate: number, [lowest, highest]: RateLimits): boolean => rate >= lowest && rate <= highest;

/** @internal Share of the rates, in their order, that lie within limits; before the first that does, within others will do. */
export function shareWithin(rates: Float64Array, limits: RateLimits, before: readonly RateLimits[] = []): number {
  const reached = rates.findIndex((rate) => isWithin(rate, limits));
  if (reached < 0) return 0;
  let within = 0;
  rates.forEach((rate, k) => {
    if (isWithin(rate, limits) || (k < reached && before.some((other) => isWithin(rate, other)))) within += 1;
  });
  return within / rates.length;
}

/** @internal A control before it is compared with the record. */
export type ControlOf = Omit<LoadingControl, 'share' | 'met'> & {
  /** Limits that will do as long as these were not reached. */
  readonly before?: readonly RateLimits[];
};

/** @internal A control of a stage, in words, by one of its rates. */
export const control = (
  words: string,
  stage: LoadingStage['stage'],
  rate: LoadingControl['rate'],
  limits: RateLimits,
  before: readonly RateLimits[] = [],
): ControlOf => ({
  control: words,
  stage,
  rate,
  limits,
  before,
});

/** @internal The controls of each stage, and the standard's names for what was met, of stages and compared controls; default none. */
export interface ControlsTask {
  readonly controlsOf: (stage: LoadingStage['stage']) => readonly ControlOf[];
  readonly designationsOf?: (stages: readonly LoadingStage[], controls: readonly LoadingControl[]) => readonly string[];
}

/** @internal How the piece was loaded, by the rates of its stages. */
export function loadingBy(rates: readonly StageRates[], { controlsOf, designationsOf }: ControlsTask): Loading {
  const stages = rates.map(({ stage, range, time: times, stress, strain }) => ({
    stage,
    range,
    time: times,
    stressRate: spread(stress),
    strainRate: spread(strain),
  }));
  const controls: LoadingControl[] = [];
  for (const { stage, stress, strain } of rates)
    for (const { control: words, rate, limits, before } of controlsOf(stage)) {
      const share = shareWithin(rate === 'stress' ? stress : strain, limits, before);
      controls.push({ control: words, stage, rate, limits, share, met: share >= MET });
    }
  return { stages, controls, designations: designationsOf?.(stages, controls) ?? [] };
}

/** @internal How the piece was loaded; undefined where the clock or the line is missing. */
export function loadingOf(curve: StressStrainCurve, time: Float64Array | undefined, task: StagesTask & ControlsTask): Loading | undefined {
  const rates = stageRates(curve, time, task);
  return rates && loadingBy(rates, task);
}
