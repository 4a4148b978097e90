import { PROOF_OFFSET, type StressStrainCurve } from '../../base/index.js';
import { cellMeans, reachedSince } from '../../numeric/index.js';
import { beginningYield } from './beginningYield.js';
import { coarseLine } from './coarseLine.js';
import { isGiven, linearLimits, linearPart, type LinearLimits } from './linearPart.js';
import { lineResiduals } from './lineResiduals.js';
import { lineTrust } from './lineTrust.js';
import type { ElasticLine, LineExplanation } from './ModulusFit.js';
import { noiseFlattening } from './noiseFlattening.js';
import { remainingToe } from './remainingToe.js';
import { slopeFall } from './slopeFall.js';
import { strainSteps } from './strainSteps.js';
import { sustainedCrossing } from '../sustainedCrossing.js';
import { WINDOW_SHARE } from '../window/windowChoice.js';
import { windowEnvelope } from './windowEnvelope.js';

/** The curve is looked at from this share of the 0.2 %-offset stress on: the offset of 0.01 % lies above it for exponents from 2.5 on, 0.05^(1/2.5) = 0.3. */
const BELOW_CROSSING = 0.3;
/** About so many means stand for the samples around the crossing: they calm the noise, and cost little. */
const PLACES = 200;

/** Crossings of offset lines, on means over the curve around the sample where a coarse one crosses. */
function crossings({ strain, stress }: StressStrainCurve, offsetSample: number, beyond: number) {
  const top = Math.min(offsetSample, beyond - 1);
  const first = reachedSince(stress, BELOW_CROSSING * stress[top]!, top);
  let last = top;
  while (last < beyond - 1 && strain[last]! <= strain[top]! + PROOF_OFFSET) last += 1;
  const { x, y } = cellMeans(strain, stress, first, last, PLACES);
  return (slope: number, shift: number, offset = PROOF_OFFSET): number | undefined => {
    const origin = shift + offset;
    // a flat line, as of a window in yielding, lies above the foot of the curve too
    let from = 0;
    while (from < x.length && y[from]! < slope * (x[from]! - origin)) from += 1;
    const i = sustainedCrossing(x, y, slope, origin, from, x.length);
    if (i < 1) return undefined;
    const before = y[i - 1]! - slope * (x[i - 1]! - origin);
    const after = y[i]! - slope * (x[i]! - origin);
    return y[i - 1]! + (before / (before - after)) * (y[i]! - y[i - 1]!);
  };
}

/** Where the first loading ends by a coarse line, and the shares by which windows are bounded. */
function boundsOf({ strain, stress }: StressStrainCurve, line: ElasticLine, maximum: number) {
  const { criterion, offsetStress, offsetSample } = line;
  if ((criterion.by === 'lower-bound' || criterion.by === 'relative-error') && offsetStress !== undefined && offsetSample !== undefined)
    return { startShare: criterion.startShare ?? 0, spanShare: criterion.spanShare ?? 0, offsetStress, offsetSample };
  const coarse = coarseLine(strain, stress, maximum);
  // a window beyond, on an unloading line or where it hardens, is no part of the first loading: nothing is to be learnt from there
  return coarse && line.first < coarse.end
    ? { startShare: WINDOW_SHARE, spanShare: WINDOW_SHARE, offsetStress: coarse.offsetStress, offsetSample: coarse.end }
    : undefined;
}

/** What explains a line, set one by one, because a literal that spreads others costs ten times as much. */
type Found = { -readonly [Name in keyof LineExplanation]: LineExplanation[Name] };

/** @internal Residuals, fall of slope, envelope of other windows, linear part and trust of a line, on the curve that it was found on; `step` is one of its strain's reading, 0 for none. */
export function explainLine(
  curve: StressStrainCurve,
  line: ElasticLine,
  maximum: number,
  step: number,
  limits: LinearLimits = linearLimits,
): LineExplanation {
  const { slope, strainShift, offsetStress } = line;
  const { strain, stress } = curve;
  const beyond = maximum + 1;
  const offsetSample = line.offsetSample ?? sustainedCrossing(strain, stress, slope, strainShift + PROOF_OFFSET, line.first, beyond);
  const proofOf = offsetSample < 0 ? () => undefined : crossings(curve, offsetSample, beyond);
  const proof = proofOf(slope, strainShift) ?? offsetStress;
  const bounds = boundsOf(curve, line, maximum);
  const residuals = lineResiduals(curve, line);
  const bands = bounds && slopeFall(curve, bounds.offsetStress, bounds.offsetSample);
  const envelope = bounds && windowEnvelope(curve, line, { ...bounds, proofOf });
  const rise = bounds ? (slope * (strain[line.last]! - strain[line.first]!)) / bounds.offsetStress : 0;
  const ends = [line.first, line.last].map((i) => slope * (strain[i]! - strainShift)) as [number, number];
  const yielding = beginningYield(slope, ends, (offset) => proofOf(slope, strainShift, offset));
  const toe = bands && remainingToe(slope, (ends[0] + ends[1]) / 2 / bounds.offsetStress, yielding?.slopeShare ?? 0, bands);
  const flattening = noiseFlattening(curve, line);
  const steps = strainSteps(curve, line, step);
  const found: Found = { residuals };
  if (yielding) found.beginningYield = yielding;
  if (flattening) found.noiseFlattening = flattening;
  if (steps) found.strainSteps = steps;
  if (toe) found.remainingToe = toe;
  if (bands) found.slopeFall = bands.fall;
  if (envelope) found.envelope = envelope;
  const linear = linearPart({ slope, rise, given: isGiven(line) }, found, limits);
  if (linear) found.linearPart = linear;
  // a line through noise may end below zero
  if (proof !== undefined && proof > 0) found.trust = lineTrust(line, proof, linear, envelope, steps?.slopeShare);
  return found;
}
