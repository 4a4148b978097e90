import { fitComplianceKernel, type ComplianceEnd, type ComplianceTask } from './complianceFit.js';

/** @internal Motion of the frame from the first of some forces to each. */
export function fittedMotion(fit: ComplianceEnd, f: Float64Array): Float64Array {
  const columns = fit.frame(f);
  return f.map((_, i) => columns.reduce((sum, one, k) => sum + fit.parameters[fit.first + k]! * (one[i]! - one[0]!), 0));
}

/** How much wider the scatter of a mean is where neighbours are alike: (1 + ρ)/(1 − ρ) of the residuals, at least 1. */
function wideningOf({ residuals }: ComplianceEnd, pull: Uint16Array): number {
  let along = 0;
  let all = 0;
  for (let i = 0; i < residuals.length; i += 1) {
    all += residuals[i]! ** 2;
    if (i > 0 && pull[i] === pull[i - 1]) along += residuals[i]! * residuals[i - 1]!;
  }
  const rho = all > 0 ? Math.min(0.99, Math.max(0, along / all)) : 0;
  return (1 + rho) / (1 - rho);
}

/**
 * @internal Standard uncertainty of the frame's motion at the points of the task: scatter by the covariance of the fit, and what pieces and modulus carry in by
 * a fit anew with each of them moved by its uncertainty.
 */
export function complianceUncertainty(
  task: ComplianceTask,
  fit: ComplianceEnd,
  doubts: readonly number[],
  modulusDoubt: number,
): { readonly standardUncertainty: Float64Array; readonly widening: number } {
  const f = task.knots;
  const columns = fit.frame(f);
  const unknowns = fit.parameters.length;
  const widening = wideningOf(fit, task.pull);
  const variance = (widening * fit.residualSumOfSquares) / Math.max(1, task.f.length - unknowns);
  const travel = fittedMotion(fit, f);
  const squares = f.map((_, i) => {
    const gradient = columns.map((one) => one[i]! - one[0]!);
    return gradient.reduce(
      (outer, a, j) => outer + gradient.reduce((inner, b, k) => inner + a * fit.inverse[fit.first + j]![fit.first + k]! * b, 0) * variance,
      0,
    );
  });
  const moved = (other: ComplianceTask): void => {
    const there = fitComplianceKernel(other, fit.exponent);
    if (!there) return;
    const by = fittedMotion(there, f);
    for (let i = 0; i < f.length; i += 1) squares[i]! += (by[i]! - travel[i]!) ** 2;
  };
  doubts.forEach((doubt, k) => {
    if (doubt > 0) moved({ ...task, pieces: task.pieces.map((one, j) => (j === k ? one * (1 + doubt) : one)) });
  });
  if (task.softness !== undefined && modulusDoubt > 0) moved({ ...task, softness: task.softness * (1 + modulusDoubt) });
  return { standardUncertainty: squares.map((one) => Math.sqrt(Math.max(0, one))), widening };
}
