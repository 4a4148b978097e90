/** Nodes and weights of Gauss-Legendre quadrature of five points. */
const GAUSS = [
  [0, 0.5688888888888889],
  [0.5384693101056831, 0.47862867049936647],
  [-0.5384693101056831, 0.47862867049936647],
  [0.906179845938664, 0.23692688505618908],
  [-0.906179845938664, 0.23692688505618908],
] as const;

/** @internal Integral of a smooth function, by panels. */
export function integral(f: (p: number) => number, low: number, high: number, panels = 200): number {
  let sum = 0;
  const half = (high - low) / (2 * panels);
  for (let k = 0; k < panels; k += 1) {
    const middle = low + (2 * k + 1) * half;
    for (const [at, weight] of GAUSS) sum += weight * f(middle + half * at);
  }
  return sum * half;
}
