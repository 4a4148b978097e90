import {
  finding,
  requireColumn,
  requireObject,
  requireOptions,
  type Finding,
  type TensionColumns,
  type TensionRecord,
} from '../base/index.js';
import { maximumIndex, median, noiseLevel } from '../numeric/index.js';
import { resolution } from './resolution.js';

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
const defaults = { gap: 5, repeated: 0.05, saturated: 5, lateStart: 0.05, zeroDrift: 0.005 };
type Limits = typeof defaults;

/** Below this share of the maximum the piece has broken. */
const BROKEN = 0.02;

function timeFindings({ time, force }: TensionRecord, most: number): Finding[] {
  if (!time) return [finding('time-missing')];
  const n = time.length;
  let back = 0;
  let firstBack = -1;
  const stride = Math.max(1, Math.floor(n / 500));
  const steps: number[] = [];
  for (let i = 1; i < n; i += stride) if (time[i]! > time[i - 1]!) steps.push(time[i]! - time[i - 1]!);
  const usual = median(steps);
  let gaps = 0;
  let longest = 0;
  let at = -1;
  for (let i = 1; i < n; i += 1) {
    const step = time[i]! - time[i - 1]!;
    if (step < 0) {
      back += 1;
      if (firstBack < 0) firstBack = i;
    } else if (step > most * usual) {
      gaps += 1;
      if (step > longest) {
        longest = step;
        at = i - 1;
      }
    }
  }
  const found: Finding[] = [];
  if (back > 0) found.push(finding('time-not-increasing', { count: back, first: firstBack }, { range: [firstBack - 1, firstBack] }));
  // a logger that writes by force or extension has no usual step: many long steps are its way, not gaps
  if (gaps > 0 && gaps <= 0.01 * n)
    found.push(finding('time-gap', { count: gaps, longest, first: at, usual }, { range: [at, Math.min(at + 1, force.length - 1)] }));
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
function motionFindings(record: TensionRecord, top: number, repeated: number): Finding[] {
  const { force } = record;
  const name = record.extension ? 'extension' : record.strain ? 'strain' : 'travel';
  const motion = record[name];
  if (!motion) return [];
  const found: Finding[] = [];
  const n = force.length;
  let end = n;
  while (end > 0 && Number.isNaN(motion[end - 1])) end -= 1;
  const step = Math.max(3 * resolution(motion), 8 * noiseLevel(motion, 0, end));
  let highest = motion[0]!;
  let before = highest;
  let same = 0;
  let back = 0;
  let largest = 0;
  let inside = false;
  for (let i = 1; i < end; i += 1) {
    const now = motion[i]!;
    if (now === before && force[i] === force[i - 1]) same += 1;
    before = now;
    // beyond the maximum the motion may do what it likes
    if (now >= highest) {
      inside = false;
      highest = now;
    } else if (highest - now > step && i <= top) {
      if (!inside) back += 1;
      inside = true;
      largest = Math.max(largest, highest - now);
    }
  }
  if (same > repeated * n) found.push(finding('samples-repeated', { share: (100 * same) / n }));
  if (back > 0) found.push(finding('extension-goes-back', { count: back, largest }));
  if (end < n && end > 0 && name !== 'travel')
    found.push(finding('extensometer-taken-off', { sample: end, strain: motion[end - 1]! }, { range: [end, n - 1] }));
  return found;
}

/** @internal {@link checkRecord} on a checked record. */
export function checkRecordKernel(record: TensionRecord, thresholds: RecordThresholds = {}, top = maximumIndex(record.force)): Finding[] {
  const limits: Limits = {
    ...defaults,
    ...(Object.fromEntries(Object.entries(thresholds).filter(([, value]) => value !== undefined)) as Partial<Limits>),
  };
  const { force } = record;
  const noise = noiseLevel(force);
  const highest = force[top]!;
  const flat = !(highest > 0) || highest - force[0]! <= Math.max(10 * noise, 1e-9 * Math.abs(highest));
  if (flat)
    return [finding('force-does-not-rise', { first: force[0]!, highest }, { field: 'maximumForce' }), ...timeFindings(record, limits.gap)];
  return [
    ...timeFindings(record, limits.gap),
    ...saturation(force, top, limits.saturated, noise),
    ...endFindings(record, top, limits),
    ...motionFindings(record, top, limits.repeated),
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
 * @see Common practice. Checked in `test/record/checkRecord.test.ts`.
 */
export function checkRecord(record: TensionColumns, thresholds: RecordThresholds = {}): Finding[] {
  const from = 'checkRecord';
  requireObject(from, 'record', record);
  requireOptions(from, thresholds, Object.keys(defaults), 'thresholds');
  const force = requireColumn(from, 'record.force', record.force);
  const length = force.length;
  const column = (name: keyof TensionColumns, endsEarly = false) =>
    record[name] === undefined ? {} : { [name]: requireColumn(from, `record.${name}`, record[name], { length, endsEarly }) };
  return checkRecordKernel(
    { force, ...column('extension', true), ...column('strain', true), ...column('travel'), ...column('time') },
    thresholds,
  );
}
