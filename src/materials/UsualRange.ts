import type { MaterialFamilyKey } from './materialFamilies.js';

/** Lowest and highest usual value. */
export type UsualRange = readonly [low: number, high: number];

/** A family of metals with the ranges in which its properties usually lie, at room temperature. */
export interface MaterialFamily {
  /** Key, as `materialFamily` takes it. */
  readonly key: MaterialFamilyKey;
  /** Name of the family with its condition. */
  readonly name: string;
  /** Modulus of elasticity E [MPa]. */
  readonly modulus: UsualRange;
  /** Rp0.2, or ReH where there is a yield point [MPa]; absent where the family has none that is used. */
  readonly yieldStrength?: UsualRange | undefined;
  /** Tensile strength Rm [MPa]. */
  readonly tensileStrength: UsualRange;
  /** Rp0.2 or ReH over Rm [1]; absent where there is no yield strength. */
  readonly yieldRatio?: UsualRange | undefined;
  /** Elongation after fracture A on 5.65 roots of the area [mm/mm]. */
  readonly elongation: UsualRange;
  /** Hardening exponent n [1]; absent where none is in use. */
  readonly exponent?: UsualRange | undefined;
  /** Density [g/cm³], a middle value. */
  readonly density: number;
  /** Whether the curve shows an upper yield point. */
  readonly yieldPoint: 'usual' | 'possible' | 'none';
  /** Whether it necks before it breaks. */
  readonly ductile: boolean;
  /** Part of ISO 2566 that converts its elongation between gauge lengths; absent where neither holds. */
  readonly elongationConversion?: 'carbon' | 'austenitic' | undefined;
  /** Where the ranges come from. */
  readonly source: string;
}
