import {
  finding,
  requireColumn,
  requireNonNegative,
  requireObject,
  requireOptions,
  type Finding,
  type TensionColumns,
  type TensionRecord,
} from '../base/index.js';
import { median, noiseLevel } from '../numeric/index.js';
import { resolution } from './resolution.js';
import { GAP, surveyRecord, type ClockSurvey, type MotionSurvey, type RecordSurvey } from './surveyRecord.js';

/** Thresholds of {@link checkRecord}: common practice. */
export interface RecordThresholds {
  /** A gap is longer than so many usual time steps; default 5. */
  readonly gap?: number | undefined;
  /** Share of repeated samples that is worth a note; default 0.05. */
  readonly repeated?: number | undefined;
  /** Equal samples at the highest value that mean saturation; default 5. */
  readonly saturated?: number | undefined;
  /** Share of the maximum force that the first sample may carry; default 0.05. */
  readonly lateStart?: number | undefined;
  /** Zero drift, as a share of the maximum force, that is a caution; default 0.005, a fault from twice that. */
  readonly zeroDrift?: number | undefined;
}

/** The thresholds with their defaults. */
const defaults = { gap: GAP, repeated: 0.05, saturated: 5, lateStart: 0.05, zeroDrift: 0.005 };
type Limits = typeof defaults;

/** Below this share of the maximum the piece has broken. */
const BROKEN = 0.02;

function clockFindings(clock: ClockSurvey | undefined, samples: number): Finding[] {
  if (!clock) return [finding('time-missing')];
  const { usual, backward, firstBackward, gaps, longest, longestAt } = clock;
  const found: Finding[] = [];
  if (backward > 0)
    found.push(finding('time-not-increasing', { count: backward, first: firstBackward }, { range: [firstBackward - 1, firstBackward] }));
  // a logger that writes by force or extension has no usual step: many long steps are its way, not gaps
  if (gaps > 0 && gaps <= 0.01 * samples)
    found.push(finding('time-gap', { count: gaps, longest, first: longestAt, usual }, { range: [longestAt, longestAt + 1] }));
  return found;
}

/** Equal highest samples: a channel at its end, unless the reading is stepped and stays near its top anyway. */
function saturation(force: Float64Array, top: number, least: number, noise: number): Finding[] {
  const highest = force[top]!;
  let last = top;
  while (last + 1 < force.length && force[last + 1] === highest) last += 1;
  const count = last - top + 1;
  if (count < least) return [];
  const step = resolution(force);
  const before = highest - (force[top - 1] ?? 0);
  const after = highest - (force[last + 1] ?? highest);
  // a true maximum is approached by ever smaller steps; a cut one is run into at the pace of the loading
  const paced =
    before > 3 * Math.max(step, noise) || (count >= 4 * least && noise > 0.5 * step) || (before > 0 && after > 3 * Math.max(step, noise));
  return paced ? [finding('force-saturated', { force: highest, count }, { field: 'maximumForce', range: [top, last] })] : [];
}

/** What stands before loading and after fracture. */
function endFindings({ force }: TensionRecord, top: number, { lateStart, zeroDrift }: Limits): Finding[] {
  const found: Finding[] = [];
  const highest = force[top]!;
  const n = force.length;
  if (force[0]! > lateStart * highest) found.push(finding('record-starts-late', { share: (100 * force[0]!) / highest }));
  let tail = n;
  while (tail > top + 1 && Math.abs(force[tail - 1]!) < BROKEN * highest) tail -= 1;
  if (tail === n) return found;
  found.push(finding('tail-after-fracture', { count: n - tail }, { range: [tail, n - 1] }));
  // zero before: the first stretch without load
  let start = 0;
  while (start < top && Math.abs(force[start]!) < BROKEN * highest) start += 1;
  if (start < 3 || n - tail < 3) return found;
  const mean = (from: number, to: number): number => median(force.subarray(from, to));
  const drift = mean(tail + ((n - tail) >> 2), n) - mean(0, Math.max(3, start >> 2));
  if (Math.abs(drift) > zeroDrift * highest)
    found.push(
      finding(
        'zero-drift',
        { force: drift, share: (100 * Math.abs(drift)) / highest },
        { severity: Math.abs(drift) > 2 * zeroDrift * highest ? 'fault' : 'caution' },
      ),
    );
  return found;
}

