import { finding, InputError, requireOptions, requirePositive, type Finding } from '../base/index.js';
import {
  brinellCombinations,
  brinellHardness,
  cautionsFor,
  forceIndexOf,
  KGF_PER_NEWTON,
  type BrinellCombination,
  type BrinellHardness,
} from '../methods/index.js';
import type { UsualRange } from '../materials/index.js';
import { requireRange } from './expectedProperties.js';
import { handLoading, type HandLoading } from './handLoading.js';
import { ifItStalls } from './ifItStalls.js';
import { planForce, requireLimits, type PlannedForce, type PlanThresholds } from './planForce.js';
import { requireFrame, type TestFrame } from './TestFrame.js';

/** What a Brinell test is planned from. */
export interface BrinellPlanInput {
  /** Ball diameter D [mm]. */
  readonly ballDiameter: number;
  /** Test force [N]; or `index`. */
  readonly force?: number | undefined;
  /** Index 0.102 F/D² [N/mm² by convention]; or `force`. */
  readonly index?: number | undefined;
  /** Hardness to be expected [HBW], as one number or from lowest to highest. */
  readonly hardness: number | UsualRange;
  /** Thickness of the piece [mm]. */
  readonly thickness?: number | undefined;
  /** The frame. */
  readonly frame: TestFrame;
  /** Thresholds of the findings. */
  readonly thresholds?: PlanThresholds | undefined;
}

/** The plan of a Brinell test. */
export interface BrinellPlan {
  /** Which test is planned. */
  readonly planOf: 'brinell';
  /** The frame, as given. */
  readonly frame: TestFrame;
  /** Ball diameter [mm]. */
  readonly ballDiameter: number;
  /** Index 0.102 F/D². */
  readonly index: number;
  /** Hardness to be expected [HBW]. */
  readonly hardness: UsualRange;
  /** Force and pressure. */
  readonly force: PlannedForce;
  /** Diameter of the indentation, from the hardest to the softest [mm]; absent where the ball would sink in. */
  readonly indentation?: UsualRange | undefined;
  /** Eight times the greatest depth: the least thickness [mm]. */
  readonly leastThickness?: number | undefined;
  /** Least distance of the centre from an edge, 2.5 d [mm]. */
  readonly leastEdge?: number | undefined;
  /** Least distance of two centres, 3 d [mm]. */
  readonly leastSpacing?: number | undefined;
  /** Bringing the force on, in 2 to 8 s. */
  readonly loading: HandLoading;
  /** How long the force is held, from least to most [s]. */
  readonly dwell: UsualRange;
  /** Balls and forces that this frame reaches and that can show the hardness. */
  readonly possible: readonly BrinellCombination[];
  /** What to do where the force is not reached. */
  readonly ifItStalls: readonly string[];
  /** Cautions of the test. */
  readonly cautions: readonly string[];
  /** Doubts. */
  readonly findings: readonly Finding[];
}

const USUAL = [1, 2.5, 5, 10, 15, 30];
/** An index may be so far off by rounding of the forces. */
const ROUNDING = 0.01;
/** The test force may be off by so much (ISO 6506-1, from memory). */
const FORCE_ERROR = 0.01;
const LOADING: UsualRange = [2, 8];
const DWELL: UsualRange = [10, 15];

/** Force from force or index. */
function requireForce(from: string, { ballDiameter, force, index }: BrinellPlanInput): number {
  if ((force === undefined) === (index === undefined))
    throw new InputError(from, 'force', force === undefined ? 'missing' : 'out-of-range', 'or index must be given, and not both', force);
  return force === undefined
    ? (requirePositive(from, 'index', index) * ballDiameter ** 2) / KGF_PER_NEWTON
    : requirePositive(from, 'force', force);
}

/** The indentation at a hardness, with what it asks of the piece; undefined where the ball would sink in by its radius or more. */
function indentationOf(force: number, ballDiameter: number, hardness: number): BrinellHardness | undefined {
  const depth = (KGF_PER_NEWTON * force) / (Math.PI * ballDiameter * hardness);
  if (depth >= ballDiameter / 2) return undefined;
  return brinellHardness({ force, ballDiameter, diameters: 2 * Math.sqrt(depth * (ballDiameter - depth)) });
}

