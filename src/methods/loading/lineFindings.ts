import { atExtension, finding, PROOF_OFFSET, type Finding, type StressStrainCurve } from '../../base/index.js';
import { isGiven, LEAST_WINDOW_POINTS, WINDOW_SHARE, type ElasticLine, type LinearPart } from '../../curve/index.js';
import { metalModuli } from '../../materials/index.js';
import { reachedSince } from '../../numeric/index.js';
import type { LineResult, ModulusWindow } from './LineResult.js';
import { offsetWeight } from './offsetWeight.js';
import { MOST_SCATTER } from './slopeIsModulus.js';
import type { TensionNumbers } from './TensionNumbers.js';
import type { LineThresholds } from '../common/thresholds.js';

const SCATTER_FAULT = 0.03;
/** A slope is flattened from what an extensometer of class 1 is allowed to be off (ISO 9513); common practice where it is a caution. */
const FLATTENED = 0.01;
const FLATTENED_MUCH = 0.05;
/** Residuals below this share of the stress are rounding; a runs test and a bend count from so many standard deviations on. */
const EXACT = 1e-7;
const ALIKE = 5;
const BENT = 4;

/** What speaks against a linear part, in words; its share in per cent. */
const againstLine: Readonly<Record<NonNullable<LinearPart['why']>, (share: number) => string>> = {
  // a fall by more than all of it
  'slope-falls': (share) =>
    share > 100
      ? 'the slope is negative between 0.3 and 0.4 of the offset stress'
      : `the slope falls by ${share} % from one band of stress to the next`,
  'windows-apart': (share) => `the slopes of other windows lie ${share} % apart`,
  'toe-reaches-up': (share) => `a toe reaches up to the window, the slopes of others lie ${share} % apart`,
  'window-apart': (share) => `its slope lies ${share} % off those of other windows`,
  'window-bent': (share) => `the slope changes by ${share} % over the window`,
  'yields-early': (share) => `yielding and toe take about ${share} % off the slope of the window`,
};

/** Why no window keeps the bounds of a searched line. */
function noWindow({ criterion, offsetSample = 0, offsetStress = 0 }: ElasticLine, stress: Float64Array): string {
  const { startShare = WINDOW_SHARE, spanShare = WINDOW_SHARE } = criterion as {
    readonly startShare?: number;
    readonly spanShare?: number;
  };
  const count = offsetSample - reachedSince(stress, startShare * offsetStress, offsetSample);
  return count < LEAST_WINDOW_POINTS
    ? `only ${count} samples lie between the start bound and the 0.2 % offset line`
    : `no line through ${LEAST_WINDOW_POINTS} or more of the ${count} samples between the start bound and the 0.2 % offset line rises by ${Number((spanShare * offsetStress).toPrecision(3))} MPa`;
}

/** What speaks against the curve, whichever window was chosen. */
const OF_CURVE: ReadonlySet<LinearPart['why']> = new Set(['slope-falls', 'toe-reaches-up', 'windows-apart'] as const);

type Line = Extract<TensionNumbers['line'], { readonly ok: true }>;

/** What the doubts about a line rest on. */
interface LineEvidence {
  readonly line: Line;
  readonly curve: StressStrainCurve;
  /** What explains the line, as far as it was looked at. */
  readonly explained: Partial<ModulusWindow>;
  readonly thresholds: LineThresholds;
  /** Symbols of what rests on the line. */
  readonly resting: readonly string[];
  /** Strength at the 0.2 % offset, where it was asked for [MPa]. */
  readonly proof: number | undefined;
  /** First and last sample of its window. */
  readonly range: readonly [number, number];
}

const field = 'elasticSlope';
const window = 'modulusWindow';
const modulus = 'modulus';

const easedBounds = ({ line, curve, range }: LineEvidence): Finding[] =>
  line.eased.map((bound) => finding('window-bound-eased', { bound, why: noWindow(line, curve.stress) }, { field: window, range }));

/** A curve, or a given window, without a linear part: E is withheld, and all that rests on the line is named with it. */
function noLinearPart({ line, explained: { linearPart, envelope }, resting, range }: LineEvidence): Finding[] {
  if (!linearPart?.why) return [];
  const { why: reason, share = 0 } = linearPart;
  const falls = reason === 'windows-apart' && (envelope?.slope[0] ?? 1) <= 0;
  const why = falls ? 'some other windows have negative slopes' : againstLine[reason](Number((100 * share).toPrecision(3)));
  const ofWindow = isGiven(line) && !OF_CURVE.has(reason);
  const values = { why, symbols: ['mE', ...resting].join(', ') };
  return [finding(ofWindow ? 'window-not-linear' : 'no-linear-part', values, { field: modulus, range })];
}

function fewPoints({ line: { points }, thresholds, range }: LineEvidence): Finding[] {
  const { leastElasticPoints: least, elasticPoints: wanted } = thresholds;
  if (points < least) return [finding('modulus-of-few-points', { points, least }, { field: modulus, range })];
  return points < wanted ? [finding('few-points-in-elastic-part', { points, wanted }, { field, range })] : [];
}

function scattered({ line: { relativeStandardError: scatter }, thresholds, range }: LineEvidence): Finding[] {
  const error = 100 * scatter;
  if (scatter > MOST_SCATTER) return [finding('modulus-of-scatter', { error, limit: 100 * MOST_SCATTER }, { field: modulus, range })];
  const severity = scatter > SCATTER_FAULT ? 'fault' : 'caution';
  return scatter > thresholds.slopeScatter ? [finding('slope-scatter', { error }, { field, severity })] : [];
}

