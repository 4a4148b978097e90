/** @internal Random numbers from a state that can be set anew at any time. */
export interface RandomNumbers {
  /** Uniform within 0 (included) and 1 (excluded). */
  readonly uniform: () => number;
  /** Normal with mean 0 and standard deviation 1. */
  readonly normal: () => number;
  /** Fills a column with what as many calls of `normal` would give, at half the cost. */
  readonly normals: (column: Float64Array) => void;
}

/** @internal A generator whose four words of state are set from outside. */
export interface Xoshiro extends RandomNumbers {
  /** Starts anew from four words, not all zero. */
  readonly start: (a: number, b: number, c: number, d: number) => void;
}

/** @internal The finalizer of splitmix32: neighbouring counters give words that have nothing in common. */
export function mixed(counter: number): number {
  let z = counter ^ (counter >>> 16);
  z = Math.imul(z, 0x21f0aaad);
  z = Math.imul(z ^ (z >>> 15), 0x735a2d97);
  return z ^ (z >>> 15);
}

/** @internal xoshiro128** (Blackman and Vigna, 2018); normal numbers by Marsaglia's polar method. */
export function xoshiro(): Xoshiro {
  let [a, b, c, d] = [1, 0, 0, 0];
  let spare: number | undefined;
  const start = (first: number, second: number, third: number, fourth: number): void => {
    [a, b, c, d] = [first, second, third, fourth];
    spare = undefined;
  };
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
  const normals = (column: Float64Array): void => {
    let k = 0;
    if (spare !== undefined && column.length > 0) column[k++] = normal();
    // the state in variables of the loop, and both numbers of a pair used at once
    let [p, q, r, s] = [a, b, c, d];
    const last = column.length - 1;
    while (k < last) {
      let u: number;
      let v: number;
      let square: number;
      do {
        u = Math.imul(q, 5);
        u = Math.imul((u << 7) | (u >>> 25), 9) >>> 0;
        let t = q << 9;
        r ^= p;
        s ^= q;
        q ^= r;
        p ^= s;
        r ^= t;
        s = (s << 11) | (s >>> 21);
        v = Math.imul(q, 5);
        v = Math.imul((v << 7) | (v >>> 25), 9) >>> 0;
        t = q << 9;
        r ^= p;
        s ^= q;
        q ^= r;
        p ^= s;
        r ^= t;
        s = (s << 11) | (s >>> 21);
        u = 2 * (u / 2 ** 32) - 1;
        v = 2 * (v / 2 ** 32) - 1;
        square = u * u + v * v;
      } while (square === 0 || square >= 1);
      const factor = Math.sqrt((-2 * Math.log(square)) / square);
      column[k] = u * factor;
      column[k + 1] = v * factor;
      k += 2;
    }
    [a, b, c, d] = [p, q, r, s];
    if (k <= last) column[k] = normal();
  };
  return { start, uniform, normal, normals };
}
