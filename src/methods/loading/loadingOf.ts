import type { StressStrainCurve } from '../../base/index.js';
import { loadingRatesKernel, type RateLimits } from '../../curve/index.js';
import type { LineNumbers } from './lineKernel.js';

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
  /** Time of the two [s]. */
  readonly time: readonly [number, number];
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
  /** The controls of the standards that concern them: of tension ISO 6892-1 (methods A and B) and ASTM E8/E8M, of compression ASTM E9, of bending ISO 178, ASTM D790 and ISO 7438. */
  readonly controls: readonly LoadingControl[];
  /** What a report may write after the standard where the controls are met, as A222 or B20 (ISO 6892-1, designation of test conditions, from memory); of other tests none. */
  readonly designations: readonly string[];
}

const PLACES = 40;
const LEAST_PLACES = 3;
/** @internal Share of the stretches that must lie within the limits of a control. */
export const MET = 0.9;
/** @internal The lowest rate of a control that has none: above standing still. */
export const ANY_RATE = 1e-12;

/** @internal The local rates of a stage. */
export type StageRates = Pick<LoadingStage, 'stage' | 'range' | 'time'> & { readonly stress: Float64Array; readonly strain: Float64Array };

/** The spread of some rates, which it sorts. */
function spread(rates: Float64Array): RateSpread {
  const sorted = rates.sort();
  const at = (share: number): number => sorted[Math.round(share * (sorted.length - 1))]!;
  return { median: at(0.5), lowest: at(0.05), highest: at(0.95) };
}

/** @internal Share of the rates that lie within limits. */
export function shareWithin(rates: Float64Array, [lowest, highest]: RateLimits): number {
  let within = 0;
  for (let k = 0; k < rates.length; k += 1) if (rates[k]! >= lowest && rates[k]! <= highest) within += 1;
  return within / rates.length;
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
  const { stressRate, strainRate } = loadingRatesKernel({ strain: part(curve.strain), stress: part(curve.stress) }, part(time), PLACES);
  if (stressRate.length < LEAST_PLACES) return [];
  return [{ stage, range: [first, last], time: [time[first]!, time[last]!], stress: stressRate, strain: strainRate }];
}

/** @internal A control before it is compared with the record. */
export type ControlOf = Omit<LoadingControl, 'share' | 'met'>;

/** @internal A control of a stage, in words, by one of its rates. */
export const control = (words: string, stage: LoadingStage['stage'], rate: LoadingControl['rate'], limits: RateLimits): ControlOf => ({
  control: words,
  stage,
  rate,
  limits,
});

/** @internal Where the stages of a test lie: the line, where yielding ends, where the last stage ends. */
export interface StagesTask {
  readonly line: LineNumbers['line'];
  /** Last sample of the stage of yielding. */
  readonly yielded: number;
  /** Last sample of all. */
  readonly end: number;
}

/** @internal The controls of each stage, and the standard's names for what was met, of stages and compared controls; default none. */
export interface ControlsTask {
  readonly controlsOf: (stage: LoadingStage['stage']) => readonly ControlOf[];
  readonly designationsOf?: (stages: readonly LoadingStage[], controls: readonly LoadingControl[]) => readonly string[];
}

/** @internal The local rates of the stages that the record supports; undefined where the clock or the line is missing. */
export function stageRates(curve: StressStrainCurve, time: Float64Array | undefined, task: StagesTask): StageRates[] | undefined {
  const { line } = task;
  if (!time || !line.ok) return undefined;
  const end = Math.min(task.end, curve.strain.length - 1);
  const yielded = Math.min(task.yielded, end);
  return [
    ...ratesOfStage('elastic', curve, time, line.first, line.last),
    ...ratesOfStage('yield', curve, time, line.last, yielded),
    ...ratesOfStage('hardening', curve, time, yielded, end),
  ];
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
    for (const { control: words, rate, limits } of controlsOf(stage)) {
      const share = shareWithin(rate === 'stress' ? stress : strain, limits);
      controls.push({ control: words, stage, rate, limits, share, met: share >= MET });
    }
  return { stages, controls, designations: designationsOf?.(stages, controls) ?? [] };
}

/** @internal How the piece was loaded; undefined where the clock or the line is missing. */
export function loadingOf(curve: StressStrainCurve, time: Float64Array | undefined, task: StagesTask & ControlsTask): Loading | undefined {
  const rates = stageRates(curve, time, task);
  return rates && loadingBy(rates, task);
}
