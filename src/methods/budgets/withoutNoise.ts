import { soundLength, type TensionRecord } from '../../base/index.js';
import { cubicFit, horner, lineFit, maximumIndex, slidingSlope } from '../../numeric/index.js';
import { LEAST_READINGS, motionColumn, ofPiece } from '../../record/index.js';
import type { TensionTask } from './tensionModel.js';
import type { KnownNoise } from './tensionNoise.js';

/** Samples to either side of a sliding parabola that takes two thirds of white noise away; a corner stands out by so many deviations. */
const HALF = 10;
const CORNER = 4;

/** An extreme is smoothed as far as the force stays within so many deviations of it, over this many samples at least. */
const NEAR_EXTREME = 5;
const LEAST_ARC = 12;

/** In the elastic window the force is what the line says of the motion: a sliding parabola would be steeper beside a corner than the line. */
function straightened(force: Float64Array, motion: Float64Array, { numbers: { line } }: TensionTask): void {
  if (!line.ok) return;
  const fit = lineFit(motion, force, line.first, line.last);
  if (fit) for (let i = line.first; i <= line.last; i += 1) force[i] = fit.intercept + fit.slope * motion[i]!;
}

/** About an extreme the force is a cubic of the sample: sliding parabolas would keep the wave of noise that made the extreme. */
function rounded(force: Float64Array, at: number, noise: number): void {
  const within = NEAR_EXTREME * noise;
  let first = at;
  let last = at;
  while (first > 0 && Math.abs(force[first - 1]! - force[at]!) <= within) first -= 1;
  while (last < force.length - 1 && Math.abs(force[last + 1]! - force[at]!) <= within) last += 1;
  if (last - first < LEAST_ARC) return;
  const fit = cubicFit(
    Float64Array.from({ length: last - first + 1 }, (_, k) => first + k),
    force.subarray(first, last + 1),
  );
  if (fit) for (let i = first; i <= last; i += 1) force[i] = horner(fit.coefficients, (i - fit.centre) / fit.scale);
}

/**
 * @internal The test with most of its noise taken out, so that fresh noise is not added to noise. Sliding parabolas over the samples of all
 * columns alike leave straight lines between them straight; where a sample stands out of its parabola (a yield point, a fall) it stays. Where
 * the analysis knows what the curve is, it is that: a line in the elastic window, a smooth arc about the maximum, about ReH and about ReL.
 */
export function withoutNoise(task: TensionTask, noise: KnownNoise): TensionTask {
  const { record, lengths } = task;
  if (noise.force === 0 && noise.displacement === 0) return task;
  const half = Math.min(Math.ceil((HALF * (1 + noise.correlation)) / (1 - noise.correlation)), Math.floor(record.force.length / 40));
  if (half < 2) return task;
  const stays = new Uint8Array(record.force.length);
  // beside the ends of the window a parabola that reaches over a corner would be steeper than the line
  const { line } = task.numbers;
  if (line.ok) {
    stays.fill(1, Math.max(0, line.first - 2 * half), line.first);
    stays.fill(1, line.last + 1, line.last + 1 + 2 * half);
  }
  const smooth = (column: Float64Array | undefined, level: number): Float64Array | undefined => {
    const sound = column?.subarray(0, soundLength(column));
    // in an empty column nothing stands out
    if (!column || !sound || sound.length < LEAST_READINGS) return undefined;
    const { value } = slidingSlope(sound, half);
    // where a column has ended, the others decide alone
    for (let i = 0; i < sound.length; i += 1) if (!(Math.abs(value[i]! - column[i]!) <= CORNER * level)) stays[i] = 1;
    return value;
  };
  const names = ['force', 'extension', 'strain', 'travel'] as const;
  const levels = [noise.force, noise.displacement, noise.displacement / lengths.extensometerLength, noise.displacement];
  const values = names.map((name, k) => smooth(record[name], levels[k]!));
  const columns = names.flatMap((name, k) => {
    const value = values[k];
    return value ? [[name, record[name]!.map((one, i) => (stays[i] === 1 || i >= value.length ? one : value[i]!))] as const] : [];
  });
  const quiet: TensionRecord = { ...record, ...(Object.fromEntries(columns) as Partial<TensionRecord>) };
  const { numbers } = task;
  straightened(quiet.force, quiet[motionColumn(quiet, ofPiece)]!, task);
  const { yielding } = numbers;
  const extremes = yielding?.ok === true ? [yielding.upper.index, yielding.lower.index] : [];
  for (const at of [numbers.maximumSample, ...extremes]) rounded(quiet.force, at, noise.force);
  return { ...task, record: quiet, top: maximumIndex(quiet.force) };
}
