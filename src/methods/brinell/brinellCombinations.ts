import { requireOptions, requireNonNegative, requirePositive } from '../../base/index.js';
import { convert } from '../../units/index.js';
import { hbwRange } from './brinellHardness.js';
import { indexTable, type BrinellMaterial } from './brinellIndices.js';

/** What a frame can do. */
export interface BrinellCapacity {
  /** Highest force that may be used [N]. */
  readonly capacity: number;
  /** Lowest force of the range in which the force is verified to 1 % [N]; not given: not known. */
  readonly verifiedFrom?: number | undefined;
  /** Highest force of that range [N]; default `capacity`. */
  readonly verifiedTo?: number | undefined;
}

/** A material that a combination suits, and over which hardness. */
export interface BrinellUse {
  /** Group of the material. */
  readonly material: BrinellMaterial;
  /** Lowest and highest hardness [HBW]. */
  readonly hardness: readonly [number, number];
}

/** A ball and a force. */
export interface BrinellCombination {
  /** `HBW 10/1000` and so on: ball [mm] and force [kgf]. */
  readonly designation: string;
  /** Diameter of the ball [mm]. */
  readonly ballDiameter: number;
  /** Test force [N]. */
  readonly force: number;
  /** Force-diameter index as the standard names it [N/mm²]. */
  readonly forceIndex: number;
  /** Lowest and highest hardness that this force can show [HBW]: d from 0.60 D to 0.24 D, at most 650. */
  readonly hardness: readonly [number, number];
  /** Materials that it suits. */
  readonly uses: readonly BrinellUse[];
  /** Whether the force lies in the verified range; absent where that is not known. */
  readonly verified?: boolean | undefined;
}

/** Balls and indices of the standard (from memory); the force in kgf is index times D². */
const BALLS = [10, 5, 2.5, 1] as const;
const INDICES = [30, 15, 10, 5, 2.5, 1] as const;
/** Only the ball of 10 mm has the index 15. */
const ONLY_10 = 15;
/** @internal Beyond this hardness the ball itself gives way (ISO 6506-1, from memory). */
export const HARDEST = 650;

/** @internal Every combination of the standard with its force [N]. */
export const nominalCombinations = BALLS.flatMap((ballDiameter) =>
  INDICES.filter((forceIndex) => forceIndex !== ONLY_10 || ballDiameter === 10).map((forceIndex) => {
    const kgf = forceIndex * ballDiameter ** 2;
    return { designation: `HBW ${ballDiameter}/${kgf}`, ballDiameter, forceIndex, force: convert(kgf, 'kgf', 'N') };
  }),
);

/** Materials whose indices hold this one and that take the ball, over the hardness that the force can show. */
function usesOf(forceIndex: number, ball: number, [least, most]: readonly [number, number]): BrinellUse[] {
  return indexTable.flatMap(({ material, from, to, indices, leastBall = 0 }) => {
    const hardness = [Math.max(from, least), Math.min(to, most)] as const;
    return indices.includes(forceIndex) && ball >= leastBall && hardness[0] < hardness[1] ? [{ material, hardness }] : [];
  });
}

/**
 * Ball and force combinations of the Brinell test that a frame can do, with what each serves for.
 *
 * $$ F = 9.80665\, \frac{0.102 F}{D^2} D^2, \qquad 0.24\, D \le d \le 0.60\, D $$
 *
 * @remarks
 * Possible is not valid: the test force needs 1 %, so each must also lie in the verified range. `HBW 10/3000` needs 29.42 kN. Balls and
 * indices as in the standard, from memory.
 *
 * @param frame - `capacity` [N] above 0; the verified range of the force [N].
 * @returns Combinations at or below the capacity, largest ball and force first; an empty list where there is none.
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * const possible = brinellCombinations({ capacity: 25000, verifiedFrom: 2000 });
 * possible[0]?.designation; // => 'HBW 10/1500'
 * possible.find(({ designation }) => designation === 'HBW 2.5/62.5')?.verified; // => false
 * ```
 *
 * @see ISO 6506-1:2014, test forces; force-diameter index for different materials (from memory). Checked in `test/handbook/brinell.test.ts`.
 */
export function brinellCombinations(frame: BrinellCapacity): BrinellCombination[] {
  const from = 'brinellCombinations';
  requireOptions(from, frame, ['capacity', 'verifiedFrom', 'verifiedTo'], 'frame');
  const capacity = requirePositive(from, 'frame.capacity', frame.capacity);
  const low = frame.verifiedFrom === undefined ? undefined : requireNonNegative(from, 'frame.verifiedFrom', frame.verifiedFrom);
  const high = frame.verifiedTo === undefined ? capacity : requirePositive(from, 'frame.verifiedTo', frame.verifiedTo);
  return nominalCombinations
    .filter(({ force }) => force <= capacity)
    .map((one) => {
      const [least, most] = hbwRange(one.force, one.ballDiameter);
      const hardness = [least, Math.min(most, HARDEST)] as const;
      return {
        ...one,
        hardness,
        uses: usesOf(one.forceIndex, one.ballDiameter, hardness),
        ...(low === undefined ? {} : { verified: one.force >= low && one.force <= high }),
      };
    });
}
