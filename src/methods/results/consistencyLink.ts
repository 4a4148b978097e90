import type { Quantity } from '../../base/index.js';
import type { ConsistencyLink } from './checkConsistency.js';

/** @internal What a link is made of: both sides with their standard uncertainties, and what the rule itself leaves open. */
type Raw = Omit<ConsistencyLink, 'difference' | 'tolerance' | 'holds' | 'causes'> & {
  readonly doubts: readonly number[];
  readonly open: number;
  readonly causes: readonly string[];
};

/** @internal Both sides held against each other. */
export function link({ doubts, open, causes, ...given }: Raw): ConsistencyLink {
  const difference = given.left.value - given.right.value;
  const tolerance = open + 2 * Math.hypot(...doubts);
  const holds = given.relation === 'equal' ? Math.abs(difference) <= tolerance : difference >= -tolerance;
  return { ...given, difference, tolerance, holds, causes: holds ? [] : causes };
}

/** @internal Standard uncertainty of a quantity, or what stands for it. */
export const doubt = (quantity: Quantity, otherwise = 0): number => quantity.standardUncertainty ?? otherwise;
