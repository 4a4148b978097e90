/** Sums in pairs of doubles (about 32 digits), as a reference for sums in doubles. After Dekker (1971) and Knuth. */
type Pair = readonly [number, number];

function twoSum(a: number, b: number): Pair {
  const s = a + b;
  const t = s - a;
  return [s, a - (s - t) + (b - t)];
}

function twoProduct(a: number, b: number): Pair {
  const p = a * b;
  const split = (x: number): Pair => {
    const c = 134_217_729 * x;
    const high = c - (c - x);
    return [high, x - high];
  };
  const [ah, al] = split(a);
  const [bh, bl] = split(b);
  return [p, ah * bh - p + ah * bl + al * bh + al * bl];
}

export function add([a, b]: Pair, [c, d]: Pair): Pair {
  const [s, e] = twoSum(a, c);
  const [t, f] = twoSum(b, d);
  const [u, g] = twoSum(s, e + t);
  return twoSum(u, g + f);
}

export function multiply([a, b]: Pair, [c, d]: Pair): Pair {
  const [p, e] = twoProduct(a, c);
  return twoSum(p, e + a * d + b * c);
}

const minus = ([a, b]: Pair): Pair => [-a, -b];
const subtract = (a: Pair, b: Pair): Pair => add(a, minus(b));
function divide(a: Pair, b: Pair): Pair {
  const first = a[0] / b[0];
  const rest = subtract(a, multiply(b, [first, 0]));
  const second = rest[0] / b[0];
  return twoSum(first, second);
}

/** Slope and standard error of the least-squares line through samples first to last, all sums in pairs of doubles about zero. */
export function referenceLine(x: Float64Array, y: Float64Array, first: number, last: number): { slope: number; standardError: number } {
  let [sx, sy, sxx, sxy, syy]: Pair[] = [0, 0, 0, 0, 0].map(() => [0, 0] as const);
  for (let i = first; i <= last; i += 1) {
    sx = add(sx!, [x[i]!, 0]);
    sy = add(sy!, [y[i]!, 0]);
    sxx = add(sxx!, twoProduct(x[i]!, x[i]!));
    sxy = add(sxy!, twoProduct(x[i]!, y[i]!));
    syy = add(syy!, twoProduct(y[i]!, y[i]!));
  }
  const n: Pair = [last - first + 1, 0];
  const xx = subtract(sxx!, divide(multiply(sx!, sx!), n));
  const xy = subtract(sxy!, divide(multiply(sx!, sy!), n));
  const yy = subtract(syy!, divide(multiply(sy!, sy!), n));
  const rest = subtract(yy, divide(multiply(xy, xy), xx));
  return { slope: divide(xy, xx)[0], standardError: Math.sqrt(rest[0] / (n[0] - 2) / xx[0]) };
}
