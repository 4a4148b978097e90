import { InputError, finding, requireOneOf, requireOptions, requirePositive, requireSection, type Finding } from '../base/index.js';
import { leastParallelLength } from '../geometry/index.js';
import { dimensionFindings, lengthFindings } from '../methods/index.js';
import { checkHead } from './checkHead.js';
import { requireMaterial, type PlannedMaterial } from './expectedProperties.js';
import { leastFilletRadius } from './leastFilletRadius.js';
import type { MeasuredShape, PieceCheck, PieceCheckInput, PieceCheckRow } from './PieceCheck.js';
import { requireHead, type PieceHead } from './PieceHead.js';
import { toleranceOf } from './shapeTolerance.js';

/** Least width of a head over that of the section (from memory of Annex B; for rounds common practice). */
const HEAD = 1.2;
/** A parallel length so many times that of arbitration is long (common practice). */
const LONG = 1.2;
/** A gauge length so far off is no longer proportional. */
const PROPORTIONAL = 0.1;
/** A metal without a yield point in use must not be loaded in its head beyond this share of its strength (common practice). */
const BRITTLE = 2 / 3;

/** Length along the axis that a fillet takes up between section and head. */
function filletRun(radius: number, size: number, head: number): number {
  const rise = Math.min(radius, Math.max(0, (head - size) / 2));
  return Math.sqrt(radius ** 2 - (radius - rise) ** 2);
}

function headFindings(heads: readonly PieceCheckRow[], head: PieceHead, size: number): Finding[] {
  const found = heads.flatMap(({ kind, what, value, limit, margin, sound }) => {
    if (sound) return [];
    if (kind === 'grip') return [finding('grip-may-slip', { margin, least: limit })];
    if (kind === 'length') return [finding('grip-short', { length: value, least: limit })];
    return [
      finding(
        'head-weak',
        { what: `${what.charAt(0).toUpperCase()}${what.slice(1)}`, stress: value, limit, margin },
        margin < 2 / 3 ? { severity: 'fault' } : {},
      ),
    ];
  });
  const ratio = head.size / size;
  return ratio < HEAD ? [...found, finding('head-too-small', { ratio, least: HEAD })] : found;
}

function shapeFindings(from: string, shape: MeasuredShape | undefined): Finding[] {
  if (shape === undefined) return [];
  requireOptions(from, shape, ['dimension', 'nominal', 'largest', 'smallest', 'machined'], 'shape');
  const dimension = requireOneOf(from, 'shape.dimension', shape.dimension, ['diameter', 'width', 'thickness'] as const);
  const machined = requireOneOf(from, 'shape.machined', shape.machined ?? 'all', ['all', 'two-sides'] as const);
  const nominal = requirePositive(from, 'shape.nominal', shape.nominal);
  const smallest = requirePositive(from, 'shape.smallest', shape.smallest);
  const largest = requirePositive(from, 'shape.largest', shape.largest);
  if (largest < smallest)
    throw new InputError(from, 'shape.largest', 'out-of-range', `must be at least the smallest (${smallest})`, largest);
  const limits = toleranceOf(nominal, machined);
  if (limits === undefined) return [];
  // readings carry a rounding error
  const beyond = (value: number, limit: number): boolean => value > limit * (1 + 1e-9);
  const spread = largest - smallest;
  const off = Math.max(Math.abs(largest - nominal), Math.abs(smallest - nominal));
  return [
    ...(beyond(spread, limits.shape) ? [finding('shape-outside-tolerance', { dimension, difference: spread, limit: limits.shape })] : []),
    ...(beyond(off, limits.size) ? [finding('size-outside-tolerance', { dimension, difference: off, limit: limits.size })] : []),
  ];
}

/** Stress that the heads of the strongest bar may carry. */
const carried = ({ yieldStrength, tensileStrength }: PlannedMaterial): number => yieldStrength?.[1] ?? BRITTLE * tensileStrength[1];

