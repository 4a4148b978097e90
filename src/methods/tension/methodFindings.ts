import type { Finding } from '../../base/index.js';
import { extensionsWithoutLine } from './extensionsWithoutLine.js';
import { hardeningFindings } from '../loading/hardeningFindings.js';
import { lineFindings } from '../loading/lineFindings.js';
import { maximumFindings } from './maximumFindings.js';
import { negativeFindings } from './negativeFindings.js';
import { proofFindings } from '../loading/proofFindings.js';
import type { TensionNumbers } from '../loading/TensionNumbers.js';
import type { TensionSettings } from '../evaluation/tensionOptions.js';
import type { TensionResult } from '../evaluation/TensionResult.js';
import type { Quantities } from '../evaluation/tensionQuantities.js';
import { yieldFindings } from './yieldFindings.js';

/** @internal Doubts about the evaluation: line, yield, maximum, fracture, hardening. */
export function methodFindings(
  numbers: TensionNumbers,
  curve: TensionResult['curve'],
  result: Quantities,
  settings: TensionSettings,
  strainOfPiece = true,
): Finding[] {
  return [
    ...lineFindings(numbers, curve, result, settings, {
      resting: [...(result.proportionalLimit ? [result.proportionalLimit.symbol] : []), ...extensionsWithoutLine(numbers, result)],
    }),
    ...proofFindings(numbers, curve, settings, result.modulusWindow, strainOfPiece),
    ...yieldFindings(numbers, settings),
    ...maximumFindings(numbers, result),
    ...negativeFindings(numbers, result),
    ...hardeningFindings(numbers, result),
  ];
}
