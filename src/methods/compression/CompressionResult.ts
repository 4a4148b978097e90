import type { Quantity, Section, StressStrainCurve, TensionColumns } from '../../base/index.js';
import type { Loading } from '../loading/loadingOf.js';
import type { MethodResult } from '../common/MethodResult.js';
import type { FracturePoint } from '../loading/FracturePoint.js';
import type { HardeningSummary } from '../loading/HardeningSummary.js';
import type { ModulusWindow, StrengthAtExtension } from '../loading/LineResult.js';

/** Columns of a compression test; compression may be negative or positive in each. At least one of `extension`, `strain` and `travel`. */
export type CompressionColumns<A extends ArrayLike<number> = ArrayLike<number>> = Omit<TensionColumns<A>, 'transverseStrain'>;

/** What was measured on the piece after the test. */
export interface AfterCompression {
  /** Height [mm], unloaded. */
  readonly height?: number | undefined;
  /** Diameter at half of the height [mm]. */
  readonly middleDiameter?: number | undefined;
  /** Diameter at the ends [mm], mean of both. */
  readonly endDiameter?: number | undefined;
  /** Whether it broke or cracked through, as seen; default: told by a sudden fall of the force. */
  readonly broken?: boolean | undefined;
}

/** A compression piece. */
export interface CompressionPiece {
  /** The section, from `round()`, `rectangular()` and so on. */
  readonly section: Section;
  /** Height h0 [mm]. */
  readonly height: number;
  /** Base of the extensometer Le [mm]; default the height. */
  readonly extensometerLength?: number | undefined;
  /** End factor k of buckling, 0.5 to 2; default 0.5, flat ends between plates that cannot turn. */
  readonly endFactor?: number | undefined;
  /** What was measured after the test. */
  readonly afterTest?: AfterCompression | undefined;
}

/** How near the piece came to buckling. */
export interface BucklingCheck {
  /** Effective length over least radius of gyration, kL/i [1]. */
  readonly slenderness: number;
  /** Euler's load with the elastic slope: a comparison only, of a short piece far above yield. */
  readonly elasticLoad: Quantity;
  /** Largest force over the tangent-modulus load of the same instant [1], at most 1000; 1 means buckling. */
  readonly largestShare: number;
  /** Strain at which the force reached half of that load, where it did [mm/mm]. */
  readonly halfAt?: number | undefined;
  /** Strain at which it reached the whole load, where it did [mm/mm]. */
  readonly reachedAt?: number | undefined;
}

/** All that a compression test gives; compression counts positive. What the record cannot support is absent, and a finding says why. */
export interface CompressionResult extends MethodResult {
  /** Which test this is. */
  readonly method: 'compression';
  /** The piece as given. */
  readonly piece: CompressionPiece;
  /** Where the strain comes from. */
  readonly extensionBasis: 'extensometer' | 'extensometer-then-travel' | 'travel';
  /** Length that strain is counted over [mm]. */
  readonly strainLength: number;
  /**
   * Whether the give of the frame was taken out of travel: false where the compliance that was given is more than travel and piece allow; absent
   * where none was given, or there is no travel.
   */
  readonly frameRemoved?: boolean | undefined;
  /** Compression (from the shifted origin) and stress on the original area, sample by sample as recorded. */
  readonly curve: StressStrainCurve;
  /** Slope of the elastic line, that everything below uses. */
  readonly elasticSlope?: Quantity | undefined;
  /** Compressive modulus: only where an extensometer or a removed frame compliance justifies the name. */
  readonly modulus?: Quantity | undefined;
  /** The window of the elastic line. */
  readonly modulusWindow?: ModulusWindow | undefined;
  /** Compressive yield strengths by offset, one for each offset that the curve reaches. */
  readonly proofStrengths: readonly StrengthAtExtension[];
  /** Compressive stresses at stated strains, one for each that the record reaches. */
  readonly stressesAtStrain: readonly StrengthAtExtension[];
  /** Highest force. */
  readonly maximumForce: Quantity;
  /** Sample of the highest force. */
  readonly maximumIndex: number;
  /** Compressive strength: only of a piece that broke. */
  readonly compressiveStrength?: Quantity | undefined;
  /** Where it broke. */
  readonly fracture?: FracturePoint | undefined;
  /** True strain and true stress from the origin to the highest force; only where the strain is the piece's own. */
  readonly trueCurve?: StressStrainCurve | undefined;
  /** True plastic strain and flow stress up to the highest force; friction taken off where it was given. */
  readonly flowCurve?: StressStrainCurve | undefined;
  /** Hollomon's law on the flow curve. */
  readonly hardening?: HardeningSummary | undefined;
  /** Height over diameter, or over the least width. */
  readonly heightRatio: Quantity;
  /** Diameter in the middle over that at the ends, after the test. */
  readonly bulgeRatio?: Quantity | undefined;
  /** How the piece was loaded against the testing rate of ASTM E9, where time was recorded. */
  readonly loading?: Loading | undefined;
  /** How near the piece came to buckling, where there is an elastic line. */
  readonly buckling?: BucklingCheck | undefined;
}
