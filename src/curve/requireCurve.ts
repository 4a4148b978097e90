import { LARGEST_READING, requireColumn, requireObject, type CurveColumns, type StressStrainCurve } from '../base/index.js';

/** @internal A checked curve: two columns of the same length, finite throughout, of at least `least` samples. */
export function requireCurve(from: string, curve: CurveColumns, least = 2): StressStrainCurve {
  requireObject(from, 'curve', curve);
  const strain = requireColumn(from, 'curve.strain', curve.strain, { least, largest: LARGEST_READING });
  return { strain, stress: requireColumn(from, 'curve.stress', curve.stress, { length: strain.length, largest: LARGEST_READING }) };
}
