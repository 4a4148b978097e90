/** @internal A line in a variance: the square of its own contribution, that of the other sources of its input, what the input shares with others, and the rest. */
export interface HalvedLine {
  /** (c u)² of the source. */
  readonly own: number;
  /** (c u)² of the other sources of the same input. */
  readonly beside: number;
  /** Σ r c_j u_j over the inputs that it is correlated with: half of what multiplies the input's contribution. */
  readonly tie: number;
  /** Variance of the other inputs. */
  readonly rest: number;
}

/**
 * @internal By what a source must shrink, all else as it is, for a variance to fall to a quarter; undefined where it cannot alone.
 *
 * With the contribution p of its input V = p² + 2 t p + rest, where p² is the sum of the source's and its neighbours' squares: a quadratic in p. Where correlation
 * takes from the variance, it falls and rises again, and of two factors the greater is asked for, which is reached first.
 */
export function halving({ own, beside, tie, rest }: HalvedLine): number | undefined {
  if (!(own > 0)) return undefined;
  const p = Math.sqrt(own + beside);
  const target = (p * p + 2 * tie * p + rest) / 4;
  if (!(target > 0)) return undefined;
  const discriminant = tie * tie - rest + target;
  if (discriminant < 0) return undefined;
  const root = Math.sqrt(discriminant);
  for (const contribution of [-tie + root, -tie - root]) {
    const square = contribution >= 0 ? (contribution * contribution - beside) / own : -1;
    if (square >= 0 && square < 1) return Math.sqrt(square);
  }
  return undefined;
}
