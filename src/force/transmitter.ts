import { requireColumn } from '../base/index.js';

/** What a transmitter's signal means. */
export interface TransmitterPressure {
  /** Pressure [MPa], up to the first fault (all of it where there is none). */
  readonly pressure: Float64Array;
  /** First and last sample of each stretch whose signal no working transmitter gives. */
  readonly faults: readonly (readonly [number, number])[];
}

/** @internal A signal between two ends as pressure; stretches outside the limits are faults. */
export function transmitterPressure(
  from: string,
  path: string,
  signal: ArrayLike<number>,
  scale: { readonly low: number; readonly high: number; readonly fullScale: number; readonly least: number; readonly most: number },
): TransmitterPressure {
  const column = requireColumn(from, path, signal);
  const faults: [number, number][] = [];
  column.forEach((value, i) => {
    if (value >= scale.least && value <= scale.most) return;
    const last = faults[faults.length - 1];
    if (last && last[1] === i - 1) last[1] = i;
    else faults.push([i, i]);
  });
  const sound = column.subarray(0, faults[0]?.[0] ?? column.length);
  return { pressure: sound.map((value) => (scale.fullScale * (value - scale.low)) / (scale.high - scale.low)), faults };
}
