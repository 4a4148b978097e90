import { finding, type Finding } from '../../base/index.js';
import type { TensionNumbers } from '../loading/TensionNumbers.js';
import type { TensionResult } from '../evaluation/TensionResult.js';

const WHY = 'it would be negative';

/** @internal Extensions and energy that are withheld because they would be negative. */
export function negativeFindings(
  { line, maximum, fracture, toughness, necking }: Pick<TensionNumbers, 'line' | 'maximum' | 'fracture' | 'toughness' | 'necking'>,
  result: Pick<TensionResult, 'uniformExtension' | 'totalExtensionAtMaximumForce' | 'totalExtensionAtFracture' | 'toughness' | 'necking'>,
): Finding[] {
  const withheld = [
    ['Ag', line.ok && maximum !== undefined, 'uniformExtension'],
    ['Agt', maximum !== undefined, 'totalExtensionAtMaximumForce'],
    ['At', fracture.ok, 'totalExtensionAtFracture'],
    ['εu', necking?.ok === true, 'necking'],
    ['U', toughness !== undefined, 'toughness'],
  ] as const;
  return withheld.flatMap(([symbol, known, field]) =>
    known && result[field] === undefined ? [finding('not-determined', { symbol, why: WHY }, { field })] : [],
  );
}
