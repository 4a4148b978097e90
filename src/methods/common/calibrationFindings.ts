import { finding, type Finding, type Quantity } from '../../base/index.js';
import type { UncertaintySources } from '../../uncertainty/index.js';
import { cylinderFindings } from './forceOrigin.js';
import type { ChannelCalibration, TestInfo } from './MethodResult.js';

/** Months between two verifications where nothing else is stated (ISO 7500-1: not more than 12, from memory). */
const INTERVAL = 12;
/** A force this far above the highest verified one is no longer near it (common practice). */
const FAR_ABOVE = 0.1;
/** Class that the common standards of testing ask for, or better. */
const LEAST_CLASS = 1;

/** A record that its calibration holds reaches at most a tenth beyond it: in bar for MPa its forces are then below this share of the highest. */
const HARDLY = 0.11;

/** @internal A force that a result rests on. */
export interface ForceOfResult {
  readonly symbol: string;
  /** [N]. */
  readonly force: number;
}

/** @internal Forces of strengths, each the stress times what a unit of stress takes: the area, or of a beam W over the arm of the moment. */
export const forcesOf = (strengths: readonly (Quantity | undefined)[], perStress: number): ForceOfResult[] =>
  strengths.filter((one) => one !== undefined).map(({ symbol, value }) => ({ symbol, force: value * perStress }));

/** @internal The force at which the window of the elastic line begins. */
export const windowForce = (
  line: { readonly ok: boolean; readonly first?: number },
  stress: Float64Array,
  perStress: number,
): ForceOfResult[] => (line.ok && line.first !== undefined ? [{ symbol: 'E', force: stress[line.first]! * perStress }] : []);

/** @internal A quantity that is a force. */
export const forceOf = ({ symbol, value }: Quantity): ForceOfResult => ({ symbol, force: value });

/** Months from one day to another, of a day short of a month its share. */
function monthsBetween(from: string, to: string): number {
  const [year, month, day] = from.split('-').map(Number) as [number, number, number];
  const [laterYear, laterMonth, laterDay] = to.split('-').map(Number) as [number, number, number];
  return 12 * (laterYear - year) + (laterMonth - month) + (laterDay - day) / 31;
}

/** The day that a date begins with, where it is written as year-month-day. */
const dayOf = (date: string | undefined): string | undefined => /^\d{4}-\d\d-\d\d(?!\d)/.exec(date ?? '')?.[0];

/** How old the verification was on the day of the test. */
function ageFindings(date: string | undefined, test: string | undefined, interval: number): Finding[] {
  if (date === undefined) return [finding('calibration-date-missing', {})];
  const day = dayOf(test);
  if (day === undefined) return [finding('calibration-age-unknown', { date })];
  if (date > day) return [finding('calibration-after-test', { date, test: day })];
  const months = monthsBetween(date, day);
  if (months <= interval) return [];
  return [finding('calibration-expired', { date, months, interval }, months > 2 * interval ? { severity: 'fault' } : {})];
}

/** How old the calibration of the channel was on the day of the test, where no verification of the force is named, which would be the later word. */
function channelFindings(channel: ChannelCalibration | undefined, { date: test, forceCalibration }: TestInfo): Finding[] {
  const [date, day] = [channel?.date, dayOf(test)];
  if (date === undefined || day === undefined || forceCalibration !== undefined) return [];
  const months = monthsBetween(date, day);
  return months > INTERVAL ? [finding('channel-calibration-old', { date, months })] : [];
}

/** Forces of the result beyond those that were verified. */
function rangeFindings([low, high]: readonly [number, number], forces: readonly ForceOfResult[]): Finding[] {
  return forces.flatMap(({ symbol, force }) =>
    // the last bit of a force is no reason to doubt
    force >= low * (1 - 1e-9) && force <= high * (1 + 1e-9)
      ? []
      : [finding('force-outside-verified', { symbol, force, low, high }, force > high * (1 + FAR_ABOVE) ? { severity: 'fault' } : {})],
  );
}

/** Forces of the result, and that at the start of the elastic window, where the channel is not calibrated. */
const spanFindings = ([low, high]: readonly [number, number], forces: readonly ForceOfResult[]): Finding[] =>
  forces.flatMap(({ symbol, force }) =>
    // the last bit of a force is no reason to doubt
    force >= low * (1 - 1e-9) && force <= high * (1 + 1e-9) ? [] : [finding('force-outside-calibration', { symbol, force, low, high })],
  );

/** Forces of a result far below what the channel is calibrated for, as another unit would make them. */
function usedFindings([, high]: readonly [number, number], forces: readonly ForceOfResult[]): Finding[] {
  const force = forces.reduce((most, one) => Math.max(most, one.force), 0);
  return force > 0 && force < HARDLY * high ? [finding('calibration-hardly-used', { force, high, share: (100 * force) / high })] : [];
}

/**
 * @internal Doubts about the verification of the force that a test names: its age, its range, its class, and whether the stated uncertainties
 * hold it; about the span of its calibration, with that of the `window` of the elastic line; and what was found before the analysis. Of a test that
 * names nothing nothing is said.
 */
export function calibrationFindings(
  test: TestInfo,
  forces: readonly ForceOfResult[],
  doubts: { readonly force?: UncertaintySources | undefined; readonly forceClass?: number | undefined } = {},
  window: readonly ForceOfResult[] = [],
): Finding[] {
  const { calibratedForces: span } = test;
  const outside = [
    ...(test.findings ?? []),
    ...cylinderFindings(test, doubts.force !== undefined || doubts.forceClass !== undefined),
    ...channelFindings(test.channelCalibration, test),
    ...(span ? [...spanFindings(span, [...window, ...forces]), ...usedFindings(span, forces)] : []),
  ];
  if (test.forceCalibration === undefined) return outside;
  const { date, intervalMonths, forceClass, range } = typeof test.forceCalibration === 'string' ? {} : test.forceCalibration;
  const found = [...outside, ...ageFindings(date, test.date, intervalMonths ?? INTERVAL)];
  if (range) found.push(...rangeFindings(range, forces));
  if (forceClass === undefined) return found;
  const counted = doubts.forceClass;
  if (forceClass > LEAST_CLASS) found.push(finding('force-class-coarse', { forceClass }));
  if (counted !== undefined && counted !== forceClass) found.push(finding('force-class-unlike', { counted, forceClass }));
  if (counted === undefined && doubts.force === undefined)
    found.push(finding('force-class-not-in-uncertainty', { forceClass, share: forceClass }));
  return found;
}
