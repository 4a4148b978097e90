import {
  InputError,
  requireBetween,
  requireBoolean,
  requireColumn,
  requireFinite,
  requireObject,
  requireOptions,
  requirePositive,
} from '../base/index.js';
import { horner } from '../numeric/index.js';
import type { Calibration } from './fitCalibration.js';

/** Options of {@link applyCalibration}. */
export interface ApplyOptions {
  /** How far beyond the calibrated span a value may lie, as a share of the span: 0 to 0.1; default 0. */
  readonly beyond?: number | undefined;
  /**
   * True to give a force to idle readings too, those between the span and zero, and of noise about zero: along a straight line, with the slope
   * that the calibration has at that end of its span. Default false.
   */
  readonly idle?: boolean | undefined;
}

/** What is needed of a calibration to use it. */
export type UsableCalibration = Pick<Calibration, 'scaled' | 'scaledCovariance' | 'centre' | 'scale' | 'span'>;

/** Beyond the span by more than this share of it no force is given, whatever `beyond` says (common practice). */
const FURTHEST = 0.1;
/** Noise of an idle channel beyond zero, as a share of the farthest calibrated reading. More than this means that the zero is off, or a pull in the other direction (common practice). */
const NOISE = 0.01;

/** @internal Checks that the argument is a complete calibration, and not a failure or a part of one. */
export function requireCalibration(from: string, calibration: UsableCalibration): void {
  requireObject(from, 'calibration', calibration);
  requireFinite(from, 'calibration.centre', calibration.centre);
  requirePositive(from, 'calibration.scale', calibration.scale);
  requireColumn(from, 'calibration.span', calibration.span, { length: 2 });
  const { length } = requireColumn(from, 'calibration.scaled', calibration.scaled);
  // wrapped, so that an absent one is caught as well
  requireColumn(from, 'calibration.scaledCovariance', [calibration.scaledCovariance].flat(2), { length: length ** 2 });
}

/** @internal Checks a value against the span of a calibration. */
export function requireWithin(from: string, path: string, value: number, { span }: UsableCalibration, beyond: number): void {
  const margin = (beyond + 1e-12) * (span[1] - span[0]);
  if (value < span[0] - margin || value > span[1] + margin)
    throw new InputError(from, path, 'out-of-range', `must lie within the calibrated span (${span[0]} to ${span[1]})`, value);
}

/** Readings from the span to zero, and the noise about zero. */
function idleSpan([low, high]: UsableCalibration['span']): readonly [number, number] {
  const noise = NOISE * Math.max(Math.abs(low), Math.abs(high));
  return [Math.min(low, -noise), Math.max(high, noise)];
}

/**
 * Force from what a calibrated channel indicates.
 *
 * $$ F = \sum_k c_k x^k, \qquad F_{idle} = F(x_1) + F'(x_1)\,(x - x_1) $$
 *
 * @remarks
 * Outside the calibrated span nothing is extrapolated unless `beyond` allows it, and never by more than a tenth of the span. Records begin
 * and end without a load, below every calibrated point: with `idle` such readings, down to zero and 1 % of the farthest calibrated reading
 * beyond it, go along the straight line that the calibration has at the end of its span ($x_1$). They serve zero and contact; a property there
 * is not calibrated ({@link calibratedForces} says from where on it is).
 *
 * @param calibration - As `fitCalibration` makes it.
 * @param indicated - A number or an array, finite, in the unit of the calibration's indicated values [for columns of a record MPa or N].
 * @param options - `beyond`: share of the span, 0 to 0.1; `idle`: readings between the span and zero as well.
 * @returns Force [N]: a number or an array.
 * @throws {@link InputError} `missing`, `wrong-type`, `not-finite`, `empty`, `unknown-option`; `out-of-range` outside the span, with the index.
 *
 * @example
 * ```ts
 * const calibration = required(fitCalibration({ indicated: [0, 10, 20], reference: [0, 12000, 24000] }));
 * applyCalibration(calibration, 15); // => 18000
 * const above = required(fitCalibration({ indicated: [2, 10, 20], reference: [2400, 12000, 24000] }));
 * applyCalibration(above, -0.01, { idle: true }); // => -12
 * ```
 *
 * @see ASTM E74. Checked in `test/force/calibration.test.ts`.
 */
export function applyCalibration(calibration: UsableCalibration, indicated: number, options?: ApplyOptions): number;
export function applyCalibration(calibration: UsableCalibration, indicated: ArrayLike<number>, options?: ApplyOptions): Float64Array;
export function applyCalibration(
  calibration: UsableCalibration,
  indicated: number | ArrayLike<number>,
  options: ApplyOptions = {},
): number | Float64Array {
  const from = 'applyCalibration';
  requireCalibration(from, calibration);
  requireOptions(from, options, ['beyond', 'idle']);
  const beyond = requireBetween(from, 'options.beyond', options.beyond ?? 0, 0, FURTHEST);
  const idle = options.idle === undefined ? false : requireBoolean(from, 'options.idle', options.idle);
  const { scaled, centre, scale, span } = calibration;
  const [low, high] = idle ? idleSpan(span) : span;
  const derivative = scaled.slice(1).map((c, k) => (k + 1) * c);
  const along = (end: number, value: number): number => {
    const u = (end - centre) / scale;
    return horner(scaled, u) + (horner(derivative, u) * (value - end)) / scale;
  };
  const one = (value: number, path: string): number => {
    if (value < span[0] && value >= low) return along(span[0], value);
    if (value > span[1] && value <= high) return along(span[1], value);
    requireWithin(from, path, value, calibration, beyond);
    return horner(scaled, (value - centre) / scale);
  };
  if (typeof indicated === 'number') return one(requireFinite(from, 'indicated', indicated), 'indicated');
  return requireColumn(from, 'indicated', indicated).map((value, i) => one(value, `indicated[${i}]`));
}
