import { finding, type Finding } from '../../base/index.js';
import type { Excursions } from '../../record/index.js';
import type { TensionNumbers } from '../loading/TensionNumbers.js';
import type { TensionResult } from '../evaluation/TensionResult.js';

/** @internal Short falls of the force during yielding, of which the motion does not tell whether they were strokes of the drive or the material. */
export interface YieldDips {
  readonly count: number;
  /** First and last sample of them all. */
  readonly range: readonly [number, number];
  /** ReL, and the lowest level [MPa] that one of them fell from: what ReL is without them. */
  readonly lowest: number;
  readonly level: number;
}

/** @internal Those that ReL rests on: absent where its sample lies in none. */
export function yieldDips(
  untold: Excursions['untold'],
  { yielding }: Pick<TensionNumbers, 'yielding'>,
  stress: Float64Array,
): YieldDips | undefined {
  if (yielding?.ok !== true) return undefined;
  const { upper, lower, hardeningStart = Infinity } = yielding;
  if (!untold.some(([turn, , back]) => turn < lower.index && lower.index < back)) return undefined;
  const dips = untold.filter(([turn, , back]) => turn > upper.index && back <= hardeningStart && stress[turn]! > lower.stress);
  const level = dips.reduce((least, [turn]) => Math.min(least, stress[turn]!), Infinity);
  if (dips.length === 0) return undefined;
  return { count: dips.length, range: [dips[0]![0], dips[dips.length - 1]![2]], lowest: lower.stress, level };
}

/** @internal ReL with the doubt of the dips: the truth may lie anywhere up to the level without them. */
export function withYieldDips<Q extends Pick<TensionResult, 'lowerYieldStrength'>>(quantities: Q, dips: YieldDips | undefined): Q {
  const { lowerYieldStrength } = quantities;
  if (!dips || !lowerYieldStrength) return quantities;
  return { ...quantities, lowerYieldStrength: { ...lowerYieldStrength, standardUncertainty: (dips.level - dips.lowest) / Math.sqrt(3) } };
}

/** @internal What is to be said of them. */
export const yieldDipFindings = (dips: YieldDips | undefined): Finding[] =>
  dips
    ? [
        finding(
          'lower-yield-in-dips',
          { count: dips.count, lowest: dips.lowest, level: dips.level },
          { field: 'lowerYieldStrength', range: dips.range },
        ),
      ]
    : [];
