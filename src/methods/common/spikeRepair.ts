import { requireOptions, type Finding, type TensionRecord, type TrailStep } from '../../base/index.js';
import { allSpikeFindings, repairRecordKernel, requireRepairs, type Repairs } from '../../record/index.js';

/** Repairs of a record of any test but tension: spikes are replaced unless that is switched off. */
export type SpikeRepair = Pick<Repairs, 'spikes'>;

/** @internal Checks which repairs are asked for. */
export function requireSpikeRepair(from: string, repairs: SpikeRepair = {}): SpikeRepair {
  requireOptions(from, repairs, ['spikes'], 'options.repairs');
  return requireRepairs(from, repairs, 'options.repairs');
}

/** @internal Spikes of a record as given; where they were looked for and none replaced, there are none to speak of. */
export const spikesOf = (raw: TensionRecord, { spikes }: SpikeRepair, trail: readonly TrailStep[]): Finding[] =>
  spikes !== false && !trail.some(({ change }) => change?.kind === 'set') ? [] : allSpikeFindings(raw);

/** @internal A record as it is evaluated, without its spikes; what was replaced, and what is said of it. */
export function withoutSpikes(raw: TensionRecord, repairs: SpikeRepair) {
  const { record, trail } = repairRecordKernel(raw, repairs);
  return { record, repaired: trail, spikes: spikesOf(raw, repairs, trail) };
}
