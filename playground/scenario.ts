import { round } from '../src/index.js';
import { simulateTension, usualMaterials, type SimulatedFrame, type SimulatedHand, type SimulatedTension } from '../src/simulate/index.js';
import type { Assumptions } from './assumptions.js';

/** The choices of a simulated test. */
export interface Scenario {
  readonly material: string;
  readonly frame: 'soft' | 'stiff' | 'extensometer';
  readonly hand: 'even' | 'strokes' | 'rest';
  readonly samples: 'few' | 'usual' | 'many';
  readonly seed: number;
}

/** Numbers that a simulated test can have. */
export const seeds = { least: 1, most: 999_999 } as const;

export const usualScenario: Scenario = { material: 'cold-drawn steel', frame: 'soft', hand: 'strokes', samples: 'usual', seed: 1 };

const frames: Readonly<Record<Scenario['frame'], SimulatedFrame>> = {
  soft: { compliance: 1e-5, slack: 0.05, seating: 0.01 },
  stiff: { compliance: 3e-6, slack: 0.02 },
  extensometer: { compliance: 1e-5, slack: 0.05 },
};
const hands: Readonly<Record<Scenario['hand'], SimulatedHand>> = {
  even: {},
  strokes: { strokes: 24, depth: 0.25 },
  rest: { strokes: 24, depth: 0.25 },
};
const sizes: Readonly<Record<Scenario['samples'], number>> = { few: 500, usual: 4000, many: 100_000 };

const DIAMETER = 8;
const GAUGE = 40;
const PARALLEL = 48;
/** Time up to yielding and beyond it [s]. */
const [ELASTIC, PLASTIC] = [25, 55];

/** Material by its name; the number says where in its range it lies. */
const materialOf = ({ material, seed }: Scenario) => {
  const { make } = usualMaterials.find(({ name }) => name === material) ?? usualMaterials[0]!;
  return { ...make(((seed * 37) % 100) / 100, ((seed * 61) % 100) / 100), reductionOfArea: 0.4 + ((seed * 17) % 25) / 100 };
};

/** A simulated test of the choices. */
export function simulated(scenario: Scenario): SimulatedTension {
  const material = materialOf(scenario);
  const frame = frames[scenario.frame];
  const piece = { section: round({ diameter: DIAMETER }), gaugeLength: GAUGE, parallelLength: PARALLEL };
  const { area } = piece.section;
  const yieldStress = material.yieldStress ?? 200;
  const way = yieldStress * area * ((frame.compliance ?? 0) + PARALLEL / (material.modulus * area));
  const plastic = (material.fracture?.extension ?? 0.2) * PARALLEL;
  const extensometer = scenario.frame === 'extensometer';
  const full = 25_000;
  return simulateTension({
    material,
    piece,
    frame,
    hand: {
      ...hands[scenario.hand],
      speed: way / ELASTIC,
      speedAfterYield: plastic / PLASTIC,
      ...(scenario.hand === 'rest' ? { pauses: [{ stress: 1.08 * yieldStress, duration: 4 }] } : {}),
    },
    logger: {
      rate: sizes[scenario.samples] / (ELASTIC + PLASTIC),
      forceNoise: full * 2e-4,
      motionNoise: extensometer ? 2e-4 : 5e-4,
      loadStep: full / 2 ** 15,
      motionStep: extensometer ? 1e-4 : 1e-3,
      lead: 1,
      tail: 1,
      extensometer,
    },
    seed: scenario.seed,
  });
}

/** What is known about the piece and the frame of a simulated test. */
export function scenarioAssumptions(scenario: Scenario, truth: SimulatedTension['truth']): Assumptions {
  const finalDiameter = Math.sqrt((4 * truth.afterFracture.area!) / Math.PI);
  return {
    shape: 'round',
    limits: 'samples',
    values: {
      offset: 0.002,
      ...(scenario.frame === 'extensometer' ? { extensometerLength: GAUGE } : {}),
      frameCompliance: frames[scenario.frame].compliance!,
      gaugeLength: GAUGE,
      parallelLength: PARALLEL,
      diameter: DIAMETER,
      finalGaugeLength: Math.round(truth.afterFracture.gaugeLength! * 20) / 20,
      finalDiameter: Math.round(finalDiameter * 100) / 100,
    },
  };
}
