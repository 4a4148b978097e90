import { InputError, requireNonNegative, requireOptions, requirePositive } from '../base/index.js';

/** A length between marks on the longer part of a broken bar, away from its neck. */
export interface LongerPart {
  /** Length between two marks before the test L0′ [mm]. */
  readonly originalLength: number;
  /** Length between them after fracture Lu′ [mm]. */
  readonly finalLength: number;
  /** Diameter of the bar d0 [mm]. */
  readonly diameter: number;
  /** Distance of the nearer mark from the fracture [mm]. */
  readonly fromFracture: number;
  /** Distance of the other mark from the grip [mm]. */
  readonly fromGrip: number;
}

/** The plastic elongation without necking, and whether it was measured where the standard asks. */
export interface ElongationWithoutNecking {
  /** Awn [mm/mm]. */
  readonly elongation: number;
  /** Least distance from the fracture, 5 d0 [mm]. */
  readonly leastFromFracture: number;
  /** Least distance from the grip, 2.5 d0 [mm]. */
  readonly leastFromGrip: number;
  /** True where both distances are kept: nearer, neck or grip are in the length. */
  readonly valid: boolean;
}

/** Distances from fracture and grip, in diameters. */
const FRACTURE = 5;
const GRIP = 2.5;

/**
 * Plastic elongation without necking of bar, wire or rod, by marks on the longer part of the broken piece.
 *
 * $$ A_{wn} = \frac{L_u' - L_0'}{L_0'}, \qquad a_{fracture} \ge 5 d_0, \qquad a_{grip} \ge 2.5 d_0 $$
 *
 * @remarks
 * What is left away from the neck is the plastic extension at maximum force: $A_{wn} \approx A_g$, and with the elastic part that went back
 * $A_{gt} \approx A_{wn} + R_m / E$ ({@link totalExtensionFromMarks} counts so for reinforcing steel). Of strongly cold-worked metal and of hot tests the two
 * differ. Both lengths are measured to 0.5 mm, and the marked length is at least that of the product standard (from memory).
 *
 * @param part - Lengths, diameter [mm], above 0; distances [mm], 0 or more.
 * @returns Awn [mm/mm], the least distances [mm], and whether they are kept.
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `unknown-option`; `out-of-range` where the length would have shrunk.
 *
 * @example
 * ```ts
 * const part = { originalLength: 100, finalLength: 109, diameter: 12, fromFracture: 65, fromGrip: 30 };
 * elongationWithoutNecking(part).elongation; // => 0.09
 * elongationWithoutNecking({ ...part, fromFracture: 40 }).valid; // => false
 * ```
 *
 * @see ISO 6892-1:2019, Annex J, plastic elongation without necking (distances from memory). Checked in `test/handbook/after-fracture.test.ts`.
 */
export function elongationWithoutNecking(part: LongerPart): ElongationWithoutNecking {
  const from = 'elongationWithoutNecking';
  requireOptions(from, part, ['originalLength', 'finalLength', 'diameter', 'fromFracture', 'fromGrip'], 'part');
  const original = requirePositive(from, 'originalLength', part.originalLength);
  const final = requirePositive(from, 'finalLength', part.finalLength);
  if (final < original) throw new InputError(from, 'finalLength', 'out-of-range', `must not be below originalLength (${original})`, final);
  const diameter = requirePositive(from, 'diameter', part.diameter);
  const leastFromFracture = FRACTURE * diameter;
  const leastFromGrip = GRIP * diameter;
  // a distance that is just kept is kept, whatever the last bit says
  const kept = (name: 'fromFracture' | 'fromGrip', least: number): boolean =>
    requireNonNegative(from, name, part[name]) >= least * (1 - 1e-12);
  const [clearOfFracture, clearOfGrip] = [kept('fromFracture', leastFromFracture), kept('fromGrip', leastFromGrip)];
  return { elongation: (final - original) / original, leastFromFracture, leastFromGrip, valid: clearOfFracture && clearOfGrip };
}
