import { finding, requireOptions, requirePositive, requireSection, type Finding, type Section } from '../base/index.js';
import { cautionsFor } from '../methods/index.js';
import type { MaterialFamilyKey } from '../materials/index.js';
import { bendingForce } from './bendingForce.js';
import { middle, requireBent, type ExpectedProperties, type BendingPlanMaterial } from './expectedProperties.js';
import { handLoading, type HandLoading } from './handLoading.js';
import { ifItStalls } from './ifItStalls.js';
import { planForce, requireLimits, type PlannedForce, type PlanThresholds } from './planForce.js';
import { requireFrame, type TestFrame } from './TestFrame.js';

/** What a bending test is planned from. */
export interface BendingPlanInput {
  /** Family of the material; or `expected`, or both. */
  readonly family?: MaterialFamilyKey | undefined;
  /** Properties to be expected; they count before the family's. */
  readonly expected?: ExpectedProperties | undefined;
  /** Section of the bar, bent in the direction of its thickness. */
  readonly section: Section;
  /** Distance of the supports L [mm]. */
  readonly span: number;
  /** Distance of two loading noses from their supports a [mm]; default none: one nose in the middle. */
  readonly arm?: number | undefined;
  /** Strain rate of the outer fibre [1/s]; default 1 % a minute. */
  readonly strainRate?: number | undefined;
  /** The frame. */
  readonly frame: TestFrame;
  /** Thresholds of the findings. */
  readonly thresholds?: PlanThresholds | undefined;
}

/** The plan of a bending test. */
export interface BendingPlan {
  /** Which test is planned. */
  readonly planOf: 'bending';
  /** What the material is taken to be. */
  readonly material: BendingPlanMaterial;
  /** The frame, as given. */
  readonly frame: TestFrame;
  /** Section of the bar. */
  readonly section: Section;
  /** Distance of the supports [mm]. */
  readonly span: number;
  /** Force and pressure: the greatest bends the strongest bar right through, the least brings the weakest to yield. */
  readonly force: PlannedForce;
  /** Deflection in the middle when the outer fibre of the strongest bar yields [mm]. */
  readonly deflectionAtYield: number;
  /** Speed of the crosshead in the elastic part, with the give of the frame [mm/s]. */
  readonly speed: number;
  /** Bringing the force on up to the yield of the strongest bar. */
  readonly loading: HandLoading;
  /** What to do where the bar does not bend. */
  readonly ifItStalls: readonly string[];
  /** Cautions of the test. */
  readonly cautions: readonly string[];
  /** Doubts. */
  readonly findings: readonly Finding[];
}

/** Force of a bar that is plastic throughout over that of first yield; others are below a round. */
const PLASTIC: Readonly<Partial<Record<Section['shape'], number>>> = { rectangular: 1.5, square: 1.5 };
const ROUND = 16 / (3 * Math.PI);
/** Span over depth from which shear hardly adds to the deflection (common practice). */
const SLENDER = 16;
/** 1 % a minute (ISO 178). */
const STRAIN_RATE = 0.01 / 60;

/**
 * Plans a bending test: whether the frame bends the bar right through, at which pressure, how fast and how far.
 *
 * $$ F = \alpha \frac{4 W R_m}{L}, \qquad s_y = \frac{R_e L^2}{6 E h}, \qquad v = \dot\varepsilon \left( \frac{L^2}{6 h} + C_f \frac{4 W E}{L} \right) $$
 *
 * @remarks
 * Formulas of one nose; with two, the deflection in the middle is $R_e (3L^2 - 4a^2) / (12 E h)$. $\alpha$ is 1.5 for rectangles and 1.70 for rounds,
 * which also bounds other shapes. Where the material has no yield its strength stands for it.
 *
 * @param input - `family` or `expected`, `section`, `span` [mm], `arm` [mm], `strainRate` [1/s], `frame`.
 * @returns Plan with force, deflection, speed, loading, cautions, findings.
 * @throws {@link InputError} `missing`, `wrong-type`, `not-finite`, `not-positive`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * const section = rectangular({ width: 20, thickness: 5 });
 * planBending({ family: 'structural-steel', section, span: 100, frame: { capacity: 25000 } }).force.greatest; // => 3600
 * ```
 *
 * @see ISO 178 (formulas of flexure); elementary mechanics of beams. Checked in `test/planning/otherPlans.test.ts`.
 */
export function planBending(input: BendingPlanInput): BendingPlan {
  const from = 'planBending';
  const known = ['family', 'expected', 'section', 'span', 'arm', 'strainRate', 'frame', 'thresholds'];
  requireOptions(from, input, known, 'input');
  const { span, arm } = input;
  const section = requireSection(from, 'section', input.section);
  const strainRate = requirePositive(from, 'strainRate', input.strainRate ?? STRAIN_RATE);
  const material = requireBent(from, input);
  const frame = requireFrame(from, input.frame);
  const limits = requireLimits(from, input.thresholds);
  const modulus = middle(material.modulus);
  const yields = material.yieldStrength ?? material.tensileStrength;
  const forceAt = (stress: number): number => bendingForce({ section, span, arm, stress });
  const factor = material.ductile ? (PLASTIC[section.shape] ?? ROUND) : 1;
  const greatest = factor * forceAt(material.tensileStrength[1]);
  const { force, findings } = planForce(frame, { greatest, least: forceAt(yields[0]), what: 'of the lowest yield' }, limits);
  // depth in the direction of bending, from I = W h / 2
  const depth = (2 * requirePositive(from, 'section.secondMoment', section.secondMoment)) / section.sectionModulus!;
  const perStrain = arm === undefined ? span ** 2 / (6 * depth) : (3 * span ** 2 - 4 * arm ** 2) / (12 * depth);
  const deflectionAtYield = (yields[1] / modulus) * perStrain;
  const speed = strainRate * (perStrain + (frame.compliance ?? 0) * forceAt(modulus));
  const time = yields[1] / modulus / strainRate;
  // the depth carries a rounding error
  if ((span / depth) * (1 + 1e-9) < SLENDER) findings.push(finding('planned-span-short', { ratio: span / depth, limit: SLENDER }));
  return {
    planOf: 'bending',
    material,
    frame,
    section,
    span,
    force,
    deflectionAtYield,
    speed,
    loading: handLoading(frame, forceAt(yields[1]), [time, time], deflectionAtYield),
    ifItStalls: ifItStalls(frame, 'take a thinner bar or a longer span'),
    cautions: cautionsFor('bending'),
    findings,
  };
}
