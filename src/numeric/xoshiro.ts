import { ziggurat } from './ziggurat.js';

/** @internal Random numbers from a state that can be set anew at any time. */
export interface RandomNumbers {
  /** Uniform within 0 (included) and 1 (excluded). */
  readonly uniform: () => number;
  /** Normal with mean 0 and standard deviation 1. */
  readonly normal: () => number;
}

/** @internal A generator whose four words of state are set from outside. */
export interface Xoshiro extends RandomNumbers {
  /** Starts anew from four words, not all zero. */
  readonly start: (a: number, b: number, c: number, d: number) => void;
  /** Fills a column with what as many calls of `normal` would give, at half the cost. */
  readonly normals: (column: Float64Array) => void;
}

/** @internal The finalizer of splitmix32: neighbouring counters give words that have nothing in common. */
export function mixed(counter: number): number {
  let z = counter ^ (counter >>> 16);
  z = Math.imul(z, 0x21f0aaad);
  z = Math.imul(z ^ (z >>> 15), 0x735a2d97);
  return z ^ (z >>> 15);
}

/** @internal xoshiro128** (Blackman and Vigna, 2018); normal numbers by the ziggurat, one word each as a rule. */
export function xoshiro(): Xoshiro {
  let [a, b, c, d] = [1, 0, 0, 0];
  const start = (first: number, second: number, third: number, fourth: number): void => {
    [a, b, c, d] = [first, second, third, fourth];
  };
  const turned = (x: number, by: number): number => (x << by) | (x >>> (32 - by));
  const word = (): number => {
    const result = Math.imul(turned(Math.imul(b, 5), 7), 9);
    const t = b << 9;
    c ^= a;
    d ^= b;
    b ^= c;
    a ^= d;
    c ^= t;
    d = turned(d, 11);
    return result;
  };
  const uniform = (): number => (word() >>> 0) / 2 ** 32;
  const { width, edge, beyond } = ziggurat(uniform);
  const normal = (): number => {
    for (;;) {
      const one = word();
      const layer = one & 127;
      const x = ((one >> 7) + 0.5) * width[layer]!;
      const taken = Math.abs(x) < edge[layer]! ? x : beyond(layer, x);
      if (taken !== undefined) return taken;
    }
  };
  const normals = (column: Float64Array): void => {
    // the state in variables of the loop
    let [p, q, r, s] = [a, b, c, d];
    for (let k = 0; k < column.length; k += 1) {
      let one = Math.imul(q, 5);
      one = Math.imul((one << 7) | (one >>> 25), 9);
      const t = q << 9;
      r ^= p;
      s ^= q;
      q ^= r;
      p ^= s;
      r ^= t;
      s = (s << 11) | (s >>> 21);
      const layer = one & 127;
      const x = ((one >> 7) + 0.5) * width[layer]!;
      if (Math.abs(x) < edge[layer]!) column[k] = x;
      else {
        [a, b, c, d] = [p, q, r, s];
        column[k] = beyond(layer, x) ?? normal();
        [p, q, r, s] = [a, b, c, d];
      }
    }
    [a, b, c, d] = [p, q, r, s];
  };
  return { start, uniform, normal, normals };
}
