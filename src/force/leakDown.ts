import {
  failure,
  finding,
  InputError,
  requireColumn,
  requireNonNegative,
  requireOptions,
  requirePositive,
  success,
  type Finding,
  type Outcome,
} from '../base/index.js';
import { lineFit } from '../numeric/index.js';
import { pistonAreaOf, type Cylinder } from './pistonArea.js';

/** A frame at standstill under force. */
export interface StandstillRecord extends Cylinder {
  /** Time [s], ascending. */
  readonly time: ArrayLike<number>;
  /** Pressure [MPa]. */
  readonly pressure: ArrayLike<number>;
}

/** Options of {@link leakDown}. */
export interface LeakOptions {
  /** Time from which the leak is read [s], after oil and piece have settled; default the first sample. */
  readonly from?: number | undefined;
  /** Share of the force a minute that is a caution [1]; default 0.01 (common practice). */
  readonly allowed?: number | undefined;
}

/** A leak. */
export interface Leak {
  /** Fall of pressure [MPa/s], positive where it falls. */
  readonly pressureRate: number;
  /** Fall of force [N/s]. */
  readonly forceRate: number;
  /** Fall over the mean, in a minute [1]. */
  readonly sharePerMinute: number;
  /** Standard error of the fall of force [N/s], of scatter about the line alone. */
  readonly standardError: number;
  /** Doubts. */
  readonly findings: readonly Finding[];
}

const FROM = 'leakDown';
/** A first half this many times as fast as the second is settling, not a leak. */
const SETTLES = 2;

/**
 * Leak-down of a frame: how fast pressure and force fall while nothing moves.
 *
 * $$ \dot F = -A\, \frac{\mathrm{d}p}{\mathrm{d}t}, \qquad \frac{60\, \dot F}{\bar F} \text{ a minute} $$
 *
 * @remarks
 * By a straight line. Oil that cools, hoses and a yielding piece settle at first; that part falls off with time while a leak hardly does, so the
 * two halves are compared. Load a stiff elastic blank for this, never a piece that yields.
 *
 * @param record - `time` [s], `pressure` [MPa] above 0, four samples at least; `bore`, `rod` [mm].
 * @param options - `from` [s], `allowed` [1].
 * @returns Rates [MPa/s, N/s, 1 a minute]; or `too-short`.
 * @throws {@link InputError} `missing`, `wrong-type`, `too-few`, `not-finite`, `not-positive`, `not-increasing`, `unequal-lengths`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * const record = { time: [0, 20, 40, 60], pressure: [10, 9.98, 9.96, 9.94], bore: 40 };
 * required(leakDown(record)).forceRate; // => 1.2566
 * required(leakDown(record)).sharePerMinute; // => 0.006018
 * ```
 *
 * @see Common practice. Checked in `test/force/between.test.ts`.
 */
export function leakDown(record: StandstillRecord, options: LeakOptions = {}): Outcome<Leak, 'too-short'> {
  requireOptions(FROM, record, ['time', 'pressure', 'bore', 'rod'], 'record');
  requireOptions(FROM, options, ['from', 'allowed']);
  const time = requireColumn(FROM, 'record.time', record.time, { least: 4 });
  const pressure = requireColumn(FROM, 'record.pressure', record.pressure, { length: time.length, positive: true });
  for (let i = 1; i < time.length; i += 1)
    if (time[i]! <= time[i - 1]!)
      throw new InputError(FROM, `record.time[${i}]`, 'not-increasing', 'must be above the one before', time[i]);
  const area = pistonAreaOf(FROM, record);
  const start = options.from === undefined ? time[0]! : requireNonNegative(FROM, 'options.from', options.from);
  const allowed = requirePositive(FROM, 'options.allowed', options.allowed ?? 0.01);
  const first = time.findIndex((t) => t >= start);
  const last = time.length - 1;
  if (first < 0 || last - first < 3) return failure('too-short', `fewer than four samples lie from ${start} s on`);
  const line = lineFit(time, pressure, first, last)!;
  const middle = (first + last) >> 1;
  const early = lineFit(time, pressure, first, middle)!;
  const late = lineFit(time, pressure, middle, last)!;
  const used = pressure.subarray(first);
  const mean = used.reduce((sum, p) => sum + p, 0) / used.length;
  const sharePerMinute = (-60 * line.slope) / mean;
  const findings: Finding[] = [];
  if (sharePerMinute > allowed) findings.push(finding('leak-down-fast', { share: 100 * sharePerMinute }));
  const scatter = 2 * Math.hypot(early.standardError, late.standardError);
  if (early.slope < SETTLES * Math.min(0, late.slope) - scatter)
    findings.push(finding('leak-down-settles', { early: -60 * early.slope, late: -60 * late.slope }));
  return success({
    pressureRate: -line.slope,
    forceRate: -area * line.slope,
    sharePerMinute,
    standardError: area * line.standardError,
    findings,
  });
}
