import { InputError, requireColumn, requireNonNegative, requireOneOf, requireOptions, requirePositive } from '../../base/index.js';
import { brinellMaterials } from './brinellIndices.js';
import type { BrinellPiece, BrinellReadings } from './BrinellResult.js';
import { requireForceColumns, type ForceRecord } from '../common/ForceColumns.js';

/** @internal An indentation after the checks; every one has a force or a record. */
export interface CheckedIndentation {
  readonly diameters: readonly number[];
  readonly force: number | undefined;
  readonly record: ForceRecord | undefined;
  readonly edgeDistance: number | undefined;
  readonly spacing: number | undefined;
}

/** @internal Checks what was read, before any work. */
export function requireBrinell(
  from: string,
  readings: BrinellReadings,
  piece: BrinellPiece,
): {
  ball: number;
  holdingTime: number | undefined;
  list: CheckedIndentation[];
} {
  requireOptions(from, readings, ['ballDiameter', 'force', 'holdingTime', 'indentations'], 'readings');
  requireOptions(from, piece, ['thickness', 'material'], 'piece');
  if (piece.thickness !== undefined) requirePositive(from, 'piece.thickness', piece.thickness);
  if (piece.material !== undefined) requireOneOf(from, 'piece.material', piece.material, brinellMaterials);
  const ball = requirePositive(from, 'readings.ballDiameter', readings.ballDiameter);
  const common = readings.force === undefined ? undefined : requirePositive(from, 'readings.force', readings.force);
  const holdingTime = readings.holdingTime === undefined ? undefined : requirePositive(from, 'readings.holdingTime', readings.holdingTime);
  const given: unknown = readings.indentations;
  if (!Array.isArray(given))
    throw new InputError(from, 'readings.indentations', given === undefined ? 'missing' : 'wrong-type', 'must be a list', given);
  if (given.length === 0) throw new InputError(from, 'readings.indentations', 'empty', 'must hold at least one', 0);
  const list = readings.indentations.map((one, k): CheckedIndentation => {
    const path = `readings.indentations[${k}]`;
    requireOptions(from, one, ['diameters', 'force', 'record', 'edgeDistance', 'spacing'], path);
    const { diameters } = one;
    const read =
      typeof diameters === 'number'
        ? [requirePositive(from, `${path}.diameters`, diameters)]
        : [...requireColumn(from, `${path}.diameters`, diameters, { positive: true })];
    const mean = read.reduce((sum, d) => sum + d) / read.length;
    if (mean >= ball) throw new InputError(from, `${path}.diameters`, 'out-of-range', `must be below that of the ball (${ball})`, mean);
    const distance = (name: 'edgeDistance' | 'spacing') =>
      one[name] === undefined ? undefined : requireNonNegative(from, `${path}.${name}`, one[name]);
    const record = one.record === undefined ? undefined : requireForceColumns(from, `${path}.record`, one.record, ['time']);
    const force = one.force === undefined ? common : requirePositive(from, `${path}.force`, one.force);
    if (force === undefined && !record)
      throw new InputError(from, `${path}.force`, 'missing', 'must be given, here or for all, or recorded', undefined);
    if (record && !record.force.some((one) => one > 0))
      throw new InputError(from, `${path}.record.force`, 'not-positive', 'must rise above 0', 0);
    return { diameters: read, force, record, edgeDistance: distance('edgeDistance'), spacing: distance('spacing') };
  });
  return { ball, holdingTime, list };
}
