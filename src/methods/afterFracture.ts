import type { TestPiece } from '../base/index.js';
import { elongationAfterFracture, reductionOfArea } from '../geometry/index.js';
import { ISO, quantity } from './quantity.js';
import type { TensionResult } from './TensionResult.js';

/** @internal A and Z, from what was measured on the broken piece; readings that do not fit are left to a finding. */
export function afterFracture({
  section,
  gaugeLength,
  afterFracture: after,
}: TestPiece): Pick<TensionResult, 'elongationAfterFracture' | 'reductionOfArea'> {
  const length = after?.gaugeLength;
  const area = after?.area;
  return {
    ...(length !== undefined && length >= gaugeLength
      ? {
          elongationAfterFracture: quantity(
            'A',
            'elongation after fracture',
            elongationAfterFracture({ originalLength: gaugeLength, finalLength: length }),
            '1',
            `${ISO}, percentage elongation after fracture`,
          ),
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
