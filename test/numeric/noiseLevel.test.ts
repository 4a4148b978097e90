import { describe, expect, test } from 'vitest';
import { noiseLevel, noiseLevelError, randomNumbers } from '../../src/numeric/index.js';

describe('the standard error of a noise level', () => {
  test.each([30, 100, 300, 1000])('%i samples: that of 600 levels of normal noise', (samples) => {
    const { normal } = randomNumbers(samples);
    const levels = Array.from({ length: 600 }, () => noiseLevel(Float64Array.from({ length: samples }, normal)));
    const mean = levels.reduce((sum, one) => sum + one, 0) / levels.length;
    const deviation = Math.sqrt(levels.reduce((sum, one) => sum + (one - mean) ** 2, 0) / levels.length);
    // a deviation of 600 is known to 3 %; the number is one for all lengths, with neighbours that overlap or not
    expect(noiseLevelError(samples) / deviation).toBeGreaterThan(0.85);
    expect(noiseLevelError(samples) / deviation).toBeLessThan(1.25);
  });
});
