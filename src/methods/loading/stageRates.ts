import type { StressStrainCurve } from '../../base/index.js';
import { loadingRatesKernel } from '../../curve/index.js';
import { noiseLevel } from '../../numeric/index.js';
import { keptRanges } from '../../record/index.js';
import type { LineNumbers } from './lineKernel.js';
import type { Ranges } from './loadingRanges.js';

/** Stretches of a stage at most. */
const PLACES = 40;
/** Fewer stretches than this are no stage. */
const LEAST_PLACES = 3;
/** Never fewer places than one for each tenth that may lie outside. */
const FEWEST_PLACES = 10;
/** Standard error that noise may leave of a local rate, as a share of it: a quarter of what method A allows a rate to be off. */
const RATE_DOUBT = 0.05;

/** @internal The local rates of a stage. */
export interface StageRates {
  readonly stage: 'elastic' | 'yield' | 'hardening';
  /** First and last sample. */
  readonly range: readonly [number, number];
  /** Time of the two [s]. */
  readonly time: readonly [number, number];
  /** [MPa/s] */
  readonly stress: Float64Array;
  /** [1/s] */
  readonly strain: Float64Array;
}

/** Samples whose slope is known so well in the noise of a column: a line through m samples, a step apart, has the standard error s √(12/m³). */
function samplesInNoise(column: Float64Array, first: number, last: number, samples: number): number {
  const advance = Math.abs(column[last]! - column[first]!) / samples;
  const noise = noiseLevel(column, first, last + 1);
  return noise > 0 ? Math.cbrt(12 * (noise / (RATE_DOUBT * advance)) ** 2) : 1;
}

/** @internal What of the samples first to last is loading: the stretches between pauses, as samples of the curve. */
export const betweenPauses = (pauses: Ranges, first: number, last: number): Ranges =>
  keptRanges(
    pauses
      .filter(([from, to]) => from < last && to > first)
      .map(([from, to]) => [Math.max(from, first) - first, Math.min(to, last) - first] as const),
    last - first + 1,
  ).map(([from, to]) => [first + from, first + to] as const);

function ratesOfStage(
  stage: StageRates['stage'],
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
  if (stressRate.length < LEAST_PLACES) return [];
  return [{ stage, range: [first, last], time: [time[first]!, time[last]!], stress: stressRate, strain: all('strainRate') }];
}

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
