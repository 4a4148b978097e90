/**
 * Tension tests whose errors are drawn from stated doubts, for the study of uncertainties: what the frame, the dimensions and the noise
 * do to a record is drawn anew for each seed, while the analysis is told only the nominal values and the doubts. All invented.
 */
import { analyseTension, round, type TensionOptions, type TensionRecord, type TensionResult, type TestPiece } from '../src/index.js';
import { randomNumbers } from '../src/numeric/index.js';
import { simulateTension, type SimulatedMaterial, type TensionScenario } from '../src/simulate/index.js';

export const kinds = [
  'steel, extensometer',
  'steel with a yield point, extensometer',
  'aluminium, extensometer',
  'aluminium, correlated noise',
  'steel, travel less the frame',
] as const;
export type Kind = (typeof kinds)[number];

const swift: SimulatedMaterial = {
  modulus: 206_000,
  yieldStress: 420,
  hardening: { law: 'swift', prestrain: 0.02, exponent: 0.15 },
  fracture: { extension: 0.3 },
};
const yielding: SimulatedMaterial = {
  modulus: 206_000,
  yieldStress: 280,
  yieldPoint: { upper: 305, plateau: 0.014 },
  hardening: { law: 'swift', prestrain: 0.03, exponent: 0.25 },
  fracture: { extension: 0.35 },
};
// smooth from the start, as Ramberg-Osgood with an exponent of 20
const aluminium: SimulatedMaterial = {
  modulus: 70_000,
  hardening: { law: 'hollomon', strengthCoefficient: 375, exponent: 0.05 },
  fracture: { extension: 0.1 },
};

const DIAMETER = 8;
const LENGTHS = { gaugeLength: 40, parallelLength: 48 };
const COMPLIANCE = 1e-5;
/** Half-widths of a class 1 channel, of a micrometer [mm]; standard uncertainties of scale and lengths, relative; of the broken piece [mm, mm²]. */
const doubts = {
  accuracy: 0.01,
  repeatability: 0.005,
  micrometer: 0.01,
  displacement: 0.003,
  length: 0.002,
  frame: 0.03,
  finalLength: 0.1,
  finalArea: 0.3,
};
/** A and Z of every piece. */
const ELONGATION = 0.25;
const REDUCTION = 0.6;

interface Setting {
  readonly material: SimulatedMaterial;
  readonly logger: NonNullable<TensionScenario['logger']>;
}
const settings: Readonly<Record<Kind, Setting>> = {
  'steel, extensometer': { material: swift, logger: { rate: 20, extensometer: true, forceNoise: 20, motionNoise: 2e-4 } },
  'steel with a yield point, extensometer': {
    material: yielding,
    logger: { rate: 20, extensometer: true, forceNoise: 20, motionNoise: 2e-4 },
  },
  'aluminium, extensometer': { material: aluminium, logger: { rate: 20, extensometer: true, forceNoise: 15, motionNoise: 2e-4 } },
  'aluminium, correlated noise': { material: aluminium, logger: { rate: 20, extensometer: true, forceNoise: 15, noiseCorrelation: 0.9 } },
  'steel, travel less the frame': { material: swift, logger: { rate: 20, forceNoise: 20, motionNoise: 5e-4 } },
};

export interface UncertainTest {
  readonly record: TensionRecord;
  readonly piece: TestPiece;
  readonly options: TensionOptions;
  /** n of a material that follows Hollomon's law. */
  readonly exponent: number | undefined;
  readonly truth: ReturnType<typeof simulateTension>['truth'];
}

