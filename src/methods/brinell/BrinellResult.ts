import type { Quantity } from '../../base/index.js';
import type { BrinellDwell } from './brinellDwell.js';
import type { BrinellMaterial } from './brinellIndices.js';
import type { ForceColumns, ForceRecord } from '../common/ForceColumns.js';
import type { MethodResult } from '../common/MethodResult.js';

/** One indentation as it was made and read. */
export interface BrinellIndentation {
  /** Its diameter [mm]: two readings at right angles, or one. */
  readonly diameters: number | ArrayLike<number>;
  /** Test force [N], where it is not that of all, nor recorded. */
  readonly force?: number | undefined;
  /** Force [N] over time [s]: the highest force while it was held counts. */
  readonly record?: ForceColumns | undefined;
  /** Distance of its centre from the nearest edge [mm]. */
  readonly edgeDistance?: number | undefined;
  /** Distance of its centre from that of the nearest other indentation [mm]. */
  readonly spacing?: number | undefined;
}

/** A Brinell test as it was made. */
export interface BrinellReadings {
  /** Diameter of the ball D [mm]. */
  readonly ballDiameter: number;
  /** Test force of every indentation that names none of its own [N]. */
  readonly force?: number | undefined;
  /** Time for which the force was held [s], as the operator states it, of every indentation whose force was not recorded. */
  readonly holdingTime?: number | undefined;
  /** The indentations, at least one. */
  readonly indentations: readonly BrinellIndentation[];
}

/** What was tested. */
export interface BrinellPiece {
  /** Thickness [mm]. */
  readonly thickness?: number | undefined;
  /** Group of the material, for the usual index. */
  readonly material?: BrinellMaterial | undefined;
}

/** One indentation with what follows from it. */
export interface BrinellIndentationResult {
  /** HBW. */
  readonly hardness: Quantity;
  /** d, the mean of its readings. */
  readonly diameter: Quantity;
  /** h. */
  readonly depth: Quantity;
  /** F. */
  readonly force: Quantity;
  /** Its diameters as read [mm]. */
  readonly diameters: readonly number[];
  /** Force-diameter index 0.102 F/D² [N/mm²]. */
  readonly forceIndex: number;
  /** True where d lies within 0.24 and 0.60 of the ball: only such indentations count. */
  readonly valid: boolean;
  /** True where the force is not that of the scale, within 1 %, and that of others is: such an indentation does not count either. Absent else. */
  readonly offScale?: true | undefined;
  /** How the force was held, where it was recorded. */
  readonly dwell?: BrinellDwell | undefined;
  /** Force over time without its spikes, where it was recorded; the trail holds what was replaced. */
  readonly record?: ForceRecord | undefined;
}

/** All that a Brinell test gives. */
export interface BrinellResult extends MethodResult {
  /** Which test this is. */
  readonly method: 'brinell';
  /** Diameter of the ball D [mm]. */
  readonly ballDiameter: number;
  /** The piece as given. */
  readonly piece: BrinellPiece;
  /** Time for which the force was held [s], where it was stated. */
  readonly holdingTime?: number | undefined;
  /** The indentations in the order given. */
  readonly indentations: readonly BrinellIndentationResult[];
  /** Mean of the indentations that count; absent where none does. */
  readonly hardness?: Quantity | undefined;
  /** `HBW 10/3000`, `HBW 10/3000/30`: ball [mm], force of the scale [kgf], and the time that it was held [s] where it is known and not 10 to 15 s. */
  readonly designation: string;
  /** Rm estimated from the hardness, where a steel was named. */
  readonly estimatedStrength?: Quantity | undefined;
}
