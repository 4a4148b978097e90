/** Usual scatter of one property. */
export interface UsualVariation {
  /** Coefficient of variation within a laboratory [1]. */
  readonly within: number;
  /** Coefficient of variation between laboratories [1]. */
  readonly between: number;
}

/** Properties whose usual scatter is known. */
export type VariedProperty = 'tensileStrength' | 'proofStrength' | 'elongationAfterFracture' | 'reductionOfArea';

/**
 * Usual coefficients of variation of tension tests of metals, by field of a result.
 *
 * @remarks
 * From the interlaboratory study in ASTM E8/E8M, precision and bias (from memory): means over several alloys. Three times these is a
 * doubt about the test, not about the metal.
 */
export const usualVariation: Readonly<Record<VariedProperty, UsualVariation>> = {
  tensileStrength: { within: 0.009, between: 0.013 },
  proofStrength: { within: 0.014, between: 0.023 },
  elongationAfterFracture: { within: 0.028, between: 0.054 },
  reductionOfArea: { within: 0.028, between: 0.046 },
};
