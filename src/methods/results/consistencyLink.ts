import type { BaseUnit, Quantity } from '../../base/index.js';

/** One side of a link. */
export interface LinkSide {
  /** What it is. */
  readonly symbol: string;
  /** Its value. */
  readonly value: number;
  /** Unit of the value. */
  readonly unit: BaseUnit;
}

/** Two values that must go together. */
export interface ConsistencyLink {
  /** Name of the link; never renamed. */
  readonly link:
    | 'strength-hardness'
    | 'exponent-uniform-strain'
    | 'elongation-two-lengths'
    | 'even-part'
    | 'elongation-uniform-extension'
    | 'fracture-strain-elongation'
    | 'work-stored-energy'
    | 'work-energy';
  /** Whether both sides must be equal, or the left at least as large as the right. */
  readonly relation: 'equal' | 'at-least';
  /** One side. */
  readonly left: LinkSide;
  /** The other side, in the same unit. */
  readonly right: LinkSide;
  /** Left less right, in their unit. */
  readonly difference: number;
  /** What the rule leaves open and twice the combined standard uncertainty, in their unit. */
  readonly tolerance: number;
  /** Whether the link holds. */
  readonly holds: boolean;
  /** Where it is broken: likely causes, the likeliest first. */
  readonly causes: readonly string[];
  /** Where the rule comes from. */
  readonly source: string;
}

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
