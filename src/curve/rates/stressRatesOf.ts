import { testingRates, type RateLimits } from './testingRates.js';

/** @internal Stress rates of ISO 6892-1 method B for a metal whose modulus lies in a range [MPa]; where it is not known on which side it lies, those of any metal [MPa/s]. */
export function stressRatesOf(modulus: readonly [low: number, high: number] | undefined): RateLimits {
  const { soft, stiff, stiffFrom } = testingRates.methodB;
  if (modulus && modulus[1] < stiffFrom) return soft;
  return modulus && modulus[0] >= stiffFrom ? stiff : [soft[0], stiff[1]];
}
