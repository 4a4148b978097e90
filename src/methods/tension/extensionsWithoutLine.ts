import type { TensionNumbers } from '../loading/TensionNumbers.js';
import type { TensionResult } from '../evaluation/TensionResult.js';

/** Part of a value that an extensometer of class 1 is allowed to be off (ISO 9513). */
const ALLOWED = 0.01;

type Found = Pick<
  TensionResult,
  'modulusWindow' | 'uniformExtension' | 'totalExtensionAtMaximumForce' | 'totalExtensionAtFracture' | 'hardening'
>;

/**
 * @internal Symbols of extensions, and of the hardening law, that a line without a linear part may put off by more than an extensometer may be: total ones by
 * what its slope's doubt makes of the origin, plastic ones by what it makes of the elastic part.
 */
export function extensionsWithoutLine(
  { line, maximum, hardening }: Pick<TensionNumbers, 'line' | 'maximum' | 'hardening'>,
  result: Found,
): string[] {
  const { linearPart, stressLimits } = result.modulusWindow ?? {};
  if (!line.ok || linearPart?.verdict !== 'none' || !stressLimits) return [];
  const doubt = (stress: number): number => ((linearPart.share ?? 0) * stress) / line.slope;
  const origin = doubt(stressLimits[1]);
  const [law] = hardening?.ok === true ? hardening.range : [];
  const held = [
    [result.uniformExtension, maximum && doubt(maximum.stress)],
    [result.totalExtensionAtMaximumForce, origin],
    [result.totalExtensionAtFracture, origin],
  ] as const;
  const symbols = held.flatMap(([one, off]) => (one && off !== undefined && off > ALLOWED * one.value ? [one.symbol] : []));
  const n = law !== undefined && result.hardening && doubt(stressLimits[1]) > ALLOWED * law ? ['n', 'K'] : [];
  return [...symbols, ...n];
}
