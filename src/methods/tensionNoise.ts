import { lineFit, noiseLevel, type RandomNumbers } from '../numeric/index.js';
import type { TensionTask } from './tensionModel.js';
import type { RecordNoise } from './tensionUncertainty.js';

/** Residuals that follow each other closer than this cannot be told from a bend of the curve. */
const MOST_CORRELATION = 0.98;
/** Fewer samples in the window say little of their scatter: the whole rise is looked at instead. */
const LEAST = 12;

/** How much more force noise a residual shows where the force also makes the correction of the frame. */
function leverOf({ record, recorded, lengths, withoutFrame }: TensionTask, slope: number, first: number, last: number): number {
  if (recorded.basis !== 'travel' || !record.travel) return 1;
  const { travel } = withoutFrame(record);
  const motion = (i: number): number => record.travel![i]! - (travel ?? record.travel!)[i]!;
  const rise = record.force[last]! - record.force[first]!;
  return rise > 0 ? 1 + (slope * lengths.area * (motion(last) - motion(first))) / rise / recorded.strainLength : 1;
}

/**
 * @internal Noise of force and displacement of a record. Third differences of the columns tell how it divides between them, the
 * residuals of the elastic line how much there is in all: jerks of the hand move both columns together and are no noise, drift and slow
 * disturbances are noise that third differences do not see.
 */
export function tensionNoise(task: TensionTask, given: RecordNoise): Required<{ [K in keyof RecordNoise]: number }> {
  const { record, recorded, numbers, lengths } = task;
  const { line } = numbers;
  const column = record.extension ?? record.strain ?? record.travel!;
  const per = !record.extension && record.strain ? lengths.extensometerLength : 1;
  const first = line.ok && line.points >= LEAST ? line.first : 0;
  const last = line.ok && line.points >= LEAST ? line.last : Math.min(numbers.highest, recorded.strain.length - 1);
  let force = noiseLevel(record.force, first, last + 1);
  let displacement = per * noiseLevel(column, first, last + 1);
  let correlation = 0;
  const { strain, stress } = recorded;
  const fit = line.ok && line.points >= LEAST ? lineFit(strain, stress, first, last) : undefined;
  if (fit) {
    const lever = leverOf(task, fit.slope, first, last) / lengths.area;
    const fromForce = (lever * force) ** 2;
    const fromDisplacement = ((fit.slope * displacement) / recorded.strainLength) ** 2;
    const seen = fit.residualStandardDeviation ** 2;
    const white = fromForce + fromDisplacement;
    if (white > seen) {
      force *= Math.sqrt(seen / white);
      displacement *= Math.sqrt(seen / white);
    } else if (lever > 0) {
      let along = 0;
      let before = 0;
      for (let i = first; i <= last; i += 1) {
        const e = stress[i]! - fit.intercept - fit.slope * strain[i]!;
        along += e * before;
        before = e;
      }
      const ofForce = seen - fromDisplacement;
      force = Math.sqrt(ofForce) / lever;
      if (ofForce > 0) correlation = Math.min(MOST_CORRELATION, Math.max(0, along / (fit.points - 2) / ofForce));
    }
  }
  return {
    force: given.force ?? force,
    displacement: given.displacement ?? displacement,
    correlation: given.correlation ?? (given.force === undefined ? correlation : 0),
  };
}

/** @internal Fills columns with noise: of the force correlated from sample to sample, of the displacement not. */
export function fillNoise(
  random: RandomNumbers,
  { force, displacement, correlation }: Required<{ [K in keyof RecordNoise]: number }>,
  forceNoise: Float64Array,
  displacementNoise: Float64Array,
): void {
  const fresh = Math.sqrt(1 - correlation ** 2);
  let last = random.normal();
  for (let i = 0; i < forceNoise.length; i += 1) {
    forceNoise[i] = force * last;
    last = correlation * last + fresh * random.normal();
  }
  if (displacement > 0) for (let i = 0; i < displacementNoise.length; i += 1) displacementNoise[i] = displacement * random.normal();
}
