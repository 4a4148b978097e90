import { finding, type Finding, type Section, type TestPiece } from '../base/index.js';
import { leastParallelLength, proportionalGaugeLength } from '../geometry/index.js';
import type { TensionSettings } from './tensionOptions.js';
import type { TensionResult } from './TensionResult.js';

/** Dimensions below which another annex of ISO 6892-1 applies (from memory), and the usual limit of width over thickness. */
const LEAST_DIAMETER = 4;
const LEAST_THICKNESS = 3;
const WIDEST = 8;
/** Elongation by the marks over plastic extension by the curve: outside this a length, a unit or the grips are wrong (common practice). */
const ELONGATION_RATIO = [0.7, 1.6] as const;

/** @internal Doubts about the nominal dimensions of a section. */
export function dimensionFindings(section: Section): Finding[] {
  const found: Finding[] = [];
  const { diameter, width, thickness } = section.dimensions;
  if (section.shape === 'round' && diameter !== undefined && diameter < LEAST_DIAMETER)
    found.push(finding('section-small', { dimension: 'diameter', value: diameter, limit: LEAST_DIAMETER }));
  if (thickness !== undefined && width !== undefined) {
    if (thickness < LEAST_THICKNESS)
      found.push(finding('section-small', { dimension: 'thickness', value: thickness, limit: LEAST_THICKNESS }));
    if (width / thickness > WIDEST) found.push(finding('section-wide', { ratio: width / thickness }));
  }
  return found;
}

function sectionFindings({ section }: TestPiece, limit: number): Finding[] {
  const found = dimensionFindings(section);
  if (section.spread !== undefined && section.spread > limit) found.push(finding('section-spread', { spread: 100 * section.spread }));
  if (section.taper !== undefined && Math.abs(section.taper) > limit) found.push(finding('section-taper', { taper: 100 * section.taper }));
  if (section.readings < 3) found.push(finding('few-section-readings', { readings: section.readings }));
  return found;
}

/** @internal Doubts about gauge length and parallel length. */
export function lengthFindings(piece: TestPiece, limit: number, travelUsed: boolean): Finding[] {
  const found: Finding[] = [];
  const { section, gaugeLength, parallelLength } = piece;
  const proportional = proportionalGaugeLength({ area: section.area });
  const deviation = Math.abs(gaugeLength / proportional - 1);
  // to the nearest 5 mm is allowed, so a small deviation is only a note
  if (deviation > limit / 10)
    found.push(
      finding(
        'gauge-length-not-proportional',
        { length: gaugeLength, deviation: 100 * deviation, proportional },
        deviation > limit ? { field: 'elongationAfterFracture' } : { field: 'elongationAfterFracture', severity: 'note' },
      ),
    );
  if (parallelLength === undefined) {
    if (travelUsed) found.push(finding('parallel-length-assumed', { length: gaugeLength }));
  } else {
    const least = leastParallelLength({ section, gaugeLength });
    if (parallelLength < least) found.push(finding('parallel-length-short', { length: parallelLength, least }));
  }
  return found;
}

function brokenPieceFindings(
  { section, gaugeLength, afterFracture: after }: TestPiece,
  result: Pick<TensionResult, 'plasticExtensionAtFracture' | 'elongationAfterFracture' | 'reductionOfArea'>,
): Finding[] {
  const found: Finding[] = [];
  const missing = (symbol: string, what: string, field: string) =>
    found.push(finding('after-fracture-missing', { symbol, missing: what }, { field }));
  if (after?.gaugeLength === undefined) missing('A', 'the gauge length after fracture', 'elongationAfterFracture');
  else if (after.gaugeLength < gaugeLength)
    found.push(
      finding(
        'after-fracture-larger',
        { what: 'The gauge length', after: after.gaugeLength, before: gaugeLength },
        { field: 'elongationAfterFracture' },
      ),
    );
  if (after?.area === undefined) missing('Z', 'the area after fracture', 'reductionOfArea');
  else if (after.area > section.area)
    found.push(
      finding('after-fracture-larger', { what: 'The area', after: after.area, before: section.area }, { field: 'reductionOfArea' }),
    );
  const elongation = result.elongationAfterFracture?.value;
  const reduction = result.reductionOfArea?.value;
  if (reduction !== undefined) {
    const odd = elongation !== undefined && ((reduction < 0.05 && elongation > 0.15) || (reduction > 0.4 && elongation < 0.03));
    if (odd || reduction > 0.95)
      found.push(
        finding(
          'reduction-unusual',
          { reduction: 100 * reduction, elongation: elongation === undefined ? 'unknown' : 100 * elongation },
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

/** @internal Doubts about the test piece: its section, its lengths, and what was measured on it when broken. */
export function pieceFindings(
  piece: TestPiece,
  result: Parameters<typeof brokenPieceFindings>[1],
  settings: TensionSettings,
  travelUsed: boolean,
): Finding[] {
  const { sectionSpread, gaugeLengthDeviation } = settings.thresholds;
  return [
    ...sectionFindings(piece, sectionSpread),
    ...lengthFindings(piece, gaugeLengthDeviation, travelUsed),
    ...brokenPieceFindings(piece, result),
  ];
}
