import { medianOf } from '../../numeric/index.js';

/** About so many samples tell a level: their median knows it to 1.25/√500, a twentieth of the noise. */
const PLACES = 500;

/** @internal The level of a range: the median of its samples, pauses apart. */
export function levelOf(stress: Float64Array, first: number, last: number, spoilt: Uint8Array | undefined): number {
  const stride = Math.max(1, Math.floor((last - first) / PLACES));
  const sampled: number[] = [];
  for (let i = first; i <= last; i += stride) if (spoilt?.[i] !== 1) sampled.push(stress[i]!);
  return medianOf(sampled);
}
