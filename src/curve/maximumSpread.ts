import type { StressStrainCurve } from '../base/index.js';
import { cellMeans, maximumIndex, noiseOfCurve, stretchAbove } from '../numeric/index.js';

/** @internal How far the strain of a maximum is determined. */
export interface MaximumSpread {
  /** Stress by which the neighbourhood may lie below the maximum: the given share, or the noise where that is more [MPa]. */
  readonly depth: number;
  /** Width of that neighbourhood [mm/mm], and its first and last sample. */
  readonly width: number;
  readonly range: readonly [number, number];
  /** Width over which the stress lies within two deviations of its noise, or half a step of its reading: any sample there may read highest [mm/mm]. Absent without either. */
  readonly withinNoise?: number | undefined;
}

/** The neighbourhood is looked for where the stress is above this share of its maximum, by about so many means. */
const REGION = 0.9;
const PLACES = 150;
/** Noise moves a mean or a single sample by no more than so many deviations, as a rule. */
const DEVIATIONS = 3;
/** So far below the maximum, in deviations, the highest of many noisy samples may lie: as the budget of Agt has it. */
const ANYWHERE = 2;
/** And so far, in steps of the reading. */
const ROUNDED = 0.5;
/** Less than this share of the stress is rounding, no noise. */
const EXACT = 1e-7;

/** @internal The neighbourhood of the maximum, by means that noise does not break into pieces; a share of the maximum is within it in any case. The stress was read in such steps [MPa]. */
export function maximumSpread(
  { strain, stress }: StressStrainCurve,
  index: number,
  { end, resolution, share }: { readonly end: number; readonly resolution: number; readonly share: number },
): MaximumSpread {
  const top = stress[index]!;
  const [first, last] = stretchAbove(stress, REGION * top, index, end);
  const noise = noiseOfCurve(strain, stress, first, last + 1).level;
  const { x, y, size } = cellMeans(strain, stress, first, last, PLACES);
  const highest = maximumIndex(y);
  /** First and last mean within a depth, and the strain between where the line through the means crosses it. */
  const within = (depth: number) => {
    const least = y[highest]! - depth;
    let from = 0;
    let to = y.length - 1;
    while (y[from]! < least) from += 1;
    while (y[to]! < least) to -= 1;
    const crossing = (inside: number, outside: number): number =>
      outside < 0 || outside === y.length
        ? x[inside]!
        : x[inside]! + ((x[outside]! - x[inside]!) * (y[inside]! - least)) / (y[inside]! - y[outside]!);
    return { from, to, width: crossing(to, to + 1) - crossing(from, from - 1) };
  };
  const reads = Math.max(ANYWHERE * noise, ROUNDED * resolution);
  const depth = Math.max(share * top, DEVIATIONS * noise);
  const { from, to, width } = within(depth);
  return {
    depth,
    width,
    range: [first + from * size, Math.min(last, first + (to + 1) * size - 1)],
    ...(reads > EXACT * Math.abs(top) ? { withinNoise: within(reads).width } : {}),
  };
}
