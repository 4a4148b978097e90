import type { TensionRecord, TrailStep } from '../../base/index.js';
import { applyChange } from '../../record/index.js';
import { samplesOfPart, type Ranges } from './loadingRanges.js';

/** Repairs that take a stretch of time out of the test; one that leaves repeated samples out takes none. */
const cutting: readonly string[] = ['excursions-left-out', 'slip-left-out'];

/** Last samples before what is cut out between ranges, in what is left. */
const lastBefore = (ranges: Ranges): number[] => {
  const { upTo } = samplesOfPart(ranges);
  return ranges.slice(0, -1).map(([, last]) => upTo(last));
};

/** Last samples before what was cut out, in the record as it is after all steps. */
function cutsOf(trail: readonly TrailStep[]): Set<number> {
  let cuts: number[] = [];
  for (const { code, change } of trail) {
    if (change?.kind !== 'keep') continue;
    const { upTo } = samplesOfPart(change.ranges);
    cuts = cuts.map(upTo);
    if (cutting.includes(code)) cuts.push(...lastBefore(change.ranges));
  }
  return new Set(cuts);
}

/** A record with its time as if loading had gone on at once after some samples. */
function closedAfter(cuts: ReadonlySet<number>, record: TensionRecord): TensionRecord {
  const { time } = record;
  if (!time || cuts.size === 0) return record;
  let cut = 0;
  return {
    ...record,
    time: time.map((t, i) => {
      // in place of the gap the step before it
      if (i > 1 && cuts.has(i - 1)) cut += Math.max(0, t - time[i - 1]! - (time[i - 1]! - time[i - 2]!));
      return t - cut;
    }),
  };
}

/**
 * @internal A repaired record with its time as if loading had gone on at once where excursions and slips were left out: neither does the drive stand there,
 * nor does the logger miss anything.
 */
export const timeOfLoading = (record: TensionRecord, trail: readonly TrailStep[]): TensionRecord => closedAfter(cutsOf(trail), record);

/** @internal The record of what is loading, where that is not the whole, with time in the same way. */
export const recordOfLoading = (record: TensionRecord, ranges: Ranges | undefined): TensionRecord =>
  ranges ? closedAfter(new Set(lastBefore(ranges)), applyChange(record, { kind: 'keep', ranges })) : record;
