import { InputError, requireFinite, requireNonNegative, requireOneOf, requireOptions, requireWhole } from '../base/index.js';
import { horner } from '../numeric/index.js';
import { requireCalibration, requireWithin, type UsableCalibration } from './applyCalibration.js';
import type { Calibration } from './fitCalibration.js';
import { requireReference } from './requireReference.js';

/** What comes on top of the doubt of the fitted curve. */
export interface CalibrationUncertaintyOptions {
  /** Relative standard uncertainty of the reference instrument [1], below 0.1; default 0. */
  readonly reference?: number | undefined;
  /** One step of the reading, in the channel's unit; default 0. */
  readonly resolution?: number | undefined;
  /** Number of readings whose mean the force is, 1 or more: adds the scatter of the channel, as the residuals show it; default none added, for the curve alone. */
  readonly readings?: number | undefined;
}

/** The scatter of its pairs, where that is asked for. */
type Scatter = Partial<Pick<Calibration, 'residualStandardDeviation' | 'weights'>>;

/** Standard deviation of one reading of the channel [N], by the residuals of its calibration. */
function scatterOf(from: string, { residualStandardDeviation, weights }: Scatter, force: number, readings: number): number {
  const scatter = requireNonNegative(from, 'calibration.residualStandardDeviation', residualStandardDeviation);
  const by = requireOneOf(from, 'calibration.weights', weights, ['equal', 'relative', 'given']);
  if (by === 'given')
    throw new InputError(
      from,
      'options.readings',
      'ambiguous',
      'must not be given: with weights of your own the scatter of a new reading is unknown',
      readings,
    );
  return by === 'relative' ? scatter * Math.abs(force) : scatter;
}

/**
 * Standard uncertainty of a force by its calibration: of the fitted curve, and of a reading on it.
 *
 * $$ u^2(F) = g^{\mathsf T} V g + \frac{s^2}{m} + (F\, u_{ref})^2 + \left( F'\, \frac{r}{2\sqrt 3} \right)^2, \qquad g_k = u^k $$
 *
 * @remarks
 * The first term is that of the fitted curve, from the covariance $V$ of its coefficients. Without `options` it stands alone, and shrinks with the number of pairs; what the channel itself scatters from
 * reading to reading ($s$ by the residuals, $s F$ with relative weights, over the number m of `readings` that a force is the mean of), the reference instrument and one step r of the reading come on top where they are given. With few
 * pairs the first two have few degrees of freedom, `calibration.degreesOfFreedom`: give them along in a budget. A degree that the F-tests chose may be one too high, in a twentieth of straight channels, or too low; that is in no term, and where the shape of the channel is known `degree` says it.
 *
 * @param calibration - As `fitCalibration` makes it.
 * @param indicated - Value within the span, in the channel's unit.
 * @param options - `reference` [1], below 0.1, and `resolution` in the channel's unit, 0 or more; `readings`, a whole number from 1.
 * @returns Standard uncertainty [N].
 * @throws {@link InputError} `missing`, `wrong-type`, `not-finite`, `unknown-option`; `out-of-range` outside the span, and for a reference of a tenth or more; `ambiguous`: `readings` of a
 * calibration by weights of one's own.
 *
 * @example
 * ```ts
 * const calibration = required(fitCalibration({ indicated: [0, 1, 2, 3], reference: [1, -1, 1, -1] }, { degree: 1 }));
 * calibrationUncertainty(calibration, 1.5); // => 0.632456
 * calibrationUncertainty(calibration, 1.5, { readings: 1 }); // => 1.41421
 * const exact = required(fitCalibration({ indicated: [0, 10, 20], reference: [0, 12000, 24000] }));
 * calibrationUncertainty(exact, 10, { reference: 0.001 }); // => 12.000
 * ```
 *
 * @see JCGM 100:2008, annex H.3 (calibration curve). Checked in `test/force/calibration.test.ts`.
 */
export function calibrationUncertainty(
  calibration: UsableCalibration & Scatter,
  indicated: number,
  options: CalibrationUncertaintyOptions = {},
): number {
  const from = 'calibrationUncertainty';
  requireCalibration(from, calibration);
  requireWithin(from, 'indicated', requireFinite(from, 'indicated', indicated), calibration, 0);
  requireOptions(from, options, ['reference', 'resolution', 'readings']);
  const reference = requireReference(from, 'options.reference', options.reference ?? 0);
  const resolution = requireNonNegative(from, 'options.resolution', options.resolution ?? 0);
  const u = (indicated - calibration.centre) / calibration.scale;
  const variance = calibration.scaledCovariance.reduce(
    (sum, row, j) => sum + row.reduce((inner, one, k) => inner + one * u ** (j + k), 0),
    0,
  );
  const { scaled, scale } = calibration;
  const force = horner(scaled, u);
  const scatter =
    options.readings === undefined
      ? 0
      : scatterOf(from, calibration, force, options.readings) / Math.sqrt(requireWhole(from, 'options.readings', options.readings, 1));
  const slope = horner(scaled.map((c, k) => k * c).slice(1), u) / scale;
  // a reading in steps is anywhere within its step
  return Math.hypot(Math.sqrt(Math.max(0, variance)), scatter, force * reference, (slope * resolution) / Math.sqrt(12));
}
