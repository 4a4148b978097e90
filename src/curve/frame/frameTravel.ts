import {
  InputError,
  requireBetween,
  requireColumn,
  requireFinite,
  requireNonNegative,
  requireObject,
  requireOneOf,
  requireOptions,
  requirePositive,
  requireText,
  shownList,
} from '../../base/index.js';
import { betweenPoints } from '../../numeric/index.js';

/** How a compliance was measured: what a test that uses it is compared with. */
export interface ComplianceConditions {
  /** Grips or set-up that it was measured with, in words; default not stated. */
  readonly grips?: string | undefined;
  /** Whether the frame was pulled or pushed; default not stated. */
  readonly direction?: 'tension' | 'compression' | undefined;
}

/** What every measured compliance may carry. */
interface ComplianceDoubt extends ComplianceConditions {
  /** Standard uncertainty of the frame's motion, of that motion [1]; default unknown. */
  readonly relativeStandardUncertainty?: number | undefined;
}

/** A frame that gives in proportion to the force. */
export interface ConstantCompliance extends ComplianceDoubt {
  /** Compliance C_f [mm/N]. */
  readonly constant: number;
  /** Forces between which it was measured [N]; default any. */
  readonly range?: readonly [number, number] | undefined;
}

/** A frame's motion point by point; straight lines between the points. */
export interface ComplianceTable extends ComplianceDoubt {
  /** Forces [N], ascending; what was measured ends with them. */
  readonly force: ArrayLike<number>;
  /** Motion of the frame at each [mm], from any origin; it does not fall. */
  readonly travel: ArrayLike<number>;
}

/** A frame that gives by a power of the force, as grips that bed in do. */
export interface CompliancePower extends ComplianceDoubt {
  /** Motion at 1 N [mm]. */
  readonly coefficient: number;
  /** Exponent b [1]; below 1 where the frame stiffens. */
  readonly exponent: number;
  /** Forces between which it was measured [N]; default any. */
  readonly range?: readonly [number, number] | undefined;
}

/** Compliance of a frame: a number [mm/N], the same with its range and uncertainty, a table, or a power law. */
export type Compliance = number | ConstantCompliance | ComplianceTable | CompliancePower;

/** @internal A checked compliance. */
export interface FrameMotion extends ComplianceConditions {
  /** Motion of the frame at a force [mm]. */
  readonly at: (force: number) => number;
  /** Compliance [mm/N], where one number serves. */
  readonly constant?: number;
  /** The law in words, where one number does not serve. */
  readonly law?: string;
  readonly range?: readonly [number, number];
  /** Standard uncertainty of the motion between two forces, of that motion [1]; where it is known. */
  readonly relativeUncertainty?: (from: number, to: number) => number;
}

/** @internal Compliance between two forces [mm/N]. */
export const complianceBetween = ({ at, constant }: FrameMotion, a: number, b: number): number => constant ?? (at(b) - at(a)) / (b - a);

function tableMotion(from: string, path: string, table: ComplianceTable): FrameMotion {
  const x = Float64Array.from(requireColumn(from, `${path}.force`, table.force, { least: 2 }));
  const y = Float64Array.from(requireColumn(from, `${path}.travel`, table.travel, { length: x.length }));
  const last = x.length - 1;
  for (let k = 1; k <= last; k += 1) {
    if (x[k]! <= x[k - 1]!) throw new InputError(from, `${path}.force[${k}]`, 'not-increasing', 'must be above the one before', x[k]);
    if (y[k]! < y[k - 1]!) throw new InputError(from, `${path}.travel[${k}]`, 'out-of-range', 'must not be below the one before', y[k]);
  }
  return {
    at: (force) => betweenPoints(x, y, force),
    law: `table of ${x.length} points from ${x[0]!} N to ${x[last]!} N`,
    range: [x[0]!, x[last]!],
  };
}

const directions = ['tension', 'compression'] as const;
const common = ['relativeStandardUncertainty', 'grips', 'direction'];

