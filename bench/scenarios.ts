/**
 * Six kinds of tension curves with known slope, for the study and the benchmark of the elastic line. All invented: two materials, a toe,
 * yielding, necking, and what loggers add. Nothing here is read by the package.
 */
import { randomNumbers } from '../src/numeric/index.js';

export const scenarios = ['steel', 'aluminium', 'yield point', 'correlated noise', 'coarse digits', 'noisy extension'] as const;
/** Soft copper yields from the first load on: it has no slope to find, and is told apart. */
export type Scenario = (typeof scenarios)[number] | 'soft copper';

export interface KnownCurve {
  readonly strain: Float64Array;
  readonly stress: Float64Array;
  /** The slope it was made with [MPa]. */
  readonly modulus: number;
  /** Proof strength of the curve itself, with its own slope [MPa]. */
  readonly proofStrength: number;
}

/** Extensometer base [mm], and one step of its reading [mm]. */
const BASE = 50;
export const STEP = 1e-5;
/** Share of the samples up to the proof strength, share that repeats the sample before, and the fall of stress up to fracture. */
const BEFORE_KNEE = 0.3;
const REPEATED = 0.004;
const FALL = 0.25;

interface Material {
  readonly modulus: number;
  /** Stress at a strain without the toe. */
  readonly stressAt: (strain: number) => number;
  readonly knee: number;
  readonly proofStrength: number;
  readonly necking: number;
}

/** Ramberg-Osgood: stress at a strain by Newton's method from above, where it converges without fail. */
function rounded(modulus: number, proof: number, exponent: number): Material {
  const strainOf = (R: number): number => R / modulus + 0.002 * (R / proof) ** exponent;
  const stressAt = (strain: number): number => {
    let R = Math.min(strain * modulus, proof * (strain / 0.002) ** (1 / exponent));
    for (let k = 0; k < 60; k += 1) {
      const step = (strainOf(R) - strain) / (1 / modulus + (0.002 * exponent * (R / proof) ** (exponent - 1)) / proof);
      R -= step;
      if (Math.abs(step) < 1e-12 * proof) break;
    }
    return R;
  };
  return { modulus, stressAt, knee: proof / modulus + 0.002, proofStrength: proof, necking: 0.08 };
}

/** Straight up to an upper yield strength, a short fall, a plateau, then hardening. */
function withYieldPoint(modulus: number, lower: number, upper: number, plateau: number): Material {
  const first = upper / modulus;
  const fallen = first + 3e-4;
  const until = fallen + plateau;
  const stressAt = (e: number): number => {
    if (e <= first) return modulus * e;
    if (e <= fallen) return upper + ((lower - upper) * (e - first)) / (fallen - first);
    return e <= until ? lower : lower + 400 * (e - until) ** 0.6;
  };
  return { modulus, stressAt, knee: lower / modulus + 0.002, proofStrength: lower, necking: 0.15 };
}

function materialOf(scenario: Scenario, uniform: () => number, normal: () => number): Material {
  const between = (low: number, high: number): number => low + (high - low) * uniform();
  const modulus = (about: number): number => about * (1 + 0.03 * normal());
  if (scenario === 'aluminium') return rounded(modulus(70_000), between(250, 450), between(12, 22));
  if (scenario === 'soft copper') return rounded(modulus(120_000), between(40, 90), between(3, 5));
  if (scenario !== 'yield point') return rounded(modulus(205_000), between(300, 700), between(7, 14));
  const lower = between(250, 400);
  return withYieldPoint(modulus(205_000), lower, lower * between(1.02, 1.1), between(0.008, 0.023));
}

/** A curve of about n samples, the same for the same seed. */
export function knownCurve(scenario: Scenario, n: number, seed: number): KnownCurve {
  const { uniform, normal } = randomNumbers(seed);
  const { modulus, stressAt, knee, proofStrength, necking } = materialOf(scenario, uniform, normal);
  const toe = 5e-5 + 4.5e-4 * uniform();
  const toeStress = (0.03 + 0.05 * uniform()) * proofStrength;
  const top = stressAt(necking);
  const fracture = 1.5 * necking;
  const fullScale = 1.25 * top;
  const coarse = scenario === 'coarse digits';
  const noise = (coarse ? 0.0005 : 0.001) * fullScale;
  const digit = fullScale / 2 ** (coarse ? 10 : 16);
  const steps = STEP / BASE;
  const strain = new Float64Array(n);
  const stress = new Float64Array(n);
  const before = Math.round(BEFORE_KNEE * n);
  let drift = 0;
  for (let i = 0; i < n; i += 1) {
    const e = i < before ? (knee * i) / before : knee + ((fracture - knee) * (i - before)) / (n - 1 - before);
    const R = e <= necking ? stressAt(e) : top * (1 - FALL * ((e - necking) / (fracture - necking)) ** 2);
    drift = scenario === 'correlated noise' ? 0.9 * drift + Math.sqrt(1 - 0.9 ** 2) * normal() : normal();
    const read = e + toe * (1 - Math.exp(-R / toeStress)) + (scenario === 'noisy extension' ? (5e-4 / BASE) * normal() : 0);
    strain[i] = Math.round(read / steps) * steps;
    stress[i] = Math.round((R + noise * drift) / digit) * digit;
    if (i > 0 && uniform() < REPEATED) {
      strain[i] = strain[i - 1]!;
      stress[i] = stress[i - 1]!;
    }
  }
  return { strain, stress, modulus, proofStrength };
}
