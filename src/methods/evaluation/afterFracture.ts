import type { TestPiece } from '../../base/index.js';
import { elongationAfterFracture, reductionOfArea } from '../../geometry/index.js';
import type { BrokenPiece, ElongationMethod } from '../common/brokenPiece.js';
import { ISO, quantity } from '../common/quantity.js';
import type { TensionResult } from './TensionResult.js';

/** How A is named by the way in which it was measured. */
const named: Readonly<Record<ElongationMethod, readonly [string, string]>> = {
  marks: ['elongation after fracture', 'percentage elongation after fracture'],
  subdivision: ['elongation after fracture, by subdivision', 'Annex I, elongation based on subdivision (from memory)'],
  'fine-marks': ['elongation after fracture, by fine marks', 'Annex H, elongation below 5 % (from memory)'],
};

/** @internal A and Z, from what was measured on the broken piece; readings that do not fit are left to a finding. */
export function afterFracture(
  { section, gaugeLength }: TestPiece,
  { length, method = 'marks', area }: BrokenPiece,
): Pick<TensionResult, 'elongationAfterFracture' | 'elongationMethod' | 'reductionOfArea'> {
  const [name, rule] = named[method];
  return {
    ...(length !== undefined && length >= gaugeLength
      ? {
          elongationAfterFracture: quantity(
            'A',
            name,
            elongationAfterFracture({ originalLength: gaugeLength, finalLength: length }),
            '1',
            `${ISO}, ${rule}`,
          ),
          elongationMethod: method,
        }
      : {}),
    ...(area !== undefined && area <= section.area
      ? {
          reductionOfArea: quantity(
            'Z',
            'reduction of area',
            reductionOfArea({ originalArea: section.area, finalArea: area }),
            '1',
            `${ISO}, percentage reduction of area`,
          ),
        }
      : {}),
  };
}
