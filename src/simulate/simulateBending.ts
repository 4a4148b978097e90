import { InputError, requireBetween, requireColumn, requireNonNegative, requireOptions, requirePositive } from '../base/index.js';
import { requireBendingPiece, type BendingColumns, type BendingPiece } from '../methods/index.js';
import { integral } from './integral.js';
import { momentCurvature } from './momentCurvature.js';
import { runCrosshead, type Way } from './motion.js';
import { recorded } from './recorded.js';
import { requireSeed } from './requireSeed.js';
import { simulationSettings, type Driven } from './settings.js';
import type { PlainFrame, SteadyHand } from './simulateCompression.js';
import type { TrueProofStrength } from './truth.js';

/** A material that is bent: alike in tension and compression. */
export interface BentMaterial {
  /** Modulus E [MPa]. */
  readonly modulus: number;
  /** Stress where yielding begins [MPa]; default: it never yields. */
  readonly yieldStress?: number | undefined;
  /** Slope beyond yielding [MPa], 0 up to the modulus; default 0. */
  readonly tangentModulus?: number | undefined;
}

/** A frame with supports. */
export interface BendingFrame extends PlainFrame {
  /** What supports and noses sink into the beam [mm/N]; default 0. */
  readonly indentation?: number | undefined;
}

/** A bending test to simulate. */
export interface BendingScenario extends Driven<BendingFrame, SteadyHand> {
  /** The material. */
  readonly material: BentMaterial;
  /** The beam, rectangular, square or round; with `logger.extensometer` its deflection at mid-span is recorded as well. */
  readonly piece: BendingPiece;
  /** Strain of the outer fibre under a nose at which the test ends [mm/mm], up to 0.5; default 0.02. With a `tail` of the logger the beam breaks there. */
  readonly until?: number | undefined;
  /** Plastic strains of the outer fibre whose proof strength the truth names [mm/mm]; default 0.001, 0.002. */
  readonly offsets?: ArrayLike<number> | undefined;
}

/** What is true of a simulated bending test. */
export interface BendingTruth {
  /** E [MPa]. */
  readonly modulus: number;
  /** Flexural proof strengths with the strain from travel of the noses [MPa]; absent where the test ends before. */
  readonly proofStrengths: readonly TrueProofStrength[];
  /** The same with the strain from the deflection at mid-span. */
  readonly proofStrengthsAtMidSpan: readonly TrueProofStrength[];
  /** Highest force [N]. */
  readonly maximumForce: number;
  /** Stress of the outer fibre by the elastic formula there [MPa]. */
  readonly flexuralStrength: number;
  /** Deflection at the noses at the end [mm]. */
  readonly deflection: number;
}

/** A simulated bending test. */
export interface SimulatedBending {
  /** Columns: `force`, `travel`, `deflection` at mid-span where it is recorded, `time`. */
  readonly record: BendingColumns<Float64Array>;
  /** What is true. */
  readonly truth: BendingTruth;
}

const FROM = 'simulateBending';
const ELASTIC_NODES = 400;
const PLASTIC_NODES = 2000;

/** The beam's states by the strain of its outer fibre under a nose, and both deflections as strains of the elastic formulas. */
function beamWay(piece: BendingPiece, material: BentMaterial, until: number) {
  const modulus = requirePositive(FROM, 'material.modulus', material.modulus);
  const yieldStress = material.yieldStress === undefined ? Infinity : requirePositive(FROM, 'material.yieldStress', material.yieldStress);
  const tangentModulus = requireBetween(FROM, 'material.tangentModulus', material.tangentModulus ?? 0, 0, modulus);
  const stressAt = momentCurvature(FROM, piece.section, { modulus, yieldStress, tangentModulus });
  const { span: L, points } = piece.setup;
  const a = points === 3 ? L / 2 : piece.setup.arm!;
  const yieldStrain = Math.min(yieldStress / modulus, until);
  /** ∫ κ M dM over (M0)²: the share of the arms in the deflection, 1/3 of the strain while elastic. */
  const arms = (strain: number): number => {
    const top = stressAt(strain);
    if (strain <= yieldStrain || top === 0) return strain / 3;
    const elastic = (modulus * yieldStrain) ** 2 * (yieldStrain / 3);
    // in the root of the plastic strain the moment is smooth
    const plastic = integral((u) => 2 * u * stressAt(yieldStrain + u * u) ** 2, 0, Math.sqrt(strain - yieldStrain), 24);
    return (strain - (elastic + plastic) / top ** 2) / 2;
  };
  const nose = (strain: number): number => (a ** 2 * arms(strain) + (a * (L - 2 * a) * strain) / 2) / ((a * (3 * L - 4 * a)) / 6);
  const middle = (strain: number): number =>
    (a ** 2 * arms(strain) + ((L ** 2 / 4 - a ** 2) * strain) / 2) / ((3 * L ** 2 - 4 * a ** 2) / 24);
  const states = Array.from({ length: ELASTIC_NODES }, (_, k) => (yieldStrain * k) / ELASTIC_NODES);
  for (let k = 0; k <= PLASTIC_NODES; k += 1) states.push(yieldStrain + (until - yieldStrain) * (k / PLASTIC_NODES) ** 2);
  const way: Way = { modulus, yieldsAt: yieldStrain, states, stressAt, strainAt: nose, gaugeAt: middle };
  return { way, nose, middle };
}

