import type { StressStrainCurve } from '../../base/index.js';
import { lineFit, maximumIndex } from '../../numeric/index.js';
import { fitModulusKernel } from './fitModulus.js';

/** Part of an unloading, in shares of its fall from the top. */
export interface FallShares {
  /** Where it begins, 0 at the top. */
  readonly from: number;
  /** Where it ends, 1 at the bottom. */
  readonly to: number;
}

/** Part of an unloading whose line counts: shares of the fall from the top, or the window that a search finds. */
export type UnloadingWindow = FallShares | 'search';

/** @internal Samples between which the stress falls, and up to which it rises again. */
export interface TurningPoints {
  readonly top: number;
  readonly bottom: number;
  /** Last sample of the rise that follows; the bottom where none does. */
  readonly end: number;
}

/** The bottom is where so much of the fall is still to come: a piece that hangs loose stays near zero while the drive goes on back. */
const NEAR = 0.003;
/** Below this share of the highest stress a fall is noise or seating. */
const LEAST = 0.05;

/** @internal Falls of stress by a share of the stress at their top, each with the rise after it. */
export function turningPoints({ stress }: StressStrainCurve, minimumFall: number): TurningPoints[] {
  const found: { top: number; bottom: number; end: number }[] = [];
  const least = Math.max(LEAST * stress[maximumIndex(stress)]!, 0);
  let peak = 0;
  let lowest = -1;
  for (let i = 1; i < stress.length; i += 1) {
    const R = stress[i]!;
    if (lowest < 0) {
      if (R >= stress[peak]!) peak = i;
      else if (stress[peak]! > least && R <= (1 - minimumFall) * stress[peak]!) lowest = i;
    } else if (R < stress[lowest]!) lowest = i;
    else if (R >= stress[lowest]! + minimumFall * stress[peak]!) {
      found.push({ top: peak, bottom: lowest, end: lowest });
      peak = i;
      lowest = -1;
    }
  }
  if (lowest >= 0) found.push({ top: peak, bottom: lowest, end: lowest });
  found.forEach((one, k) => {
    // the rise goes up to the next top, or to the last sample
    const rises = k + 1 < found.length || lowest < 0;
    if (rises) one.end = found[k + 1]?.top ?? stress.length - 1;
    const near = stress[one.bottom]! + NEAR * (stress[one.top]! - stress[one.bottom]!);
    let first = one.top;
    while (stress[first]! > near) first += 1;
    one.bottom = first;
  });
  return found;
}

/** The falling part turned about its top, so that it rises from zero. */
function turned({ strain, stress }: StressStrainCurve, top: number, bottom: number): StressStrainCurve {
  return {
    strain: strain.slice(top, bottom + 1).map((e) => strain[top]! - e),
    stress: stress.slice(top, bottom + 1).map((R) => stress[top]! - R),
  };
}

/** @internal Line of an unloading, or undefined where there is none. */
export function unloadingLine(
  curve: StressStrainCurve,
  top: number,
  bottom: number,
  window: UnloadingWindow,
): { slope: number; standardError: number; range: readonly [number, number] } | undefined {
  if (window === 'search') {
    const line = bottom - top < 3 ? undefined : fitModulusKernel(turned(curve, top, bottom), { by: 'lower-bound' }, bottom - top);
    return line?.ok === true
      ? { slope: line.slope, standardError: line.standardError, range: [top + line.first, top + line.last] }
      : undefined;
  }
  const { strain, stress } = curve;
  const fall = stress[top]! - stress[bottom]!;
  const gone = (i: number): number => (stress[top]! - stress[i]!) / fall;
  let first = top;
  while (gone(first) < window.from) first += 1;
  let last = bottom;
  while (last > first && gone(last) > window.to) last -= 1;
  const line = lineFit(strain, stress, first, last);
  return line && line.slope > 0 ? { slope: line.slope, standardError: line.standardError, range: [first, last] } : undefined;
}

/** @internal Area between reloading and unloading over the strain that both pass; undefined where nothing rises again. */
export function loopEnergy({ strain, stress }: StressStrainCurve, { top, bottom, end }: TurningPoints): number | undefined {
  if (end <= bottom) return undefined;
  let farthest = -Infinity;
  for (let i = bottom; i <= end; i += 1) farthest = Math.max(farthest, strain[i]!);
  const limit = Math.min(strain[top]!, farthest);
  let twice = 0;
  for (let i = top; i < end; i += 1) {
    let [e, R, nextStrain, nextStress] = [strain[i]!, stress[i]!, strain[i + 1]!, stress[i + 1]!];
    if (e > limit && nextStrain > limit) continue;
    // a step over the limit counts up to it
    if (e > limit) {
      R += ((limit - e) / (nextStrain - e)) * (nextStress - R);
      e = limit;
    } else if (nextStrain > limit) {
      nextStress = R + ((limit - e) / (nextStrain - e)) * (nextStress - R);
      nextStrain = limit;
    }
    twice += (nextStrain - e) * (R + nextStress);
  }
  return twice / 2;
}
