import type { UnbrokenPiece } from '../../base/index.js';
import { LONG_COEFFICIENT, SAME_LENGTH, USUAL_COEFFICIENT } from '../../geometry/index.js';

/** @internal Symbol of the elongation after fracture by its gauge length, as ISO 6892-1 writes it: A on 5.65√S0, A11.3 on 11.3√S0, else with the length, as A80mm. */
export function elongationSymbol({ section, gaugeLength }: UnbrokenPiece): string {
  const coefficient = gaugeLength / Math.sqrt(section.area);
  const isNear = (one: number): boolean => Math.abs(coefficient / one - 1) <= SAME_LENGTH;
  if (isNear(USUAL_COEFFICIENT)) return 'A';
  return isNear(LONG_COEFFICIENT) ? `A${LONG_COEFFICIENT}` : `A${Number(gaugeLength.toPrecision(6))}mm`;
}
