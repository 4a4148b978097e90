import {
  InputError,
  requireBoolean,
  requireFinite,
  requireOptions,
  requirePositive,
  requireWords,
  type TensionColumns,
  type TensionRecord,
  type TrailStep,
} from '../../base/index.js';
import { alignChannelsKernel } from './alignChannels.js';
import { collapseRepeatsKernel } from './collapseRepeats.js';
import { joinJumpsKernel } from './joinJumps.js';
import { joinSlipsKernel } from './joinSlips.js';
import { loadingEnvelopeKernel } from './loadingEnvelope.js';
import type { RecordBlocks } from '../survey/recordBlocks.js';
import { rebuildTime } from './rebuildTime.js';
import { removeZeroDriftKernel } from './removeZeroDrift.js';
import { ownColumns, type Repaired } from './repaired.js';
import { replaceSpikesKernel } from './replaceSpikes.js';
import { spikeColumns } from '../checks/spikedColumns.js';
import { restoreZeroKernel } from './restoreZero.js';
import { reverseSign, reversible, type ReversibleColumn } from './reverseSign.js';

/** Which repairs are made. Only `spikes` is on by default: it does nothing to a record without them. */
export interface Repairs {
  /** Columns whose sign is turned, as {@link reverseSign}; default none. */
  readonly reverse?: readonly ReversibleColumn[] | undefined;
  /** Rate of the logger [1/s] from which time is counted anew, as {@link rebuildTime}; default: time is left. */
  readonly rate?: number | undefined;
  /** Spikes replaced, as {@link replaceSpikes}; default true. */
  readonly spikes?: boolean | undefined;
  /** Zeros that were moved put back, as {@link restoreZero}; default false. */
  readonly zero?: boolean | undefined;
  /** Drift of the zero removed, as {@link removeZeroDrift}; default false. */
  readonly drift?: boolean | undefined;
  /** Channels aligned, as {@link alignChannels}: true where the lag is to be found, or its samples; default false. */
  readonly lag?: boolean | number | undefined;
  /** Jumps of the motion joined, as {@link joinJumps}; default false. */
  readonly jumps?: boolean | undefined;
  /** Slips in the grips taken out, as {@link joinSlips}; default false. Leaves samples out. */
  readonly slips?: boolean | undefined;
  /** Excursions of the drive left out, as {@link loadingEnvelope}; default false. Leaves samples out. */
  readonly envelope?: boolean | undefined;
  /** Repeated samples left out, as {@link collapseRepeats}; default false. Leaves samples out. */
  readonly repeats?: boolean | undefined;
}

const names: readonly (keyof Repairs)[] = ['reverse', 'rate', 'spikes', 'zero', 'drift', 'lag', 'jumps', 'slips', 'envelope', 'repeats'];

/** @internal Checks which repairs are asked for. */
export function requireRepairs(from: string, repairs: Repairs, path = 'repairs'): Repairs {
  requireOptions(from, repairs, names, path);
  for (const name of names) {
    const value: unknown = repairs[name];
    if (value === undefined) continue;
    if (name === 'reverse') requireWords(from, `${path}.reverse`, repairs.reverse!, reversible);
    else if (name === 'rate') requirePositive(from, `${path}.rate`, value);
    else if (name === 'lag' && typeof value !== 'boolean') {
      if (!Number.isInteger(requireFinite(from, `${path}.lag`, value)))
        throw new InputError(from, `${path}.lag`, 'out-of-range', 'must be true, false or a whole number of samples', value);
    } else requireBoolean(from, `${path}.${name}`, value);
  }
  return repairs;
}

/** @internal {@link repairRecord} on a checked record, whose blocks may be known; columns that no repair touches stay the caller's. */
export function repairRecordKernel(record: TensionRecord, repairs: Repairs, blocks?: RecordBlocks): Repaired {
  const { reverse = [], rate, spikes = true, zero, drift, lag, jumps, slips, envelope, repeats } = repairs;
  const steps: readonly ((columns: TensionRecord) => Repaired)[] = [
    ...(reverse.length > 0 ? [(columns: TensionRecord) => reverseSign(columns, reverse)] : []),
    ...(rate === undefined ? [] : [(columns: TensionRecord) => rebuildTime(columns, { rate })]),
    ...(spikes ? [(columns: TensionRecord) => replaceSpikesKernel(columns, spikeColumns, reverse.length > 0 ? undefined : blocks)] : []),
    ...(zero === true ? [restoreZeroKernel] : []),
    ...(drift === true ? [removeZeroDriftKernel] : []),
    ...(lag === undefined || lag === false
      ? []
      : [(columns: TensionRecord) => alignChannelsKernel(columns, lag === true ? undefined : lag)]),
    ...(jumps === true ? [joinJumpsKernel] : []),
    ...(slips === true ? [joinSlipsKernel] : []),
    ...(envelope === true ? [loadingEnvelopeKernel] : []),
    ...(repeats === true ? [collapseRepeatsKernel] : []),
  ];
  let columns = record;
  const trail: TrailStep[] = [];
  for (const step of steps) {
    const done = step(columns);
    columns = done.record;
    trail.push(...done.trail);
  }
  return { record: columns, trail };
}

/**
 * The repairs asked for, one after the other, each only where its fault is found.
 *
 * @remarks
 * In the order of the job: signs, clock, spikes, zeros, drift, lag, jumps, slips, excursions, repeats. Raw record and trail give the repaired columns again, to
 * the last bit (`reapplySteps`), and each step can be undone (`undoStep`). A record without faults stays as it is.
 *
 * @param record - `force` [N] and the other columns as logged.
 * @param repairs - Which repairs are made; default spikes only.
 * @returns New columns and the trail.
 * @throws {@link InputError} `missing`, `not-finite`, `unequal-lengths`, `unknown-option`, `wrong-type`, `out-of-range`.
 *
 * @example
 * ```ts
 * const way = Array.from({ length: 40 }, (_, i) => Math.floor(i / 2));
 * const raw = { force: way.map((x) => x ** 1.5), travel: way };
 * repairRecord(raw, { repeats: true }).record.force.length; // => 20
 * ```
 *
 * @see Common practice: repair only what is stated, keep every step. Checked in `test/record/repairs.test.ts`.
 */
export function repairRecord(record: TensionColumns, repairs: Repairs = {}): Repaired {
  const own = ownColumns('repairRecord', record);
  return repairRecordKernel(own, requireRepairs('repairRecord', repairs));
}
