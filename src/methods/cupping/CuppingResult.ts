import type { Quantity } from '../../base/index.js';
import type { ForceRecord } from '../common/ForceColumns.js';
import type { MethodResult } from '../common/MethodResult.js';

/** A sheet that is cupped. */
export interface CuppingSheet {
  /** Thickness a [mm]. */
  readonly thickness: number;
  /** Width or diameter of the blank b [mm]. */
  readonly width?: number | undefined;
}

/** One blank with its cup. */
export interface CuppingBlank {
  /** Depth of the cup at the crack, from contact; absent where no crack is in the record. */
  readonly depth?: Quantity | undefined;
  /** Highest force. */
  readonly maximumForce: Quantity;
  /** Travel at which the ball touches the sheet [mm]. */
  readonly contact: number;
  /** Sample at which the force begins to fall away. */
  readonly crackIndex?: number | undefined;
  /** Depth from contact, sample by sample, the frame taken out where it is known [mm]. */
  readonly depths: Float64Array;
  /** The record without its spikes; the trail holds what was replaced. */
  readonly record: ForceRecord;
}

/** All that a cupping test gives. */
export interface CuppingResult extends MethodResult {
  /** Which test this is. */
  readonly method: 'cupping';
  /** The sheet as given. */
  readonly sheet: CuppingSheet;
  /** Diameter of the ball [mm]. */
  readonly ballDiameter: number;
  /** Bore of the die [mm]. */
  readonly dieDiameter: number;
  /**
   * Whether the give of the frame was taken out of travel: false where the compliance that was given is more than the travel of a blank allows; absent
   * where none was given.
   */
  readonly frameRemoved?: boolean | undefined;
  /** The blanks in the order given. */
  readonly blanks: readonly CuppingBlank[];
  /** Mean depth; absent where no blank cracked. */
  readonly cuppingIndex?: Quantity | undefined;
}
