import { InputError, requireNonNegative, requireObject, requireOptions, requirePositive } from '../base/index.js';

/** What round and flat pieces have in common. */
interface Shoulders {
  /** Parallel length Lc [mm]. */
  readonly parallelLength: number;
  /** Radius of the circular fillets R [mm]. */
  readonly filletRadius: number;
  /** Length of each head between fillet and grip [mm]; default 0. */
  readonly headLength?: number | undefined;
}

/** A round piece with fillets and heads. */
export interface RoundShoulders extends Shoulders {
  /** Diameter d [mm]. */
  readonly diameter: number;
  /** Diameter of the heads D [mm]. */
  readonly headDiameter: number;
}

/** A flat piece of one thickness with fillets and heads. */
export interface FlatShoulders extends Shoulders {
  /** Width b [mm]. */
  readonly width: number;
  /** Width of the heads B [mm]. */
  readonly headWidth: number;
}

const FROM = 'effectiveLength';

/**
 * Length that stretches elastically with the travel of the crosshead: the parallel length, and fillets and heads as far as they give.
 *
 * $$ L_{eff} = L_c + 2 \int_0^{X} \frac{S_0}{S(x)}\, \mathrm{d}x + 2\, h\, \frac{S_0}{S_h} $$
 *
 * @remarks
 * Fillets are arcs that leave the parallel length without a corner and end at the head; a radius below the step ends in a square shoulder. The integrals are
 * solved in closed form. The stress is taken as even over every section: in a short fillet it spreads less far, so the heads add somewhat less. Plastic strain
 * lives in the parallel length: this length serves elastic parts alone. What slips or gives within the grips belongs to the frame.
 *
 * @param piece - `parallelLength`, `filletRadius` and `diameter` with `headDiameter`, or `width` with `headWidth` [mm], above 0; `headLength` [mm] of 0 or more.
 * @returns Effective length [mm].
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `out-of-range` where the heads are not wider, `unknown-option`.
 *
 * @example
 * ```ts
 * effectiveLength({ parallelLength: 48, diameter: 8, headDiameter: 12, filletRadius: 5 }); // => 54.300
 * ```
 *
 * @see Elementary mechanics (bars in series). Checked in `test/handbook/frame.test.ts`.
 */
export function effectiveLength(piece: RoundShoulders | FlatShoulders): number {
  const round = 'diameter' in requireObject(FROM, 'piece', piece);
  const [narrow, wide] = round ? (['diameter', 'headDiameter'] as const) : (['width', 'headWidth'] as const);
  requireOptions(FROM, piece, ['parallelLength', 'filletRadius', 'headLength', narrow, wide], 'piece');
  const given: Readonly<Record<string, number | undefined>> = { ...piece };
  const b = requirePositive(FROM, narrow, given[narrow]);
  const B = requirePositive(FROM, wide, given[wide]);
  if (B <= b) throw new InputError(FROM, wide, 'out-of-range', `must be above ${narrow} (${b})`, B);
  const R = requirePositive(FROM, 'filletRadius', piece.filletRadius);
  const head = requireNonNegative(FROM, 'headLength', piece.headLength ?? 0);
  const parallel = requirePositive(FROM, 'parallelLength', piece.parallelLength);
  // with x = R sin t the half-width is R (a - cos t), a = 1 + s; the arc ends at t, where 1 - cos t is v (neither is a difference of large numbers)
  const s = b / (2 * R);
  const a = 1 + s;
  const v = Math.min(1, (B - b) / (2 * R));
  const t = 2 * Math.asin(Math.sqrt(v / 2));
  const J = (2 / Math.sqrt(s * (2 + s))) * Math.atan(Math.sqrt((2 + s) / s) * Math.tan(t / 2));
  const fillet = round ? ((b / 2) * ((a * Math.sin(t)) / (s + v) + J)) / (2 + s) : (b / 2) * (a * J - t);
  return parallel + 2 * (fillet + head * (b / B) ** (round ? 2 : 1));
}
