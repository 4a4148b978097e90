import { describe, expect, test } from 'vitest';
import { noiseLevel, noiseLevelError, randomNumbers } from '../../src/numeric/index.js';

describe('the standard error of a noise level', () => {
  test.each([30, 100, 300, 310, 600, 900, 1000, 3000])('%i samples: that of 600 levels of normal noise', (samples) => {
    const { normal } = randomNumbers(samples);
    const levels = Array.from({ length: 600 }, () => noiseLevel(Float64Array.from({ length: samples }, normal)));
    const mean = levels.reduce((sum, one) => sum + one, 0) / levels.length;
    const deviation = Math.sqrt(levels.reduce((sum, one) => sum + (one - mean) ** 2, 0) / levels.length);
    // a deviation of 600 is known to 1/√1200
    expect(Math.abs(deviation / noiseLevelError(samples) - 1)).toBeLessThan(3 / Math.sqrt(2 * levels.length));
  });
});
