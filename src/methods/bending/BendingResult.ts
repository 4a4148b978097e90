import type { Quantity, Section, StressStrainCurve } from '../../base/index.js';
import type { BendingSetup } from '../../curve/index.js';
import type { Loading } from '../loading/loadingOf.js';
import type { MethodResult } from '../common/MethodResult.js';
import type { FracturePoint } from '../loading/FracturePoint.js';
import type { ModulusWindow, StrengthAtExtension } from '../loading/LineResult.js';

/** Columns of a bending test; bending counts positive. At least one of `deflection`, `strain` and `travel`. */
export interface BendingColumns<A extends ArrayLike<number> = ArrayLike<number>> {
  /** Whole force [N]. */
  readonly force: A;
  /** Deflection of the beam at mid-span against its supports [mm], by a gauge of its own; NaN from some sample on: taken off there. */
  readonly deflection?: A | undefined;
  /** Strain of the outer fibre [mm/mm], by a strain gauge; NaN from some sample on: lost there. */
  readonly strain?: A | undefined;
  /** Travel of the crosshead, that is of the noses [mm]: frame, indentation and beam together. */
  readonly travel?: A | undefined;
  /** Time [s]. */
  readonly time?: A | undefined;
}

/** A beam as it is tested. */
export interface BendingPiece {
  /** The section: of a rectangle the thickness is the height in the direction of the force. */
  readonly section: Section;
  /** How the beam lies and is loaded. `measuredAt` only where a column was measured elsewhere: travel at the noses, deflection at mid-span. */
  readonly setup: BendingSetup;
}

/** All that a bending test gives. What the record cannot support is absent, and a finding says why. */
export interface BendingResult extends MethodResult {
  /** Which test this is. */
  readonly method: 'bending';
  /** The beam as given. */
  readonly piece: BendingPiece;
  /** Where the strain comes from. */
  readonly motionBasis: 'strain' | 'deflection' | 'deflection-then-travel' | 'strain-then-travel' | 'travel';
  /** Deflection over strain of the outer fibre while elastic [mm], where the motion was measured; 1 for a strain gauge. */
  readonly deflectionLength: number;
  /**
   * Whether the give of the frame was taken out of travel: false where the compliance that was given is more than travel and beam allow; absent
   * where none was given, or there is no travel.
   */
  readonly frameRemoved?: boolean | undefined;
  /** Strain (from the shifted origin) and stress of the outer fibre by the elastic formulas, sample by sample as recorded. */
  readonly curve: StressStrainCurve;
  /** Slope of the elastic line, that everything below uses. */
  readonly elasticSlope?: Quantity | undefined;
  /** Flexural modulus by the slope of the elastic line: only where a gauge or a removed compliance justifies the name. */
  readonly modulus?: Quantity | undefined;
  /** Flexural modulus by the chord between two strains, where the same holds. */
  readonly chordModulus?: Quantity | undefined;
  /** The window of the elastic line. */
  readonly modulusWindow?: ModulusWindow | undefined;
  /** Flexural proof strengths, one for each plastic strain of the outer fibre that the curve reaches. */
  readonly proofStrengths: readonly StrengthAtExtension[];
  /** Highest force. */
  readonly maximumForce: Quantity;
  /** Sample of the highest force. */
  readonly maximumIndex: number;
  /** Flexural strength: stress of the outer fibre by the elastic formula at the highest force. */
  readonly flexuralStrength: Quantity;
  /** Strain of the outer fibre there. */
  readonly strainAtMaximum: Quantity;
  /** Stress at break, where the beam broke suddenly. */
  readonly stressAtBreak?: Quantity | undefined;
  /** Strain at break. */
  readonly strainAtBreak?: Quantity | undefined;
  /** Where it broke. */
  readonly fracture?: FracturePoint | undefined;
  /** How the beam was loaded, by strain of the outer fibre, against the testing rates of the standards, where time was recorded. */
  readonly loading?: Loading | undefined;
  /** Span over height. */
  readonly spanRatio: Quantity;
  /** Share of shear in the deflection, of shapes that have one. */
  readonly shearShare?: Quantity | undefined;
  /** Full plastic moment over that of first yield, of shapes that have one. */
  readonly shapeFactor?: Quantity | undefined;
}
