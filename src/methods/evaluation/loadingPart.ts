import { success, type Finding } from '../../base/index.js';
import { keptColumn } from '../../record/index.js';
import { loadingRanges, pickCurve, sampleOfRecord, samplesOfPart, type Ranges } from '../loading/loadingRanges.js';
import { onRecord, windowAt } from '../loading/onRecord.js';
import { moveCurve } from '../loading/moveCurve.js';
import { tensionKernel } from './tensionKernel.js';
import type { TensionInput, TensionNumbers } from '../loading/TensionNumbers.js';
import type { TensionSettings } from './tensionOptions.js';

/** @internal A curve as it is evaluated: loading alone. */
export interface LoadingPart {
  readonly input: TensionInput;
  readonly settings: TensionSettings;
  /** Stretches of the record that it is made of, first and last sample of each; absent where it is the whole. */
  readonly ranges?: Ranges;
}

/** @internal An evaluation, by the samples of the record and by those of the part that it was made on. */
export interface Evaluation {
  readonly numbers: TensionNumbers;
  readonly part: LoadingPart & { readonly numbers: TensionNumbers };
}

/** Input and settings of the part, of those of the whole. */
function partOf(input: TensionInput, settings: TensionSettings, excursions: Ranges): LoadingPart {
  const { curve, stress, highest, broken, unloadedFrom, pauses, slips, zeroMoves } = input;
  const samples = stress.length;
  const ranges = loadingRanges(excursions, samples);
  if (!ranges) return { input, settings };
  const { from, upTo } = samplesOfPart(ranges);
  const own = pickCurve(curve, ranges);
  return {
    ranges,
    settings: { ...settings, window: windowAt(settings.window, from, upTo) },
    input: {
      ...input,
      curve: own,
      stress: stress === curve.stress ? own.stress : keptColumn(stress, ranges),
      ...(highest === undefined ? {} : { highest: from(highest) }),
      ...(broken?.ok === true ? { broken: success({ ...broken, index: from(broken.index) }) } : {}),
      ...(unloadedFrom === undefined ? {} : { unloadedFrom: upTo(unloadedFrom) }),
      pauses: pauses.flatMap(([first, last]) => (from(first) <= upTo(last) ? [[from(first), upTo(last)] as const] : [])),
      slips: slips.map((slip) => ({ ...slip, at: upTo(slip.at) })),
      zeroMoves: zeroMoves.map(from),
    },
  };
}

/**
 * @internal Evaluates what of a curve is loading, and counts samples in the whole; the curve of the input is moved as the kernel moves its own. Where
 * nothing is left out it is the kernel itself.
 */
export function evaluateLoading(input: TensionInput, settings: TensionSettings, excursions: Ranges): Evaluation {
  const part = partOf(input, settings, excursions);
  const own = tensionKernel(part.input, part.settings);
  const { ranges } = part;
  if (!ranges) return { numbers: own, part: { numbers: own, ...part } };
  moveCurve(input.curve, own, input.elasticLengthRatio);
  return { numbers: onRecord(own, (sample) => sampleOfRecord(ranges, sample)), part: { numbers: own, ...part } };
}

/** @internal A finding about a part of a record, with its samples counted in the record. */
export const findingOnRecord =
  ({ ranges }: Pick<LoadingPart, 'ranges'>) =>
  (one: Finding): Finding =>
    ranges && one.range ? { ...one, range: [sampleOfRecord(ranges, one.range[0]), sampleOfRecord(ranges, one.range[1])] } : one;
