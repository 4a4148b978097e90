import type { UnbrokenPiece } from '../../base/index.js';

/** A proportional length may be rounded to 5 mm, and stays one within this share (ISO 6892-1). */
const ROUNDED = 0.1;
/** Coefficient of a bare A, and the one that is written as index. */
const [USUAL, LONG] = [5.65, 11.3];

/** @internal Symbol of the elongation after fracture by its gauge length, as ISO 6892-1 writes it: A on 5.65√S0, A11.3 on 11.3√S0, else with the length, as A80mm. */
export function elongationSymbol({ section, gaugeLength }: UnbrokenPiece): string {
  const coefficient = gaugeLength / Math.sqrt(section.area);
  const isNear = (one: number): boolean => Math.abs(coefficient / one - 1) <= ROUNDED;
  if (isNear(USUAL)) return 'A';
  return isNear(LONG) ? `A${LONG}` : `A${Number(gaugeLength.toPrecision(6))}mm`;
}
