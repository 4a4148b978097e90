import { finding, type Finding, type TestPiece } from '../../base/index.js';
import { fracturePosition } from '../../piece/index.js';
import type { BrokenPiece } from '../common/brokenPiece.js';
import type { TensionResult } from '../evaluation/TensionResult.js';

/** Elongation by the marks over plastic extension by the curve: outside this a length, a unit or the grips are wrong (common practice). */
const ELONGATION_RATIO = [0.7, 1.6] as const;
/** Below this elongation ordinary marks are too coarse (ISO 6892-1, from memory). */
const SMALL = 0.05;

/** Values by the marks, the curve and the neck. */
type BrokenPieceValues = Pick<TensionResult, 'plasticExtensionAtFracture' | 'elongationAfterFracture' | 'reductionOfArea'>;

/** Where it broke: at a mark, outside the parallel length, too near a mark for A to be valid without more. */
function placeFindings(
  { distance, place, method }: BrokenPiece,
  gaugeLength: number,
  elongation: number | undefined,
  minimum: number | undefined,
): Finding[] {
  const field = 'elongationAfterFracture';
  if (place === 'in-fillet' || place === 'in-grip')
    return [finding('fracture-outside-parallel', { place: place === 'in-fillet' ? 'in the fillet' : 'in the grip' }, { field })];
  const found: Finding[] = place === 'at-mark' ? [finding('fracture-at-mark', {}, { field })] : [];
  if (distance === undefined || method !== 'marks') return found;
  const { third, middleThird } = fracturePosition({ gaugeLength, distance });
  if (middleThird) return found;
  // with a least value A is valid where it is reached, and not valid where it is not
  const severity = minimum === undefined || elongation === undefined ? 'caution' : elongation >= minimum ? 'note' : 'fault';
  return [...found, finding('fracture-outside-middle', { distance, least: third }, { field, severity })];
}

/** @internal Doubts about what was measured on the broken piece; `minimum` is the least elongation that is specified. */
export function brokenPieceFindings(
  { section, gaugeLength }: TestPiece,
  broken: BrokenPiece,
  result: BrokenPieceValues,
  minimum: number | undefined,
): Finding[] {
  const found: Finding[] = [];
  const { length, area } = broken;
  const missing = (symbol: string, what: string, field: string) =>
    found.push(finding('after-fracture-missing', { symbol, missing: what }, { field }));
  if (length === undefined) missing('A', 'the gauge length after fracture', 'elongationAfterFracture');
  else if (length < gaugeLength)
    found.push(
      finding(
        'after-fracture-larger',
        { what: 'The gauge length', after: length, before: gaugeLength },
        { field: 'elongationAfterFracture' },
      ),
    );
  if (area === undefined) missing('Z', 'the area after fracture', 'reductionOfArea');
  else if (area > section.area)
    found.push(finding('after-fracture-larger', { what: 'The area', after: area, before: section.area }, { field: 'reductionOfArea' }));
  const elongation = result.elongationAfterFracture?.value;
  const reduction = result.reductionOfArea?.value;
  found.push(...placeFindings(broken, gaugeLength, elongation, minimum));
  if (elongation !== undefined && elongation < SMALL && broken.method === 'marks')
    found.push(finding('elongation-small', { elongation: 100 * elongation }, { field: 'elongationAfterFracture' }));
  if (reduction !== undefined) {
    const odd = elongation !== undefined && ((reduction < 0.05 && elongation > 0.15) || (reduction > 0.4 && elongation < 0.03));
    if (odd || reduction > 0.95)
      found.push(
        finding(
          'reduction-unusual',
          { reduction: 100 * reduction, elongation: elongation === undefined ? '?' : 100 * elongation },
          { field: 'reductionOfArea' },
        ),
      );
  }
  const byCurve = result.plasticExtensionAtFracture?.value;
  if (elongation !== undefined && byCurve !== undefined && byCurve > 0) {
    const ratio = elongation / byCurve;
    if (ratio < ELONGATION_RATIO[0] || ratio > ELONGATION_RATIO[1])
      found.push(
        finding('elongation-unlike-travel', { elongation: 100 * elongation, travel: 100 * byCurve }, { field: 'elongationAfterFracture' }),
      );
  }
  return found;
}
