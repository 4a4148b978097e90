import { requireOptions, requirePositive, type Finding } from '../base/index.js';
import { cautionsFor, cuppingSetUpFindings, CUPPING_TOOLS } from '../methods/index.js';
import type { MaterialFamilyKey, UsualRange } from '../materials/index.js';
import { requireSheared, type ExpectedProperties, type ShearPlanMaterial } from './expectedProperties.js';
import { handLoading, type HandLoading } from './handLoading.js';
import { ifItStalls } from './ifItStalls.js';
import { planForce, requireLimits, type PlannedForce, type PlanThresholds } from './planForce.js';
import { strokeFindings } from './strokeFindings.js';
import { requireFrame, type TestFrame } from './TestFrame.js';

/** What a cupping test is planned from. */
export interface CuppingPlanInput {
  /** Family of the material; or `expected`, or both. */
  readonly family?: MaterialFamilyKey | undefined;
  /** Properties to be expected; they count before the family's. */
  readonly expected?: ExpectedProperties | undefined;
  /** Thickness of the sheet a [mm]. */
  readonly thickness: number;
  /** Width or diameter of the blank b [mm]; default not known. */
  readonly width?: number | undefined;
  /** Diameter of the ball [mm]; default 20. */
  readonly ballDiameter?: number | undefined;
  /** Bore of the die [mm]; default 27. */
  readonly dieDiameter?: number | undefined;
  /** Greatest depth to be expected [mm]; default 15. */
  readonly depth?: number | undefined;
  /** The frame; the tool holds the blank by itself. */
  readonly frame: TestFrame;
  /** Thresholds of the findings. */
  readonly thresholds?: PlanThresholds | undefined;
}

/** The plan of a cupping test. */
export interface CuppingPlan {
  /** Which test is planned. */
  readonly planOf: 'cupping';
  /** What the material is taken to be. */
  readonly material: ShearPlanMaterial;
  /** The frame, as given. */
  readonly frame: TestFrame;
  /** Thickness of the sheet [mm]. */
  readonly thickness: number;
  /** Diameter of the ball [mm]. */
  readonly ballDiameter: number;
  /** Bore of the die [mm]. */
  readonly dieDiameter: number;
  /** Force and pressure: the greatest tears the strongest sheet all around, the least cracks the weakest. */
  readonly force: PlannedForce;
  /** Greatest depth to be expected [mm]. */
  readonly depth: number;
  /** Travel of the crosshead up to there [mm]. */
  readonly travel: number;
  /** Speed of the ball, from least to most [mm/s]. */
  readonly speed: UsualRange;
  /** Bringing the ball in up to that depth. */
  readonly loading: HandLoading;
  /** What to do where the sheet does not crack. */
  readonly ifItStalls: readonly string[];
  /** Cautions of the test. */
  readonly cautions: readonly string[];
  /** Doubts. */
  readonly findings: readonly Finding[];
}

/** Deeper cups than this are not to be expected of the usual tools (common practice) [mm]. */
const DEPTH = 15;
/** Of the force that tears a sheet all around a cup cracks at half and more (common practice). */
const LEAST = 0.5;
/** 5 to 20 mm a minute (ISO 20482, from memory) [mm/s]. */
const SPEED: UsualRange = [5 / 60, 20 / 60];

/**
 * Plans a cupping test: whether the frame cracks the sheet, how far and how fast the ball goes in.
 *
 * $$ F \le \pi\, (D + a)\, a\, R_m, \qquad x = x_{slack} + C_f F + h $$
 *
 * @remarks
 * The greatest force is that which tears the bottom out of a cup around the whole ball, as in deep drawing: a crack on one side comes below it. Sheet of 0.1 to 2 mm and blanks of 90 mm belong to a ball of 20 mm in a die of 27 mm.
 * Stop when the force begins to fall away.
 *
 * @param input - `family` or `expected`, `thickness`, `width`, `ballDiameter`, `dieDiameter`, `depth` [mm], `frame`.
 * @returns Plan with force, travel, speed, loading, cautions, findings.
 * @throws {@link InputError} `missing`, `wrong-type`, `not-finite`, `not-positive`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * planCupping({ expected: { tensileStrength: 350 }, thickness: 1, frame: { capacity: 25000 } }).force.greatest; // => 23090.706
 * ```
 *
 * @see ISO 20482:2013, cupping test (sizes and speed from memory); bottom tearing force of deep drawing (textbooks). Checked in `test/planning/compressionPlan.test.ts`.
 */
export function planCupping(input: CuppingPlanInput): CuppingPlan {
  const from = 'planCupping';
  const known = ['family', 'expected', 'thickness', 'width', 'ballDiameter', 'dieDiameter', 'depth', 'frame', 'thresholds'];
  requireOptions(from, input, known, 'input');
  const thickness = requirePositive(from, 'thickness', input.thickness);
  const width = input.width === undefined ? undefined : requirePositive(from, 'width', input.width);
  const ballDiameter = requirePositive(from, 'ballDiameter', input.ballDiameter ?? CUPPING_TOOLS.ball);
  const dieDiameter = requirePositive(from, 'dieDiameter', input.dieDiameter ?? CUPPING_TOOLS.die);
  const depth = requirePositive(from, 'depth', input.depth ?? DEPTH);
  const material = requireSheared(from, input);
  const frame = requireFrame(from, input.frame);
  const limits = requireLimits(from, input.thresholds);
  const around = Math.PI * (ballDiameter + thickness) * thickness;
  const [weakest, strongest] = material.tensileStrength;
  const greatest = around * strongest;
  const { force, findings } = planForce(frame, { greatest, least: LEAST * around * weakest, what: 'of the weakest sheet' }, limits);
  const travel = (frame.slack ?? 0) + (frame.compliance ?? 0) * greatest + depth;
  findings.push(...cuppingSetUpFindings({ thickness, width }, ballDiameter, dieDiameter), ...strokeFindings(frame, travel, limits));
  return {
    planOf: 'cupping',
    material,
    frame,
    thickness,
    ballDiameter,
    dieDiameter,
    force,
    depth,
    travel,
    speed: SPEED,
    loading: handLoading(frame, greatest, [depth / SPEED[1], depth / SPEED[0]], depth),
    ifItStalls: ifItStalls(frame, 'take a thinner sheet'),
    cautions: cautionsFor('cupping'),
    findings,
  };
}
