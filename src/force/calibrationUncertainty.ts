import { requireFinite } from '../base/index.js';
import { requireCalibration, requireWithin, type UsableCalibration } from './applyCalibration.js';

/**
 * Standard uncertainty of a force by the scatter of its calibration.
 *
 * $$ u(F) = \sqrt{g^{\mathsf T} V g}, \qquad g_k = u^k $$
 *
 * @remarks
 * That of the fitted curve alone, from the covariance $V$ of its coefficients; the reference instrument's own uncertainty comes on top.
 *
 * @param calibration - As `fitCalibration` makes it.
 * @param indicated - Value within the span, in the channel's unit.
 * @returns Standard uncertainty [N].
 * @throws {@link InputError} `missing`, `wrong-type`, `not-finite`; `out-of-range` outside the span.
 *
 * @example
 * ```ts
 * const calibration = required(fitCalibration({ indicated: [0, 1, 2, 3], reference: [1, -1, 1, -1] }, { degree: 1 }));
 * calibrationUncertainty(calibration, 1.5); // => 0.632456
 * ```
 *
 * @see JCGM 100:2008, annex H.3 (calibration curve). Checked in `test/force/calibration.test.ts`.
 */
export function calibrationUncertainty(calibration: UsableCalibration, indicated: number): number {
  const from = 'calibrationUncertainty';
  requireCalibration(from, calibration);
  requireWithin(from, 'indicated', requireFinite(from, 'indicated', indicated), calibration, 0);
  const u = (indicated - calibration.centre) / calibration.scale;
  const variance = calibration.scaledCovariance.reduce(
    (sum, row, j) => sum + row.reduce((inner, one, k) => inner + one * u ** (j + k), 0),
    0,
  );
  return Math.sqrt(Math.max(0, variance));
}
