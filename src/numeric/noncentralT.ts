import { risingRoot } from './findRoot.js';
import { normalCdf } from './normalDistribution.js';
import { anyQuantile } from './quantiles.js';
import { stirlingError } from './stirling.js';
import { trapezoid } from './trapezoid.js';

/** Density over probability of a standard normal variable; far down by its asymptote, near enough to find a peak with. */
const hazard = (z: number): number => (z < -30 ? 1 / z - z : Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI) / normalCdf(z));

/**
 * @internal Probability that non-central t is at most t, exact far down as well; the upper tail is that of −t with −δ. The degrees of
 * freedom need not be whole.
 *
 * P = ∫ Φ(t w − δ) f(w) dw over w = √(χ²/ν), in u = ln w: there the integrand has one peak, since its logarithmic slope
 * ν (1 − w²) + t w h(t w − δ), with h the hazard, over w falls throughout.
 */
export function noncentralTCdf(t: number, freedom: number, shift: number): number {
  const peak = risingRoot((u) => freedom * (Math.exp(u) - Math.exp(-u)) - t * hazard(t * Math.exp(u) - shift), 0, 1);
  const integrand = (u: number): number => {
    const density = Math.exp((-freedom / 2) * (Math.expm1(2 * u) - 2 * u));
    return density > 0 ? density * normalCdf(t * Math.exp(u) - shift) : 0;
  };
  // the step is what the curvature of the logarithm at the peak calls for; halving does the rest
  const w = Math.exp(peak);
  const h = hazard(t * w - shift);
  const curvature = freedom * (1 + w * w) + (t * w) ** 2 * h * Math.max(0, h + t * w - shift);
  const integral = trapezoid(integrand, peak, 2 / Math.sqrt(curvature));
  return Math.min(1, Math.sqrt(freedom / Math.PI) * Math.exp(-stirlingError(freedom / 2)) * integral);
}

/** @internal The value that non-central t does not exceed with probability p, within 0 and 1. */
export function noncentralTQuantile(p: number, freedom: number, shift: number): number {
  if (p <= 0 || p >= 1) return p <= 0 ? -Infinity : Infinity;
  return anyQuantile(
    p,
    (t) => noncentralTCdf(t, freedom, shift),
    (t) => noncentralTCdf(-t, freedom, -shift),
    shift,
    1 + Math.abs(shift) / Math.sqrt(2 * freedom),
  );
}
