import { requireBetween, requireColumn, requireOptions, requirePositive, type TensionRecord } from '../base/index.js';
import { uniformDiameter } from '../piece/index.js';
import { siebelCorrection } from '../hardening/index.js';
import { requireCompressionPiece, type CompressionPiece } from '../methods/index.js';
import { requireFlow } from './requireFlow.js';
import type { SimulatedMaterial } from './SimulatedMaterial.js';
import { runCrosshead, tensionWay } from './motion.js';
import { recorded } from './recorded.js';
import { requireSeed } from './requireSeed.js';
import { simulationSettings, type Driven, type SimulatedFrame, type SimulatedHand } from './settings.js';
import type { TrueProofStrength } from './truth.js';

/** A frame of which force and travel are recorded. */
export type PlainFrame = Omit<SimulatedFrame, 'bore' | 'rod' | 'friction'>;
/** A hand that does not pause. */
export type SteadyHand = Omit<SimulatedHand, 'pauses'>;

/** A compression test to simulate. */
export interface CompressionScenario extends Driven<PlainFrame, SteadyHand> {
  /** The material: modulus, yield stress, hardening of the true stress. */
  readonly material: Pick<SimulatedMaterial, 'modulus' | 'yieldStress' | 'hardening'>;
  /** The piece; with an extensometer its base is `extensometerLength`, default the height. */
  readonly piece: CompressionPiece;
  /** Plastic compression at which the test ends [mm/mm], 0.001 to 0.9; default 0.3. With a `tail` of the logger the piece breaks there. */
  readonly until?: number | undefined;
  /** Coefficient of friction at the ends, by Siebel; default 0. */
  readonly friction?: number | undefined;
  /** Diameter in the middle over that at the ends after the test; default 1. */
  readonly bulge?: number | undefined;
  /** Plastic compressions whose yield strength the truth names [mm/mm]; default 0.001, 0.002, 0.01. */
  readonly offsets?: ArrayLike<number> | undefined;
}

/** What a person would measure on a compressed piece. */
export interface FinishedPiece {
  /** Height [mm], unloaded. */
  readonly height: number;
  /** Diameter at half of the height [mm]. */
  readonly middleDiameter: number;
  /** Diameter at the ends [mm]. */
  readonly endDiameter: number;
}

/** What is true of a simulated compression test, compression counted positive. */
export interface CompressionTruth {
  /** E [MPa]. */
  readonly modulus: number;
  /** Stress on the original area at each plastic compression asked for [MPa]; absent beyond the end. */
  readonly proofStrengths: readonly TrueProofStrength[];
  /** Highest force [N]. */
  readonly maximumForce: number;
  /** Plastic compression at the end [mm/mm]. */
  readonly plasticCompression: number;
  /** True flow stress at the end, without friction [MPa]. */
  readonly flowStress: number;
  /** What a person would measure on the piece after the test. */
  readonly afterTest: FinishedPiece;
}

/** A simulated compression test. */
export interface SimulatedCompression {
  /** Columns, compression positive: `force`, `travel`, `extension` where there is an extensometer, `time`. */
  readonly record: TensionRecord;
  /** What is true. */
  readonly truth: CompressionTruth;
}

const FROM = 'simulateCompression';

/**
 * A compression test with known truth: a material, a piece, friction, a frame, a hand and a logger make a record.
 *
 * $$ R = \frac{\sigma(\varepsilon_p)}{1 - p} \left( 1 + \frac{\mu d}{3 h} \right), \qquad e = p + \frac{R}{E}, \quad \varepsilon_p = -\ln(1 - p), \qquad x = x_{slack} + h_0 e + C_f F $$
 *
 * @remarks
 * The material is one exact function of its plastic compression p, which alone keeps the volume; d and h are the present ones. The ends
 * rub by Siebel. The barrel of the finished piece is a parabola of the same volume, and does not change the force. The piece never
 * buckles. The same seed gives the same record to the last bit. Data made so are invented: say so wherever they are shown.
 *
 * @param scenario - Material, piece [mm], end of the test, friction, frame [mm/N, mm], hand [mm/s], logger [Hz, N, mm, s], seed.
 * @returns The record and the truth.
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `out-of-range`, `unknown-option`; `too-large` beyond 5 million samples.
 *
 * @example
 * ```ts
 * const material = { modulus: 70000, yieldStress: 200, hardening: { law: 'none' as const } };
 * const { truth } = simulateCompression({ material, piece: { section: round({ diameter: 10 }), height: 15 }, until: 0.2 });
 * truth.maximumForce / round({ diameter: 10 }).area; // => 250
 * ```
 *
 * @see Constancy of volume; Siebel, Stahl und Eisen 43 (1923). Checked in `test/simulate/simulateCompression.test.ts`.
 */
export function simulateCompression(scenario: CompressionScenario): SimulatedCompression {
  const known = ['material', 'piece', 'until', 'friction', 'bulge', 'frame', 'hand', 'logger', 'seed', 'offsets'];
  requireOptions(FROM, scenario, known, 'scenario');
  requireOptions(FROM, scenario.material, ['modulus', 'yieldStress', 'hardening'], 'material');
  const { modulus, lower, spacing, flow } = requireFlow(FROM, scenario.material);
  const lengths = requireCompressionPiece(FROM, scenario.piece);
  const seed = requireSeed(FROM, scenario.seed);
  const friction = requireBetween(FROM, 'friction', scenario.friction ?? 0, 0, 0.577);
  const until = requireBetween(FROM, 'until', scenario.until ?? 0.3, 0.001, 0.9);
  const bulge = requirePositive(FROM, 'bulge', scenario.bulge ?? 1);
  const offsets = [...requireColumn(FROM, 'offsets', scenario.offsets ?? [0.001, 0.002, 0.01], { least: 0, positive: true })];
  const set = simulationSettings(FROM, scenario, ['bore', 'rod', 'friction', 'pauses']);

  const { gaugeLength: originalHeight, diameter: originalDiameter } = lengths;
  const shapeAt = (p: number) => {
    const height = originalHeight * (1 - p);
    return { height, diameter: uniformDiameter({ originalDiameter, originalHeight, height }) };
  };
  const flowAt = (p: number): number => flow(-Math.log1p(-p));
  const stress = (p: number): number => flowAt(p) / siebelCorrection({ friction, ...shapeAt(p) }) / (1 - p);
  const start = lower === 0 ? 0 : stress(0);
  const motion = runCrosshead(FROM, tensionWay({ modulus, start, stress, atFracture: until, spacing }), lengths, set);
  const { load, others } = recorded(motion, set, lengths.extensometerLength, seed);

  const { height, diameter } = shapeAt(until);
  // a barrel with the outline of a parabola: π h/60 (8 dm² + 4 dm de + 3 de²) is the volume of the cylinder
  const endDiameter = diameter * Math.sqrt(15 / (8 * bulge ** 2 + 4 * bulge + 3));
  return {
    record: { force: load, ...others },
    truth: {
      modulus,
      proofStrengths: offsets.flatMap((offset) => (offset <= until ? [{ offset, stress: stress(offset) }] : [])),
      maximumForce: stress(until) * lengths.area,
      plasticCompression: until,
      flowStress: flowAt(until),
      afterTest: { height, middleDiameter: bulge * endDiameter, endDiameter },
    },
  };
}
