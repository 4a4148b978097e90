import { finding, soundLength, type Finding, type TensionRecord } from '../../base/index.js';
import { maximumIndex } from '../../numeric/index.js';

/** At fracture a force falls to less than a half of its highest within a hundredth of the samples; five at least (common practice). */
const BROKEN = 0.5;
const WITHIN = 0.01;
const FEW = 5;
/** A crosshead has then gone this share of its way at least, and ends at its farthest, within a tenth: a drive may run on after the fracture. */
const GONE = 0.3;
const FARTHEST = 0.9;

/**
 * @internal Force and travel in each other's place: the travel rises, falls away at once and stays down, as the force of a piece that breaks, while the
 * force is at its highest, as the travel is then. Nothing that a drive does looks like that.
 */
export function exchangedChannels({ force, travel }: TensionRecord): Finding[] {
  if (!travel) return [];
  const n = soundLength(travel);
  const top = maximumIndex(travel, 0, n);
  const highest = travel[top]!;
  const most = force[maximumIndex(force, 0, n)]!;
  let broken = n;
  while (broken > top + 1 && travel[broken - 1]! < BROKEN * highest) broken -= 1;
  if (broken === n || !(highest > 0)) return [];
  // the last sample before it fell away
  const before = Math.max(top, broken - Math.max(FEW, Math.ceil(WITHIN * n)));
  const fellAtOnce = travel[before]! - travel[broken]! > (1 - BROKEN) * BROKEN * highest;
  const stood = force[before]! > GONE * most && force[n - 1]! > FARTHEST * most;
  return fellAtOnce && stood ? [finding('channels-exchanged', { sample: broken, highest, force: most }, { field: 'maximumForce' })] : [];
}
