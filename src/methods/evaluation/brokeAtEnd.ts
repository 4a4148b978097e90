import type { TestPiece } from '../../base/index.js';
import { ELONGATION_DOUBT, REDUCTION_DOUBT, type BrokenPiece } from '../common/brokenPiece.js';
import type { TensionInput } from '../loading/TensionNumbers.js';

/** Elongation and reduction of area, as far as they were measured. */
type MeasuredBreak = TensionInput['measured'];

/** Of what the record shows at its end a piece without a neck may have so many times as much, as it does not stretch quite evenly (common practice). */
const SHOWN = 1.1;

/** @internal What was measured on a broken piece: its elongation and its reduction of area, as far as they were; undefined where nothing was. */
export function measuredBreak({ section, gaugeLength }: TestPiece, { length, area, ...place }: BrokenPiece): MeasuredBreak {
  if ([length, area, ...Object.values(place)].every((one) => one === undefined)) return undefined;
  return {
    ...(length === undefined ? {} : { elongation: length / gaugeLength - 1 }),
    ...(area === undefined ? {} : { reduction: 1 - area / section.area }),
  };
}

/**
 * @internal True of a piece that was measured broken and broke where its record ends at its highest force, brittle: it is hardly longer and thinner than the record shows it
 * there, at a strain. One with a neck went on to its maximum, and past it, without the record.
 */
export function brokeAtEnd(measured: MeasuredBreak, strain: number): boolean {
  if (!measured) return false;
  const { elongation = 0, reduction = 0 } = measured;
  return elongation <= SHOWN * strain + 2 * ELONGATION_DOUBT && reduction <= (SHOWN * strain) / (1 + strain) + 2 * REDUCTION_DOUBT;
}
