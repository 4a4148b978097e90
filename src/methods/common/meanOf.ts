import { mean, sampleDeviation } from '../../numeric/index.js';

/** @internal Mean of values, and its standard uncertainty by their scatter where there are two or more; undefined of none. */
export function meanOf(values: readonly number[]): { readonly mean: number; readonly uncertainty: number | undefined } | undefined {
  const n = values.length;
  if (n === 0) return undefined;
  const uncertainty = n > 1 ? sampleDeviation(Float64Array.from(values)) / Math.sqrt(n) : undefined;
  return { mean: mean(values), uncertainty };
}
