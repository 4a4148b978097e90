import type { Outcome } from '../../base/index.js';
import type { CurvePoint } from '../../curve/index.js';
import { percent, quantity } from '../common/quantity.js';
import type { StrengthAtExtension } from './LineResult.js';

/** @internal Strengths read at offsets or total strains, each only where the curve reaches it; the symbol takes the strain in per cent. */
export const strengthsAt = (
  symbol: string,
  name: string,
  source: string,
  found: readonly Outcome<CurvePoint, string>[],
  extensions: readonly number[],
): StrengthAtExtension[] => {
  const strengths: StrengthAtExtension[] = [];
  for (const [i, one] of found.entries()) {
    const extension = extensions[i]!;
    if (one.ok)
      strengths.push(
        Object.assign(quantity(`${symbol}${percent(extension)}`, name, one.stress, 'MPa', source), { extension, strain: one.strain }),
      );
  }
  return strengths;
};