/**
 * Checks a tension piece before it is made or gripped: lengths, fillets, heads, hold of the grips, tolerances.
 *
 * $$ \frac{R_e A_{head}}{R_m S_0} \ge 1, \qquad r \ge 0.75\, d_0, \qquad L_t \ge L_c + 2\,(x_r + l_g) $$
 *
 * @remarks
 * The heads of the strongest bar must not yield at its greatest force; shear is taken at $1/\sqrt3$ of the yield stress, bearing at 1.5 times it. Rules for
 * lengths, fillets and tolerances are from memory of ISO 6892-1, Annexes B and D; margins of grips are common practice. The sharp notch of a
 * thread is not counted: brittle metals are better held by shoulders.
 *
 * @param input - `family` or `expected`, `section`, `gaugeLength`, `parallelLength`, `filletRadius`, `totalLength` [mm], `head`, `shape`.
 * @returns Force [N], least lengths [mm], checks of the heads, findings.
 * @throws {@link InputError} `missing`, `wrong-type`, `not-finite`, `not-positive`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * const head = { kind: 'thread', size: 12, pitch: 1.75, gripped: 15 } as const;
 * const piece = { section: round({ diameter: 8 }), gaugeLength: 40, parallelLength: 48, filletRadius: 8, head };
 * checkPiece({ family: 'structural-steel', ...piece }).heads[0]?.margin; // => 1.281
 * ```
 *
 * @see ISO 6892-1:2019, Annexes B and D (from memory); elementary mechanics. Checked in `test/planning/checkPiece.test.ts`.
 */
export function checkPiece(input: PieceCheckInput): PieceCheck {
  const from = 'checkPiece';
  const known = ['family', 'expected', 'section', 'gaugeLength', 'parallelLength', 'filletRadius', 'totalLength', 'head', 'shape'];
  requireOptions(from, input, known, 'input');
  const section = requireSection(from, 'section', input.section);
  const { area } = section;
  const gaugeLength = requirePositive(from, 'gaugeLength', input.gaugeLength);
  const parallelLength = requirePositive(from, 'parallelLength', input.parallelLength);
  const radius = input.filletRadius === undefined ? undefined : requirePositive(from, 'filletRadius', input.filletRadius);
  const total = input.totalLength === undefined ? undefined : requirePositive(from, 'totalLength', input.totalLength);
  const head = input.head === undefined ? undefined : requireHead(from, input.head);
  const material = requireMaterial(from, input);
  const force = material.tensileStrength[1] * area;
  const { diameter, width, thickness, side, acrossFlats } = section.dimensions;
  const size = diameter ?? width ?? side ?? acrossFlats ?? Math.sqrt(area);

  const findings = [
    ...dimensionFindings(section),
    ...lengthFindings({ section, gaugeLength, parallelLength }, PROPORTIONAL, false),
    ...shapeFindings(from, input.shape),
  ];
  const longest = leastParallelLength({ section, gaugeLength, arbitration: true });
  if (parallelLength > LONG * longest)
    findings.push(finding('parallel-length-long', { length: parallelLength, ratio: parallelLength / gaugeLength, gauge: gaugeLength }));
  const least = radius === undefined ? undefined : leastFilletRadius({ section });
  if (radius !== undefined && least !== undefined && radius < least) findings.push(finding('fillet-small', { radius, least }));
  const heads = head ? checkHead(head, { force, yieldStress: carried(material), thickness: thickness ?? size }) : [];
  if (head) findings.push(...headFindings(heads, head, size));
  const leastTotal = head && parallelLength + 2 * (head.gripped + (radius === undefined ? 0 : filletRun(radius, size, head.size)));
  if (total !== undefined && leastTotal !== undefined && total < leastTotal)
    findings.push(finding('piece-too-short', { length: total, least: leastTotal }));
  return {
    force,
    leastParallelLength: leastParallelLength({ section, gaugeLength }),
    ...(least === undefined ? {} : { leastFilletRadius: least }),
    ...(leastTotal === undefined ? {} : { leastTotalLength: leastTotal }),
    heads,
    findings,
  };
}
