import { finding, type Finding, type StressStrainCurve, type TensionRecord } from '../../base/index.js';
import type { ElasticLine } from '../../curve/index.js';
import { lineFit, mean, sampleDeviation } from '../../numeric/index.js';
import { motionColumn, ofDrive, type Pause } from '../../record/index.js';
import type { LineLoadingPart } from './evaluateLine.js';
import type { LineNumbers } from './lineKernel.js';
import type { Ranges } from './loadingRanges.js';
import type { StrengthAtExtension } from './LineResult.js';
import { betweenPauses } from './stageRates.js';
import { recordOfLoading } from './timeOfLoading.js';

/** Speeds vary by so much: a note, a caution (common practice). */
const UNEVEN = [0.2, 0.5] as const;
/** Stretches of the elastic window whose speeds are compared. */
const STRETCHES = 20;
/** A pause this close to a yield value in strain, and not below this share of it in stress, spoils it: strain alone may be wider than all that is elastic. */
const NEAR = 0.002;
const NEAR_STRESS = 0.8;

/** How much the speed varies while the drive moves: standard deviation over mean of the slopes of stretches, less what noise makes of it. */
function unevenness(motion: Float64Array, time: Float64Array, moving: Ranges): number | undefined {
  const samples = moving.reduce((sum, [first, last]) => sum + last - first + 1, 0);
  const size = Math.floor(samples / STRETCHES);
  if (size < 3) return undefined;
  const speeds: number[] = [];
  let noise = 0;
  for (const [first, last] of moving)
    for (let from = first; from + size - 1 <= last; from += size) {
      const line = lineFit(time, motion, from, from + size - 1);
      if (!line) continue;
      speeds.push(line.slope);
      noise += line.standardError ** 2;
    }
  if (speeds.length < 2) return undefined;
  const usual = mean(speeds);
  const variance = sampleDeviation(Float64Array.from(speeds)) ** 2 - noise / speeds.length;
  return usual > 0 ? Math.sqrt(Math.max(0, variance)) / usual : undefined;
}

/** @internal A hand that pumps unevenly over the elastic window; pauses are told for themselves. */
export function unevenFindings(record: TensionRecord, time: Float64Array, { first, last }: ElasticLine, pauses: Ranges): Finding[] {
  const motion = record[motionColumn(record, ofDrive)];
  const variation = motion && unevenness(motion, time, betweenPauses(pauses, first, last));
  if (variation === undefined || variation <= UNEVEN[0]) return [];
  return [finding('uneven-loading', { variation: 100 * variation }, variation > UNEVEN[1] ? { severity: 'caution' } : {})];
}

/** @internal The same of the loading of a record whose clock runs: going back and coming again is told for itself. */
export function unevenOfLoading(
  whole: TensionRecord,
  { ranges, pauses, numbers: { line } }: Pick<LineLoadingPart, 'ranges' | 'pauses'> & { readonly numbers: Pick<LineNumbers, 'line'> },
): Finding[] {
  const record = recordOfLoading(whole, ranges);
  return line.ok && record.time ? unevenFindings(record, record.time, line, pauses) : [];
}

/** More pauses than this are told together: a list of the strokes of a pump hides what else there is to say. */
const FEW = 5;

/** A pause where it lies on the curve. */
interface PlacedPause extends Pick<Pause, 'range' | 'duration'> {
  readonly strain: number;
  readonly from: number;
  readonly to: number;
  /** Symbol of the yield value that it spoils. */
  readonly spoilt: string | undefined;
  readonly inWindow: boolean;
}

const longest = (pauses: readonly PlacedPause[]): PlacedPause => pauses.reduce((a, b) => (b.duration > a.duration ? b : a));

/** Each as a note, and many as one, with their number and the longest. */
function notes(pauses: readonly PlacedPause[]): Finding[] {
  if (pauses.length <= FEW)
    return pauses.map(({ duration, strain, from, to, range }) =>
      finding('pause', { duration, strain, from, to, fall: from - to }, { range }),
    );
  const { duration, strain } = longest(pauses);
  const [first, last] = [pauses[0]!.range[0], pauses[pauses.length - 1]!.range[1]];
  const total = pauses.reduce((sum, one) => sum + one.duration, 0);
  return [finding('pauses-many', { count: pauses.length, total, first, last, duration, strain }, { range: [first, last] })];
}

/** @internal Pauses as notes; those within the elastic window, and near each yield value, as one caution as well. */
export function pauseFindings(
  pauses: readonly Pause[],
  curve: StressStrainCurve,
  yields: readonly (Pick<StrengthAtExtension, 'symbol' | 'strain' | 'value'> | undefined)[],
  line: LineNumbers['line'],
): Finding[] {
  const placed = pauses.map(({ range, duration }): PlacedPause => {
    const last = Math.min(range[1], curve.strain.length - 1);
    const first = Math.min(range[0], last);
    const strain = curve.strain[first]!;
    return {
      range,
      duration,
      strain,
      from: curve.stress[first]!,
      to: curve.stress[last]!,
      spoilt: yields.find((one) => one && Math.abs(one.strain - strain) <= NEAR && curve.stress[first]! >= NEAR_STRESS * one.value)?.symbol,
      inWindow: line.ok && range[0] < line.last && range[1] > line.first,
    };
  });
  const inWindow = placed.filter((one) => one.inWindow);
  const worst = inWindow.length > 0 ? longest(inWindow) : undefined;
  const symbols = new Set(placed.map(({ spoilt }) => spoilt).filter((one) => one !== undefined));
  return [
    ...notes(placed),
    ...(worst
      ? [
          finding(
            'pause-in-elastic-window',
            { count: inWindow.length, duration: worst.duration, strain: worst.strain },
            { range: worst.range, field: 'modulusWindow' },
          ),
        ]
      : []),
    ...[...symbols].map((symbol) => {
      const near = placed.filter(({ spoilt }) => spoilt === symbol);
      const { duration, range } = longest(near);
      return finding('pause-near-yield', { symbol, count: near.length, duration }, { range });
    }),
  ];
}
