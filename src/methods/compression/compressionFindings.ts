import { PROOF_OFFSET, atExtension, finding, type Finding, type TensionRecord } from '../../base/index.js';
import type { RecordedCurve } from '../../curve/index.js';
import type { bucklingOf } from './compressionKernel.js';
import type { CompressionSettings } from './compressionOptions.js';
import type { CompressionPiece, CompressionResult } from './CompressionResult.js';
import type { LineLoadingPart } from '../loading/evaluateLine.js';
import { frameFindings, type FrameEvidence } from '../loading/frameFindings.js';
import { hardeningFindings } from '../loading/hardeningFindings.js';
import { lineFindings } from '../loading/lineFindings.js';
import type { LineNumbers } from '../loading/lineKernel.js';
import { pauseFindings, unevenOfLoading } from '../loading/paceFindings.js';
import type { Pause } from '../../record/index.js';
import { readingFindings } from '../common/pieceFindings.js';
import { proofFindings } from '../loading/proofFindings.js';
import type { TensionNumbers } from '../loading/TensionNumbers.js';
import { unlikeFinding } from '../common/unlikeFinding.js';

/** @internal What the findings of a compression test rest on. */
export interface CompressionEvidence extends FrameEvidence {
  readonly recorded: RecordedCurve;
  readonly numbers: LineNumbers;
  readonly part: LineLoadingPart;
  readonly buckling: ReturnType<typeof bucklingOf>;
  readonly area: number;
  readonly record: TensionRecord;
  /** Its time, where the clock runs. */
  readonly time: Float64Array | undefined;
  readonly pauses: readonly Pause[];
  readonly frictionShare: number | undefined;
  readonly hardening: TensionNumbers['hardening'];
  readonly broken: boolean;
  readonly turned: readonly string[];
  /** Whether the strain is the piece's own: without the frame. */
  readonly strainOfPiece: boolean;
}

type Found = Pick<
  CompressionResult,
  'curve' | 'modulus' | 'modulusWindow' | 'proofStrengths' | 'stressesAtStrain' | 'heightRatio' | 'bulgeRatio' | 'flowCurve' | 'hardening'
>;

/** Diameters after the test are read to a hundredth (common practice); three of them and a height then make a volume to a tenth. */
const READING = 0.01;
const VOLUME = 0.1;

/** Volume of a round piece after the test, a barrel with the outline of a parabola [mm³]; of the height by the record where none was measured. */
function volumeAfter({ section, afterTest }: CompressionPiece, height: number): number | undefined {
  const { middleDiameter, endDiameter, height: measured } = afterTest ?? {};
  if (section.shape !== 'round' || middleDiameter === undefined || endDiameter === undefined) return undefined;
  const squares = 8 * middleDiameter ** 2 + 4 * middleDiameter * endDiameter + 3 * endDiameter ** 2;
  return ((Math.PI * (measured ?? height)) / 60) * squares;
}

/** Height, buckling, barrelling, and the height that was measured after the test. */
function shapeFindings(piece: CompressionPiece, result: Found, evidence: CompressionEvidence, settings: CompressionSettings): Finding[] {
  const found: Finding[] = [];
  const { thresholds } = settings;
  const ratio = result.heightRatio.value;
  const { buckling, numbers } = evidence;
  if (ratio < thresholds.leastRatio) found.push(finding('piece-squat', { ratio, least: thresholds.leastRatio }));
  if (ratio > thresholds.mostRatio) found.push(finding('piece-slender', { ratio, most: thresholds.mostRatio }));
  if (buckling && ratio > thresholds.bucklingRatio) {
    const { halfAt, reachedAt, largestShare } = buckling;
    if (reachedAt) found.push(finding('buckled', { ...reachedAt, endFactor: piece.endFactor ?? 0.5 }, { field: 'buckling' }));
    else if (halfAt !== undefined)
      found.push(finding('buckling-near', { ratio, share: largestShare, strain: halfAt }, { field: 'buckling' }));
  }
  const strain = result.curve.strain[numbers.plateauEnd]!;
  const bulge = result.bulgeRatio?.value;
  if (bulge === undefined) {
    if (strain > thresholds.barrelStrain) found.push(finding('barrelling-not-measured', { strain }, { field: 'bulgeRatio' }));
  } else if (bulge > thresholds.bulge) found.push(finding('barrelled', { ratio: bulge }, { field: 'bulgeRatio' }));
  else if (bulge < 1 - READING) found.push(finding('ends-wider-than-middle', { ratio: bulge }, { field: 'bulgeRatio' }));
  const after = piece.afterTest?.height;
  if (after !== undefined && numbers.line.ok && !evidence.broken) {
    const recorded = (strain - result.curve.stress[numbers.plateauEnd]! / numbers.line.slope) * piece.height;
    const measured = piece.height - after;
    if (Math.abs(recorded - measured) > thresholds.heightDifference * Math.max(Math.abs(measured), 0.01 * piece.height))
      found.push(finding('height-unlike-record', { recorded, measured }));
  }
  if (numbers.line.ok && !evidence.broken) {
    const volume = volumeAfter(piece, (1 - strain + result.curve.stress[numbers.plateauEnd]! / numbers.line.slope) * piece.height);
    const kept = volume === undefined ? 1 : volume / (evidence.area * piece.height);
    if (Math.abs(kept - 1) > VOLUME) found.push(finding('volume-not-kept', { ratio: kept }, { field: 'bulgeRatio' }));
  }
  return found;
}

