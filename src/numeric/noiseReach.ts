/** @internal How far the highest and the lowest of so many noisy samples lie apart at most, in standard deviations: of normal ones about 2 √(2 ln n), and a margin on either side. */
export const noiseReach = (samples: number): number => 2 * (Math.sqrt(2 * Math.log(samples)) + 1);
