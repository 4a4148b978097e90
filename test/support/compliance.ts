import { frameTravel, type Compliance, type ComplianceOptions, type CompliancePull } from '../../src/curve/index.js';
import { randomNumbers } from '../../src/numeric/index.js';

export const LOW = 500;
const area = (diameter: number): number => (Math.PI * diameter ** 2) / 4;

/** Frames of which every shape is the truth of one; in mm and N. */
export const frames = {
  constant: { constant: 2e-5 },
  table: { force: [500, 1500, 3000, 6000, 12_000], travel: [0.02, 0.051, 0.09, 0.155, 0.272] },
  power: { coefficient: 0.00052, exponent: 0.67 },
} as const satisfies Record<string, Compliance>;
export type FrameShape = keyof typeof frames;

/** The three ways: pieces in the frame, and what is known of them. */
export const ways = {
  'stiff blank': { pieces: [{ effectiveLength: 100, area: area(25) }], modulus: 210_000 },
  'known modulus': { pieces: [{ effectiveLength: 48, area: area(8) }], modulus: 210_000 },
  'two lengths': {
    pieces: [
      { effectiveLength: 40, area: area(8) },
      { effectiveLength: 80, area: area(8) },
    ],
    modulus: undefined,
  },
} as const;
export type Way = keyof typeof ways;

export interface Noise {
  /** Standard deviation of travel [mm] and of force [N]. */
  readonly travel: number;
  readonly force: number;
  /** Relative standard deviation of each piece's length over area, and of the modulus. */
  readonly piece: number;
  readonly modulus: number;
}
export const quiet: Noise = { travel: 0, force: 0, piece: 0, modulus: 0 };
export const usual: Noise = { travel: 0.002, force: 3, piece: 0.005, modulus: 0.01 };

/** Pulls in a frame of known truth, as they are read, with what their maker believes of the pieces. */
export function pulled(way: Way, shape: FrameShape, noise: Noise, seed: number, samples = 200, top = 12_000) {
  const random = randomNumbers(seed);
  const { pieces, modulus } = ways[way];
  const pulls = pieces.map((piece): CompliancePull => {
    const trueRatio = (piece.effectiveLength / piece.area) * (1 + noise.piece * random.normal());
    const trueModulus = 210_000 * (modulus === undefined ? 1 : 1 + noise.modulus * random.normal());
    const origin = 0.3 * random.uniform();
    const force = Float64Array.from({ length: samples }, (_, i) => LOW + ((top - LOW) * i) / (samples - 1));
    const travel = force.map(
      (F) => origin + frameTravel(frames[shape], F) + (F * trueRatio) / trueModulus + noise.travel * random.normal(),
    );
    return { ...piece, force: force.map((F) => F + noise.force * random.normal()), travel, relativeUncertainty: noise.piece };
  });
  const options: ComplianceOptions = {
    shape,
    ...(modulus === undefined ? {} : { modulus, modulusUncertainty: noise.modulus }),
    // the table of the truth, less the ends that noise moves
    ...(shape === 'table'
      ? { points: noise.force > 0 ? [520, 1500, 3000, 6000, 11_950] : frames.table.force }
      : { from: noise.force > 0 ? 520 : LOW, to: noise.force > 0 ? 11_950 : top }),
  };
  return { pulls, options };
}
