import { finding, requireColumn, requireOptions, requirePositive, type Finding } from '../base/index.js';
import { median } from '../numeric/index.js';
import { pistonAreaOf, type Cylinder } from './pistonArea.js';

/** An idle stroke: the piston moves and nothing is gripped. */
export interface IdleStroke extends Cylinder {
  /** Pressure while the piston moves [MPa]. */
  readonly pressure: ArrayLike<number>;
  /** Force of an earlier idle stroke, for comparison [N]; default none. */
  readonly before?: number | undefined;
}

/** What an idle stroke takes. */
export interface IdleFriction {
  /** Median pressure [MPa]. */
  readonly pressure: number;
  /** Force that friction, spring and weight take [N]. */
  readonly force: number;
  /** Range of that force over the middle nine tenths of the samples by size [N]. */
  readonly spread: number;
  /** Doubts. */
  readonly findings: readonly Finding[];
}

const FROM = 'idleStroke';
/** Common practice: a change, or an unevenness, of this share is worth a look. */
const CHANGE = 0.25;
const UNEVEN = 0.5;

/**
 * Friction of a cylinder from the pressure of an idle stroke, the quickest check between calibrations.
 *
 * $$ F_0 = A\, \tilde p $$
 *
 * @remarks
 * Take it at the speed of the tests and at the same oil temperature. It holds weight and return spring too; a change is what counts. Start and
 * end of the stroke belong to no idle stroke: cut them off.
 *
 * @param stroke - `pressure` [MPa], three samples at least; `bore`, `rod` [mm]; `before` [N] above 0.
 * @returns Pressure [MPa], force and spread [N], findings where it changed by a quarter or wanders by half of itself.
 * @throws {@link InputError} `missing`, `wrong-type`, `empty`, `too-few`, `not-finite`, `not-positive`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * idleStroke({ pressure: [0.05, 0.05, 0.05], bore: 40 }).force; // => 62.83
 * ```
 *
 * @see Common practice; Pascal's law. Checked in `test/force/between.test.ts`.
 */
export function idleStroke(stroke: IdleStroke): IdleFriction {
  requireOptions(FROM, stroke, ['pressure', 'bore', 'rod', 'before'], 'stroke');
  const column = requireColumn(FROM, 'pressure', stroke.pressure, { least: 3 });
  const area = pistonAreaOf(FROM, stroke);
  const before = stroke.before === undefined ? undefined : requirePositive(FROM, 'before', stroke.before);
  const pressure = median(Float64Array.from(column));
  const force = area * pressure;
  const sorted = Float64Array.from(column).sort();
  const cut = Math.floor(0.05 * sorted.length);
  const spread = area * (sorted[sorted.length - 1 - cut]! - sorted[cut]!);
  const findings: Finding[] = [];
  const change = before === undefined ? 0 : force / before - 1;
  if (before !== undefined && Math.abs(change) > CHANGE)
    findings.push(finding('idle-friction-changed', { force, before, share: 100 * change }));
  if (spread > UNEVEN * Math.abs(force)) findings.push(finding('idle-friction-uneven', { spread, force }));
  return { pressure, force, spread, findings };
}
