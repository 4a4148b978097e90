import type { UnbrokenPiece } from '../base/index.js';
import { pistonArea } from '../force/index.js';
import type { randomNumbers } from '../numeric/index.js';
import type { SimulatedFrame, SimulatedHand } from './settings.js';
import type { SimulatedMaterial } from './SimulatedMaterial.js';
import { simulateTension, type TensionScenario } from './simulateTension.js';

/** @internal What a usual test is made of. */
interface UsualTest {
  readonly curve: SimulatedMaterial;
  readonly piece: UnbrokenPiece;
  readonly frame: SimulatedFrame;
  readonly extensometer: boolean;
  readonly hand: Omit<SimulatedHand, 'pauses'>;
  /** Where the hand rests, as a share of the way from yielding to the strength. */
  readonly rest?: number | undefined;
  /** Numbers by which rate, noise and times vary. */
  readonly random: ReturnType<typeof randomNumbers>;
  readonly seed: number;
}

/** @internal A tension test at the usual pace, with the noise and the steps of usual loggers. */
export function usualScenario({ curve, piece, frame, extensometer, hand, rest, random, seed }: UsualTest): TensionScenario {
  const yieldStress = curve.yieldStress ?? 200;
  const parallel = piece.parallelLength ?? piece.gaugeLength;
  // the elastic way of the train sets the pace: some 25 s up to yield, then far faster
  const stiffness = 1 / ((frame.compliance ?? 0) + parallel / (curve.modulus * piece.section.area));
  const speed = Math.max(0.004, (yieldStress * piece.section.area) / stiffness / 25);
  const force = 2 * yieldStress * piece.section.area;
  const fullScale = force > 12_500 ? 25_000 : 12_500;
  const strength = simulateTension({ material: curve, piece, logger: { rate: 1 } }).truth.tensileStrength;
  return {
    material: curve,
    piece,
    frame,
    hand: {
      ...hand,
      speed,
      speedAfterYield: Math.max(speed, Math.min(0.005 * parallel, 8 * speed)),
      ...(rest === undefined
        ? {}
        : { pauses: [{ stress: yieldStress + rest * (strength - yieldStress), duration: 2 + 2 * random.uniform() }] }),
    },
    logger: {
      rate: 20 + Math.round(30 * random.uniform()),
      forceNoise: fullScale * (0.0002 + 0.0003 * random.uniform()),
      motionNoise: extensometer ? 2e-4 : 5e-4,
      loadStep: fullScale / 2 ** 15 / (frame.bore === undefined ? 1 : pistonArea({ bore: frame.bore, rod: frame.rod })),
      motionStep: extensometer ? 1e-4 : 1e-3,
      lead: 1 + random.uniform(),
      tail: 1 + random.uniform(),
      extensometer,
    },
    seed,
  };
}
