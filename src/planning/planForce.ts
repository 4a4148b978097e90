import { finding, requireBetween, requireOptions, requirePositive, type Finding } from '../base/index.js';
import { pressureOf, stopForce, type TestFrame } from './TestFrame.js';

/** Thresholds of the findings of a plan. */
export interface PlanThresholds {
  /** Share of the capacity from which the force is a doubt; default 0.8. */
  readonly utilisation?: number | undefined;
  /** Share of the capacity below which a force is small for the frame; default 0.1. */
  readonly leastForce?: number | undefined;
  /** Share of the stroke from which the travel is a doubt; default 0.8. */
  readonly stroke?: number | undefined;
  /** Share of the relief valve's setting or the transmitter's range from which the pressure is a doubt; default 0.9. */
  readonly pressure?: number | undefined;
}

/** @internal Thresholds with their defaults (common practice). */
export type PlanLimits = Readonly<Record<keyof PlanThresholds, number>>;

const usual: PlanLimits = { utilisation: 0.8, leastForce: 0.1, stroke: 0.8, pressure: 0.9 };

/** A share of something: above 0, for nothing fits into none of a capacity, and at most all of it. */
const requireShare = (from: string, path: string, value: unknown): number =>
  requireBetween(from, path, requirePositive(from, path, value), 0, 1);

/** @internal Thresholds of a plan, checked. */
export function requireLimits(from: string, given: PlanThresholds = {}): PlanLimits {
  const names = Object.keys(usual) as (keyof PlanThresholds)[];
  requireOptions(from, given, names, 'thresholds');
  const entries = names.map((name) => [name, requireShare(from, `thresholds.${name}`, given[name] ?? usual[name])] as const);
  return Object.fromEntries(entries) as unknown as PlanLimits;
}

/** Force and pressure that a test asks of a frame. */
export interface PlannedForce {
  /** Greatest force to be expected [N]. */
  readonly greatest: number;
  /** Least force that counts as a result, such as that of the lowest yield [N]. */
  readonly least: number;
  /** Greatest force over capacity [1]. */
  readonly utilisation: number;
  /** Where the frame stops [N]: its capacity, or the force at which the relief valve opens. */
  readonly stop: number;
  /** Oil pressure there [MPa]; absent where there is no cylinder. */
  readonly stopPressure?: number | undefined;
  /** Oil pressure at the greatest force [MPa]; absent where there is no cylinder. */
  readonly pressure?: number | undefined;
  /** That pressure over the setting of the relief valve [1]. */
  readonly shareOfRelief?: number | undefined;
  /** That pressure over the range of the transmitter [1]. */
  readonly shareOfTransmitter?: number | undefined;
}

/** @internal Force and pressure, and the doubts about them: the same in every test. `what` names the least force. */
export function planForce(
  frame: TestFrame,
  force: { readonly greatest: number; readonly least: number; readonly what: string },
  limits: PlanLimits,
): { readonly force: PlannedForce; readonly findings: Finding[] } {
  const { greatest, least, what } = force;
  const { capacity, reliefPressure, transmitterRange, verifiedFrom } = frame;
  const findings: Finding[] = [];
  const utilisation = greatest / capacity;
  const values = { force: greatest, share: 100 * utilisation, capacity };
  if (utilisation > 1) findings.push(finding('force-above-capacity', values));
  else if (utilisation > limits.utilisation) findings.push(finding('force-near-capacity', values));
  if (verifiedFrom === undefined) findings.push(finding('force-unverified', {}));
  if (verifiedFrom !== undefined && least < verifiedFrom)
    findings.push(finding('force-below-verified', { force: least, what, limit: verifiedFrom, why: 'the lowest verified force' }));
  else if (least < limits.leastForce * capacity)
    findings.push(
      finding('force-below-verified', {
        force: least,
        what,
        limit: limits.leastForce * capacity,
        why: `${100 * limits.leastForce} % of the capacity`,
      }),
    );
  const stop = stopForce(frame);
  const [pressure, stopPressure] = [pressureOf(frame, greatest), pressureOf(frame, stop)];
  if (pressure === undefined) return { force: { greatest, least, utilisation, stop }, findings };
  const share = (limit: number | undefined, device: string): number | undefined => {
    if (limit === undefined) return undefined;
    if (pressure > limits.pressure * limit)
      findings.push(
        finding(
          'pressure-near-limit',
          { pressure, share: (100 * pressure) / limit, limit, device },
          pressure > limit ? { severity: 'fault' } : {},
        ),
      );
    return pressure / limit;
  };
  const shareOfRelief = share(reliefPressure, 'relief valve');
  const shareOfTransmitter = share(transmitterRange, 'transmitter');
  return {
    force: {
      greatest,
      least,
      utilisation,
      stop,
      stopPressure,
      pressure,
      ...(shareOfRelief === undefined ? {} : { shareOfRelief }),
      ...(shareOfTransmitter === undefined ? {} : { shareOfTransmitter }),
    },
    findings,
  };
}
