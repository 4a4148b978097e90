import { finding, type Finding } from '../../base/index.js';
import { noiseLevel } from '../../numeric/index.js';

/** A maximum that stands out of both neighbours by so many standard deviations, and by this share of itself, is a spike. */
const SPIKE = 6;
const SHARE = 0.01;
/** Samples on either side from which the noise is taken. */
const AROUND = 100;

/** @internal Doubt about a maximum that is a single sample; `strength` [MPa] is what that sample gave. */
export function spikeFindings(force: Float64Array, maximum: number, strength: number, field: string): Finding[] {
  const before = force[maximum - 1];
  const after = force[maximum + 1];
  if (before === undefined || after === undefined) return [];
  const highest = force[maximum]!;
  const excess = highest - Math.max(before, after);
  if (excess <= SHARE * highest) return [];
  const noise = noiseLevel(force, Math.max(0, maximum - AROUND), Math.min(force.length, maximum + AROUND));
  if (excess <= SPIKE * noise) return [];
  return [finding('maximum-is-spike', { excess: (excess / highest) * strength }, { field, range: [maximum, maximum] })];
}
