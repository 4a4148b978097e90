import { finding, type Finding } from '../base/index.js';
import { lineFit } from '../numeric/index.js';

/** @internal A checked pull: what the piece is, is its length over its area. */
export interface CheckedPull {
  readonly force: Float64Array;
  readonly travel: Float64Array;
  readonly piece: number;
  readonly doubt: number;
}

const POORLY = 0.05;
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

/** @internal Doubts about a measured compliance. */
export function complianceFindings(
  pulls: readonly CheckedPull[],
  softness: number,
  range: readonly [number, number],
  relativeStandardUncertainty: number,
): Finding[] {
  const found = differing(pulls, softness, range);
  if (relativeStandardUncertainty > POORLY)
    found.push(finding('compliance-poorly-determined', { uncertainty: 100 * relativeStandardUncertainty }));
  return found;
}
