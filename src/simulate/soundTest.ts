import { InputError, requireNonNegative, type TestPiece } from '../base/index.js';
import { rectangular, round, type RoundDimensions } from '../geometry/index.js';
import { randomNumbers } from '../numeric/index.js';
import type { SimulatedMaterial } from './material.js';
import type { SimulatedFrame, SimulatedHand } from './settings.js';
import { simulateTension, type SimulatedTension, type TensionScenario } from './simulateTension.js';

/** A simulated test with its name and its piece. */
export interface SimulatedCase extends SimulatedTension {
  /** Material, frame, hand and number. */
  readonly name: string;
  /** The piece that was pulled. */
  readonly piece: TestPiece;
}

/** Invented materials of usual kinds: name, and the curve by two random numbers between 0 and 1. */
const materials: readonly (readonly [string, (a: number, b: number) => SimulatedMaterial])[] = [
  ['low-carbon steel', (a, b) => withYieldPoint(205_000 + 4000 * a, 230 + 90 * b, 0.012 + 0.01 * a, 0.2, 0.3)],
  ['structural steel', (a, b) => withYieldPoint(207_000, 340 + 60 * a, 0.01 + 0.006 * b, 0.16, 0.22)],
  ['cold-drawn steel', (a, b) => swift(203_000, 480 + 120 * a, 0.02, 0.07 + 0.02 * b, 0.1)],
  ['quenched and tempered steel', (a, b) => swift(206_000, 800 + 200 * a, 0.015, 0.07 + 0.03 * b, 0.12)],
  ['austenitic stainless steel', (a, b) => swift(195_000, 230 + 60 * a, 0.04, 0.4 + 0.05 * b, 0.55)],
  ['soft aluminium', (a, b) => swift(69_000, 60 + 50 * a, 0.02, 0.2 + 0.05 * b, 0.3)],
  ['age-hardened aluminium', (a, b) => voce(71_000, 280 + 100 * a, 1.25, 12 + 4 * b, 0.14)],
  ['hard copper', (a, b) => voce(118_000, 230 + 60 * a, 1.15, 20 + 5 * b, 0.12)],
  ['brass', (a, b) => swift(103_000, 160 + 80 * a, 0.03, 0.3 + 0.05 * b, 0.42)],
  ['titanium', (a, b) => swift(108_000, 420 + 200 * a, 0.02, 0.1 + 0.04 * b, 0.2)],
  ['magnesium', (a, b) => voce(44_500, 150 + 40 * a, 1.6, 14 + 4 * b, 0.13)],
  ['ductile iron', (a, b) => swift(170_000, 300 + 60 * a, 0.02, 0.16 + 0.03 * b, 0.13)],
];

function swift(modulus: number, yieldStress: number, prestrain: number, exponent: number, extension: number): SimulatedMaterial {
  const uniform = Math.expm1(Math.max(0.01, exponent - prestrain));
  return {
    modulus,
    yieldStress,
    hardening: { law: 'swift', prestrain, exponent },
    fracture: { extension: Math.max(extension, 1.25 * uniform), share: 0.78 },
  };
}
function voce(modulus: number, yieldStress: number, ratio: number, rate: number, extension: number): SimulatedMaterial {
  const saturationStress = ratio * yieldStress;
  const uniform = Math.log(((saturationStress - yieldStress) * (1 + rate)) / saturationStress) / rate;
  return {
    modulus,
    yieldStress,
    hardening: { law: 'voce', saturationStress, rate },
    fracture: { extension: Math.max(extension, 1.3 * Math.expm1(uniform)), share: 0.8 },
  };
}
function withYieldPoint(modulus: number, lower: number, plateau: number, exponent: number, extension: number): SimulatedMaterial {
  return { ...swift(modulus, lower, 0.025, exponent, extension), yieldPoint: { upper: 1.06 * lower, plateau } };
}

/** Invented frames; a stiff one carries an extensometer. */
const frames: readonly (readonly [string, SimulatedFrame, boolean])[] = [
  ['soft frame', { compliance: 2e-5, slack: 0.2, seating: 0.05 }, false],
  ['stiff frame', { compliance: 4e-6, slack: 0.1 }, false],
  ['extensometer', { compliance: 1.5e-5, slack: 0.15, seating: 0.03 }, true],
];

