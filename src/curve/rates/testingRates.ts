/** A strain rate of ISO 6892-1 method A: what to aim at, and how far off it may be. */
export interface StrainRateRange {
  /** Number of the range, 1 to 4. */
  readonly range: 1 | 2 | 3 | 4;
  /** Strain rate to aim at, over the parallel length [1/s]. */
  readonly strainRate: number;
  /** Lowest and highest strain rate that still count [1/s]. */
  readonly limits: readonly [low: number, high: number];
  /** Quantities that may be determined in this range. */
  readonly determines: readonly string[];
}

/** Lowest and highest rate. */
export type RateLimits = readonly [low: number, high: number];

/** Testing rates of the standards, in the units of the library. */
export interface TestingRates {
  /** ISO 6892-1 method A: strain rates, each within 20 %. */
  readonly strainRanges: readonly StrainRateRange[];
  /** Ranges that ISO 6892-1 recommends where nothing else is specified: up to the proof strength, for ReL, for Rm and the elongations. */
  readonly recommendedRanges: Readonly<Record<'proof' | 'lowerYield' | 'strength', StrainRateRange['range']>>;
  /** ISO 6892-1 method B. */
  readonly methodB: {
    /** Modulus from which a material counts as stiff [MPa]. */
    readonly stiffFrom: number;
    /** Stress rates of materials below that modulus [MPa/s]. */
    readonly soft: RateLimits;
    /** Stress rates of the others [MPa/s]. */
    readonly stiff: RateLimits;
    /** Strain rates over the parallel length where ReL alone is determined [1/s]. */
    readonly lowerYield: RateLimits;
    /** Highest strain rate up to the proof strength [1/s]. */
    readonly upToProof: number;
    /** Highest strain rate after yielding [1/s]. */
    readonly afterYield: number;
  };
  /** ASTM E9: compression. */
  readonly e9: {
    /** Strain rates from start to end [1/s]: 0.005 a minute, here within 0.002 a minute. */
    readonly strainRate: RateLimits;
  };
  /** Bending. */
  readonly bending: {
    /** Strain rates of the outer fibre [1/s] (ISO 178; ASTM D790, procedure A: 0.01 a minute), here within 20 %. */
    readonly outerFibre: RateLimits;
    /** Speeds of the former in a bend test, where results are in dispute [mm/s] (ISO 7438). */
    readonly bendSpeed: RateLimits;
  };
  /** ASTM E8/E8M: controls up to yield, and the speed for the tensile strength. */
  readonly e8: {
    /** Control A: stress rates below the yield point [MPa/s]. */
    readonly stressRate: RateLimits;
    /** Control B: strain rates [1/s]. */
    readonly strainRate: RateLimits;
    /** Control C: crosshead speeds as shares of the parallel length [1/s]. */
    readonly crosshead: RateLimits;
    /** Strain rates after yield, for the tensile strength [1/s]. */
    readonly strength: RateLimits;
  };
}

/** Share by which a strain rate of method A may be off. */
const TOLERANCE = 0.2;
const MINUTE = 60;

const range = (number: StrainRateRange['range'], strainRate: number, determines: readonly string[]): StrainRateRange => ({
  range: number,
  strainRate,
  limits: [strainRate * (1 - TOLERANCE), strainRate * (1 + TOLERANCE)],
  determines,
});

/**
 * Testing rates of ISO 6892-1 (methods A and B), of ASTM E8/E8M (controls A, B and C), and of compression and bending, from memory of the clauses on testing rate.
 *
 * @remarks
 * Rates of ISO method A are over the parallel length; E8 gives its rates per minute, here they are per second. Control A of E8 is 10 000 to
 * 100 000 psi per minute. How far a rate may be off is the standards' own for methods A, B and C; for E9 and the outer fibre it is common practice. Compare the standard itself before a claim of conformity. Checked in `test/handbook/rates.test.ts`.
 */
export const testingRates: TestingRates = {
  strainRanges: [
    range(1, 0.00007, ['ReH', 'Rp', 'Rt']),
    range(2, 0.00025, ['ReH', 'Rp', 'Rt', 'ReL', 'Ae', 'Rm', 'A', 'Ag', 'Agt', 'Z']),
    range(3, 0.002, ['ReL', 'Ae', 'Rm', 'A', 'Ag', 'Agt', 'Z']),
    range(4, 0.0067, ['Rm', 'A', 'Ag', 'Agt', 'Z']),
  ],
  recommendedRanges: { proof: 2, lowerYield: 2, strength: 4 },
  methodB: {
    stiffFrom: 150_000,
    soft: [2, 20],
    stiff: [6, 60],
    lowerYield: [0.00025, 0.0025],
    upToProof: 0.0025,
    afterYield: 0.008,
  },
  e9: { strainRate: [(0.005 - 0.002) / MINUTE, (0.005 + 0.002) / MINUTE] },
  bending: { outerFibre: [(0.01 * (1 - TOLERANCE)) / MINUTE, (0.01 * (1 + TOLERANCE)) / MINUTE], bendSpeed: [0.8, 1.2] },
  e8: {
    stressRate: [1.15, 11.5],
    strainRate: [(0.015 - 0.006) / MINUTE, (0.015 + 0.006) / MINUTE],
    crosshead: [(0.015 - 0.003) / MINUTE, (0.015 + 0.003) / MINUTE],
    strength: [0.05 / MINUTE, 0.5 / MINUTE],
  },
};
