import { finding, requireBetween, requireOptions, requirePositive, requireSection, type Finding, type Section } from '../base/index.js';
import { siebelCorrection } from '../hardening/index.js';
import { cautionsFor, heightRatios, requireCompressionPiece } from '../methods/index.js';
import type { MaterialFamilyKey, UsualRange } from '../materials/index.js';
import { findRoot } from '../numeric/index.js';
import { middle, requireMaterial, type ExpectedProperties, type PlannedMaterial } from './expectedProperties.js';
import { handLoading, type HandLoading } from './handLoading.js';
import { ifItStalls } from './ifItStalls.js';
import { planForce, requireLimits, type PlannedForce, type PlanThresholds } from './planForce.js';
import { strokeFindings } from './strokeFindings.js';
import { requireFrame, type TestFrame } from './TestFrame.js';

/** What a compression test is planned from. */
export interface CompressionPlanInput {
  /** Family of the material; or `expected`, or both. */
  readonly family?: MaterialFamilyKey | undefined;
  /** Properties to be expected, in tension; they count before the family's. */
  readonly expected?: ExpectedProperties | undefined;
  /** Section of the piece. */
  readonly section: Section;
  /** Height h0 [mm]. */
  readonly height: number;
  /** Strain at which the test is to be stopped [mm/mm], 0.001 to 0.9; default 0.1. */
  readonly toStrain?: number | undefined;
  /** End factor k of buckling, 0.5 to 2; default 0.5, flat ends between plates that cannot turn. */
  readonly endFactor?: number | undefined;
  /** Coefficient of friction at the ends μ, 0 to 0.577; default 0.1, lubricated (common practice). */
  readonly friction?: number | undefined;
  /** Strain rate up to yield [1/s]; default 0.5 % a minute. */
  readonly strainRate?: number | undefined;
  /** The frame. */
  readonly frame: TestFrame;
  /** Thresholds of the findings. */
  readonly thresholds?: PlanThresholds | undefined;
}

/** The plan of a compression test. */
export interface CompressionPlan {
  /** Which test is planned. */
  readonly planOf: 'compression';
  /** What the material is taken to be. */
  readonly material: PlannedMaterial;
  /** The frame, as given. */
  readonly frame: TestFrame;
  /** Section of the piece. */
  readonly section: Section;
  /** Height h0 [mm]. */
  readonly height: number;
  /** Height over diameter, or over the least width [1]. */
  readonly heightRatio: number;
  /** Strain at which the test is stopped [mm/mm]. */
  readonly toStrain: number;
  /** Force and pressure: the greatest brings the strongest piece to that strain, the least the weakest one to yield. */
  readonly force: PlannedForce;
  /** Part of the greatest force that friction at the ends takes [1]. */
  readonly frictionShare: number;
  /** Strain from which the piece may buckle [mm/mm]; absent up to 3 diameters, where it does not before it is flat, and where it is brittle. */
  readonly bucklingStrain?: number | undefined;
  /** Loss of height at that strain [mm]. */
  readonly shortening: number;
  /** Travel of the crosshead up to there [mm]. */
  readonly travel: number;
  /** Speed of the crosshead in the elastic part, with the give of the frame [mm/s]. */
  readonly speed: number;
  /** Bringing the force on up to the yield of the strongest piece. */
  readonly loading: HandLoading;
  /** Time from first force to the strain at which the test is stopped, at that speed throughout [s]. */
  readonly duration: number;
  /** Strokes or turns of the drive up to there; absent where the drive is not known. */
  readonly driveNumber?: number | undefined;
  /** What to do where the strain is not reached. */
  readonly ifItStalls: readonly string[];
  /** Cautions of the test. */
  readonly cautions: readonly string[];
  /** Doubts. */
  readonly findings: readonly Finding[];
}

/** Reached by a plan where nothing else is asked for. */
const TO_STRAIN = 0.1;
const FRICTION = 0.1;
/** 0.5 % a minute (ASTM E9, from memory). */
const STRAIN_RATE = 0.005 / 60;
/** Grey iron bears three to four times its tensile strength (common practice). */
const BRITTLE = 4;

/** Greatest true stress at a true strain by Hollomon's law through Rm, over Rm, of exponents from lowest to highest: it is highest where the exponent is the strain. */
function hardened(strain: number, [low, high]: UsualRange): number {
  const n = Math.min(high, Math.max(low, strain));
  return n > 0 ? ((Math.E * strain) / n) ** n : 1;
}

/** Strain at which a piece no longer stays straight: Euler's where that comes before yield; else by the tangent modulus, ε exp(−3ε) = π² n / λ², with the shape that it has by then. */
function bucklingOf(slenderness: number, exponent: number, yieldStrain: number): number | undefined {
  const elastic = (Math.PI / slenderness) ** 2;
  if (elastic < yieldStrain) return elastic;
  const limit = elastic * exponent;
  if (limit >= Math.exp(-1) / 3 || exponent <= 0) return undefined;
  return Math.max(yieldStrain, 1 - Math.exp(-findRoot((strain) => strain * Math.exp(-3 * strain) - limit, 0, 1 / 3)));
}

