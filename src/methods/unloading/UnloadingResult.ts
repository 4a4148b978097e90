import type { Quantity, StressStrainCurve, TestPiece } from '../../base/index.js';
import type { YieldPoint } from '../../curve/index.js';
import type { MethodResult } from '../common/MethodResult.js';
import type { ExtensionBasis } from '../evaluation/TensionResult.js';

/** One unloading with what follows from it. */
export interface UnloadingLoopResult {
  /** Where it begins, and where it ends: strain from the origin [mm/mm], stress [MPa], sample. */
  readonly top: YieldPoint;
  /** Where it ends. */
  readonly bottom: YieldPoint;
  /** Slope of the unloading line; named modulus only where the strain is the piece's. */
  readonly slope: Quantity;
  /** Permanent set: the strain that stays at zero stress. */
  readonly permanentSet: Quantity;
  /** Energy per volume lost in the loop; absent where the piece was not loaded again. */
  readonly energy?: Quantity | undefined;
  /** True where the permanent set is within the limit. */
  readonly withinLimit: boolean;
}

/** What the unloadings of a tension test give. */
export interface UnloadingResult extends MethodResult {
  /** Which test this is. */
  readonly method: 'unloading';
  /** The piece as given. */
  readonly testPiece: TestPiece;
  /** Where the strain comes from. */
  readonly extensionBasis: ExtensionBasis;
  /**
   * Whether the give of the frame was taken out of travel: false where the compliance that was given is more than travel and piece allow; absent
   * where none was given, or there is no travel.
   */
  readonly frameRemoved?: boolean | undefined;
  /** Strain (from the origin of the elastic line) and stress, sample by sample. */
  readonly curve: StressStrainCurve;
  /** Limit of the permanent set [mm/mm]. */
  readonly setLimit: number;
  /** The unloadings in order; none where they are refused. */
  readonly loops: readonly UnloadingLoopResult[];
  /** Rr: stress whose permanent set is the limit, between two loops that hold it. */
  readonly permanentSetStrength?: Quantity | undefined;
}
