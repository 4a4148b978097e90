import { soundLength } from '../../base/index.js';
import { noiseLevel, noiseLevelError, reachedSince, resolution, type RandomStreams } from '../../numeric/index.js';
import { motionColumn, ofPiece } from '../../record/index.js';
import { noiseDrift } from './noiseDrift.js';
import type { TensionTask } from './tensionModel.js';
import type { RecordNoise } from '../evaluation/tensionUncertainty.js';

/** @internal Noise of a record: standard deviations of a sample [N, mm], and correlation of the force's from sample to sample. */
export interface KnownNoise extends Readonly<Record<keyof RecordNoise, number>> {
  /** Samples that told the correlation; absent where it is none, or was given. */
  readonly toldBy?: number | undefined;
}

/** Noise of a sample, as it divides between the columns [N, mm]. */
type Divided = Readonly<Record<'force' | 'displacement', number>>;

/** @internal What the standard error of a slope or a bend is to be multiplied by where neighbours are correlated by ρ: √((1 + ρ)/(1 − ρ)). */
export const errorOfDrift = ({ correlation }: Pick<KnownNoise, 'correlation'>): number => Math.sqrt((1 + correlation) / (1 - correlation));

/**
 * @internal Degrees of freedom of what slow noise does. A correlation told by N samples is known to √((1 − ρ²)/N), what noise does to a slope goes
 * by 1/(1 − ρ): so it is known to one over the root of the independent samples that N correlated ones are worth, N (1 − ρ)/(1 + ρ).
 */
export const freedomOfDrift = (noise: KnownNoise): number => (noise.toldBy ?? Infinity) / errorOfDrift(noise) ** 2 / 2;

/** The noise is read where the stress is between these shares of the 0.2 %-offset stress. */
const FROM_SHARE = 0.1;
const TO_SHARE = 0.7;
/** Noise below this share of the stress is rounding. */
const ROUNDING = 1e-6;
/** Fewest samples that tell the noise. */
const LEAST = 12;

/** How much more stress noise a residual shows where the force also makes the correction of the frame. */
function leverOf({ record, recorded, lengths, strainRecord }: TensionTask, slope: number, first: number, last: number): number {
  if (recorded.basis !== 'travel' || !record.travel) return 1;
  const { travel } = strainRecord(record);
  const motion = (i: number): number => record.travel![i]! - (travel ?? record.travel!)[i]!;
  const rise = record.force[last]! - record.force[first]!;
  return rise > 0 ? 1 + (slope * lengths.area * (motion(last) - motion(first))) / rise / recorded.strainLength : 1;
}

/** Samples where the noise is read. */
function placeOf({ numbers: { line, highest }, recorded: { stress } }: TensionTask): readonly [number, number] {
  const level = line.ok ? line.offsetStress : undefined;
  if (!line.ok || level === undefined) return line.ok ? [line.first, line.last] : [0, Math.min(highest, stress.length - 1)];
  let last = Math.max(line.offsetSample ?? line.last, line.last);
  while (last > line.last && stress[last]! > TO_SHARE * level) last -= 1;
  return [reachedSince(stress, FROM_SHARE * level, line.first), last];
}

/**
 * Force from the end of yielding to its maximum, in stretches of so many samples, over the logarithm of strain: a cubic of that follows a power
 * of the strain around the knee of a curve too, where one of the strain itself leaves a wave that passes for drift.
 */
function hardeningStretches({ record, recorded: { strain }, numbers }: TensionTask, length: number) {
  const { yielding, proofs, maximumSample } = numbers;
  const beyond = Math.min(maximumSample, strain.length);
  const from = (yielding?.ok === true ? yielding.hardeningStart : proofs.find((one) => one.ok)?.index) ?? beyond;
  return Array.from({ length: Math.max(0, Math.floor((beyond - from) / length)) }, (_, k) => {
    const [begin, end] = [from + k * length, from + (k + 1) * length];
    return { motion: strain.slice(begin, end).map(Math.log), force: record.force.slice(begin, end) };
  });
}

/** Share of neighbours that are equal, from which the steps of a reading hide its noise. */
const EQUAL = 0.2;

/** Noise of a column that was read in steps so coarse that many neighbours are equal: that of rounding; else 0. */
function stepNoise(column: Float64Array, beyond: number): number {
  let equal = 0;
  for (let i = 1; i < beyond; i += 1) if (column[i] === column[i - 1]) equal += 1;
  return equal > EQUAL * beyond ? resolution(column.subarray(0, beyond)) / Math.sqrt(12) : 0;
}