/**
 * Plans a compression test: whether the frame brings the piece to a strain, whether the piece stays straight, how fast and how far.
 *
 * $$ F = \frac{S_0}{1 - e}\, R_m \left( \frac{\mathrm{e}\, \varepsilon}{n} \right)^n \left( 1 + \frac{\mu d}{3 h} \right), \qquad \varepsilon = -\ln(1 - e), \qquad
 * \varepsilon_b\, \mathrm{e}^{-3 \varepsilon_b} = \frac{\pi^2 n}{\lambda^2} \text{ or, below } \tfrac{R_p}{E},\ \varepsilon_b = \frac{\pi^2}{\lambda^2}, \qquad \lambda = \frac{k h_0}{i_0}, \qquad v = \dot\varepsilon\, (h_0 + C_f E S_0) $$
 *
 * @remarks
 * The flow stress is that of tension by Hollomon, with n from the uniform elongation, and never below the yield strength; a brittle metal is taken to bear four times its tensile strength. d and h are those at the end
 * (Siebel). Buckling above 3 diameters: at the strain π²/λ² of Euler where that lies below the lowest yield, else by the tangent modulus (Engesser) at the lowest exponent, not before yield. Friction makes the piece a barrel: lubricate the ends, and measure both diameters from 10 % on.
 *
 * @param input - `family` or `expected`, `section`, `height` [mm], `toStrain` [mm/mm], `endFactor`, `friction` [1], `strainRate` [1/s], `frame`.
 * @returns Plan with force, friction, buckling, travel, speed, loading, cautions, findings.
 * @throws {@link InputError} `missing`, `wrong-type`, `not-finite`, `not-positive`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * const expected = { modulus: 210000, yieldStrength: 250, tensileStrength: 400, elongation: 0.3, exponent: 0.2 };
 * const plan = planCompression({ expected, section: round({ diameter: 6 }), height: 24, frame: { capacity: 25000 } });
 * plan.force.greatest; // => 13633.788
 * plan.bucklingStrain; // => 0.03359
 * ```
 *
 * @see ASTM E9 (proportions, rate; from memory); Siebel; Euler; Engesser (1889). Checked in `test/planning/compressionPlan.test.ts`.
 */
export function planCompression(input: CompressionPlanInput): CompressionPlan {
  const from = 'planCompression';
  const known = ['family', 'expected', 'section', 'height', 'toStrain', 'endFactor', 'friction', 'strainRate', 'frame', 'thresholds'];
  requireOptions(from, input, known, 'input');
  const { area } = requireSection(from, 'section', input.section);
  const height = requirePositive(from, 'height', input.height);
  const toStrain = requireBetween(from, 'toStrain', input.toStrain ?? TO_STRAIN, 0.001, 0.9);
  const endFactor = requireBetween(from, 'endFactor', input.endFactor ?? 0.5, 0.5, 2);
  const friction = requireBetween(from, 'friction', input.friction ?? FRICTION, 0, 0.577);
  const strainRate = requirePositive(from, 'strainRate', input.strainRate ?? STRAIN_RATE);
  const material = requireMaterial(from, input);
  const frame = requireFrame(from, input.frame);
  const limits = requireLimits(from, input.thresholds);
  const { diameter, width, secondMoment } = requireCompressionPiece(from, { section: input.section, height, endFactor });

  const modulus = middle(material.modulus);
  const yields = material.yieldStrength ?? material.tensileStrength;
  const exponents: UsualRange = [Math.log1p(material.uniformExtension[0]), Math.log1p(material.uniformExtension[1])];
  const strain = -Math.log1p(-toStrain);
  const flow = material.tensileStrength[1] * (material.ductile ? hardened(strain, exponents) : BRITTLE);
  const without = siebelCorrection({ friction, diameter: diameter * Math.exp(strain / 2), height: height * Math.exp(-strain) });
  const greatest = (area * Math.exp(strain) * Math.max(flow, yields[1])) / without;
  const { force, findings } = planForce(frame, { greatest, least: yields[0] * area, what: 'of the lowest yield' }, limits);

  const ratio = height / width;
  const slenderness = secondMoment === undefined ? undefined : (endFactor * height) / Math.sqrt(secondMoment / area);
  const { leastRatio, bucklingRatio, mostRatio } = heightRatios;
  const watched = ratio > bucklingRatio && material.ductile ? slenderness : undefined;
  const bucklingStrain = watched === undefined ? undefined : bucklingOf(watched, exponents[0], yields[0] / modulus);
  if (ratio < leastRatio) findings.push(finding('piece-squat', { ratio, least: leastRatio }));
  if (ratio > mostRatio) findings.push(finding('piece-slender', { ratio, most: mostRatio }));
  if (bucklingStrain !== undefined && bucklingStrain < toStrain)
    findings.push(finding('planned-buckling', { ratio, strain: bucklingStrain, planned: toStrain }));
  const shortening = toStrain * height;
  const underForce = (frame.compliance ?? 0) * greatest + shortening;
  const travel = (frame.slack ?? 0) + underForce;
  findings.push(...strokeFindings(frame, travel, limits));
  const time = yields[1] / modulus / strainRate;
  const speed = strainRate * (height + (frame.compliance ?? 0) * modulus * area);
  const duration = underForce / speed;
  const { driveNumber } = handLoading(frame, greatest, [duration, duration], shortening);
  return {
    planOf: 'compression',
    material,
    frame,
    section: input.section,
    height,
    heightRatio: ratio,
    toStrain,
    force,
    frictionShare: 1 - without,
    ...(bucklingStrain === undefined ? {} : { bucklingStrain }),
    shortening,
    travel,
    speed,
    loading: handLoading(frame, yields[1] * area, [time, time], (yields[1] / modulus) * height),
    duration,
    ...(driveNumber === undefined ? {} : { driveNumber }),
    ifItStalls: ifItStalls(frame, 'take a smaller section'),
    cautions: cautionsFor('compression'),
    findings,
  };
}
