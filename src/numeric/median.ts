/** Moves values about so that the one of rank k (counted from 0) stands at k, smaller ones before it and larger ones after it. */
function select(values: Float64Array, k: number): number {
  for (let low = 0, high = values.length - 1; low < high;) {
    const pivot = values[(low + high) >> 1]!;
    let i = low;
    let j = high;
    while (i <= j) {
      while (values[i]! < pivot) i += 1;
      while (values[j]! > pivot) j -= 1;
      if (i > j) break;
      const kept = values[i]!;
      values[i++] = values[j]!;
      values[j--] = kept;
    }
    if (k <= j) high = j;
    else if (k >= i) low = i;
    else break;
  }
  return values[k]!;
}

/** @internal The median of finite values; 0 of nothing. Found by selection, since a sort of a few hundred would cost more than all that uses it. */
export function median(values: ArrayLike<number>): number {
  return medianOf(new Float64Array(values));
}

/** @internal {@link median} of values that may be moved about. */
export function medianOf(own: Float64Array): number {
  const n = own.length;
  if (n === 0) return 0;
  const upper = select(own, n >> 1);
  if (n % 2 === 1) return upper;
  let lower = -Infinity;
  for (let i = 0; i < n >> 1; i += 1) if (own[i]! > lower) lower = own[i]!;
  return (lower + upper) / 2;
}