/** Much of it is a caution. */
const flattens = (share: number): 'caution' | 'note' => (share > FLATTENED_MUCH ? 'caution' : 'note');

function flattened({ explained: { noiseFlattening }, range }: LineEvidence): Finding[] {
  const { strainNoise: noise, slopeShare: share } = noiseFlattening ?? { strainNoise: 0, slopeShare: 0 };
  return share > FLATTENED
    ? [finding('strain-noise-flattens', { noise, share: 100 * share }, { field, range, severity: flattens(share) })]
    : [];
}

function coarseSteps({ explained: { strainSteps }, thresholds: { stepDoubt }, range }: LineEvidence): Finding[] {
  if (!strainSteps || strainSteps.slopeShare <= FLATTENED) return [];
  const { steps, step, slopeShare: open } = strainSteps;
  const values = { steps, step, share: 100 * open };
  return [
    open > stepDoubt
      ? finding('strain-steps-few', { ...values, limit: 100 * stepDoubt }, { field: modulus, range })
      : finding('strain-steps-open', values, { field, range, severity: flattens(open) }),
  ];
}

/** Nothing is known of a linear part, for another reason than steps. */
function unknownPart({ line, curve, explained, thresholds, range }: LineEvidence): Finding[] {
  const { linearPart, strainSteps, points } = explained;
  if (points === undefined || linearPart || (strainSteps?.slopeShare ?? 0) > thresholds.stepDoubt) return [];
  const strains = new Set(curve.strain.subarray(line.first, line.last + 1)).size;
  return [finding('linear-part-unknown', { points, strains }, { field: modulus, range })];
}

/** Other windows that disagree, with what they make of the stress at the 0.2 % offset: a fault where the offset cannot be trusted, and the stress moves with it; the slope is in doubt in any case. */
function otherWindows({ line: { slope }, explained: { envelope, trust }, proof }: LineEvidence): Finding[] {
  if (envelope?.verdict !== 'fragile') return [];
  const { windows, proofStrength } = envelope;
  const [lowest, highest] = envelope.slope;
  if (lowest <= 0) return [finding('windows-fall', { slope, windows, highest }, { field })];
  if (!proofStrength || !trust) return [finding('window-slopes-disagree', { slope, lowest, highest, windows }, { field })];
  const [low, high] = proofStrength;
  const values = { slope, lowest, highest, low, high, windows, share: 100 * trust.offsetDoubt };
  const weight = offsetWeight(trust.offsetDoubt, [low, high, proof ?? low]);
  return [finding('windows-disagree', values, { field, severity: weight === 'fault' ? weight : 'caution' })];
}

function residualsOff({ line, curve, explained: { residuals }, thresholds, range }: LineEvidence): Finding[] {
  if (!residuals || line.residualStandardDeviation <= EXACT * curve.stress[line.last]!) return [];
  const { runs, expectedRuns: expected, runsDeviation, slopeChange, slopeChangeError } = residuals;
  const bent = Math.abs(slopeChange) > Math.max(thresholds.bendCaution, BENT * slopeChangeError);
  return [
    ...(runsDeviation < -ALIKE ? [finding('residuals-alike', { runs, expected }, { field: window, range })] : []),
    ...(bent ? [finding('window-bent', { change: 100 * slopeChange }, { field: window, range })] : []),
  ];
}

/** In the order in which a line is looked at. */
const doubts = [easedBounds, noLinearPart, fewPoints, scattered, flattened, coarseSteps, unknownPart, otherWindows, residualsOff] as const;

/** @internal Symbols of the modulus, of what is withheld without a line, and of what beside proof strengths rests on one. */
export interface LineSymbols {
  readonly modulus?: string;
  readonly others?: readonly string[];
  readonly resting?: readonly string[];
}

/** @internal Doubts about the elastic line and its window; without a line, what else there is none of. */
export function lineFindings(
  { line }: Pick<TensionNumbers, 'line'>,
  curve: StressStrainCurve,
  result: LineResult,
  { thresholds }: { readonly thresholds: LineThresholds },
  { modulus: symbol = 'E', others = ['Rp', 'Rt', 'Ag', 'n'], resting = [] }: LineSymbols = {},
): Finding[] {
  const why = 'there is no elastic line';
  if (!line.ok)
    return [
      // all that hangs on the line is withheld with it
      finding('not-determined', { symbol: 'mE', why: line.message }, { field, severity: 'fault' }),
      finding('not-determined', { symbol, why }, { field: modulus }),
      ...others.map((one) => finding('not-determined', { symbol: one, why })),
    ];
  const evidence: LineEvidence = {
    line,
    curve,
    explained: result.modulusWindow ?? {},
    thresholds,
    resting: [...result.proofStrengths.map((one) => one.symbol), ...resting],
    proof: atExtension(result.proofStrengths, PROOF_OFFSET)?.value,
    range: [line.first, line.last],
  };
  const found = doubts.flatMap((one) => one(evidence));
  const [lowest, highest] = metalModuli;
  if (result.modulus && (line.slope < lowest || line.slope > highest))
    found.push(finding('slope-implausible', { slope: line.slope, lowest, highest }, { field: modulus }));
  return found;
}
