import { finding, type Finding, type Section, type TestPiece } from '../../base/index.js';
import { leastParallelLength, proportionalGaugeLength } from '../../geometry/index.js';

/** Dimensions below which another annex of ISO 6892-1 applies (from memory), and the usual limit of width over thickness. */
const LEAST_DIAMETER = 4;
const LEAST_THICKNESS = 3;
const WIDEST = 8;
/** An extensometer spans half the gauge length at least and nine tenths of the parallel length at most (ISO 6892-1, from memory); the gauge length itself is right. */
const LEAST_BASE = 0.5;
const MOST_BASE = 0.9;

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

/** @internal Doubts about the readings of a section. */
export function readingFindings(section: Section, limit: number): Finding[] {
  const found: Finding[] = [];
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

/** @internal Doubt about the base of an extensometer whose strains are used. */
export function extensometerLengthFindings({ gaugeLength, parallelLength, extensometerLength = gaugeLength }: TestPiece): Finding[] {
  const least = LEAST_BASE * gaugeLength;
  // where the parallel length is not known, no base is too long
  const most = Math.max(gaugeLength, parallelLength === undefined ? extensometerLength : MOST_BASE * parallelLength);
  return extensometerLength >= least && extensometerLength <= most
    ? []
    : [finding('extensometer-length-unsuited', { length: extensometerLength, least, most })];
}
