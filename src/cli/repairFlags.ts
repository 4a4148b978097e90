import { InvalidArgumentError, Option, type Command } from 'commander';
import type { Repairs, ReversibleColumn } from '../record/index.js';

/** Flags of the repairs of a record. */
export interface RepairFlags {
  readonly repair?: Repairs;
}

/** Repairs that are made or not. */
export const repairNames = ['spikes', 'zero', 'drift', 'lag', 'jumps', 'slips', 'envelope', 'repeats'] as const;
const yesOrNo: Readonly<Record<string, boolean>> = { '': true, yes: true, no: false };
const RULE = `It must be ${repairNames.join(', ')}, with commas between them, spikes=no, lag=samples, reverse=column or rate=samples per second.`;

/** One repair: `drift`, `spikes=no`, `lag=3`, `reverse=force`, `rate=20`. */
function repairOf(text: string, before: Repairs): Repairs {
  const [name = '', value = ''] = text.trim().split('=');
  if (name === 'reverse' && value !== '') return { ...before, reverse: [...(before.reverse ?? []), value as ReversibleColumn] };
  const count = value === '' ? NaN : Number(value);
  if ((name === 'rate' || name === 'lag') && Number.isFinite(count)) return { ...before, [name]: count };
  const wanted = Object.hasOwn(yesOrNo, value) ? yesOrNo[value] : undefined;
  if (wanted === undefined || !(repairNames as readonly string[]).includes(name)) throw new InvalidArgumentError(RULE);
  return { ...before, [name]: wanted };
}

const toRepairs = (text: string, before: Repairs = {}): Repairs => text.split(',').reduce((all, one) => repairOf(one, all), before);

/** Flag of the repair of a record of any test but tension. */
export interface SpikeFlags {
  readonly repair?: Pick<Repairs, 'spikes'>;
}

function toSpikeRepair(text: string): Pick<Repairs, 'spikes'> {
  const [name = '', value = ''] = text.trim().split('=');
  if (name !== 'spikes' || !Object.hasOwn(yesOrNo, value)) throw new InvalidArgumentError('It must be spikes or spikes=no.');
  return { spikes: yesOrNo[value] };
}

/** Adds the flag that leaves spikes in. */
export const withSpikeFlag = (command: Command): Command =>
  command.addOption(new Option('--repair <list>', 'repairs of the record: spikes or spikes=no; default spikes').argParser(toSpikeRepair));

/** Adds the flag of the repairs. */
export const withRepairFlags = (command: Command): Command =>
  command.addOption(
    new Option(
      '--repair <list>',
      `repairs of the record: ${repairNames.join(', ')}, spikes=no, lag=samples, reverse=column, rate=1/s; default spikes; may be repeated`,
    ).argParser(toRepairs),
  );
