import { applyCalibration, requireCalibration, type UsableCalibration } from './applyCalibration.js';

/**
 * Least and greatest force, without their sign, between which a calibration of a force channel says something.
 *
 * $$ F_{low} = \min |F(x)|, \quad F_{high} = \max |F(x)|, \qquad x_{low} \le x \le x_{high} $$
 *
 * @remarks
 * For `options.test.calibratedForces` of an analysis, which then says where a property lies outside. A calibration through zero force begins at 0.
 *
 * @param calibration - As `fitCalibration` makes it.
 * @returns Lowest and highest force [N], 0 or more.
 * @throws {@link InputError} `missing`, `wrong-type`, `not-finite`, `not-positive`, `unequal-lengths`.
 *
 * @example
 * ```ts
 * const calibration = required(fitCalibration({ indicated: [2, 10, 20], reference: [2400, 12000, 24000] }));
 * calibratedForces(calibration); // => [2400, 24000]
 * ```
 *
 * @see ASTM E74, the range of a calibration. Checked in `test/force/calibration.test.ts`.
 */
export function calibratedForces(calibration: UsableCalibration): readonly [low: number, high: number] {
  requireCalibration('calibratedForces', calibration);
  // monotonic within its span, so that the ends are the extremes
  const [first, last] = calibration.span.map((x) => applyCalibration(calibration, x)) as [number, number];
  const [a, b] = [Math.abs(first), Math.abs(last)];
  return [first * last <= 0 ? 0 : Math.min(a, b), Math.max(a, b)];
}
