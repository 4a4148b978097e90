import { finding, type Finding } from '../../base/index.js';
import { lineFit } from '../../numeric/index.js';
import { fitComplianceKernel, type ComplianceEnd, type ComplianceTask } from './complianceFit.js';

/** @internal A checked pull: what the piece is, is its length over its area. */
export interface CheckedPull {
  readonly force: Float64Array;
  readonly travel: Float64Array;
  readonly piece: number;
  readonly doubt: number;
}

const POORLY = 0.05;
/** Exponents nearer to 1 than this bend the motion by less than a few per cent. */
const BENT = 0.03;
/** Spread of runs that is a finding: this share of the mean, and this many standard errors. */
const SPREAD = 0.02;
const ERRORS = 5;

/** A doubt where pulls of the same frame give slopes further apart than their scatter explains. */
function differing(pulls: readonly CheckedPull[], softness: number, [low, high]: readonly [number, number]): Finding[] {
  const lines = pulls.flatMap(({ force, travel, piece }) => {
    const within = [...force.keys()].filter((i) => force[i]! >= low && force[i]! <= high);
    const x = Float64Array.from(within, (i) => force[i]!);
    const line = lineFit(
      x,
      Float64Array.from(within, (i) => travel[i]! - piece * softness * force[i]!),
      0,
      x.length - 1,
    );
    return line ? [line] : [];
  });
  const slopes = lines.map(({ slope }) => slope);
  const spread = Math.max(...slopes) - Math.min(...slopes);
  const mean = slopes.reduce((sum, one) => sum + one, 0) / slopes.length;
  const known = ERRORS * Math.max(...lines.map(({ standardError }) => standardError));
  return spread > SPREAD * mean && spread > known ? [finding('compliance-runs-differ', { share: (100 * spread) / mean })] : [];
}

/** A doubt where one number is asked of a frame whose motion bends: a power law with another exponent is well beyond chance (25 is five sigma). */
function curved(task: ComplianceTask, fit: ComplianceEnd, widening: number): Finding[] {
  if (task.shape !== 'constant') return [];
  const power = fitComplianceKernel({ ...task, shape: 'power' });
  if (!power || Math.abs(power.exponent - 1) < BENT) return [];
  const scatter = (widening * power.residualSumOfSquares) / Math.max(1, task.f.length - fit.parameters.length - 1);
  if (fit.residualSumOfSquares - power.residualSumOfSquares <= 25 * scatter) return [];
  const { exponent } = power;
  return [finding('compliance-curved', { exponent, share: 100 * (0.2 ** (exponent - 1) - 1) })];
}

/** @internal Doubts about a measured compliance. */
export function complianceFindings(
  pulls: readonly CheckedPull[],
  task: ComplianceTask,
  fit: ComplianceEnd,
  softness: number,
  known: { readonly range: readonly [number, number]; readonly relativeStandardUncertainty: number; readonly widening: number },
): Finding[] {
  const found = [...differing(pulls, softness, known.range), ...curved(task, fit, known.widening)];
  const uncertainty = 100 * known.relativeStandardUncertainty;
  if (known.relativeStandardUncertainty > POORLY) found.push(finding('compliance-poorly-determined', { uncertainty }));
  return found;
}