/**
 * Plans a Brinell test: whether the frame reaches the test force, what the indentation will be, and how it is loaded by hand.
 *
 * $$ F = \frac{k D^2}{0.102}, \qquad h = \frac{0.102\, F}{\pi D\, \mathrm{HBW}}, \qquad d = 2 \sqrt{h (D - h)} $$
 *
 * @remarks
 * Valid for 0.24 to 0.60 of the ball diameter; thickness at least 8 depths, 2.5 diameters from an edge, 3 between centres; force on in 2 to
 * 8 s without overshoot and held for 10 to 15 s (ISO 6506-1, from memory). A force that the frame reaches is not yet a valid one: it must lie in
 * the verified range with an error of at most 1 %.
 *
 * @param input - `ballDiameter` [mm], `force` [N] or `index`, `hardness` [HBW], `thickness` [mm], `frame`.
 * @returns Plan with force, indentation, distances, loading, cautions, findings.
 * @throws {@link InputError} `missing`, `wrong-type`, `not-finite`, `not-positive`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * const plan = planBrinell({ ballDiameter: 10, index: 30, hardness: 229, frame: { capacity: 25000 } });
 * plan.findings[0]?.code; // => 'force-above-capacity'
 * ```
 *
 * @see ISO 6506-1, Brinell hardness test. Checked in `test/planning/otherPlans.test.ts`.
 */
export function planBrinell(input: BrinellPlanInput): BrinellPlan {
  const from = 'planBrinell';
  requireOptions(from, input, ['ballDiameter', 'force', 'index', 'hardness', 'thickness', 'frame', 'thresholds'], 'input');
  const ballDiameter = requirePositive(from, 'ballDiameter', input.ballDiameter);
  const hardness = requireRange(from, 'hardness', input.hardness);
  const force = requireForce(from, input);
  const thickness = input.thickness === undefined ? undefined : requirePositive(from, 'thickness', input.thickness);
  const frame = requireFrame(from, input.frame);
  const load = planForce(frame, { greatest: force, least: force, what: 'of the test' }, requireLimits(from, input.thresholds));
  const index = forceIndexOf(force, ballDiameter);
  const findings = [...load.findings];
  if (frame.forceError !== undefined && frame.forceError > FORCE_ERROR)
    findings.push(finding('ball-force-error', { error: 100 * frame.forceError, limit: 100 * FORCE_ERROR }));
  if (!USUAL.some((one) => Math.abs(index / one - 1) < ROUNDING))
    findings.push(finding('planned-index-unusual', { index, usual: USUAL.join(', ') }));
  const hard = indentationOf(force, ballDiameter, hardness[1]);
  const soft = indentationOf(force, ballDiameter, hardness[0]);
  const marks = hardness[0] === hardness[1] ? [soft] : [hard, soft];
  marks.forEach((mark, k) => {
    if (!mark?.valid)
      findings.push(finding('planned-indentation-outside', { hardness: hardness[marks.length - 1 - k]!, ratio: mark?.ratio ?? 1 }));
  });
  if (soft && thickness !== undefined && thickness < soft.leastThickness)
    findings.push(finding('brinell-piece-thin', { thickness, least: soft.leastThickness }));
  const { capacity, verifiedFrom } = frame;
  return {
    planOf: 'brinell',
    frame,
    ballDiameter,
    index,
    hardness,
    force: load.force,
    ...(hard && soft
      ? {
          indentation: [hard.diameter, soft.diameter] as const,
          leastThickness: soft.leastThickness,
          leastEdge: soft.leastEdgeDistance,
          leastSpacing: soft.leastSpacing,
        }
      : {}),
    loading: handLoading(frame, force, LOADING),
    dwell: DWELL,
    possible: brinellCombinations({ capacity, verifiedFrom }).filter(
      (one) => one.hardness[0] <= hardness[0] && one.hardness[1] >= hardness[1],
    ),
    ifItStalls: ifItStalls(frame, 'take a smaller ball with the same index', 'indentation'),
    cautions: cautionsFor('brinell'),
    findings,
  };
}
