import { requireWhole } from '../../base/index.js';

/** @internal First and last sample that the options ask for, whole numbers within the column. */
export function sampleRange(
  from: string,
  options: { readonly from?: number | undefined; readonly to?: number | undefined },
  length: number,
): readonly [number, number] {
  const last = requireWhole(from, 'options.to', options.to ?? length - 1, 0, length - 1);
  return [requireWhole(from, 'options.from', options.from ?? 0, 0, last), last];
}
