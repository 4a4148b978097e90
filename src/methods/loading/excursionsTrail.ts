import { trailStep, type TrailStep } from '../../base/index.js';
import type { Ranges } from './loadingRanges.js';

/** @internal What was left out of the evaluation between the stretches that it was made on. */
export function excursionsTrail(ranges: Ranges | undefined): TrailStep[] {
  if (!ranges) return [];
  const left = ranges.slice(1).map(([first], k) => [ranges[k]![1] + 1, first - 1] as const);
  return [
    trailStep('excursions-not-evaluated', {
      count: left.length,
      samples: left.reduce((sum, [first, last]) => sum + last - first + 1, 0),
      ranges: left.map((range) => range.join('-')).join(', '),
    }),
  ];
}
