import type { UncertaintyInput } from './expectedUncertainties.js';
import type { Answer, Verdict } from './TensionPlan.js';

/** Steps in the offset below which a proof strength is for teaching, and below which there is none (common practice). */
const STEPS = { wanted: 10, least: 3 } as const;
/** Leverage above which the slope decides the proof strength, and above which it is for teaching (common practice). */
const LEVERAGE = { high: 3, most: 6 } as const;
/** Greatest error of an extensometer with which E stands on its own: class 0.5. */
const FINE = 0.005;

const answer = (symbols: readonly string[], verdict: Verdict, why: string): Answer => ({ symbols, verdict, why });

/** Whether the piece will break, and whether the force there is verified. */
function ofStrength({ force, frame, material }: UncertaintyInput): Answer {
  const symbols = ['Rm'];
  const lowest = force.greatest * (material.tensileStrength[0] / material.tensileStrength[1]);
  if (lowest > frame.capacity) return answer(symbols, 'not', 'even the weakest bar of the range is too strong for this frame');
  if (force.greatest > frame.capacity) return answer(symbols, 'fair', 'the strongest bars of the range are too strong for this frame');
  if (frame.verifiedFrom === undefined || frame.forceError === undefined)
    return answer(symbols, 'fair', 'the force is not verified, or its error is not known');
  if (lowest < frame.verifiedFrom) return answer(symbols, 'fair', 'the force of the weakest bar lies below the verified range');
  if (frame.forceError > 0.01) return answer(symbols, 'fair', 'the force is worse than class 1');
  return answer(symbols, 'good', 'force verified to class 1 or better, and the piece breaks within the range');
}

function ofBrokenPiece(input: UncertaintyInput): Answer[] {
  if (ofStrength(input).verdict === 'not') return [answer(['A', 'Z'], 'not', 'the piece will not break')];
  const { gaugeLength, proportionalLength } = input.lengths;
  const off = Math.abs(gaugeLength / proportionalLength - 1);
  return [
    off > 0.1
      ? answer(['A'], 'fair', 'the gauge length is not proportional: write A with its length')
      : answer(['A'], 'good', 'by the marks on a proportional gauge length, frame and travel have no part in it'),
    answer(['Z'], 'good', 'by the least section after fracture; of flats it is less certain'),
  ];
}

function ofYieldPoint({ material, force, frame }: UncertaintyInput): Answer {
  const symbols = ['ReH', 'ReL'];
  if (material.yieldPoint === 'none') return answer(symbols, 'not', 'such a material shows no yield point');
  if (frame.verifiedFrom === undefined || force.least < frame.verifiedFrom)
    return answer(symbols, 'fair', 'the lowest yield force is not in a verified range');
  return answer(symbols, 'good', 'forces alone; ReH still depends on rate, alignment and a stiff frame');
}

function ofProofStrength({ material, resolution, extensometer }: UncertaintyInput): Answer {
  const symbols = ['Rp0.2'];
  const { stepsInOffset: steps, leverage } = resolution;
  if (!material.yieldStrength) return answer(symbols, 'not', 'such a material has no proof strength that is in use');
  if (steps !== undefined && steps < STEPS.least)
    return answer(symbols, 'not', 'a step of the displacement is a third of the offset or more');
  if (steps !== undefined && steps < STEPS.wanted)
    return answer(symbols, 'teaching only', 'a step of the displacement is more than a tenth of the offset');
  if (extensometer) return answer(symbols, 'good', 'extensometer, and the step of its reading is fine enough');
  if (leverage !== undefined && leverage > LEVERAGE.most)
    return answer(symbols, 'teaching only', 'the soft frame makes the elastic strain many times the offset: the slope decides');
  if (leverage !== undefined && leverage > LEVERAGE.high)
    return answer(symbols, 'fair', "by the curve's own slope; the slope weighs more than the offset");
  return answer(symbols, 'fair', "by the curve's own slope, from crosshead displacement");
}

function ofExtensions({ frame, extensometer }: UncertaintyInput): Answer {
  const symbols = ['Ag', 'Agt', 'Ae'];
  if (extensometer) return answer(symbols, 'good', 'extensometer, as far as it stays on');
  return frame.compliance === undefined
    ? answer(symbols, 'teaching only', 'travel holds the give of the frame, which is not known')
    : answer(symbols, 'fair', 'travel less the give of the frame, over the parallel length');
}

function ofModulus({ frame, extensometer, resolution }: UncertaintyInput): Answer {
  const symbols = ['E'];
  if (extensometer)
    return (extensometer.error ?? 0.01) <= FINE
      ? answer(symbols, 'good', 'extensometer of class 0.5 or better; average two sides')
      : answer(symbols, 'fair', 'an extensometer of class 1 on one side: bending of the piece goes into it');
  if (frame.compliance === undefined) return answer(symbols, 'not', 'the slope is that of frame and piece together');
  return (resolution.frameOverPiece ?? 0) > 1
    ? answer(symbols, 'teaching only', 'the frame gives more than the piece: the doubt of its compliance decides')
    : answer(symbols, 'fair', 'an estimate, with the doubt of the compliance in it');
}

/** @internal What a frame can honestly answer, from strength, which it does best, to E. */
export function trustLadder(input: UncertaintyInput): Answer[] {
  return [
    ofStrength(input),
    ...ofBrokenPiece(input),
    ofYieldPoint(input),
    ofProofStrength(input),
    ofExtensions(input),
    input.extensometer
      ? answer(['proportional limit', 'Rp0.01'], 'fair', 'the definition moves it by more than the reading does')
      : answer(['proportional limit', 'Rp0.01'], 'teaching only', 'travel is too coarse for so small an offset'),
    ofModulus(input),
  ];
}
