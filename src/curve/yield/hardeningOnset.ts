import type { StressStrainCurve } from '../../base/index.js';
import { firstReaching, mean, noiseReach, steepestLine, type NoiseOfCurve } from '../../numeric/index.js';
import type { Fall } from './Fall.js';
import { STANDS_OUT } from './yieldRule.js';

/** @internal Means that lower the noise are taken over so much strain. */
export const MEAN_STRAIN = 0.0002;
/** Noise below this share of the stress needs no means. */
const QUIET = 1e-4;
/** Where that leaves more than this share of the stress, over up to a quarter of the width of the lines of hardening. */
const CALM = 5e-4;
const MOST_STRAIN = 0.0005;
/** Width of the lines from which the steepest of hardening is taken. */
const HARDENING_WIDTH = 0.002;
/** Noise lifts the steepest of a hundred lines by three standard errors: of one that is twice as steep, half at least is hardening. */
const STANDARD_ERRORS = 6;
/** Means that lie within so many deviations of a minimum are of its level; and the curve has left the level beyond as many. */
const LEVEL = 3;
/**
 * A curve has left its level by half a per cent of ReH as a rule. Hardening that is soon over bends before it has come so far: by this share of it then, and by
 * no less than what waves fall by on the way.
 */
const LEFT_SHARE = 0.1;

/** @internal Where uniform hardening begins. */
export interface HardeningOnset {
  /** Strain and first sample of uniform hardening. */
  readonly hardeningStrain: number;
  readonly hardeningStart: number;
}

/** @internal True where noise is to be lowered by means. */
export const isNoisy = ({ level }: NoiseOfCurve, stress: number): boolean => level > QUIET * stress;

/** A stretch of a curve as hardening is looked for in it: samples, or means of several, with the noise of each and of means of them. */
interface Places extends StressStrainCurve {
  readonly spoilt: Uint8Array | undefined;
  readonly noise: NoiseOfCurve;
}

/** How many samples a mean is taken over that lowers the noise of a curve with so much strain a sample; 1 where it needs none. */
function samplesOfMean(noise: NoiseOfCurve, stress: number, perSample: number): number {
  if (!isNoisy(noise, stress)) return 1;
  let size = Math.max(1, Math.floor(MEAN_STRAIN / perSample));
  while (noise.ofMeans > CALM * stress * Math.sqrt(size) && 2 * size * perSample <= MOST_STRAIN) size *= 2;
  return size;
}

/** The samples first to top, or means of them out of noise, and the place of a sample; of those that a pause did not spoil, where it left some. */
function placesOf({ strain, stress }: StressStrainCurve, first: number, top: number, { noise, spoilt }: Pick<Places, 'noise' | 'spoilt'>) {
  const perSample = Math.max((strain[top]! - strain[first]!) / Math.max(top - first, 1), Number.MIN_VALUE);
  const size = samplesOfMean(noise, stress[first]!, perSample);
  const count = Math.floor((top - first + 1) / size);
  const ofMeans = noise.ofMeans / Math.sqrt(size);
  const places: Places = {
    strain: new Float64Array(count),
    stress: new Float64Array(count),
    spoilt: spoilt && new Uint8Array(count).fill(1),
    noise: { level: Math.min(noise.level, ofMeans), ofMeans },
  };
  for (let k = 0, i = first; k < count; k += 1) {
    let kept = 0;
    for (const stop = i + size; i < stop; i += 1) {
      if (spoilt?.[i] === 1) continue;
      kept += 1;
      places.strain[k]! += (strain[i]! - places.strain[k]!) / kept;
      places.stress[k]! += (stress[i]! - places.stress[k]!) / kept;
    }
    if (kept > 0) places.spoilt?.fill(0, k, k + 1);
    else [places.strain[k], places.stress[k]] = [strain[i - 1]!, stress[i - 1]!];
  }
  return { places, at: (sample: number): number => Math.min(count - 1, Math.floor((sample - first) / size)) };
}

/**
 * The steepest line of hardening between two places: over the least width, doubled as long as noise may have made it the steepest; out of noise, which
 * makes the steepest of many, where hardening begins, within twice that width.
 */
function lineOfHardening(strain: Float64Array, stress: Float64Array, first: number, end: number, noise: number) {
  const all = strain[end - 1]! - strain[first]!;
  for (let width = HARDENING_WIDTH; ; width *= 2) {
    const beyond = noise > 0 ? firstReaching(strain, strain[first]! + 2 * width, first, end - 1) + 1 : end;
    const line = steepestLine(strain, stress, first, beyond, width);
    if (!line || line.slope * line.spread >= STANDARD_ERRORS * noise || 2 * width > all) return line;
  }
}

