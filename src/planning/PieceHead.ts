import { InputError, requireNonNegative, requireObject, requireOneOf, requireOptions, requirePositive } from '../base/index.js';

/** The heads of a test piece and what holds them. */
export type PieceHead =
  | {
      /** Between self-tightening wedges. */
      readonly kind: 'wedge';
      /** Diameter or width of the head [mm]. */
      readonly size: number;
      /** Length of the head between the faces [mm]. */
      readonly gripped: number;
      /** Length of the faces [mm]; default the gripped length. */
      readonly faceLength?: number | undefined;
      /** Angle of the wedge's back against the axis [rad]. */
      readonly angle: number;
      /** Friction between face and head [1]; default 0.3. */
      readonly faceFriction?: number | undefined;
      /** Friction on the back of the wedge [1]; default 0.1. */
      readonly backFriction?: number | undefined;
    }
  | {
      /** Between faces that are pressed by screws or oil. */
      readonly kind: 'clamp';
      /** Diameter or width of the head [mm]. */
      readonly size: number;
      /** Length of the head between the faces [mm]. */
      readonly gripped: number;
      /** Force that presses each face on the head [N]. */
      readonly clampForce: number;
      /** Friction between face and head [1]; default 0.3. */
      readonly faceFriction?: number | undefined;
    }
  | {
      /** A metric thread. */
      readonly kind: 'thread';
      /** Nominal diameter [mm]. */
      readonly size: number;
      /** Pitch [mm]. */
      readonly pitch: number;
      /** Length of thread in the holder [mm]. */
      readonly gripped: number;
    }
  | {
      /** A shoulder in a split seat. */
      readonly kind: 'shoulder';
      /** Diameter of the shoulder [mm]. */
      readonly size: number;
      /** Height of the shoulder [mm]. */
      readonly gripped: number;
      /** Bore of the seat [mm]. */
      readonly seat: number;
    }
  | {
      /** A pin through a flat head. */
      readonly kind: 'pin';
      /** Width of the head [mm]. */
      readonly size: number;
      /** Length of the head [mm]. */
      readonly gripped: number;
      /** Diameter of the pin [mm]. */
      readonly pinDiameter: number;
      /** Distance from the centre of the pin to the end of the piece [mm]. */
      readonly edge: number;
      /** Shear strength of the pin [MPa], where it is to be checked. */
      readonly pinStrength?: number | undefined;
    };

const kinds = ['wedge', 'clamp', 'thread', 'shoulder', 'pin'] as const;
const needed: Readonly<Record<PieceHead['kind'], readonly string[]>> = {
  wedge: ['size', 'gripped', 'angle'],
  clamp: ['size', 'gripped', 'clampForce'],
  thread: ['size', 'gripped', 'pitch'],
  shoulder: ['size', 'gripped', 'seat'],
  pin: ['size', 'gripped', 'pinDiameter', 'edge'],
};
const optional: Readonly<Record<PieceHead['kind'], readonly string[]>> = {
  wedge: ['faceLength', 'faceFriction', 'backFriction'],
  clamp: ['faceFriction'],
  thread: [],
  shoulder: [],
  pin: ['pinStrength'],
};

/** @internal Heads whose numbers can be used. */
export function requireHead(from: string, head: PieceHead): PieceHead {
  requireObject(from, 'head', head);
  const kind = requireOneOf(from, 'head.kind', head.kind, kinds);
  requireOptions(from, head, ['kind', ...needed[kind], ...optional[kind]], 'head');
  const given = head as unknown as Readonly<Record<string, unknown>>;
  for (const name of needed[kind]) requirePositive(from, `head.${name}`, given[name]);
  for (const name of optional[kind]) if (given[name] !== undefined) requireNonNegative(from, `head.${name}`, given[name]);
  if (head.kind === 'shoulder' && head.seat >= head.size)
    throw new InputError(from, 'head.seat', 'out-of-range', `must be below the size of the head (${head.size})`, head.seat);
  if (head.kind === 'pin' && head.pinDiameter >= head.size)
    throw new InputError(from, 'head.pinDiameter', 'out-of-range', `must be below the size of the head (${head.size})`, head.pinDiameter);
  if (head.kind === 'pin' && head.edge <= head.pinDiameter / 2)
    throw new InputError(from, 'head.edge', 'out-of-range', `must be above half the pin (${head.pinDiameter / 2})`, head.edge);
  return head;
}
