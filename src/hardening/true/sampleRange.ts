import { InputError, requireBetween } from '../../base/index.js';

/** @internal First and last sample that the options ask for, whole numbers within the column. */
export function sampleRange(
  from: string,
  options: { readonly from?: number | undefined; readonly to?: number | undefined },
  length: number,
): readonly [number, number] {
  const whole = (name: 'from' | 'to', otherwise: number, most: number): number => {
    const sample = requireBetween(from, `options.${name}`, options[name] ?? otherwise, 0, most);
    if (!Number.isInteger(sample)) throw new InputError(from, `options.${name}`, 'out-of-range', 'must be a whole number', sample);
    return sample;
  };
  const last = whole('to', length - 1, length - 1);
  return [whole('from', 0, last), last];
}
