import { requireOneOf, requireOptions, requirePositive, requireSection, type Finding, type Section } from '../base/index.js';
import { cautionsFor } from '../methods/index.js';
import type { MaterialFamilyKey, UsualRange } from '../materials/index.js';
import { requireSheared, requireRange, type ExpectedProperties, type ShearPlanMaterial } from './expectedProperties.js';
import { handLoading, type HandLoading } from './handLoading.js';
import { ifItStalls } from './ifItStalls.js';
import { planForce, requireLimits, type PlannedForce, type PlanThresholds } from './planForce.js';
import { requireFrame, type TestFrame } from './TestFrame.js';

/** What a shear test is planned from. */
export interface ShearPlanInput {
  /** Family of the material; or `expected`, or both. */
  readonly family?: MaterialFamilyKey | undefined;
  /** Properties to be expected; they count before the family's. */
  readonly expected?: ExpectedProperties | undefined;
  /** Section of the pin. */
  readonly section: Section;
  /** Number of planes that shear; default 2. */
  readonly planes?: 1 | 2 | undefined;
  /** Shear strength over tensile strength [1]; default 0.6 to 0.8. */
  readonly shearRatio?: number | UsualRange | undefined;
  /** Rise of the mean shear stress to aim at [MPa/s]; default 10. */
  readonly stressRate?: number | undefined;
  /** The frame. */
  readonly frame: TestFrame;
  /** Thresholds of the findings. */
  readonly thresholds?: PlanThresholds | undefined;
}

/** The plan of a shear test. */
export interface ShearPlan {
  /** Which test is planned. */
  readonly planOf: 'shear';
  /** What the material is taken to be. */
  readonly material: ShearPlanMaterial;
  /** The frame, as given. */
  readonly frame: TestFrame;
  /** Section of the pin. */
  readonly section: Section;
  /** Number of planes that shear. */
  readonly planes: 1 | 2;
  /** Shear strength to be expected [MPa]. */
  readonly shearStrength: UsualRange;
  /** Force and pressure. */
  readonly force: PlannedForce;
  /** Bringing the force on. */
  readonly loading: HandLoading;
  /** What to do where the piece does not shear. */
  readonly ifItStalls: readonly string[];
  /** Cautions of the test. */
  readonly cautions: readonly string[];
  /** Doubts. */
  readonly findings: readonly Finding[];
}

/** Shear over tensile strength of steels, and of aluminium within it (from memory). */
const RATIO: UsualRange = [0.6, 0.8];
/** Rise of shear stress that a hand keeps even (common practice) [MPa/s]. */
const RATE = 10;

/**
 * Plans a shear test of a pin: whether the frame shears it, at which pressure, and in which time.
 *
 * $$ F = n\, S_0\, \tau, \qquad \tau = (0.6 \dots 0.8)\, R_m $$
 *
 * @remarks
 * The ratio is from memory and of steels; fixtures differ by about 10 %. The frame must shear the strongest pin of the family.
 *
 * @param input - `family` or `expected`, `section`, `planes`, `shearRatio` [1], `stressRate` [MPa/s], `frame`.
 * @returns Plan with force, loading, cautions, findings.
 * @throws {@link InputError} `missing`, `wrong-type`, `not-finite`, `not-positive`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * planShear({ family: 'structural-steel', section: round({ diameter: 5 }), frame: { capacity: 25000 } }).force.utilisation; // => 0.9048
 * ```
 *
 * @see Elementary mechanics, mean shear stress. Checked in `test/planning/otherPlans.test.ts`.
 */
export function planShear(input: ShearPlanInput): ShearPlan {
  const from = 'planShear';
  const known = ['family', 'expected', 'section', 'planes', 'shearRatio', 'stressRate', 'frame', 'thresholds'];
  requireOptions(from, input, known, 'input');
  const { area } = requireSection(from, 'section', input.section);
  const planes = requireOneOf(from, 'planes', input.planes ?? 2, [1, 2]);
  const ratio = requireRange(from, 'shearRatio', input.shearRatio ?? RATIO);
  const stressRate = requirePositive(from, 'stressRate', input.stressRate ?? RATE);
  const material = requireSheared(from, input);
  const frame = requireFrame(from, input.frame);
  const limits = requireLimits(from, input.thresholds);
  const shearStrength: UsualRange = [ratio[0] * material.tensileStrength[0], ratio[1] * material.tensileStrength[1]];
  const [least, greatest] = shearStrength.map((one) => planes * area * one) as [number, number];
  const { force, findings } = planForce(frame, { greatest, least, what: 'of the weakest pin' }, limits);
  return {
    planOf: 'shear',
    material,
    frame,
    section: input.section,
    planes,
    shearStrength,
    force,
    loading: handLoading(frame, greatest, [shearStrength[1] / stressRate, shearStrength[1] / stressRate]),
    ifItStalls: ifItStalls(frame, planes === 2 ? 'take a thinner pin, or shear it in one plane' : 'take a thinner pin'),
    cautions: cautionsFor('shear'),
    findings,
  };
}
