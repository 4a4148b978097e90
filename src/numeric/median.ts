/** Values that may be moved about: a plain list of numbers costs less to make than a typed array, whose memory lies apart. */
type OwnValues = number[] | Float64Array;

/**
 * @internal Moves values about so that the one of rank k (counted from 0) stands at k, smaller ones before it and larger ones after it. The place of a value is computed without a branch, because a processor cannot predict on which side of the pivot the next value lies.
 */
export function ranked(values: OwnValues, k: number): number {
  let low = 0;
  for (let high = values.length - 1; low < high;) {
    const a = values[low]!;
    const b = values[(low + high) >> 1]!;
    const c = values[high]!;
    const pivot = Math.max(Math.min(a, b), Math.min(Math.max(a, b), c));
    let next = low;
    for (let i = low; i <= high; i += 1) {
      const value = values[i]!;
      values[i] = values[next]!;
      values[next] = value;
      next += Number(value < pivot);
    }
    if (k < next) high = next - 1;
    else if (next > low) low = next;
    else {
      // nothing is smaller than the pivot: its equals go first
      for (let i = low; i <= high; i += 1) {
        const value = values[i]!;
        values[i] = values[next]!;
        values[next] = value;
        next += Number(value === pivot);
      }
      if (k < next) break;
      low = next;
    }
  }
  return values[k]!;
}

/** @internal The median of finite values; 0 of nothing. Found by selection, since a sort of a few hundred would cost more than all that uses it. */
export function median(values: ArrayLike<number>): number {
  const own = new Array<number>(values.length);
  for (let i = 0; i < own.length; i += 1) own[i] = values[i]!;
  return medianOf(own);
}

/** @internal {@link median} of values that may be moved about. */
export function medianOf(own: OwnValues): number {
  const n = own.length;
  if (n === 0) return 0;
  const upper = ranked(own, n >> 1);
  if (n % 2 === 1) return upper;
  let lower = -Infinity;
  for (let i = 0; i < n >> 1; i += 1) if (own[i]! > lower) lower = own[i]!;
  return (lower + upper) / 2;
}
