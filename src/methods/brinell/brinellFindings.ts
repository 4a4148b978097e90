import { finding, type Finding } from '../../base/index.js';
import { convert } from '../../units/index.js';
import { HARDEST, nominalCombinations } from './brinellCombinations.js';
import type { BrinellDwell } from './brinellDwell.js';
import { forceIndexOf, type BrinellHardness } from './brinellHardness.js';
import { brinellIndices, indexTable } from './brinellIndices.js';
import type { BrinellPiece } from './BrinellResult.js';
import type { CheckedIndentation } from './brinellReadings.js';

/** The force may be off its nominal value, and change while it is held, by this share (ISO 6506-1); the last bits of a share are rounding. */
const FORCE = 0.01 * (1 + 1e-9);
/** Two diameters that differ by more are a caution (common practice). */
const DIAMETERS = 0.01;
/** Time of holding and of bringing on [s] (ISO 6506-1, from memory). */
const HOLD = [10, 15] as const;
const RISE = [2, 8] as const;
/** A kilogram-force [N]. */
const KGF = convert(1, 'kgf', 'N');
/** Times are read from samples: so much beyond a limit is none [s]. */
const SLACK = 0.25;

/** @internal True where a force is a nominal one within what is allowed. */
export const isNominal = (force: number, nominal: number): boolean => Math.abs(force / nominal - 1) <= FORCE;

/** @internal The combination of the standard whose force is nearest, for this ball. */
export function nearestCombination(ball: number, force: number) {
  const [first, ...others] = nominalCombinations.filter(({ ballDiameter }) => ballDiameter === ball);
  const off = (one: { readonly force: number }): number => Math.abs(Math.log(force / one.force));
  return first && others.reduce((best, one) => (off(one) < off(best) ? one : best), first);
}

function forceFindings(number: number, ball: number, force: number): Finding[] {
  const nearest = nearestCombination(ball, force);
  if (nearest && isNominal(force, nearest.force)) return [];
  const share = nearest ? force / nearest.force - 1 : Infinity;
  // nearer than a tenth it was meant, farther it is another index
  if (nearest && Math.abs(share) <= 0.1)
    return [
      finding(
        'brinell-force-not-nominal',
        { number, force, share: 100 * share, nominal: nearest.force, designation: nearest.designation },
        { field: 'hardness' },
      ),
    ];
  // the number of a scale is a force in kgf
  const inKgf = nearestCombination(ball, force * KGF);
  if (inKgf && isNominal(force * KGF, inKgf.force))
    return [
      finding('brinell-force-in-kgf', { number, force, designation: inKgf.designation, nominal: inKgf.force }, { field: 'hardness' }),
    ];
  return [finding('brinell-index-unusual', { number, ball, force, index: forceIndexOf(force, ball) }, { field: 'hardness' })];
}

const outside = (value: number, [least, most]: readonly [number, number]): boolean => value < least - SLACK || value > most + SLACK;

/** @internal True where a force was held for another time than the standard takes for granted, so that the time must be written. */
export const mustBeWritten = (duration: number): boolean => outside(duration, HOLD);

function dwellFindings(number: number, dwell: BrinellDwell): Finding[] {
  return [
    ...(dwell.change > FORCE
      ? [
          finding(
            'brinell-force-unsteady',
            { number, share: 100 * dwell.change, force: dwell.force },
            { field: 'hardness', range: dwell.range },
          ),
        ]
      : []),
    ...(outside(dwell.duration, HOLD)
      ? [finding('brinell-dwell-outside', { number, duration: dwell.duration }, { field: 'hardness' })]
      : []),
    ...(outside(dwell.rise, RISE) ? [finding('brinell-rise-outside', { number, duration: dwell.rise }, { field: 'hardness' })] : []),
  ];
}

/** @internal Doubts about one indentation. */
export function indentationFindings(
  number: number,
  ball: number,
  given: CheckedIndentation,
  found: BrinellHardness,
  force: number,
  dwell: BrinellDwell | undefined,
  stated: number | undefined,
): Finding[] {
  const { diameters, edgeDistance, spacing } = given;
  const spread = (Math.max(...diameters) - Math.min(...diameters)) / found.diameter;
  const near = (code: 'brinell-near-edge' | 'brinell-near-neighbour', distance: number | undefined, least: number): Finding[] =>
    distance !== undefined && distance < least ? [finding(code, { number, distance, least })] : [];
  return [
    ...(found.valid ? [] : [finding('brinell-indentation-outside', { number, ratio: found.ratio }, { field: 'hardness' })]),
    ...(diameters.length < 2 ? [finding('brinell-one-diameter', { number })] : []),
    ...(spread > DIAMETERS ? [finding('brinell-diameters-differ', { number, share: 100 * spread })] : []),
    ...forceFindings(number, ball, force),
    ...(dwell ? dwellFindings(number, dwell) : given.record ? [finding('brinell-dwell-not-found', { number })] : []),
    ...(!given.record && stated !== undefined && mustBeWritten(stated)
      ? [finding('brinell-dwell-outside', { number, duration: stated }, { field: 'hardness' })]
      : []),
    ...near('brinell-near-edge', edgeDistance, found.leastEdgeDistance),
    ...near('brinell-near-neighbour', spacing, found.leastSpacing),
  ];
}

/** @internal Doubts about the piece: its thickness under the deepest indentation that counts, its hardness, ball and index for its material. */
export function brinellPieceFindings(
  { thickness, material }: BrinellPiece,
  found: readonly BrinellHardness[],
  ball: number,
  force: number,
  hardness: number | undefined,
): Finding[] {
  const findings: Finding[] = [];
  const least = Math.max(...found.map(({ leastThickness }) => leastThickness));
  if (thickness !== undefined && thickness < least) findings.push(finding('brinell-piece-thin', { thickness, least }));
  if (hardness !== undefined && hardness > HARDEST) findings.push(finding('brinell-too-hard', { hardness }, { field: 'hardness' }));
  if (material === undefined || hardness === undefined) return findings;
  const leastBall = indexTable.find((one) => one.material === material)?.leastBall ?? 0;
  if (ball < leastBall) findings.push(finding('brinell-ball-unsuited', { ball, material, least: leastBall }, { field: 'hardness' }));
  const usual = brinellIndices(material, hardness);
  const index = nearestCombination(ball, force)?.forceIndex ?? forceIndexOf(force, ball);
  if (!usual.includes(index))
    findings.push(finding('brinell-index-unsuited', { index, material, hardness, usual: usual.join(', ') }, { field: 'hardness' }));
  return findings;
}