/** A test of one kind; `systematic` false leaves the noise alone. */
export function uncertainTest(kind: Kind, seed: number, systematic = true): UncertainTest {
  const { material, logger } = settings[kind];
  const { uniform, normal } = randomNumbers(seed);
  const within = (half: number): number => half * (2 * uniform() - 1);
  const share = systematic ? 1 : 0;
  const force = 1 + share * (within(doubts.accuracy) + within(doubts.repeatability));
  const diameter = DIAMETER + share * within(doubts.micrometer);
  const displacement = 1 + share * doubts.displacement * normal();
  const length = 1 + share * doubts.length * normal();
  const frame = 1 + share * doubts.frame * normal();
  // the broken piece: true lengths and areas, and how they were read
  const marks = LENGTHS.gaugeLength * (1 + doubts.length * normal());
  const finalLength = marks * (1 + ELONGATION) + doubts.finalLength * normal();
  const finalArea = round({ diameter }).area * (1 - REDUCTION) + doubts.finalArea * normal();
  const byTravel = logger.extensometer !== true;
  const { record, truth } = simulateTension({
    material,
    piece: {
      section: round({ diameter }),
      gaugeLength: LENGTHS.gaugeLength,
      extensometerLength: LENGTHS.gaugeLength * length,
      parallelLength: LENGTHS.parallelLength * length,
    },
    frame: { compliance: byTravel ? COMPLIANCE * frame : 0, slack: 0.1 },
    hand: { speed: 0.02, speedAfterYield: 0.2 },
    logger,
    seed,
  });
  // what was indicated, where the true value is the scale times it
  const indicated = (column: Float64Array, scale: number): Float64Array => column.map((one) => one / scale);
  return {
    record: {
      force: indicated(record.force, force),
      ...(record.extension ? { extension: indicated(record.extension, displacement) } : {}),
      ...(record.travel ? { travel: indicated(record.travel, displacement) } : {}),
      ...(record.time ? { time: record.time } : {}),
    },
    piece: {
      section: round({ diameter: DIAMETER }),
      ...LENGTHS,
      ...(systematic ? { afterFracture: { gaugeLength: finalLength, area: finalArea } } : {}),
    },
    exponent: material.hardening.law === 'hollomon' ? material.hardening.exponent : undefined,
    options: {
      ...(byTravel ? { frameCompliance: COMPLIANCE } : {}),
      uncertainty: systematic
        ? {
            coverage: 0.95,
            forceClass: 1,
            section: { diameter: { halfWidth: doubts.micrometer } },
            displacement: doubts.displacement,
            extensometerLength: doubts.length * LENGTHS.gaugeLength,
            parallelLength: doubts.length * LENGTHS.parallelLength,
            gaugeLength: doubts.length * LENGTHS.gaugeLength,
            finalGaugeLength: doubts.finalLength,
            finalArea: doubts.finalArea,
            ...(byTravel ? { frameCompliance: doubts.frame } : {}),
          }
        : { coverage: 0.95 },
    },
    truth,
  };
}

/** Value, truth, stated uncertainty and half of the 95 % interval of what is compared. */
export function compared(test: UncertainTest, result: TensionResult): Readonly<Record<string, readonly [number, number, number, number]>> {
  const { truth } = test;
  const hardening = result.hardening;
  const pairs = {
    E: [result.modulus, truth.modulus],
    'Rp0.2': [result.proofStrengths[0], truth.upperYieldStrength === undefined ? truth.proofStrengths[1]?.stress : undefined],
    ReH: [result.upperYieldStrength, truth.upperYieldStrength],
    ReL: [result.lowerYieldStrength, truth.lowerYieldStrength],
    Rm: [result.tensileStrength, truth.tensileStrength],
    Agt: [result.totalExtensionAtMaximumForce, truth.totalExtensionAtMaximumForce],
    U: [test.record.extension ? result.toughness : undefined, truth.toughness],
    εu: [result.necking, truth.necking],
    n: [hardening?.exponent, test.exponent],
    A: [result.elongationAfterFracture, ELONGATION],
    Z: [result.reductionOfArea, REDUCTION],
  } as const;
  return Object.fromEntries(
    Object.entries(pairs).flatMap(([symbol, [quantity, known]]) => {
      const budget = quantity && result.uncertainty?.[quantity.symbol];
      return quantity === undefined || budget === undefined || known === undefined
        ? []
        : [[symbol, [quantity.value, known, budget.standardUncertainty, budget.expandedUncertainty] as const]];
    }),
  );
}

/** Analyses a test with what is doubtful about it. */
export const analysed = ({ record, piece, options }: UncertainTest): TensionResult => analyseTension(record, piece, options);
