import type { PieceCheckRow } from './PieceCheck.js';
import type { PieceHead } from './PieceHead.js';
import { threadStressArea } from './threadStressArea.js';
import { wedgeGripMargin } from './wedgeGripMargin.js';

/** @internal What the heads must carry. */
export interface HeadLoad {
  /** Greatest force of the piece [N]. */
  readonly force: number;
  /** Stress at which the strongest bar begins to yield [MPa]. */
  readonly yieldStress: number;
  /** Thickness of a flat head [mm]; the size itself where the head is round. */
  readonly thickness: number;
}

/** Shear yields at so much of tension (von Mises, 1/√3), and a hole bears so much more (common practice). */
const SHEAR = 1 / Math.sqrt(3);
const BEARING = 1.5;
/** Friction of serrated faces on a clean head (common practice). */
const FACE = 0.3;
/** Share of the faces that should hold (common practice; ASTM E8 asks two thirds). */
const FACE_SHARE = 2 / 3;
/** Margin that grips should have against slipping, since friction is never known (common practice). */
const GRIP_MARGIN = 1.2;

const row = (kind: PieceCheckRow['kind'], what: string, value: number, limit: number, margin: number, least = 1): PieceCheckRow => ({
  kind,
  what,
  value,
  limit,
  margin,
  sound: margin >= least,
});
const stress = (what: string, value: number, limit: number): PieceCheckRow => row('stress', what, value, limit, limit / value);
const grip = (margin: number): PieceCheckRow => row('grip', 'hold against slipping', margin, GRIP_MARGIN, margin, GRIP_MARGIN);
const length = (gripped: number, least: number): PieceCheckRow => row('length', 'length held', gripped, least, gripped / least);

/** @internal What the heads carry against what they can: stresses, hold, length held. */
export function checkHead(head: PieceHead, { force, yieldStress, thickness }: HeadLoad): PieceCheckRow[] {
  const { size, gripped } = head;
  switch (head.kind) {
    case 'wedge': {
      const { angle, faceFriction, backFriction } = head;
      const { margin, pressure } = wedgeGripMargin({ force, angle, faceFriction, backFriction, area: size * gripped });
      return [
        grip(margin),
        stress('pressure of the faces', pressure, BEARING * yieldStress),
        length(gripped, FACE_SHARE * (head.faceLength ?? gripped)),
      ];
    }
    case 'clamp':
      return [
        grip((2 * (head.faceFriction ?? FACE) * head.clampForce) / force),
        stress('pressure of the faces', head.clampForce / (size * gripped), BEARING * yieldStress),
      ];
    case 'thread':
      return [
        stress('core of the thread', force / threadStressArea({ diameter: size, pitch: head.pitch }), yieldStress),
        length(gripped, size),
      ];
    case 'shoulder':
      return [
        stress('seat of the shoulder', force / ((Math.PI * (size ** 2 - head.seat ** 2)) / 4), BEARING * yieldStress),
        stress('shear of the shoulder', force / (Math.PI * head.seat * gripped), SHEAR * yieldStress),
      ];
    case 'pin':
      return [
        stress('section beside the pin', force / ((size - head.pinDiameter) * thickness), yieldStress),
        stress('bearing of the pin', force / (head.pinDiameter * thickness), BEARING * yieldStress),
        stress('shear behind the pin', force / (2 * thickness * (head.edge - head.pinDiameter / 2)), SHEAR * yieldStress),
        ...(head.pinStrength === undefined
          ? []
          : [stress('shear of the pin', force / ((Math.PI * head.pinDiameter ** 2) / 2), head.pinStrength)]),
      ];
  }
}
