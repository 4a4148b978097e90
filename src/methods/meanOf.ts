/** @internal Mean of values, and its standard uncertainty by their scatter where there are two or more; undefined of none. */
export function meanOf(values: readonly number[]): { readonly mean: number; readonly uncertainty: number | undefined } | undefined {
  const n = values.length;
  if (n === 0) return undefined;
  const mean = values.reduce((a, b) => a + b) / n;
  const squares = values.reduce((sum, one) => sum + (one - mean) ** 2, 0);
  return { mean, uncertainty: n > 1 ? Math.sqrt(squares / (n - 1) / n) : undefined };
}
