import { columnUnits, finding, soundLength, type ColumnName, type Finding, type TensionRecord } from '../../base/index.js';
import { channelLag } from './channelLag.js';
import type { Drop } from './drops.js';
import type { ExtensometerEnd } from './extensometerEnd.js';
import { findJumps } from './jumps.js';
import { LEAST_READINGS, ofDrive, ofPiece } from '../survey/motionColumn.js';
import type { RecordOutline } from '../survey/recordOutline.js';
import { besides, slipsBackOf, type SlipsBack } from './slipsBack.js';
import type { MotionSurvey } from '../survey/surveyRecord.js';

const codes = {
  slip: 'grip-slip',
  reversal: 'drive-reversed',
  backlash: 'motion-backlash',
} as const;

/** Most falls of one kind that have a finding each; more of them share one. */
const MOST = 40;

/** @internal Falls of the force that are no yield of the material. */
export function dropFindings(drops: readonly Drop[], column: ColumnName): Finding[] {
  return (['slip', 'reversal', 'backlash'] as const).flatMap((kind) => {
    const own = drops.filter((one) => one.kind === kind);
    if (own.length <= MOST)
      return own.map(({ range, fall, way }) =>
        finding(codes[kind], { column, sample: range[0], fall, way, unit: columnUnits[column] }, { range: [range[0], range[2]] }),
      );
    const largest = own.reduce((a, b) => (b.fall > a.fall ? b : a));
    return [
      finding(
        'falls-many',
        { count: own.length, fall: largest.fall, sample: largest.range[0] },
        { range: [own[0]!.range[0], own[own.length - 1]!.range[2]] },
      ),
    ];
  });
}

/** The fall by which an extensometer ends is a jump that can be joined; where one stands afterwards there is nothing to join. */
const withFall = (record: TensionRecord, ended: ExtensometerEnd | undefined): TensionRecord =>
  ended?.how === 'falls-back' ? { ...record, [ended.column]: ended.whole } : record;

/** Jumps of each motion; a travel that jumps ahead under load slipped. */
function jumpFindings(record: TensionRecord, outline: RecordOutline): Finding[] {
  return ofDrive.flatMap((column: ColumnName & keyof TensionRecord) => {
    const values = record[column];
    const jumps = values ? findJumps(outline, values) : [];
    const largest = jumps.reduce((a, b) => (Math.abs(b.size) > Math.abs(a.size) ? b : a), jumps[0]!);
    if (jumps.length === 0) return [];
    const { at, size } = largest;
    if (column === 'travel' && jumps.every((one) => one.size > 0))
      return jumps.map((one) =>
        finding(
          'grip-slip',
          { column, sample: one.at - 1, fall: 0, way: one.size, unit: columnUnits[column] },
          { range: [one.at - 1, one.at] },
        ),
      );
    return [
      finding(
        'motion-jumps',
        { column, count: jumps.length, largest: size, unit: columnUnits[column], sample: at },
        { range: [at - 1, at] },
      ),
    ];
  });
}

/** Extensometers that slipped back in the elastic part. */
function slipFindings(record: TensionRecord, outline: RecordOutline, slipped: SlipsBack): Finding[] {
  return (['extension', 'strain'] as const).flatMap((column) => {
    const own = slipped[column] ?? [];
    const slips = own.length > 0 ? besides(own, findJumps(outline, record[column]!)) : [];
    if (slips.length === 0) return [];
    const { at, size } = slips.reduce((a, b) => (b.size < a.size ? b : a));
    return [
      finding(
        'extensometer-slipped',
        { column, count: slips.length, largest: -size, unit: columnUnits[column], sample: at },
        { range: [at - 1, at] },
      ),
    ];
  });
}

/** Extensometers that were logged and read nothing. */
const emptyFindings = (record: TensionRecord): Finding[] =>
  ofPiece
    .filter((column) => record[column] && record.force.length > LEAST_READINGS && soundLength(record[column]) < LEAST_READINGS)
    .map((column) => finding('channel-empty', { column }, { range: [0, record.force.length - 1] }));

/** @internal Doubts about the motion: slips, reversals, jumps, a lag, repeated samples, an extensometer that ends early. */
export function motionFindings(
  record: TensionRecord,
  outline: RecordOutline,
  motion: MotionSurvey | undefined,
  drops: readonly Drop[],
  most: number,
  {
    ended,
    slipsBack = slipsBackOf(record, outline),
  }: { readonly ended?: ExtensometerEnd | undefined; readonly slipsBack?: SlipsBack | undefined } = {},
): Finding[] {
  if (!motion) return [];
  const { column, end, repeated, backward, largest } = motion;
  const n = record.force.length;
  const found: Finding[] = [
    ...dropFindings(drops, outline.motion?.column ?? column),
    ...jumpFindings(withFall(record, ended), outline),
    ...slipFindings(record, outline, slipsBack),
  ];
  const lag = channelLag(outline);
  if (lag) found.push(finding('channels-out-of-step', { ...lag }));
  if (repeated > most * n) found.push(finding('samples-repeated', { share: (100 * repeated) / n }));
  if (backward > 0) found.push(finding('extension-goes-back', { column, count: backward, largest, unit: columnUnits[column] }));
  found.push(...emptyFindings(record));
  if (ended)
    found.push(
      finding(
        ended.how === 'stands' ? 'extensometer-stands' : 'extensometer-falls-back',
        { column: ended.column, sample: ended.end, reading: ended.reading, unit: columnUnits[ended.column] },
        // travel carries the curve on; without it everything beyond is withheld
        { range: [ended.end, n - 1], ...(record.travel ? {} : { severity: 'fault' }) },
      ),
    );
  else if (end >= LEAST_READINGS && end < n && column !== 'travel')
    found.push(
      finding(
        'extensometer-taken-off',
        { column, sample: end, reading: record[column]![end - 1]!, unit: columnUnits[column] },
        { range: [end, n - 1] },
      ),
    );
  return found;
}
