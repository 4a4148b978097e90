import { expect } from 'vitest';

/** Half of the last digit of a number as it is printed. */
export function halfDigit(printed: string): number {
  const [, exponent = '0'] = printed.split('e');
  const decimals = /\.(\d+)/.exec(printed)?.[1]?.length ?? 0;
  return 0.5 * 10 ** (Number(exponent) - decimals);
}

/** Expects a value to round to what is printed; `digits` 2 allows one whole last digit (numbers from memory). */
export function expectPrinted(value: number, printed: string, digits = 1): void {
  // the last bit of binary rounding is no reason to fail
  expect(Math.abs(value - Number(printed)), `${value} against the printed ${printed}`).toBeLessThanOrEqual(
    digits * halfDigit(printed) * (1 + 1e-9),
  );
}
