import type { StressStrainCurve } from '../../base/index.js';
import { loadingRatesKernel, type RateLimits } from '../../curve/index.js';
import { noiseLevel } from '../../numeric/index.js';
import { keptRanges } from '../../record/index.js';
import type { LineNumbers } from './lineKernel.js';
import type { Ranges } from './loadingRanges.js';

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

const PLACES = 40;
/** Never fewer places than one for each tenth that may lie outside. */
const FEWEST_PLACES = 10;
/** Standard error that noise may leave of a local rate, as a share of it: a quarter of what method A allows a rate to be off. */
const RATE_DOUBT = 0.05;
const LEAST_PLACES = 3;
/** @internal Share of the stretches that must lie within the limits of a control. */
export const MET = 0.9;
/** @internal The lowest rate of a control that has none: above standing still. */
export const ANY_RATE = 1e-12;

/** @internal The local rates of a stage. */
export type StageRates = Pick<LoadingStage, 'stage' | 'range'> & { readonly stress: Float64Array; readonly strain: Float64Array };

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

/** Samples whose slope is known so well in the noise of a column: a line through m samples, a step apart, has the standard error s √(12/m³). */
function samplesInNoise(column: Float64Array, first: number, last: number, samples: number): number {
  const advance = Math.abs(column[last]! - column[first]!) / samples;
  const noise = noiseLevel(column, first, last + 1);
  return noise > 0 ? Math.cbrt(12 * (noise / (RATE_DOUBT * advance)) ** 2) : 1;
}

/** What of the samples first to last is loading: the stretches between pauses, as samples of the curve. */
const betweenPauses = (pauses: Ranges, first: number, last: number): Ranges =>
  keptRanges(
    pauses
      .filter(([from, to]) => from < last && to > first)
      .map(([from, to]) => [Math.max(from, first) - first, Math.min(to, last) - first] as const),
    last - first + 1,
  ).map(([from, to]) => [first + from, first + to] as const);

function ratesOfStage(
  stage: LoadingStage['stage'],
  { strain, stress }: StressStrainCurve,
  first: number,
  last: number,
  clock: Clock,
): StageRates[] {
  if (last - first < 5 * LEAST_PLACES) return [];
  const { time, pauses } = clock;
  const loaded = betweenPauses(pauses, first, last);
  const samples = loaded.reduce((sum, [from, to]) => sum + to - from + 1, 0);
  const enough = samplesInNoise(strain, first, last, samples);
  // the stress rate is judged there alone
  const size = stage === 'elastic' ? Math.max(enough, samplesInNoise(stress, first, last, samples)) : enough;
  const wanted = Math.min(PLACES, Math.max(FEWEST_PLACES, Math.floor(samples / size)));
  // each stretch by itself: over a pause the stress falls, and the clock runs
  const rates = loaded.map(([from, to]) => {
    const part = (column: Float64Array): Float64Array => column.subarray(from, to + 1);
    const places = Math.max(1, Math.round((wanted * (to - from + 1)) / samples));
    return loadingRatesKernel({ strain: part(strain), stress: part(stress) }, part(time), places);
  });
  const all = (which: 'stressRate' | 'strainRate'): Float64Array => Float64Array.from(rates.flatMap((one) => [...one[which]]));
  const stressRate = all('stressRate');
  return stressRate.length < LEAST_PLACES ? [] : [{ stage, range: [first, last], stress: stressRate, strain: all('strainRate') }];
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

/** @internal Where the stages of a test lie: the line, where yielding ends, where the last stage ends. */
export interface StagesTask {
  readonly line: LineNumbers['line'];
  /** Last sample of the stage of yielding. */
  readonly yielded: number;
  /** Last sample of all. */
  readonly end: number;
  /** First and last sample of each pause. */
  readonly pauses: Ranges;
  /** Strain over the parallel length, which the rate of yielding goes by; default that of the curve. */
  readonly parallelStrain?: Float64Array | undefined;
}

/** When the samples were taken, and where the drive stood. */
interface Clock {
  readonly time: Float64Array;
  readonly pauses: Ranges;
}

/** @internal The controls of each stage, and the standard's names for what was met, of stages and compared controls; default none. */
export interface ControlsTask {
  readonly controlsOf: (stage: LoadingStage['stage']) => readonly ControlOf[];
  readonly designationsOf?: (stages: readonly LoadingStage[], controls: readonly LoadingControl[]) => readonly string[];
}

/** @internal The local rates of the stages that the record supports; undefined where the clock or the line is missing. */
export function stageRates(curve: StressStrainCurve, time: Float64Array | undefined, task: StagesTask): StageRates[] | undefined {
  const { line, pauses, parallelStrain: strain = curve.strain } = task;
  if (!time || !line.ok) return undefined;
  const end = Math.min(task.end, curve.strain.length - 1);
  const yielded = Math.min(task.yielded, end);
  return [
    ...ratesOfStage('elastic', curve, line.first, line.last, { time, pauses }),
    ...ratesOfStage('yield', { ...curve, strain }, line.last, yielded, { time, pauses }),
    ...ratesOfStage('hardening', curve, yielded, end, { time, pauses }),
  ];
}

/** @internal How the piece was loaded, by the rates of its stages. */
export function loadingBy(rates: readonly StageRates[], { controlsOf, designationsOf }: ControlsTask): Loading {
  const stages = rates.map(({ stage, range, stress, strain }) => ({
    stage,
    range,
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