/** What is left of the elastic line where the noise is read [MPa], its variance, and how much of it a noise of the force makes [MPa/N]. */
function restOfLine(task: TensionTask) {
  const { recorded, numbers, lengths } = task;
  const { line } = numbers;
  const [first, last] = placeOf(task);
  if (!line.ok || last - first < LEAST) return undefined;
  const { strain, stress } = recorded;
  const rest = Float64Array.from({ length: last - first + 1 }, (_, i) => stress[first + i]! - line.slope * strain[first + i]!);
  const variance = noiseLevel(rest) ** 2;
  return { slope: line.slope, first, last, rest, variance, lever: leverOf(task, line.slope, first, last) / lengths.area };
}

/** What is known of the rest of an elastic line. */
type RestOfLine = NonNullable<ReturnType<typeof restOfLine>>;

/** Share of the variance of both columns that is noise: the rest of the line shows no more. */
function keptShare({ slope, rest, variance, lever }: RestOfLine, divided: Divided, strainLength: number): number {
  const ofDisplacement = ((slope * divided.displacement) / strainLength) ** 2;
  const whole = (lever * divided.force) ** 2 + ofDisplacement;
  // so few samples tell less only where it is less by more than their own error
  const surely = variance * (1 + noiseLevelError(rest.length)) ** 2;
  return whole > surely ? surely / whole : 1;
}

/** How the noise drifts, in units of force: by the elastic stretch, and as long ones of the force itself where the piece hardens. */
function driftOf(task: TensionTask, { first, last, rest, variance, lever }: RestOfLine, column: Float64Array) {
  if (!(variance > (ROUNDING * task.recorded.stress[last]!) ** 2)) return undefined;
  const elastic = { motion: column.slice(first, last + 1), force: rest.map((one) => one / lever) };
  return noiseDrift([elastic, ...hardeningStretches(task, rest.length)]);
}

/**
 * @internal Noise of force and displacement of a record. Third differences of the columns tell how it divides between them, those of what
 * is left of the elastic line how much there is: jerks of the hand move both columns together and are no noise. Whether it drifts
 * slowly is told by the likelihood of stretches between the elastic part and the maximum.
 */
export function tensionNoise(task: TensionTask, given: RecordNoise): KnownNoise {
  const { record, recorded, numbers, lengths } = task;
  const motion = motionColumn(record, ofPiece);
  const column = record[motion]!;
  const per = motion === 'strain' ? lengths.extensometerLength : 1;
  const beyond = Math.min(numbers.highest + 1, soundLength(column));
  const divided: Divided = { force: noiseLevel(record.force, 0, beyond), displacement: per * noiseLevel(column, 0, beyond) };
  const rest = restOfLine(task);
  const kept = Math.sqrt(rest ? keptShare(rest, divided, recorded.strainLength) : 1);
  const drift = rest && driftOf(task, rest, column);
  const force = drift ? drift.fresh / Math.sqrt(1 - drift.correlation ** 2) : kept * divided.force;
  const own = given.correlation === undefined && given.force === undefined;
  return {
    force: given.force ?? Math.max(force, stepNoise(record.force, beyond)),
    displacement: given.displacement ?? Math.max(kept * divided.displacement, per * stepNoise(column, beyond)),
    correlation: own ? (drift?.correlation ?? 0) : (given.correlation ?? 0),
    toldBy: own ? drift?.samples : undefined,
  };
}

/** @internal Fills columns with noise: of the force correlated from sample to sample, of the displacement not. */
export function fillNoise(
  random: Pick<RandomStreams, 'normals'>,
  noise: KnownNoise,
  forceNoise: Float64Array,
  displacementNoise: Float64Array,
): void {
  const { force, displacement, correlation } = noise;
  const fresh = Math.sqrt(1 - correlation ** 2);
  random.normals(forceNoise);
  let last = forceNoise[0]!;
  forceNoise[0] = force * last;
  for (let i = 1; i < forceNoise.length; i += 1) {
    last = correlation * last + fresh * forceNoise[i]!;
    forceNoise[i] = force * last;
  }
  if (!(displacement > 0)) return;
  random.normals(displacementNoise);
  for (let i = 0; i < displacementNoise.length; i += 1) displacementNoise[i]! *= displacement;
}
