import type { Quantity } from '../../base/index.js';
import type { ForceRecord } from '../common/ForceColumns.js';
import type { MethodResult } from '../common/MethodResult.js';

/** A piece that is sheared, and how. */
export interface ShearPiece {
  /** Diameter of a round pin [mm]; either this or `area`. */
  readonly diameter?: number | undefined;
  /** Area of one shear plane [mm²]. */
  readonly area?: number | undefined;
  /** Planes that are sheared at once: 1 in single shear, 2 in double shear. */
  readonly planes: 1 | 2;
  /** Clearance between the edges of the tool, on one side [mm]. */
  readonly clearance?: number | undefined;
  /** True where the piece was seen to be bent. */
  readonly bent?: boolean | undefined;
}

/** All that a shear test gives. A quantity that the record cannot support is absent. */
export interface ShearResult extends MethodResult {
  /** Which test this is. */
  readonly method: 'shear';
  /** The piece as given. */
  readonly piece: ShearPiece;
  /** Area of one shear plane. */
  readonly area: Quantity;
  /** Fm. */
  readonly maximumForce: Quantity;
  /** τm: maximum force over the area of all planes. */
  readonly shearStrength: Quantity;
  /** τm/Rm, where a tensile strength was given. */
  readonly ratioToTensileStrength?: Quantity | undefined;
  /** Travel at the maximum force, from contact: tool, frame and indentation are in it. */
  readonly travelAtMaximumForce?: Quantity | undefined;
  /** Travel at which the tool touches the piece [mm], where travel was logged: the first rise of the force meets zero there. */
  readonly contact?: number | undefined;
  /** The record without its spikes, where there is one; the trail holds what was replaced. */
  readonly record?: ForceRecord | undefined;
  /** Sample of the maximum force, where there is a record. */
  readonly maximumIndex?: number | undefined;
}