/** Repeated samples, extension that goes back, an extensometer that ends early. */
function motionFindings(record: TensionRecord, motion: MotionSurvey | undefined, most: number): Finding[] {
  if (!motion) return [];
  const { column, end, repeated, backward, largest } = motion;
  const n = record.force.length;
  const found: Finding[] = [];
  if (repeated > most * n) found.push(finding('samples-repeated', { share: (100 * repeated) / n }));
  if (backward > 0) found.push(finding('extension-goes-back', { count: backward, largest }));
  if (end < n && end > 0 && column !== 'travel')
    found.push(finding('extensometer-taken-off', { sample: end, strain: record[column]![end - 1]! }, { range: [end, n - 1] }));
  return found;
}

/** @internal {@link checkRecord} on a checked record. */
export function checkRecordKernel(record: TensionRecord, thresholds: RecordThresholds = {}, known?: RecordSurvey): Finding[] {
  const limits: Limits = {
    ...defaults,
    ...(Object.fromEntries(Object.entries(thresholds).filter(([, value]) => value !== undefined)) as Partial<Limits>),
  };
  const { force } = record;
  const { top, clock, motion } = known ?? surveyRecord(record, limits.gap);
  const noise = noiseLevel(force);
  const highest = force[top]!;
  const flat = !(highest > 0) || highest - force[0]! <= Math.max(10 * noise, 1e-9 * Math.abs(highest));
  if (flat)
    return [
      finding('force-does-not-rise', { first: force[0]!, highest }, { field: 'maximumForce' }),
      ...clockFindings(clock, force.length),
    ];
  return [
    ...clockFindings(clock, force.length),
    ...saturation(force, top, limits.saturated, noise),
    ...endFindings(record, top, limits),
    ...motionFindings(record, motion, limits.repeated),
  ];
}

/**
 * First checks of a record: its clock, the ends of the force, repeated samples, motion that goes back.
 *
 * @remarks
 * Nothing is changed; each doubt is a finding with its numbers and the samples it concerns.
 *
 * @param record - `force` [N], `extension` [mm], `strain` [mm/mm], `travel` [mm], `time` [s], as far as they were logged.
 * @param thresholds - When a doubt is worth a finding.
 * @returns Findings in the order of the checks; an empty list where nothing is wrong.
 * @throws {@link InputError} `missing`, `not-finite`, `empty`, `unequal-lengths`, `unknown-option`.
 *
 * @example
 * ```ts
 * checkRecord({ force: [0, 100, 200, 300, 400], travel: [0, 1, 2, 3, 4] }).map(({ code }) => code); // => ['time-missing']
 * ```
 *
 * @see Common practice. Checked in `test/record/record.test.ts`.
 */
export function checkRecord(record: TensionColumns, thresholds: RecordThresholds = {}): Finding[] {
  const from = 'checkRecord';
  requireObject(from, 'record', record);
  requireOptions(from, thresholds, Object.keys(defaults), 'thresholds');
  for (const [name, value] of Object.entries(thresholds)) if (value !== undefined) requireNonNegative(from, `thresholds.${name}`, value);
  const force = requireColumn(from, 'record.force', record.force);
  const length = force.length;
  const column = (name: keyof TensionColumns, endsEarly = false) =>
    record[name] === undefined ? {} : { [name]: requireColumn(from, `record.${name}`, record[name], { length, endsEarly }) };
  return checkRecordKernel(
    {
      force,
      ...column('extension', true),
      ...column('strain', true),
      ...column('travel'),
      ...column('transverseStrain', true),
      ...column('time'),
    },
    thresholds,
  );
}
