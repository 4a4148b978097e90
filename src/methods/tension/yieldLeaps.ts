import { finding, type Finding } from '../../base/index.js';
import type { PossibleSlip } from '../loading/departures.js';
import type { TensionNumbers } from '../loading/TensionNumbers.js';
import type { TensionResult } from '../evaluation/TensionResult.js';

/** @internal Sudden falls of the force during yielding that may be slips in the grips or bursts of the material, and what each of the two gives. */
export interface YieldLeaps {
  readonly count: number;
  /** First and last sample of them all. */
  readonly range: readonly [number, number];
  /** Way of the travel in them [mm]. */
  readonly way: number;
  /** ReL with and without them [MPa]. */
  readonly lowest: number;
  readonly level: number;
  /** Ae without what they add to strain, and with it [mm/mm]. */
  readonly least: number;
  readonly most: number;
}

/** @internal Those that the yielding range holds. */
export function yieldLeaps(
  leaps: readonly PossibleSlip[],
  { yielding }: Pick<TensionNumbers, 'yielding'>,
  without: TensionNumbers['yielding'],
): YieldLeaps | undefined {
  if (yielding?.ok !== true || without?.ok !== true) return undefined;
  const { extension, hardeningStart } = without;
  // before hardening there is no Ae that they could put off
  if (extension === undefined || hardeningStart === undefined) return undefined;
  const held = leaps.filter(({ range: [turn, , back] }) => turn > without.upper.index && back <= hardeningStart);
  if (held.length === 0) return undefined;
  const sum = (of: (leap: (typeof held)[number]) => number): number => held.reduce((all, one) => all + of(one), 0);
  return {
    count: held.length,
    range: [held[0]!.range[0], held[held.length - 1]!.range[2]],
    way: sum(({ way }) => way),
    lowest: yielding.lower.stress,
    level: without.lower.stress,
    least: extension - sum(({ strain }) => strain),
    most: extension,
  };
}

/** @internal ReL with the doubt of the falls where it is more than that of shallower dips; no Ae. */
export function withYieldLeaps<Q extends Pick<TensionResult, 'lowerYieldStrength' | 'yieldPointExtension'>>(
  quantities: Q,
  leaps: YieldLeaps | undefined,
): Q {
  if (!leaps) return quantities;
  const given: Q = { ...quantities };
  delete (given as { yieldPointExtension?: unknown }).yieldPointExtension;
  const { lowerYieldStrength } = given;
  const doubt = (leaps.level - leaps.lowest) / Math.sqrt(3);
  if (!lowerYieldStrength || doubt <= (lowerYieldStrength.standardUncertainty ?? 0)) return given;
  return { ...given, lowerYieldStrength: { ...lowerYieldStrength, standardUncertainty: doubt } };
}

/** @internal What is to be said of them. */
export const yieldLeapFindings = (leaps: YieldLeaps | undefined): Finding[] => {
  if (!leaps) return [];
  const { range, ...values } = leaps;
  return [finding('falls-slip-or-yield', values, { field: 'lowerYieldStrength', range })];
};