/** Stress at which strain less stress over modulus reaches each offset. */
function proofs(
  { stressAt, modulus }: Way,
  strainAt: (state: number) => number,
  offsets: readonly number[],
  until: number,
): TrueProofStrength[] {
  const plastic = (state: number): number => strainAt(state) - stressAt(state) / modulus;
  return offsets.flatMap((offset) => {
    if (plastic(until) < offset) return [];
    let [low, high] = [0, until];
    for (let k = 0; k < 100; k += 1) {
      const middle = (low + high) / 2;
      if (plastic(middle) < offset) low = middle;
      else high = middle;
    }
    return [{ offset, stress: stressAt(high) }];
  });
}

/**
 * A bending test with known truth: a material that yields, a beam, a frame, a hand and a logger make a record.
 *
 * $$ M(\kappa) = \int \sigma(\kappa y)\, y\, \mathrm{d}A, \qquad s = \int m(x)\, \kappa(x)\, \mathrm{d}x = \frac{a^2}{M_0^2} \int_0^{M_0} \kappa M\, \mathrm{d}M + \dots $$
 *
 * @remarks
 * The moment of a material with two slopes is exact; the curvature is integrated along the beam, so beyond yielding strains gather under the noses as they
 * do. Small deflections, no shear, no friction at the supports. The strain of the outer fibre that an evaluation gives by the elastic formulas
 * differs from the true one beyond yielding; the truth names the values that a perfect evaluation must give. The same seed gives the same
 * record to the last bit. Data made so are invented: say so wherever they are shown.
 *
 * @param scenario - Material, beam with its set-up [mm], end of the test, frame [mm/N, mm], hand [mm/s], logger [Hz, N, mm, s], seed.
 * @returns The record and the truth.
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `out-of-range`, `unknown-option`; `too-large` beyond 5 million samples.
 *
 * @example
 * ```ts
 * const piece = { section: rectangular({ width: 10, thickness: 5 }), setup: { points: 3 as const, span: 100 } };
 * const { truth } = simulateBending({ material: { modulus: 200000, yieldStress: 300 }, piece, until: 0.5 });
 * truth.flexuralStrength; // => 449.99865
 * ```
 *
 * @see Plastic bending (textbooks). Checked in `test/simulate/simulateBending.test.ts`.
 */
export function simulateBending(scenario: BendingScenario): SimulatedBending {
  const known = ['material', 'piece', 'until', 'frame', 'hand', 'logger', 'seed', 'offsets'];
  requireOptions(FROM, scenario, known, 'scenario');
  requireOptions(FROM, scenario.material, ['modulus', 'yieldStress', 'tangentModulus'], 'material');
  const lengths = requireBendingPiece(FROM, scenario.piece);
  if (scenario.piece.setup.measuredAt !== undefined)
    throw new InputError(
      FROM,
      'piece.setup.measuredAt',
      'out-of-range',
      'must be left out: both places are known',
      scenario.piece.setup.measuredAt,
    );
  const seed = requireSeed(FROM, scenario.seed);
  const until = requireBetween(FROM, 'until', scenario.until ?? 0.02, 1e-5, 0.5);
  const offsets = [...requireColumn(FROM, 'offsets', scenario.offsets ?? [0.001, 0.002], { least: 0, positive: true })];
  const { indentation = 0, ...frame } = scenario.frame ?? {};
  const compliance = (frame.compliance ?? 0) + requireNonNegative(FROM, 'frame.indentation', indentation);
  const set = simulationSettings(FROM, { ...scenario, frame: { ...frame, compliance } }, ['bore', 'rod', 'friction', 'pauses']);

  const { way, nose, middle } = beamWay(scenario.piece, scenario.material, until);
  const motion = runCrosshead(FROM, way, lengths, set);
  const { load, others } = recorded(motion, set, lengths.extensometerLength, seed);
  const { travel, time, extension } = others;
  const strength = way.stressAt(until);
  return {
    record: { force: load, travel, ...(extension ? { deflection: extension } : {}), time },
    truth: {
      modulus: way.modulus,
      proofStrengths: proofs(way, nose, offsets, until),
      proofStrengthsAtMidSpan: proofs(way, middle, offsets, until),
      maximumForce: strength * lengths.area,
      flexuralStrength: strength,
      deflection: nose(until) * lengths.parallelLength,
    },
  };
}
