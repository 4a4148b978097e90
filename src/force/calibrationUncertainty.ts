import { InputError, requireFinite, requireNonNegative, requireOptions } from '../base/index.js';
import { horner } from '../numeric/index.js';
import { requireCalibration, requireWithin, type UsableCalibration } from './applyCalibration.js';

/** No instrument of so large a relative uncertainty is a reference: per cent were meant (common practice). */
const MOST = 0.1;

/** What comes on top of the scatter of a calibration. */
export interface CalibrationUncertaintyOptions {
  /** Relative standard uncertainty of the reference instrument [1], below 0.1; default 0. */
  readonly reference?: number | undefined;
  /** One step of the reading, in the channel's unit; default 0. */
  readonly resolution?: number | undefined;
}

/**
 * Standard uncertainty of a force by its calibration.
 *
 * $$ u^2(F) = g^{\mathsf T} V g + (F\, u_{ref})^2 + \left( F'\, \frac{r}{2\sqrt 3} \right)^2, \qquad g_k = u^k $$
 *
 * @remarks
 * The first term is that of the fitted curve, from the covariance $V$ of its coefficients (without `options` nothing else); those of the
 * reference instrument and of one step r of the reading come on top where they are given.
 *
 * @param calibration - As `fitCalibration` makes it.
 * @param indicated - Value within the span, in the channel's unit.
 * @param options - `reference` [1], below 0.1, and `resolution` in the channel's unit, 0 or more.
 * @returns Standard uncertainty [N].
 * @throws {@link InputError} `missing`, `wrong-type`, `not-finite`, `unknown-option`; `out-of-range` outside the span, and for a reference of a tenth or more.
 *
 * @example
 * ```ts
 * const calibration = required(fitCalibration({ indicated: [0, 1, 2, 3], reference: [1, -1, 1, -1] }, { degree: 1 }));
 * calibrationUncertainty(calibration, 1.5); // => 0.632456
 * const exact = required(fitCalibration({ indicated: [0, 10, 20], reference: [0, 12000, 24000] }));
 * calibrationUncertainty(exact, 10, { reference: 0.001 }); // => 12.000
 * ```
 *
 * @see JCGM 100:2008, annex H.3 (calibration curve). Checked in `test/force/calibration.test.ts`.
 */
export function calibrationUncertainty(
  calibration: UsableCalibration,
  indicated: number,
  options: CalibrationUncertaintyOptions = {},
): number {
  const from = 'calibrationUncertainty';
  requireCalibration(from, calibration);
  requireWithin(from, 'indicated', requireFinite(from, 'indicated', indicated), calibration, 0);
  requireOptions(from, options, ['reference', 'resolution']);
  const reference = requireNonNegative(from, 'options.reference', options.reference ?? 0);
  if (reference >= MOST)
    throw new InputError(from, 'options.reference', 'out-of-range', `is relative and must be below ${MOST} (0.002 is 0.2 %)`, reference);
  const resolution = requireNonNegative(from, 'options.resolution', options.resolution ?? 0);
  const u = (indicated - calibration.centre) / calibration.scale;
  const variance = calibration.scaledCovariance.reduce(
    (sum, row, j) => sum + row.reduce((inner, one, k) => inner + one * u ** (j + k), 0),
    0,
  );
  const { scaled, scale } = calibration;
  const force = horner(scaled, u);
  const slope = horner(scaled.map((c, k) => k * c).slice(1), u) / scale;
  // a reading in steps is anywhere within its step
  return Math.hypot(Math.sqrt(Math.max(0, variance)), force * reference, (slope * resolution) / Math.sqrt(12));
}
