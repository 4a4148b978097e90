import type { TestPiece } from '../base/index.js';
import { round } from '../geometry/index.js';
import { randomNumbers } from '../numeric/index.js';
import { simulateTension, type SimulatedMaterial } from '../simulate/index.js';
import type { Exercise, ExerciseQuestion, ExerciseSymbol } from './Exercise.js';
import { questionNames, type metalNames } from './exerciseNames.js';
import { nameOf, seedOf } from './seedOf.js';

type Range = readonly [low: number, high: number];

/** Invented metals without a yield point: E [MPa], stress where yielding begins [MPa], exponent. */
const metals: readonly (readonly [name: (typeof metalNames)[number], modulus: Range, yieldStress: Range, exponent: Range])[] = [
  ['cold-drawn steel', [202_000, 208_000], [300, 380], [0.06, 0.09]],
  ['quenched and tempered steel', [204_000, 210_000], [550, 700], [0.06, 0.08]],
  ['age-hardened aluminium', [69_000, 73_000], [200, 260], [0.06, 0.1]],
  ['titanium', [106_000, 114_000], [300, 450], [0.07, 0.1]],
  ['half-hard brass', [100_000, 108_000], [160, 220], [0.1, 0.14]],
];
/** Swift's prestrain: small, so that the knee is round and the offset matters. */
const PRESTRAIN = 0.002;

/** Units and tolerances (common practice: what reading from a plot costs). */
const asked: Readonly<Record<ExerciseSymbol, readonly [unit: 'MPa' | '1', tolerance: number]>> = {
  mE: ['MPa', 0.03],
  E: ['MPa', 0.05],
  'Rp0.2': ['MPa', 0.015],
  Rm: ['MPa', 0.01],
  Agt: ['1', 0.03],
  A: ['1', 0.015],
  Z: ['1', 0.015],
};

/** A number as it is written down. */
const written = (value: number, step: number): number => Math.round(value / step) / Math.round(1 / step);

/**
 * An exercise for one student: a simulated tension test of their own, the questions, and what is true.
 *
 * $$ \frac{1}{m_E} = \frac{1}{E} + \frac{C_f S_0}{L_c} $$
 *
 * @remarks
 * The same name or number gives the same test to the last bit, and another name another metal, piece and frame. The record holds force and
 * crosshead travel with slack, the frame and the noise of a usual logger, without faults and without a yield point. A and Z follow from the readings of
 * the broken piece as they are written down, all else from the material. All invented: say so wherever it is shown.
 *
 * @param seed - Name or number of the student; case and outer spaces do not count.
 * @returns Record [N, mm, s], piece [mm, mm²], frame [mm/N], questions with truth and tolerance.
 * @throws {@link InputError} `empty`, `not-finite`.
 *
 * @example
 * ```ts
 * const { material, questions } = exerciseFor('Ada');
 * questions.map(({ symbol }) => symbol); // => ['mE', 'E', 'Rp0.2', 'Rm', 'Agt', 'A', 'Z']
 * material === exerciseFor(' ada').material; // => true
 * ```
 *
 * @see Springs in series; ISO 6892-1:2019, terms. Checked in `test/teaching/exerciseFor.test.ts`.
 */
export function exerciseFor(seed: string | number): Exercise {
  const name = nameOf('exerciseFor', seed);
  const { uniform } = randomNumbers(seedOf(name));
  const between = (low: number, high: number, step: number): number => written(low + (high - low) * uniform(), step);
  const pick = <T>(list: readonly T[]): T => list[Math.floor(list.length * uniform())]!;

  const [metal, ...ranges] = pick(metals);
  const [modulus, yieldStress, exponent] = ranges.map(([low, high]) => low + (high - low) * uniform()) as [number, number, number];
  const material: SimulatedMaterial = {
    modulus,
    yieldStress,
    hardening: { law: 'swift', prestrain: PRESTRAIN, exponent },
    fracture: { extension: (1.5 + 0.4 * uniform()) * Math.expm1(exponent - PRESTRAIN), share: 0.78 },
    reductionOfArea: between(0.35, 0.65, 0.001),
  };
  const nominal = pick([5, 6, 8]) + between(-0.05, 0.05, 0.01);
  const section = round({ diameter: [nominal, nominal + 0.01, nominal] });
  const gaugeLength = 5 * Math.round(nominal);
  const parallelLength = between(1.18 * gaugeLength, 1.4 * gaugeLength, 1);
  const frameCompliance = between(1.2e-5, 3e-5, 1e-6);
  const force = yieldStress * section.area;
  // some 20 s up to yielding, then faster
  const speed = (force * (frameCompliance + parallelLength / (modulus * section.area))) / 20;
  const { record, truth } = simulateTension({
    material,
    piece: { section, gaugeLength, parallelLength },
    frame: { compliance: frameCompliance, slack: between(0.0006, 0.0014, 1e-5) * parallelLength },
    hand: { speed, speedAfterYield: Math.max(speed, 0.0015 * parallelLength), strokes: between(18, 30, 1), depth: 0.2 },
    logger: { rate: 20, forceNoise: 2e-5 * force, motionNoise: 5e-4, loadStep: 0.1, motionStep: 1e-3, lead: 1, tail: 1 },
    offsets: [0.002],
    seed: seedOf(name),
  });
  const finalLength = written(gaugeLength * (1 + truth.elongationAfterFracture), 0.05);
  const finalDiameter = written(Math.sqrt((4 * section.area * (1 - truth.reductionOfArea)) / Math.PI), 0.01);
  const piece: TestPiece = {
    section,
    gaugeLength,
    parallelLength,
    afterFracture: { gaugeLength: finalLength, diameters: [finalDiameter, finalDiameter] },
  };
  const truths: Readonly<Record<ExerciseSymbol, number>> = {
    mE: 1 / (1 / modulus + (frameCompliance * section.area) / parallelLength),
    E: modulus,
    'Rp0.2': truth.proofStrengths[0]!.stress,
    Rm: truth.tensileStrength,
    Agt: truth.totalExtensionAtMaximumForce,
    A: finalLength / gaugeLength - 1,
    Z: 1 - round({ diameter: finalDiameter }).area / section.area,
  };
  const question = (symbol: ExerciseSymbol): ExerciseQuestion => {
    const [unit, tolerance] = asked[symbol];
    return { symbol, name: questionNames[symbol], unit, truth: truths[symbol], tolerance };
  };
  return {
    seed: name,
    material: metal,
    record,
    piece,
    frameCompliance,
    handbookModulus: 5000 * Math.round(modulus / 5000),
    questions: (Object.keys(asked) as ExerciseSymbol[]).map(question),
  };
}
