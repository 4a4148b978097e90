import { randomNumbers } from '../numeric/index.js';
import type { Motion } from './motion.js';
import type { SimulationSettings } from './settings.js';

/** Rounds to whole steps of a reading. */
const stepped = (value: number, step: number): number => (step > 0 ? Math.round(value / step) * step : value);

/** @internal What the logger makes of the motion: late start, noise, steps, repeated samples. */
export function recorded(motion: Motion, set: SimulationSettings, base: number, seed: number) {
  const random = randomNumbers(seed);
  let first = 0;
  while (motion.force[first]! < set.lateStart * motion.highest) first += 1;
  const n = motion.force.length - first;
  const load = new Float64Array(n);
  const travel = new Float64Array(n);
  const extension = new Float64Array(n);
  const kept = Math.sqrt(1 - set.correlation ** 2);
  let noise = random.normal();
  for (let i = 0; i < n; i += 1) {
    const k = first + i;
    const force = motion.force[k]! + set.forceNoise * noise;
    noise = set.correlation * noise + kept * random.normal();
    // friction acts against the motion, so it changes its sign only while the hand unloads
    const back = k > 0 && motion.travel[k]! < motion.travel[k - 1]! && motion.strain[k]! < motion.strain[k - 1]!;
    const loaded = motion.force[k]! > 0 ? (back ? -set.friction : set.friction) : 0;
    load[i] = stepped(set.area === undefined ? force : (force + loaded) / set.area, set.loadStep);
    travel[i] = stepped(motion.travel[k]! + (set.motionNoise > 0 ? set.motionNoise * random.normal() : 0), set.motionStep);
    const strain = motion.strain[k]!;
    extension[i] =
      strain > set.offAt ? NaN : stepped(strain * base + (set.motionNoise > 0 ? set.motionNoise * random.normal() : 0), set.motionStep);
    if (i > 0 && set.repeated > 0 && random.uniform() < set.repeated) {
      load[i] = load[i - 1]!;
      travel[i] = travel[i - 1]!;
      if (!Number.isNaN(extension[i]!)) extension[i] = extension[i - 1]!;
    }
  }
  // once off, an extensometer stays off
  const off = extension.findIndex(Number.isNaN);
  if (off >= 0) extension.fill(NaN, off);
  const time = motion.time.slice(first).map((t) => t - motion.time[first]!);
  return { load, others: { travel, ...(set.extensometer ? { extension } : {}), time }, first };
}
