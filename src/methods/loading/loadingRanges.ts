import type { StressStrainCurve } from '../../base/index.js';
import { keptColumn, keptRanges } from '../../record/index.js';

/** @internal Stretches of a record that a part of it is made of, first and last sample of each. */
export type Ranges = readonly (readonly [number, number])[];

/** @internal What of so many samples is loading; undefined where it is the whole. */
export function loadingRanges(excursions: Ranges, samples: number): Ranges | undefined {
  const left = excursions.filter(([leaves, back]) => back > leaves + 1 && back < samples);
  return left.length === 0 ? undefined : keptRanges(left, samples);
}

/** @internal Sample of the record at a sample of the part. */
export function sampleOfRecord(ranges: Ranges, sample: number): number {
  let left = sample;
  for (const [first, last] of ranges) {
    if (left <= last - first) return first + left;
    left -= last - first + 1;
  }
  return ranges[ranges.length - 1]![1];
}

/** How many samples of the part lie before a sample of the record. */
function before(ranges: Ranges, sample: number): number {
  let count = 0;
  for (const [first, last] of ranges) {
    if (sample <= first) return count;
    if (sample <= last) return count + sample - first;
    count += last - first + 1;
  }
  return count;
}

/** @internal First sample of the part from a sample of the record on, and its last one up to there. */
export const samplesOfPart = (ranges: Ranges) => ({
  from: (sample: number): number => before(ranges, sample),
  upTo: (sample: number): number => before(ranges, sample + 1) - 1,
});

/** @internal The kept samples of a curve. */
export const pickCurve = ({ strain, stress }: StressStrainCurve, ranges: Ranges): StressStrainCurve => ({
  strain: keptColumn(strain, ranges),
  stress: keptColumn(stress, ranges),
});
