import { requireColumn, requireOptions, type PressureRecord, type TensionRecord, type UnbrokenPiece } from '../base/index.js';
import { requirePiece } from '../curve/index.js';
import { requireBrokenPiece } from '../methods/index.js';
import { materialCurve } from './materialCurve.js';
import type { SimulatedMaterial } from './SimulatedMaterial.js';
import { runCrosshead, tensionWay } from './motion.js';
import { recorded } from './recorded.js';
import { requireSeed } from './requireSeed.js';
import { simulationSettings, type Driven } from './settings.js';
import { requireUnloadings, withUnloadings } from './unloadings.js';
import { truthOf, type SimulatedTruth } from './truth.js';

/** A tension test to simulate. */
export interface TensionScenario extends Driven {
  /** The material. */
  readonly material: SimulatedMaterial;
  /** The piece; with an extensometer its base is `extensometerLength`, default the gauge length. */
  readonly piece: UnbrokenPiece;
  /** Plastic extensions whose proof strength the truth names [mm/mm]; default 0.001, 0.002, 0.01. */
  readonly offsets?: ArrayLike<number> | undefined;
}

/** A simulated test. */
export interface SimulatedTension {
  /** Columns: `force`, or as recorded by a frame with a bore, made from its pressure without losses; `travel`, `extension`, `time`. */
  readonly record: TensionRecord;
  /** The same with oil pressure [MPa], for a frame with a bore. */
  readonly pressureRecord?: PressureRecord | undefined;
  /** What is true. */
  readonly truth: SimulatedTruth;
}

const FROM = 'simulateTension';

/**
 * A tension test with known truth: a material, a piece, a frame, a hand and a logger make a record.
 *
 * $$ x = x_{slack} + s(F) + L_c\, e(R) + C_f F, \qquad R = \sigma(\varepsilon_p)\, \mathrm{e}^{-\varepsilon_p}, \qquad e = p + \frac{R}{E}, \quad \varepsilon_p = \ln(1 + p) $$
 *
 * @remarks
 * The material is one exact function of its plastic extension p, so the truth comes from the model and not from the samples; without
 * noise every sample lies on it. A neck begins where Considère says; from there the stress falls as a parabola to the fracture. A fall
 * of stress on a soft frame lets the frame unload into the piece, as it does. The same seed gives the same record to the last bit.
 * Data made so are invented: say so wherever they are shown.
 *
 * @param scenario - Material, piece [mm], frame [mm/N, mm, N], hand [mm/s], logger [Hz, N, mm, s], seed.
 * @returns The record, the record of pressure where the frame has a bore, and the truth.
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `out-of-range`, `unknown-option`; `too-large` beyond 5 million samples.
 *
 * @example
 * ```ts
 * const material = { modulus: 205000, yieldStress: 300, hardening: { law: 'swift' as const, prestrain: 0.02, exponent: 0.2 } };
 * const { truth } = simulateTension({ material, piece: { section: round({ diameter: 8 }), gaugeLength: 40, parallelLength: 48 } });
 * truth.tensileStrength; // => 397.144
 * ```
 *
 * @see Considère's construction; Swift, J. Mech. Phys. Solids 1 (1952) 1. Checked in `test/simulate/simulateTension.test.ts`.
 */
export function simulateTension(scenario: TensionScenario): SimulatedTension {
  requireOptions(FROM, scenario, ['material', 'piece', 'frame', 'hand', 'logger', 'seed', 'offsets'], 'scenario');
  const curve = materialCurve(scenario.material);
  const lengths = requirePiece(FROM, scenario.piece);
  requireBrokenPiece(FROM, scenario.piece);
  const seed = requireSeed(FROM, scenario.seed);
  const offsets = requireColumn(FROM, 'offsets', scenario.offsets ?? [0.001, 0.002, 0.01], { least: 0, positive: true });
  const set = simulationSettings(FROM, scenario);
  const unloadings = requireUnloadings(scenario.hand?.unloadings ?? [], curve.modulus);
  const { motion, truth: unloaded } = withUnloadings(
    runCrosshead(FROM, tensionWay(curve), lengths, set),
    unloadings,
    lengths,
    set,
    curve.modulus,
  );
  const { load, others, first } = recorded(motion, set, lengths.extensometerLength, seed);
  const pauses = motion.pauses.map(([from, to]) => [Math.max(0, from - first), to - first] as const).filter(([, to]) => to > 0);
  const truth: SimulatedTruth = {
    ...truthOf(scenario.material, curve, scenario.piece, [...offsets], pauses),
    ...(unloaded.length > 0 ? { unloadings: unloaded.map((one) => ({ ...one, index: one.index - first })) } : {}),
  };
  const { area } = set;
  if (area === undefined) return { record: { force: load, ...others }, truth };
  return { record: { force: load.map((p) => p * area), ...others }, pressureRecord: { pressure: load, ...others }, truth };
}
