import { requireOneOf, requireOptions, requireProbability, requireWhole } from '../base/index.js';
import { chiSquareExceeds, noncentralTQuantile, normalCdf, normalQuantile, risingRoot } from '../numeric/index.js';

/** Arguments of {@link toleranceFactor}. */
export interface ToleranceArguments {
  /** Number of pieces, 2 or more. */
  readonly n: number;
  /** Share P of all pieces that the limit is to hold, above 0 and below 1; default 0.9. */
  readonly content?: number | undefined;
  /** Confidence γ that it holds them, above 0 and below 1; default 0.95. */
  readonly confidence?: number | undefined;
  /** One limit or two about the mean; default 1. */
  readonly sides?: 1 | 2 | undefined;
}

/** Step of the sum over the mean, in its standard deviations, and how far it goes: both leave no digit (exp(−2π²/h²), exp(−z²/2)). */
const STEP = 0.25;
const END = 9;

/** Half-width about z that holds the share P of a normal scatter. */
function halfWidth(z: number, content: number): number {
  const outside = (r: number) => normalCdf(-z - r) + normalCdf(z - r);
  return risingRoot(
    (r) => Math.log(1 - content) - Math.log(Math.max(outside(r), Number.MIN_VALUE)),
    z + normalQuantile((1 + content) / 2),
    0.1,
  );
}

/** Where the chance that two limits hold their share is the confidence asked for. */
function twoSided(n: number, content: number, confidence: number): number {
  const nodes = Array.from({ length: END / STEP + 1 }, (_, j) => ({
    weight: (j === 0 ? 1 : 2) * STEP * Math.exp(-((j * STEP) ** 2) / 2),
    r: halfWidth((j * STEP) / Math.sqrt(n), content),
  }));
  const held = (k: number) =>
    nodes.reduce((sum, { weight, r }) => sum + weight * chiSquareExceeds((n - 1) * (r / k) ** 2, n - 1), 0) / Math.sqrt(2 * Math.PI);
  return Math.exp(risingRoot((u) => Math.log(held(Math.exp(u))) - Math.log(confidence), Math.log(nodes[0]!.r) + 1, 0.5));
}

/**
 * How many standard deviations from the mean a limit must lie to hold a share of all pieces with a given confidence.
 *
 * $$ k_1 = \frac{t'_{\gamma;\,n-1}(z_P \sqrt n)}{\sqrt n}, \qquad
 * k_2:\ \sqrt{\frac{n}{2\pi}} \int_{-\infty}^{\infty} \Pr\left( \chi^2_{n-1} > \frac{(n-1)\, r(z)^2}{k_2^2} \right) e^{-n z^2/2}\, \mathrm{d}z = \gamma, \quad
 * \Phi(z + r) - \Phi(z - r) = P $$
 *
 * @remarks
 * Exact for a normal scatter: one-sided by non-central t, two-sided by numerical integration over the place of the mean. With few
 * pieces the factor is large because the scatter itself is hardly known. Share 0.90 and 0.99 at confidence 0.95 are what design
 * handbooks call B and A; those also ask for many pieces of several lots, so the factor of a class is B-like or A-like at most.
 *
 * @param input - Number of pieces, whole and 2 or more; share of all pieces and confidence, both above 0 and below 1 [1]; one limit or two.
 * @returns Factor k [1].
 * @throws {@link InputError} `missing`, `wrong-type`, `not-finite`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * toleranceFactor({ n: 5 }); // => 3.4066
 * toleranceFactor({ n: 10, content: 0.99 }); // => 3.9811
 * toleranceFactor({ n: 10, sides: 2 }); // => 2.856
 * ```
 *
 * @see ISO 16269-6, statistical tolerance intervals; MIL-HDBK-5, appendix on tables. Checked in `test/handbook/tolerance.test.ts`.
 */
export function toleranceFactor(input: ToleranceArguments): number {
  const from = 'toleranceFactor';
  requireOptions(from, input, ['n', 'content', 'confidence', 'sides'], 'input');
  const n = requireWhole(from, 'n', input.n, 2);
  const content = requireProbability(from, 'content', input.content ?? 0.9);
  const confidence = requireProbability(from, 'confidence', input.confidence ?? 0.95);
  if (requireOneOf(from, 'sides', input.sides ?? 1, [1, 2]) === 2) return twoSided(n, content, confidence);
  return noncentralTQuantile(confidence, n - 1, normalQuantile(content) * Math.sqrt(n)) / Math.sqrt(n);
}