/** Slope and yield strength that no metal has, with the mistake that explains them best; nothing holds the piece that could slip. */
function unlikeMetal(
  piece: CompressionPiece,
  { modulus, proofStrengths, curve }: Found,
  { recorded, share, numbers }: CompressionEvidence,
): Finding[] {
  const proof = atExtension(proofStrengths, PROOF_OFFSET)?.value;
  return unlikeFinding({
    properties: { modulus: modulus?.value, yieldStrength: proof !== undefined && proof > 0 ? proof : undefined },
    how: {
      strainFrom: recorded.basis === 'travel' ? 'travel' : 'extensometer',
      frameRemoved: share !== undefined,
      parallelLengthGiven: true,
      shape: piece.section.shape,
    },
    words: { modulus: ['The slope of the elastic line', 'elasticSlope'], yieldStrength: ['The yield strength', 'proofStrengths'] },
    strain: curve.strain[numbers.plateauEnd]!,
    possible: ({ key }) => key !== 'grip-slip',
  });
}

/** @internal Doubts about a compression test, beside those of the record itself. */
export function compressionFindings(
  piece: CompressionPiece,
  result: Found,
  evidence: CompressionEvidence,
  settings: CompressionSettings,
): Finding[] {
  const { numbers, part, frictionShare, broken, turned } = evidence;
  const { line } = numbers;
  const found: Finding[] = [];
  if (turned.length > 0) found.push(finding('signs-turned', { columns: turned.join(', ') }));
  found.push(
    ...frameFindings(evidence, 'compression', result, settings),
    ...readingFindings(piece.section, settings.thresholds.sectionSpread),
    ...pauseFindings(evidence.pauses, result.curve, result.proofStrengths, line),
    ...(evidence.time ? unevenOfLoading(evidence.record, part) : []),
    ...shapeFindings(piece, result, evidence, settings),
    ...lineFindings(numbers, result.curve, result, settings, {
      modulus: 'Ec',
      others: evidence.strainOfPiece ? ['Rpc'] : ['Rpc', 'Rtc'],
    }),
    ...unlikeMetal(piece, result, evidence),
    ...proofFindings(part.numbers, part.curve, settings, result.modulusWindow, evidence.strainOfPiece, ['Rpc', 'Rtc']),
  );
  if (result.flowCurve)
    found.push(
      settings.friction === undefined
        ? finding('end-friction-not-removed', {}, { field: 'flowCurve' })
        : finding('end-friction-removed', { friction: settings.friction, share: 100 * (frictionShare ?? 0) }, { field: 'flowCurve' }),
    );
  else if (line.ok)
    found.push(finding('not-determined', { symbol: 'the flow curve', why: 'there is no plastic compression' }, { field: 'flowCurve' }));
  found.push(...hardeningFindings({ line, hardening: evidence.hardening, necking: undefined, maximum: undefined }, result));
  if (!broken)
    found.push(
      finding(
        'compressive-strength-without-strain',
        {},
        { field: 'compressiveStrength', severity: result.stressesAtStrain.length + result.proofStrengths.length > 0 ? 'note' : 'caution' },
      ),
    );
  return found;
}
