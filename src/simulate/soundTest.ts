import { requireWhole, type TestPiece } from '../base/index.js';
import { rectangular, round, type RoundDimensions } from '../geometry/index.js';
import { randomNumbers } from '../numeric/index.js';
import type { SimulatedFrame, SimulatedHand } from './settings.js';
import { simulateTension, type SimulatedTension } from './simulateTension.js';
import { usualMaterials } from './usualMaterials.js';
import { usualScenario } from './usualScenario.js';

/** A simulated test with its name and its piece. */
export interface SimulatedCase extends SimulatedTension {
  /** Material, frame, hand and number. */
  readonly name: string;
  /** The piece that was pulled. */
  readonly piece: TestPiece;
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
  const k = requireWhole('soundTest', 'number', number, 0);
  const random = randomNumbers(1000 + k);
  const { name: material, make: curveOf } = usualMaterials[k % usualMaterials.length]!;
  const [frameName, frame, extensometer] = frames[Math.floor(k / usualMaterials.length) % frames.length]!;
  const [handName, hand, rest] = hands[Math.floor(k / (usualMaterials.length * frames.length)) % hands.length]!;
  const curve = curveOf(random.uniform(), random.uniform());
  const piece = pieceOf(k);
  const scenario = usualScenario({ curve, piece, frame, extensometer, hand, rest, random, seed: k + 1 });
  return { ...simulateTension(scenario), piece, name: `${material}, ${frameName}, ${handName}` };
}
