import { InputError, requireColumn, requireFinite, requireObject, type CurveColumns, type StressStrainCurve } from '../../base/index.js';

/** Strain limits of a fit. */
export interface FitRange {
  /** Least strain in the fit [mm/mm]; default the first. */
  readonly from?: number | undefined;
  /** Greatest strain in the fit [mm/mm]; default the last. */
  readonly to?: number | undefined;
}

/** @internal Checked strain limits. */
export function strainLimits(from: string, range: FitRange, path: string): readonly [number, number] {
  const low = range.from === undefined ? -Infinity : requireFinite(from, `${path}.from`, range.from);
  const high = range.to === undefined ? Infinity : requireFinite(from, `${path}.to`, range.to);
  if (high <= low) throw new InputError(from, `${path}.to`, 'out-of-range', `must be above from (${low})`, high);
  return [low, high];
}

/** @internal A checked flow curve, both columns above 0, cut to a range of strain. */
export function flowRange(from: string, flow: CurveColumns, range: FitRange, path = 'options'): StressStrainCurve {
  requireObject(from, 'flow', flow);
  const strain = requireColumn(from, 'flow.strain', flow.strain, { positive: true });
  const stress = requireColumn(from, 'flow.stress', flow.stress, { length: strain.length, positive: true });
  const [low, high] = strainLimits(from, range, path);
  return low === -Infinity && high === Infinity ? { strain, stress } : withinStrains({ strain, stress }, low, high);
}

/** @internal The samples whose strain lies between two limits, both included. */
export function withinStrains({ strain, stress }: StressStrainCurve, low: number, high: number): StressStrainCurve {
  const inside = { strain: new Float64Array(strain.length), stress: new Float64Array(strain.length) };
  let n = 0;
  for (let i = 0; i < strain.length; i += 1) {
    if (strain[i]! < low || strain[i]! > high) continue;
    inside.strain[n] = strain[i]!;
    inside.stress[n] = stress[i]!;
    n += 1;
  }
  return { strain: inside.strain.subarray(0, n), stress: inside.stress.subarray(0, n) };
}
