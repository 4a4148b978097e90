import type { PossibleSlip } from '../loading/departures.js';
import { evaluateLoading } from './loadingPart.js';
import type { Ranges } from '../loading/loadingRanges.js';
import type { TensionInput, TensionNumbers } from '../loading/TensionNumbers.js';
import type { TensionSettings } from './tensionOptions.js';

/** @internal The yield points where the falls are left out, as slips would be; undefined without any. */
export function withoutLeaps(
  input: TensionInput,
  settings: TensionSettings,
  excursions: Ranges,
  leaps: readonly PossibleSlip[],
): TensionNumbers['yielding'] {
  if (leaps.length === 0) return undefined;
  const { curve } = input;
  const left = [...excursions, ...leaps.map(({ range: [turn, , back] }) => [turn, back] as const)].sort((a, b) => a[0] - b[0]);
  return evaluateLoading({ ...input, curve: { ...curve, strain: curve.strain.slice() } }, settings, left).numbers.yielding;
}
