import { finding, type Finding, type Outcome, type Section, type TensionRecord } from '../../base/index.js';
import { beyondCompliance, type ChordModulus, type ChordReason, type RecordedCurve } from '../../curve/index.js';
import { metalModuli } from '../../materials/index.js';
import type { BeamLengths, BendingSettings } from './bendingOptions.js';
import type { BendingResult } from './BendingResult.js';
import type { LineLoadingPart } from '../loading/evaluateLine.js';
import { conditionFindings, displacementFindings, refusedFindings, slopeFindings } from '../loading/frameFindings.js';
import type { FrameShare } from '../loading/frameShare.js';
import { lineFindings } from '../loading/lineFindings.js';
import { brokeSuddenly, type LineNumbers } from '../loading/lineKernel.js';
import { pauseFindings, unevenOfLoading } from '../loading/paceFindings.js';
import type { Pause } from '../../record/index.js';
import { endFindings } from '../common/endOfTest.js';
import { readingFindings } from '../common/pieceFindings.js';
import { proofFindings } from '../loading/proofFindings.js';
import { unlikeFinding } from '../common/unlikeFinding.js';
import type { RefusedFrame } from '../loading/usableFrame.js';

/** @internal What the findings of a bending test rest on. */
export interface BendingEvidence {
  readonly recorded: RecordedCurve;
  readonly numbers: LineNumbers;
  readonly part: LineLoadingPart;
  readonly chord: Outcome<ChordModulus, ChordReason> | undefined;
  readonly lengths: BeamLengths;
  readonly record: TensionRecord;
  /** Its time, where the clock runs. */
  readonly time: Float64Array | undefined;
  readonly pauses: readonly Pause[];
  readonly strainStep: number;
  readonly turned: readonly string[];
  readonly share: FrameShare | undefined;
  readonly refused: RefusedFrame | undefined;
  readonly section: Section;
}

type Found = Pick<
  BendingResult,
  'curve' | 'flexuralStrength' | 'modulus' | 'chordModulus' | 'modulusWindow' | 'proofStrengths' | 'spanRatio' | 'shearShare'
>;

/** Frame and indentation, where the strain comes from travel. */
function travelFindings({ recorded, numbers, record, share, refused }: BendingEvidence, settings: BendingSettings): Finding[] {
  if (recorded.basis !== 'travel') return refusedFindings(refused);
  const { frameCompliance: motion, indentationKnown } = settings;
  return [
    ...refusedFindings(refused),
    ...conditionFindings(settings.measured, settings.test, 'compression'),
    ...(motion ? beyondCompliance(record.force, motion) : []),
    ...slopeFindings(numbers, motion, share),
    ...(motion && !indentationKnown ? [finding('indentation-not-removed', {}, { field: 'modulus' })] : []),
  ];
}

/** Where the deflection grows too large for the formulas; a strain gauge tells none. */
function deflectionFindings({ recorded, numbers, lengths }: BendingEvidence, { strain, stress }: Found['curve'], share: number): Finding[] {
  if (recorded.strainLength === 1) return [];
  const most = share * lengths.span;
  for (let i = 0; i <= numbers.highest; i += 1)
    if (strain[i]! * recorded.strainLength > most)
      return [finding('large-deflection', { stress: stress[i]!, share: 100 * share }, { range: [i, numbers.highest] })];
  return [];
}

/** Nothing that is bent as a beam gives way below this stress [MPa]: half the strength of the softest metal, and less than that of plastics (from memory). */
const WEAKEST = 5;

/**
 * What looks like a mistake of input: a beam too weak and too soft for anything; width and thickness swapped. A slope that no metal has may be that of
 * a plastic or a ceramic: a note.
 */