/** @internal Checks how a compliance was measured. */
export function requireConditions(from: string, path: string, { grips, direction }: ComplianceConditions): ComplianceConditions {
  if (grips !== undefined) requireText(from, `${path}.grips`, grips);
  return {
    ...(grips === undefined ? {} : { grips }),
    ...(direction === undefined ? {} : { direction: requireOneOf(from, `${path}.direction`, direction, directions) }),
  };
}

/** @internal Checks a compliance in any of its forms. */
export function requireCompliance(from: string, path: string, compliance: Compliance): FrameMotion {
  if (typeof compliance === 'number') {
    const constant = requireNonNegative(from, path, compliance);
    return { at: (force) => constant * force, constant };
  }
  const given: object = requireObject(from, path, compliance);
  const { relativeStandardUncertainty: doubt } = compliance;
  if (doubt !== undefined) requireNonNegative(from, `${path}.relativeStandardUncertainty`, doubt);
  const about = {
    ...(doubt === undefined ? {} : { relativeUncertainty: () => doubt }),
    ...requireConditions(from, path, compliance),
  };
  if ('force' in compliance) {
    requireOptions(from, given, ['force', 'travel', ...common], path);
    return { ...tableMotion(from, path, compliance), ...about };
  }
  const isPower = 'coefficient' in compliance;
  requireOptions(from, given, [...(isPower ? ['coefficient', 'exponent'] : ['constant']), 'range', ...common], path);
  const { range } = compliance;
  if (range !== undefined) {
    requireColumn(from, `${path}.range`, range, { length: 2 });
    if (range[1] <= range[0]) throw new InputError(from, `${path}.range`, 'not-increasing', 'must go up', range, shownList(range));
  }
  const limits = range === undefined ? {} : { range: [range[0], range[1]] as const };
  if (isPower) {
    const coefficient = requireNonNegative(from, `${path}.coefficient`, compliance.coefficient);
    const exponent = requirePositive(from, `${path}.exponent`, requireBetween(from, `${path}.exponent`, compliance.exponent, 0, 10));
    return {
      at: (force) => coefficient * Math.sign(force) * Math.abs(force) ** exponent,
      law: `${coefficient} mm times the force in N to the power of ${exponent}`,
      ...limits,
      ...about,
    };
  }
  const constant = requireNonNegative(from, `${path}.constant`, compliance.constant);
  return { at: (force) => constant * force, constant, ...limits, ...about };
}

/** @internal {@link requireCompliance} of what may be absent; a frame that gives nothing is none. */
export function requireFrameCompliance(from: string, path: string, compliance: Compliance | undefined): FrameMotion | undefined {
  const motion = compliance === undefined ? undefined : requireCompliance(from, path, compliance);
  return motion?.constant === 0 ? undefined : motion;
}

/**
 * Motion of a frame at a force, by its compliance in any form.
 *
 * $$ \delta_f(F) = C_f F, \qquad \delta_f(F) = a F^b, \qquad \text{or between the points of a table} $$
 *
 * @remarks
 * A power law is odd in the force. Beyond the ends of a table its first and last lines are carried on; whoever uses it there is told by a finding of
 * `removeCompliance` and `analyseTension`. The origin of a table does not matter to a tension test, whose strain counts from its elastic line.
 *
 * @param compliance - A number [mm/N]; `constant` [mm/N]; `force` [N] ascending with `travel` [mm]; `coefficient` [mm] with `exponent`, above 0 to 10.
 * @param force - Force [N].
 * @returns Motion of the frame [mm].
 * @throws {@link InputError} `missing`, `wrong-type`, `not-finite`, `not-positive`, `not-increasing`, `out-of-range`, `too-few`, `unequal-lengths`,
 * `unknown-option`.
 *
 * @example
 * ```ts
 * frameTravel(2e-5, 10000); // => 0.200
 * frameTravel({ force: [0, 2000, 20000], travel: [0, 0.08, 0.44] }, 11000); // => 0.260
 * frameTravel({ coefficient: 0.0002, exponent: 0.75 }, 10000); // => 0.200
 * ```
 *
 * @see Springs in series. Checked in `test/handbook/compliance.test.ts`.
 */
export function frameTravel(compliance: Compliance, force: number): number {
  const { at } = requireCompliance('frameTravel', 'compliance', compliance);
  return at(requireFinite('frameTravel', 'force', force));
}
