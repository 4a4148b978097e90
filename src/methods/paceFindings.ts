import { finding, type Finding, type StressStrainCurve, type TensionRecord } from '../base/index.js';
import type { ElasticLine } from '../curve/index.js';
import { lineFit } from '../numeric/index.js';
import { motionOf, ofDrive, type Pause } from '../record/index.js';
import type { LineNumbers } from './lineKernel.js';
import type { StrengthAtExtension, YieldStrength } from './TensionResult.js';

/** Speeds vary by so much: a note, a caution (common practice). */
const UNEVEN = [0.2, 0.5] as const;
/** Stretches of the elastic window whose speeds are compared. */
const STRETCHES = 20;
/** A pause this close to a yield value in strain spoils it. */
const NEAR = 0.002;

/** How much the speed varies over the elastic window: standard deviation over mean of the slopes of stretches, less what noise makes of it. */
function unevenness(motion: Float64Array, time: Float64Array, first: number, last: number): number | undefined {
  const size = Math.floor((last - first + 1) / STRETCHES);
  if (size < 3) return undefined;
  const speeds: number[] = [];
  let noise = 0;
  for (let k = 0; k < STRETCHES; k += 1) {
    const line = lineFit(time, motion, first + k * size, first + (k + 1) * size - 1);
    if (!line) continue;
    speeds.push(line.slope);
    noise += line.standardError ** 2;
  }
  const mean = speeds.reduce((sum, one) => sum + one, 0) / speeds.length;
  const squares = speeds.reduce((sum, one) => sum + (one - mean) ** 2, 0);
  const spread = squares / (speeds.length - 1) - noise / speeds.length;
  return mean > 0 ? Math.sqrt(Math.max(0, spread)) / mean : undefined;
}

/** @internal A hand that pumps unevenly over the elastic window. */
export function unevenFindings(record: TensionRecord, time: Float64Array, { first, last }: ElasticLine): Finding[] {
  const motion = record[motionOf(record, ofDrive)];
  const variation = motion && unevenness(motion, time, first, last);
  if (variation === undefined || variation <= UNEVEN[0]) return [];
  return [finding('uneven-loading', { variation: 100 * variation }, variation > UNEVEN[1] ? { severity: 'caution' } : {})];
}

/** @internal Pauses, each as a note; within the elastic window, and near a yield value, a caution as well. */
export function pauseFindings(
  pauses: readonly Pause[],
  curve: StressStrainCurve,
  yields: readonly (YieldStrength | StrengthAtExtension | undefined)[],
  line: LineNumbers['line'],
): Finding[] {
  return pauses.flatMap(({ range, duration }) => {
    const last = Math.min(range[1], curve.strain.length - 1);
    const first = Math.min(range[0], last);
    const strain = curve.strain[first]!;
    const fall = curve.stress[first]! - curve.stress[last]!;
    const spoilt = yields.find((one) => one && Math.abs(one.strain - strain) <= NEAR);
    const inWindow = line.ok && range[0] < line.last && range[1] > line.first;
    return [
      finding('pause', { duration, strain, fall }, { range }),
      ...(inWindow ? [finding('pause-in-elastic-window', { duration, strain }, { range, field: 'modulusWindow' })] : []),
      ...(spoilt ? [finding('pause-near-yield', { duration, symbol: spoilt.symbol }, { range })] : []),
    ];
  });
}