/** The steepest line of hardening where a pause comes before its width: over what the pause did not spoil of twice that width. */
function lineOverPauses({ strain, stress }: Places, first: number, counts: (i: number) => boolean, noise: number) {
  const kept: number[] = [];
  for (let i = first; i < strain.length && strain[i]! - strain[first]! <= 2 * HARDENING_WIDTH; i += 1) if (counts(i)) kept.push(i);
  const of = (column: Float64Array): Float64Array => Float64Array.from(kept, (i) => column[i]!);
  return lineOfHardening(of(strain), of(stress), 0, kept.length, noise);
}

/** The level about a minimum: the mean of its neighbours that noise does not tell from it, less those at either end that lie above it, which lead to it and away. */
function levelAbout({ stress, noise }: Places, at: number, counts: (i: number) => boolean): number {
  // what lies below it by more is of the dip before it
  const reach = 2 * LEVEL * noise.level;
  const belongs = (i: number): boolean => stress[i] !== undefined && (Math.abs(stress[i] - stress[at]!) <= reach || !counts(i));
  let [from, to] = [at, at];
  while (belongs(from - 1)) from -= 1;
  while (belongs(to + 1)) to += 1;
  for (;;) {
    const level = mean(stress.subarray(from, to + 1).filter((_, k) => counts(from + k) || from + k === at));
    const above = (i: number): boolean => i !== at && (stress[i]! > level || !counts(i));
    if (above(to)) to -= 1;
    else if (above(from)) from += 1;
    else return level;
  }
}

/** The greatest fall from the highest so far, from a place on: of waves where it stands out of noise, else 0. */
function fallOfWaves({ stress, noise }: Places, first: number, counts: (i: number) => boolean): number {
  let highest = stress[first]!;
  let fall = 0;
  for (let i = first; i < stress.length; i += 1) {
    if (!counts(i)) continue;
    if (stress[i]! > highest) highest = stress[i]!;
    else if (highest - stress[i]! > fall) fall = highest - stress[i]!;
  }
  return fall > noiseReach(stress.length - first) * noise.level ? fall : 0;
}

/** The bottom of the last wave between two places that falls by so much; the first of them without. */
function lastTrough({ stress }: Places, first: number, last: number, fall: number, counts: (i: number) => boolean): number {
  if (fall === 0) return first;
  let trough = first;
  let highest = stress[first]!;
  let within = false;
  for (let i = first; i <= last; i += 1) {
    if (!counts(i)) continue;
    if (stress[i]! > highest) highest = stress[i]!;
    const low = highest - stress[i]! >= fall;
    if (low && (!within || stress[i]! < stress[trough]!)) trough = i;
    within = low;
  }
  return trough;
}

/** @internal Where Ae ends: the horizontal through the last minimum, out of noise through the level about it, meets the steepest line of the hardening after it, pauses apart. */
export function hardeningOnset(curve: StressStrainCurve, last: number, top: number, { peak, fallen, spoilt, noise }: Fall): HardeningOnset {
  const { places, at } = placesOf(curve, fallen, top, { noise, spoilt });
  const { strain, stress } = places;
  const counts = (i: number): boolean => places.spoilt?.[i] !== 1;
  const least = at(last);
  const noisy = isNoisy(noise, curve.stress[fallen]!);
  const level = noisy ? levelAbout(places, least, counts) : curve.stress[last]!;
  const slow = noisy ? places.noise.ofMeans : 0;
  const end = stress.length;
  const rise = curve.stress[top]! - level;
  const waves = fallOfWaves(places, least, counts);
  const left = Math.max(LEFT_SHARE * rise, waves);
  const leaves = level + Math.max(LEVEL * places.noise.level, Math.min(STANDS_OUT * curve.stress[peak]!, left));
  let rising = end - 1;
  while (rising > least && (stress[rising]! > leaves || !counts(rising))) rising -= 1;
  let until = rising + 1;
  while (until < end && counts(until)) until += 1;
  const line =
    until < end && strain[until - 1]! - strain[rising]! < HARDENING_WIDTH
      ? lineOverPauses(places, rising, counts, slow)
      : lineOfHardening(strain, stress, rising, until, slow);
  const meets = line && line.slope > 0 ? line.meanX + (level - line.meanY) / line.slope : curve.strain[last]!;
  // no hardening is uniform before the last wave is over; waves of that half a per cent are minima of their own
  const trough = lastTrough(places, least, rising, Math.min(waves, leaves - level) / 2, counts);
  const hardeningStrain = Math.max(meets, curve.strain[last]!, trough === least ? 0 : strain[trough]!);
  return { hardeningStrain, hardeningStart: firstReaching(curve.strain, hardeningStrain, last, top) };
}
