import { testingRates, type RateLimits } from './testingRates.js';

/** @internal Stress rates of ISO 6892-1 method B for a modulus [MPa]; of one that is not known those of any material [MPa/s]. */
export function stressRatesOf(modulus: number | undefined): RateLimits {
  const { soft, stiff, stiffFrom } = testingRates.methodB;
  if (modulus === undefined) return [soft[0], stiff[1]];
  return modulus < stiffFrom ? soft : stiff;
}
