import type { TestResult } from '../../methods/index.js';
import type { MeasuredQuantity } from './decisionsPart.js';
import { writtenSymbol } from './MethodPage.js';
import { pageOf } from './pageOf.js';

/** @internal The values of a result by their symbols, in the order of its table, each with what a decision needs beside it. */
export function measuredOf(result: TestResult): ReadonlyMap<string, MeasuredQuantity> {
  const beside = {
    ...('extensionBasis' in result ? { extensionBasis: result.extensionBasis } : {}),
    ...('motionBasis' in result ? { extensionBasis: result.motionBasis } : {}),
    ...(result.method === 'tension' ? { gaugeLength: result.testPiece.gaugeLength, area: result.testPiece.section.area } : {}),
  };
  const shown = pageOf('measuredOf', result).quantities(result);
  return new Map(
    shown.map((one) => {
      const symbol = writtenSymbol(one);
      return [symbol, { ...beside, ...one.quantity, symbol }];
    }),
  );
}
