/** @internal Seeded random numbers: the same seed gives the same sequence everywhere. */
export interface RandomNumbers {
  /** Uniform within 0 (included) and 1 (excluded). */
  readonly uniform: () => number;
  /** Normal with mean 0 and standard deviation 1. */
  readonly normal: () => number;
}

/**
 * @internal xoshiro128** (Blackman and Vigna, 2018), its state filled from the seed by splitmix32; normal numbers by Marsaglia's polar
 * method.
 */
export function randomNumbers(seed: number): RandomNumbers {
  let mix = seed | 0;
  const next = (): number => {
    mix = (mix + 0x9e3779b9) | 0;
    let z = mix ^ (mix >>> 16);
    z = Math.imul(z, 0x21f0aaad);
    z = Math.imul(z ^ (z >>> 15), 0x735a2d97);
    return z ^ (z >>> 15);
  };
  let [a, b, c, d] = [next(), next(), next(), next()];
  const turned = (x: number, by: number): number => (x << by) | (x >>> (32 - by));
  const uniform = (): number => {
    const result = Math.imul(turned(Math.imul(b, 5), 7), 9) >>> 0;
    const t = b << 9;
    c ^= a;
    d ^= b;
    b ^= c;
    a ^= d;
    c ^= t;
    d = turned(d, 11);
    return result / 2 ** 32;
  };
  let spare: number | undefined;
  const normal = (): number => {
    if (spare !== undefined) {
      const kept = spare;
      spare = undefined;
      return kept;
    }
    for (;;) {
      const u = 2 * uniform() - 1;
      const v = 2 * uniform() - 1;
      const s = u * u + v * v;
      if (s === 0 || s >= 1) continue;
      const factor = Math.sqrt((-2 * Math.log(s)) / s);
      spare = v * factor;
      return u * factor;
    }
  };
  return { uniform, normal };
}
