import { soundLength } from '../base/index.js';
import { noiseLevel, type RandomNumbers } from '../numeric/index.js';
import { resolution } from '../record/index.js';
import type { TensionTask } from './tensionModel.js';
import type { RecordNoise } from './tensionUncertainty.js';

/** @internal Noise of a record: standard deviations of a sample [N, mm], and correlation of the force's from sample to sample. */
export type KnownNoise = Readonly<Record<keyof RecordNoise, number>>;

/** The noise is read where the stress is between these shares of the 0.2 %-offset stress. */
const FROM_SHARE = 0.1;
const TO_SHARE = 0.7;
/** Noise below this share of the stress is rounding. */
const ROUNDING = 1e-6;
/** Distances between samples at which third differences are taken, so many samples to each. */
const STRIDES = [1, 2, 4, 8];
const PER_STRIDE = 12;
/** Noise at a distance is correlated where it is above that of neighbours by more than this over √n: levels of n samples are known no better. */
const CORRELATED = 5;
const MOST_CORRELATION = 0.95;

/** Noise level by third differences between samples that lie a stride apart. */
function levelAt(column: Float64Array, stride: number): number {
  let squares = 0;
  for (let phase = 0; phase < stride; phase += 1) {
    const count = Math.floor((column.length - 1 - phase) / stride) + 1;
    squares += noiseLevel(Float64Array.from({ length: count }, (_, k) => column[phase + k * stride]!)) ** 2;
  }
  return Math.sqrt(squares / stride);
}

/** Share of the variance that third differences show of noise whose samples, a stride apart, have this correlation. */
const shownAt = (rho: number): number => (10 - 15 * rho + 6 * rho ** 2 - rho ** 3) / 10;

/** The correlation of neighbours at which they show this share of what samples a stride apart show. */
function correlationOf(share: number, stride: number): number {
  let low = 0;
  let high = MOST_CORRELATION;
  for (let k = 0; k < 40; k += 1) {
    const rho = (low + high) / 2;
    if (shownAt(rho) > share * shownAt(rho ** stride)) low = rho;
    else high = rho;
  }
  return (low + high) / 2;
}

/** How much more stress noise a residual shows where the force also makes the correction of the frame. */
function leverOf({ record, recorded, lengths, withoutFrame }: TensionTask, slope: number, first: number, last: number): number {
  if (recorded.basis !== 'travel' || !record.travel) return 1;
  const { travel } = withoutFrame(record);
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
  let first = line.first;
  while (first > 0 && stress[first - 1]! >= FROM_SHARE * level) first -= 1;
  return [first, last];
}

/** Share of neighbours that are equal, from which the steps of a reading hide its noise. */
const EQUAL = 0.2;

/** Noise of a column that was read in steps so coarse that many neighbours are equal: that of rounding; else 0. */
function stepNoise(column: Float64Array, beyond: number): number {
  let equal = 0;
  for (let i = 1; i < beyond; i += 1) if (column[i] === column[i - 1]) equal += 1;
  return equal > EQUAL * beyond ? resolution(column.subarray(0, beyond)) / Math.sqrt(12) : 0;
}

/**
 * @internal Noise of force and displacement of a record. Third differences of the columns tell how it divides between them, those of what
 * is left of the elastic line how much there is: jerks of the hand move both columns together and are no noise. Third differences
 * of samples farther apart show noise that drifts slowly.
 */
export function tensionNoise(task: TensionTask, given: RecordNoise): KnownNoise {
  const { record, recorded, numbers, lengths } = task;
  const { line } = numbers;
  const column = record.extension ?? record.strain ?? record.travel!;
  const per = !record.extension && record.strain ? lengths.extensometerLength : 1;
  const beyond = Math.min(numbers.highest + 1, soundLength(column));
  let force = noiseLevel(record.force, 0, beyond);
  let displacement = per * noiseLevel(column, 0, beyond);
  let correlation = 0;
  const [first, last] = placeOf(task);
  if (line.ok && last - first >= PER_STRIDE) {
    const { strain, stress } = recorded;
    const rest = Float64Array.from({ length: last - first + 1 }, (_, i) => stress[first + i]! - line.slope * strain[first + i]!);
    const near = levelAt(rest, 1) ** 2;
    const lever = leverOf(task, line.slope, first, last) / lengths.area;
    const ofDisplacement = ((line.slope * displacement) / recorded.strainLength) ** 2;
    const whole = (lever * force) ** 2 + ofDisplacement;
    const kept = whole > near ? near / whole : 1;
    force *= Math.sqrt(kept);
    displacement *= Math.sqrt(kept);
    const strides = STRIDES.filter((stride) => rest.length >= PER_STRIDE * stride);
    const [before = near, far = near] = strides.map((stride) => levelAt(rest, stride) ** 2).slice(-2);
    const real = near > (ROUNDING * stress[last]!) ** 2;
    if (real && Math.min(before, far) > (1 + CORRELATED / Math.sqrt(rest.length)) ** 2 * near) {
      const stride = strides[strides.length - 1]!;
      const rising = far - kept * ofDisplacement;
      correlation = correlationOf(Math.max(0, near - kept * ofDisplacement) / rising, stride);
      force = Math.sqrt(rising / shownAt(correlation ** stride)) / lever;
    }
  }
  return {
    force: given.force ?? Math.max(force, stepNoise(record.force, beyond)),
    displacement: given.displacement ?? Math.max(displacement, per * stepNoise(column, beyond)),
    correlation: given.correlation ?? (given.force === undefined ? correlation : 0),
  };
}

/** @internal Fills columns with noise: of the force correlated from sample to sample, of the displacement not. */
export function fillNoise(random: RandomNumbers, noise: KnownNoise, forceNoise: Float64Array, displacementNoise: Float64Array): void {
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
