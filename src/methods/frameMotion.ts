import { finding, InputError, requireColumn, requireNonNegative, requireOptions, type Finding } from '../base/index.js';

/** How much the frame gives under a force, as it was measured. */
export interface ComplianceTable {
  /** Forces [N], rising. */
  readonly force: ArrayLike<number>;
  /** Motion of the frame at each [mm], not falling. */
  readonly motion: ArrayLike<number>;
}

/** @internal What is taken off the travel at a force [mm]. */
export interface FrameMotion {
  readonly at: (force: number) => number;
  /** Last force of a table; infinite for one number. */
  readonly last: number;
}

/** Straight lines between the rows, the first and the last carried on. */
function along(force: Float64Array, motion: Float64Array): FrameMotion {
  const last = force.length - 1;
  const at = (F: number): number => {
    let k = 1;
    while (k < last && force[k]! < F) k += 1;
    return motion[k - 1]! + ((F - force[k - 1]!) / (force[k]! - force[k - 1]!)) * (motion[k]! - motion[k - 1]!);
  };
  return { at, last: force[last]! };
}

/** @internal Checks a compliance, one number [mm/N] or a table; undefined where none is given, or 0. */
export function requireFrame(from: string, path: string, given: number | ComplianceTable | undefined): FrameMotion | undefined {
  if (given === undefined) return undefined;
  if (typeof given !== 'object') {
    const compliance = requireNonNegative(from, path, given);
    return compliance === 0 ? undefined : { at: (force) => compliance * force, last: Infinity };
  }
  requireOptions(from, given, ['force', 'motion'], path);
  const force = requireColumn(from, `${path}.force`, given.force, { least: 2 });
  const motion = requireColumn(from, `${path}.motion`, given.motion, { length: force.length });
  for (let i = 1; i < force.length; i += 1) {
    if (force[i]! <= force[i - 1]!)
      throw new InputError(from, `${path}.force[${i}]`, 'not-increasing', 'must be above the one before', force[i]);
    if (motion[i]! < motion[i - 1]!)
      throw new InputError(from, `${path}.motion[${i}]`, 'out-of-range', 'must not be below the one before', motion[i]);
  }
  return along(force.slice(), motion.slice());
}

/** @internal Travel less what the frame gives at each force. */
export const withoutMotion = (travel: Float64Array, force: Float64Array, { at }: FrameMotion): Float64Array =>
  travel.map((x, i) => x - at(force[i]!));

/** @internal The doubt of a table that ends too early. */
export const tableFindings = (frame: FrameMotion | undefined, highest: number): Finding[] =>
  frame && highest > frame.last ? [finding('compliance-table-short', { last: frame.last, highest })] : [];