/** Invented hands: how evenly, and where they rest: a share of the way from yielding to the strength, where a rest does no harm. */
const hands: readonly (readonly [string, Omit<SimulatedHand, 'pauses'>, number | undefined])[] = [
  ['even drive', {}, undefined],
  ['calm strokes', { strokes: 24, depth: 0.25 }, undefined],
  ['quick strokes', { strokes: 40, depth: 0.4 }, undefined],
  ['a rest on the way', { strokes: 20, depth: 0.2 }, 0.5],
];

const diameters: readonly RoundDimensions['diameter'][] = [
  [6, 6.005, 5.995],
  [8, 8.01, 7.995],
  [5, 5.005, 5],
];

/** Piece of a number: round ones, and every fourth flat. */
function pieceOf(k: number): TestPiece {
  const section =
    k % 4 === 3 ? rectangular({ width: [12.5, 12.51, 12.49], thickness: [4, 4.005, 4] }) : round({ diameter: diameters[k % 3]! });
  const gaugeLength = Math.round((5.65 * Math.sqrt(section.area)) / 5) * 5;
  return { section, gaugeLength, parallelLength: gaugeLength + (k % 4 === 3 ? 12 : 10) };
}

/**
 * One of the sound tests: many materials, frames and hands, with the noise and the steps of usual loggers, and no fault.
 *
 * @remarks
 * All invented. What a check says of such a record as a caution is a false alarm. The same number gives the same test to the last bit.
 *
 * @param number - Which one, a whole number from 0; two hundred serve as the library's own check.
 * @returns Record, truth, piece and name.
 * @throws {@link InputError} `not-finite`, `out-of-range`.
 *
 * @example
 * ```ts
 * soundTest(0).name; // => 'low-carbon steel, soft frame, even drive'
 * ```
 *
 * @see Common practice. Checked in `test/simulate/soundTest.test.ts`.
 */
export function soundTest(number: number): SimulatedCase {
  const k = requireNonNegative('soundTest', 'number', number);
  if (!Number.isInteger(k)) throw new InputError('soundTest', 'number', 'out-of-range', 'must be a whole number', number);
  const random = randomNumbers(1000 + k);
  const [material, curveOf] = materials[k % materials.length]!;
  const [frameName, frame, extensometer] = frames[Math.floor(k / materials.length) % frames.length]!;
  const [handName, hand, rest] = hands[Math.floor(k / (materials.length * frames.length)) % hands.length]!;
  const curve = curveOf(random.uniform(), random.uniform());
  const piece = pieceOf(k);
  const yieldStress = curve.yieldStress ?? 200;
  // the elastic way of the train sets the pace: some 25 s up to yield, then far faster
  const stiffness = 1 / ((frame.compliance ?? 0) + (piece.parallelLength ?? 40) / (curve.modulus * piece.section.area));
  const speed = Math.max(0.004, (yieldStress * piece.section.area) / stiffness / 25);
  const force = 2 * yieldStress * piece.section.area;
  const fullScale = force > 12_500 ? 25_000 : 12_500;
  const strength = simulateTension({ material: curve, piece, logger: { rate: 1 } }).truth.tensileStrength;
  const scenario: TensionScenario = {
    material: curve,
    piece,
    frame,
    hand: {
      ...hand,
      speed,
      speedAfterYield: Math.max(speed, Math.min(0.005 * piece.parallelLength!, 8 * speed)),
      ...(rest === undefined
        ? {}
        : { pauses: [{ stress: yieldStress + rest * (strength - yieldStress), duration: 2 + 2 * random.uniform() }] }),
    },
    logger: {
      rate: 20 + Math.round(30 * random.uniform()),
      forceNoise: fullScale * (0.0002 + 0.0003 * random.uniform()),
      motionNoise: extensometer ? 2e-4 : 5e-4,
      loadStep: fullScale / 2 ** 15,
      motionStep: extensometer ? 1e-4 : 1e-3,
      lead: 1 + random.uniform(),
      tail: 1 + random.uniform(),
      extensometer,
    },
    seed: k + 1,
  };
  return { ...simulateTension(scenario), piece, name: `${material}, ${frameName}, ${handName}` };
}
