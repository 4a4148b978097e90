import type { TestResult, CurveResult } from '../../methods/index.js';
import { shownUnit } from '../words/shownUnit.js';
import type { ShownQuantity } from './MethodPage.js';

/** What was told of the frame, and of its doubt. */
interface ToldOfFrame {
  readonly frameCompliance?: unknown;
  readonly uncertainty?: { readonly frameCompliance?: unknown } | undefined;
}

/** True of a compliance that came without its doubt. */
const isBare = (compliance: unknown): boolean =>
  compliance !== undefined &&
  compliance !== null &&
  (compliance as { readonly relativeStandardUncertainty?: unknown }).relativeStandardUncertainty === undefined;

/** @internal True of a slope or modulus whose standard uncertainty takes the compliance of the frame for exact, because it was given without its own. */
export function frameLeftOut(result: TestResult | CurveResult, { quantity }: Pick<ShownQuantity, 'quantity'>): boolean {
  if (!('frameRemoved' in result) || result.frameRemoved !== true || quantity.standardUncertainty === undefined) return false;
  if (shownUnit(quantity.symbol, quantity.unit).unit !== 'GPa') return false;
  const { frameCompliance, uncertainty } = result.provenance.options as ToldOfFrame;
  return uncertainty?.frameCompliance === undefined && isBare(frameCompliance);
}
