import { success, type Finding, type StressStrainCurve } from '../base/index.js';
import { keptRanges } from '../record/index.js';
import type { Departures } from './departures.js';
import { onRecord, windowAt } from './onRecord.js';
import { moveCurve } from './moveCurve.js';
import { tensionKernel } from './tensionKernel.js';
import type { TensionInput, TensionNumbers } from './TensionNumbers.js';
import type { TensionSettings } from './tensionOptions.js';

/** @internal A curve as it is evaluated: loading alone. */
export interface LoadingPart {
  readonly input: TensionInput;
  readonly settings: TensionSettings;
  /** Stretches of the record that it is made of, first and last sample of each; absent where it is the whole. */
  readonly ranges?: readonly (readonly [number, number])[];
}

/** @internal An evaluation, by the samples of the record and by those of the part that it was made on. */
export interface Evaluation {
  readonly numbers: TensionNumbers;
  readonly part: LoadingPart & { readonly numbers: TensionNumbers };
}

type Ranges = readonly (readonly [number, number])[];

/** Sample of the record at a sample of the part. */
function sampleOfRecord(ranges: Ranges, sample: number): number {
  let left = sample;
  for (const [first, last] of ranges) {
    if (left <= last - first) return first + left;
    left -= last - first + 1;
  }
  return ranges[ranges.length - 1]![1];
}

/** How many samples of the part lie before a sample of the record. */
function before(ranges: Ranges, sample: number): number {
  let count = 0;
  for (const [first, last] of ranges) {
    if (sample <= first) return count;
    if (sample <= last) return count + sample - first;
    count += last - first + 1;
  }
  return count;
}

/** The kept samples of a column, which may end before the record. */
function pick(column: Float64Array, ranges: Ranges): Float64Array {
  const kept = new Float64Array(before(ranges, column.length));
  let at = 0;
  for (const [first, last] of ranges) {
    if (first >= column.length) break;
    const stretch = column.subarray(first, last + 1);
    kept.set(stretch, at);
    at += stretch.length;
  }
  return kept;
}

/** Input and settings of the part, of those of the whole. */
function partOf(input: TensionInput, settings: TensionSettings, excursions: Departures['excursions']): LoadingPart {
  const { curve, stress, highest, broken, unloadedFrom, pauses, slips, zeroMoves } = input;
  const samples = stress.length;
  const left = excursions.filter(([leaves, , back]) => back > leaves + 1 && back < samples);
  if (left.length === 0) return { input, settings };
  const ranges = keptRanges(left, samples);
  const from = (sample: number): number => before(ranges, sample);
  const upTo = (sample: number): number => before(ranges, sample + 1) - 1;
  const own: StressStrainCurve = { strain: pick(curve.strain, ranges), stress: pick(curve.stress, ranges) };
  return {
    ranges,
    settings: { ...settings, window: windowAt(settings.window, from, upTo) },
    input: {
      ...input,
      curve: own,
      stress: stress === curve.stress ? own.stress : pick(stress, ranges),
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
export function evaluateLoading(input: TensionInput, settings: TensionSettings, excursions: Departures['excursions']): Evaluation {
  const part = partOf(input, settings, excursions);
  const own = tensionKernel(part.input, part.settings);
  const { ranges } = part;
  if (!ranges) return { numbers: own, part: { ...part, numbers: own } };
  moveCurve(input.curve, own, input.elasticLengthRatio);
  return { numbers: onRecord(own, (sample) => sampleOfRecord(ranges, sample)), part: { ...part, numbers: own } };
}

/** @internal A finding about a part of a record, with its samples counted in the record. */
export const findingOnRecord =
  ({ ranges }: Pick<LoadingPart, 'ranges'>) =>
  (one: Finding): Finding =>
    ranges && one.range ? { ...one, range: [sampleOfRecord(ranges, one.range[0]), sampleOfRecord(ranges, one.range[1])] } : one;
