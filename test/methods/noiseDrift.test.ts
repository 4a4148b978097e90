import { describe, expect, it } from 'vitest';
import { noiseDrift } from '../../src/methods/budgets/noiseDrift.js';
import { seeded } from '../support/random.js';

const { normal } = seeded(12);
/** A smooth rise with noise of deviation 15 whose neighbours are correlated. */
function stretch(correlation: number, n = 110) {
  const motion = Float64Array.from({ length: n }, (_, i) => (i / n) ** 1.3);
  let last = normal();
  const force = motion.map((x) => {
    last = correlation * last + Math.sqrt(1 - correlation ** 2) * normal();
    return 4000 * x - 300 * x * x + 15 * last;
  });
  return { motion, force };
}

describe('noiseDrift', () => {
  it('finds the correlation of long stretches, and what a sample does not owe to the one before', () => {
    for (const correlation of [0.4, 0.7, 0.9]) {
      const found = noiseDrift([stretch(correlation, 4000), stretch(correlation, 4000)])!;
      // a cubic has four terms
      expect(found.samples).toBe(2 * 3996);
      // √((1 − ρ²)/n) is the standard error of a correlation; four of the worst
      expect(Math.abs(found.correlation - correlation)).toBeLessThan(0.06);
      expect(found.fresh / (15 * Math.sqrt(1 - correlation ** 2))).toBeGreaterThan(0.94);
      expect(found.fresh / (15 * Math.sqrt(1 - correlation ** 2))).toBeLessThan(1.06);
    }
  });

  it('misses no drift of 0.9 in some hundred samples, and sees none where there is none', () => {
    for (let k = 0; k < 40; k += 1) {
      expect(noiseDrift([stretch(0.9), stretch(0.9)])!.correlation).toBeGreaterThan(0.6);
      expect(noiseDrift([stretch(0), stretch(0)])).toBeUndefined();
    }
  });

  it('takes no drift of the others for one of the elastic stretch, nor of the elastic one for that of most', () => {
    expect(noiseDrift([stretch(0), stretch(0.9), stretch(0.9)])).toBeUndefined();
    expect(noiseDrift([stretch(0.9), stretch(0), stretch(0)])).toBeUndefined();
  });

  it('is none without noise, without motion or of too few samples', () => {
    const { motion } = stretch(0);
    expect(noiseDrift([{ motion, force: motion.map((x) => 2 * x) }])).toBeUndefined();
    expect(noiseDrift([{ motion: motion.map(() => 1), force: stretch(0.9).force }])).toBeUndefined();
    expect(noiseDrift([])).toBeUndefined();
  });
});
