import { InputError, requireColumn, requireOptions, requirePositive } from '../../base/index.js';

/** An indentation by a ball. */
export interface BrinellInput {
  /** Test force F [N]. */
  readonly force: number;
  /** Diameter of the ball D [mm]. */
  readonly ballDiameter: number;
  /** Diameter of the indentation [mm]: one reading, or two at right angles and more. */
  readonly diameters: number | ArrayLike<number>;
}

/** What follows from an indentation. */
export interface BrinellHardness {
  /** Brinell hardness HBW [1]. */
  readonly hardness: number;
  /** Mean diameter of the indentation d [mm]. */
  readonly diameter: number;
  /** Depth of the indentation h [mm]. */
  readonly depth: number;
  /** Force-diameter index 0.102 F/D² [N/mm²]. */
  readonly forceIndex: number;
  /** d/D [1]. */
  readonly ratio: number;
  /** True where d/D is within 0.24 and 0.60, the limits included. */
  readonly valid: boolean;
  /** Least thickness of the piece, 8 h [mm]. */
  readonly leastThickness: number;
  /** Least distance from the centre of the indentation to an edge, 2.5 d [mm]. */
  readonly leastEdgeDistance: number;
  /** Least distance between centres of neighbouring indentations, 3 d [mm]. */
  readonly leastSpacing: number;
}

/** Limits of d/D within which a Brinell test is one. */
const RATIO = [0.24, 0.6] as const;

/** @internal Depth of a cap of diameter d of a ball, without loss of digits where it is shallow. */
const capDepth = (ball: number, diameter: number): number => diameter ** 2 / (2 * (ball + Math.sqrt(ball ** 2 - diameter ** 2)));

/** @internal Newtons into the kilograms-force of the old definition: 1/9.80665, rounded as ISO 6506-1 prints it. */
export const KGF_PER_NEWTON = 0.102;

/** @internal HBW of a mean diameter. */
export const hbw = (force: number, ball: number, diameter: number): number =>
  (KGF_PER_NEWTON * force) / (Math.PI * ball * capDepth(ball, diameter));

/** @internal Force-diameter index [N/mm²]. */
export const forceIndexOf = (force: number, ball: number): number => (KGF_PER_NEWTON * force) / ball ** 2;

/** @internal HBW at 0.60 and at 0.24 of the ball: between them a force serves. */
export const hbwRange = (force: number, ball: number): [number, number] => [
  hbw(force, ball, RATIO[1] * ball),
  hbw(force, ball, RATIO[0] * ball),
];

/**
 * Brinell hardness of an indentation, its depth, the force-diameter index, and what the test asks of the piece.
 *
 * $$ \text{HBW} = \frac{0.102 \cdot 2 F}{\pi D \left( D - \sqrt{D^2 - d^2} \right)}, \qquad h = \frac{D - \sqrt{D^2 - d^2}}{2}, \qquad
 * \text{index} = \frac{0.102 F}{D^2} $$
 *
 * @remarks
 * Valid for 0.24 D ≤ d ≤ 0.60 D; an indentation outside still has its number, and `valid` says no. One per cent of the diameter is two of the hardness. The force is in N and 0.102 is
 * exact here: 10 mm under 29 420 N give 601.6 at d 2.5 and 653.6 at d 2.4, where tables that compute with 3000 kgf print 601 and 653.
 *
 * @param input - `force` [N] and `ballDiameter` [mm] above 0; `diameters` [mm] above 0 and, in the mean, below the ball's.
 * @returns Hardness, mean diameter, depth [mm], index [N/mm²], validity, least thickness and distances [mm].
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `empty`, `wrong-type`, `unknown-option`; `out-of-range` where the indentation is as wide as the ball.
 *
 * @example
 * ```ts
 * brinellHardness({ force: 29420, ballDiameter: 10, diameters: [3.99, 4.01] }).hardness; // => 228.83
 * brinellHardness({ force: 29420, ballDiameter: 10, diameters: 4 }).leastThickness; // => 3.339
 * ```
 *
 * @see ISO 6506-1:2014, principle; test piece (distances and thickness). Checked in `test/handbook/brinell.test.ts`.
 */
export function brinellHardness(input: BrinellInput): BrinellHardness {
  const from = 'brinellHardness';
  requireOptions(from, input, ['force', 'ballDiameter', 'diameters'], 'input');
  const force = requirePositive(from, 'force', input.force);
  const ball = requirePositive(from, 'ballDiameter', input.ballDiameter);
  const { diameters } = input;
  const readings =
    typeof diameters === 'number'
      ? [requirePositive(from, 'diameters', diameters)]
      : [...requireColumn(from, 'diameters', diameters, { positive: true })];
  const diameter = readings.reduce((sum, one) => sum + one) / readings.length;
  if (diameter >= ball) throw new InputError(from, 'diameters', 'out-of-range', `must be below that of the ball (${ball})`, diameter);
  const depth = capDepth(ball, diameter);
  const ratio = diameter / ball;
  // limits are met by readings that reach them in decimals
  const within = (limit: number): number => Number((limit * ball).toPrecision(12));
  return {
    hardness: hbw(force, ball, diameter),
    diameter,
    depth,
    forceIndex: forceIndexOf(force, ball),
    ratio,
    valid: diameter >= within(RATIO[0]) && diameter <= within(RATIO[1]),
    leastThickness: 8 * depth,
    leastEdgeDistance: 2.5 * diameter,
    leastSpacing: 3 * diameter,
  };
}
