import type { UnloadingLoop } from '../../curve/index.js';
import { ISO, percent, quantity } from '../common/quantity.js';
import type { UnloadingLoopResult, UnloadingResult } from './UnloadingResult.js';

/** A set below this share of the limit is next to nothing: noise and rounding decide its logarithm. */
const NOTHING = 0.01;

/** @internal A loop with names, units and sources. */
export function loopQuantities(loop: UnloadingLoop, ofPiece: boolean, limit: number): UnloadingLoopResult {
  const { top, bottom, slope, standardError, permanentSet, energy } = loop;
  return {
    top,
    bottom,
    slope: ofPiece
      ? quantity('Eu', 'modulus of elasticity, unloading', slope, 'MPa', 'ASTM E111; line of the unloading', standardError)
      : quantity('mu', 'slope of the unloading, frame and piece', slope, 'MPa', 'line of the unloading', standardError),
    permanentSet: quantity(
      'er',
      `permanent set from ${Number(top.stress.toPrecision(4))} MPa`,
      permanentSet,
      '1',
      `${ISO}, permanent set strength`,
    ),
    ...(energy === undefined
      ? {}
      : { energy: quantity('w', 'energy per volume lost in the loop', energy, 'MPa', 'area of the loop (textbooks)') }),
    withinLimit: permanentSet <= limit,
  };
}

/** @internal Stress at which the set reaches the limit, between the loops on either side of it: on a power of the set, or a straight line where the lower set is next to nothing. */
export function strengthAt(loops: readonly UnloadingLoop[], limit: number): number | undefined {
  for (let k = 1; k < loops.length; k += 1) {
    const [a, b] = [loops[k - 1]!, loops[k]!];
    if (a.permanentSet > limit || b.permanentSet <= limit) continue;
    if (a.permanentSet < NOTHING * limit) {
      const share = (limit - a.permanentSet) / (b.permanentSet - a.permanentSet);
      return a.top.stress + share * (b.top.stress - a.top.stress);
    }
    const share = Math.log(limit / a.permanentSet) / Math.log(b.permanentSet / a.permanentSet);
    return a.top.stress * (b.top.stress / a.top.stress) ** share;
  }
  return undefined;
}

/** @internal That stress as a quantity, where there is one. */
export const permanentSetStrength = (strength: number | undefined, limit: number): Pick<UnloadingResult, 'permanentSetStrength'> =>
  strength === undefined
    ? {}
    : {
        permanentSetStrength: quantity(
          `Rr${percent(limit)}`,
          'permanent set strength, between two unloadings',
          strength,
          'MPa',
          `${ISO}, permanent set strength`,
        ),
      };
