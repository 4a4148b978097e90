/**
 * Where ReL is looked for: over the `whole` yielding range, or, where the `short` rule was agreed, over the first 0.25 % strain after ReH.
 * It is the option `lowerYield` of {@link yieldPoints} and `analyseTension`.
 */
export type LowerYieldRule = 'whole' | 'short';

/** @internal Both, as a list. */
export const lowerYieldRules: readonly LowerYieldRule[] = ['whole', 'short'];