function plausibility({ modulus, flexuralStrength }: Found, { numbers, recorded, section }: BendingEvidence): Finding[] {
  const { line } = numbers;
  const [lowest, highest] = metalModuli;
  if (!line.ok || (line.slope >= lowest && line.slope <= highest)) return [];
  const strength = flexuralStrength.value;
  const slope = 'The slope of the elastic line';
  if (strength > 0 && strength < WEAKEST)
    return unlikeFinding({
      properties: { modulus: modulus?.value, tensileStrength: strength },
      // stress and strain go otherwise with the section of a beam than with that of a bar: units of the columns alone
      how: { strainFrom: recorded.basis === 'travel' ? 'travel' : 'extensometer', shape: 'from-area' },
      words: { modulus: [slope, 'elasticSlope'], tensileStrength: ['σfM', 'flexuralStrength'] },
      possible: ({ about }) => about === 'record',
    });
  if (!modulus) return [];
  const { width, thickness } = section.dimensions;
  // the slope goes with 1/(b h³): swapped it is off by (h/b)²
  const factor = section.shape === 'rectangular' && width !== undefined && thickness !== undefined ? (thickness / width) ** 2 : 1;
  if (factor > 1 && line.slope * factor >= lowest && line.slope * factor <= highest)
    return [
      finding(
        'dimension-looks-wrong',
        {
          symbol: slope,
          value: line.slope,
          unit: 'MPa',
          low: lowest,
          high: highest,
          family: 'any metal',
          why: `If width and thickness were swapped, the slope of the elastic line would fit: the reading is 1/${Number(factor.toPrecision(3))} of the true one.`,
          factor: 1 / factor,
        },
        { field: 'modulus' },
      ),
    ];
  return [finding('slope-implausible', { slope: line.slope, lowest, highest }, { field: 'modulus', severity: 'note' })];
}

/** @internal Doubts about a bending test, beside those of the record itself. */
export function bendingFindings(result: Found, evidence: BendingEvidence, settings: BendingSettings): Finding[] {
  const { numbers, part, chord, recorded, lengths } = evidence;
  const { thresholds } = settings;
  const { line } = numbers;
  const { spanRatio, shearShare, modulus, chordModulus } = result;
  const found: Finding[] = travelFindings(evidence, settings);
  if (evidence.turned.length > 0) found.push(finding('signs-turned', { columns: evidence.turned.join(', ') }));
  found.push(...readingFindings(evidence.section, thresholds.sectionSpread));
  found.push(...pauseFindings(evidence.pauses, result.curve, result.proofStrengths, line));
  if (evidence.time) found.push(...unevenOfLoading(evidence.record, part));
  found.push(...displacementFindings(recorded, result, settings, evidence.strainStep, numbers.highest));
  // a span that is just long enough passes, whatever the last bit of the height
  if (spanRatio.value < thresholds.spanRatio * (1 - 1e-9))
    found.push(
      finding(
        'span-short',
        { ratio: spanRatio.value, least: thresholds.spanRatio, share: shearShare ? 100 * shearShare.value : '?' },
        { field: 'modulus' },
      ),
    );
  found.push(...deflectionFindings(evidence, result.curve, thresholds.deflectionShare));
  // its own words follow: plastics and ceramics are bent as well
  found.push(
    ...lineFindings(numbers, result.curve, { modulusWindow: result.modulusWindow, proofStrengths: result.proofStrengths }, settings, {
      modulus: 'Eb',
      others: ['σfp'],
    }),
    ...plausibility(result, evidence),
  );
  // a brittle beam that nobody asked a proof strength of has none: no fault
  const weight = settings.offsetsAsked ? {} : ({ severity: 'note' } as const);
  for (const one of proofFindings(part.numbers, part.curve, settings, result.modulusWindow, true, ['σfp', 'σf']))
    found.push(one.code === 'proof-strength-not-reached' ? { ...one, ...weight } : one);
  if (chord && !chord.ok)
    found.push(finding('not-determined', { symbol: 'Ef by the chord', why: chord.message }, { field: 'chordModulus' }));
  if (modulus && chordModulus && Math.abs(chordModulus.value / modulus.value - 1) > thresholds.chordDifference)
    found.push(finding('chord-unlike-slope', { chord: chordModulus.value, slope: modulus.value }, { field: 'chordModulus' }));
  if (result.proofStrengths.length > 0 && line.ok && lengths.shapeFactor !== undefined)
    found.push(finding('flexural-stress-nominal', { factor: lengths.shapeFactor }, { field: 'flexuralStrength' }));
  const { stress } = result.curve;
  const { fracture, rises, end, highest } = numbers;
  const letGo = fracture.ok ? fracture.how === 'sudden-fall' && !brokeSuddenly(part.numbers, part.curve) : fracture.reason === 'unloaded';
  const ended = !fracture.ok || fracture.how === 'end-of-record';
  if ((rises || letGo || ended) && stress[highest]! > 0)
    found.push(...endFindings({ rises, letGo, share: stress[end - 1]! / stress[highest]! }, 'flexuralStrength'));
  return found;
}
