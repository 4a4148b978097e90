import { InputError, requireColumn, requireFinite, requireObject, type CurveColumns, type StressStrainCurve } from '../base/index.js';

/** Strain limits of a fit. */
export interface FitRange {
  /** Least strain in the fit [mm/mm]; default the first. */
  readonly from?: number | undefined;
  /** Greatest strain in the fit [mm/mm]; default the last. */
  readonly to?: number | undefined;
}

/** @internal A checked flow curve, both columns above 0, cut to a range of strain. */
export function flowRange(from: string, flow: CurveColumns, range: FitRange): StressStrainCurve {
  requireObject(from, 'flow', flow);
  const strain = requireColumn(from, 'flow.strain', flow.strain, { positive: true });
  const stress = requireColumn(from, 'flow.stress', flow.stress, { length: strain.length, positive: true });
  const low = range.from === undefined ? -Infinity : requireFinite(from, 'options.from', range.from);
  const high = range.to === undefined ? Infinity : requireFinite(from, 'options.to', range.to);
  if (high <= low) throw new InputError(from, 'options.to', 'out-of-range', `must be above from (${low})`, high);
  if (low === -Infinity && high === Infinity) return { strain, stress };
  const inside = (_: number, i: number): boolean => strain[i]! >= low && strain[i]! <= high;
  return { strain: strain.filter(inside), stress: stress.filter(inside) };
}
