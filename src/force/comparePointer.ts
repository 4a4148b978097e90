import { finding, requireFinite, requireNonNegative, requireOptions, requirePositive, type Finding } from '../base/index.js';

/** A trailing pointer beside the record of the same test. */
export interface PointerReading {
  /** Force that the trailing pointer shows [N]. */
  readonly pointer: number;
  /** Maximum force of the record [N]. */
  readonly recorded: number;
  /** One division of the dial [N]; default 0. */
  readonly division?: number | undefined;
  /** What the pointer showed before the test [N]; default 0. */
  readonly before?: number | undefined;
  /** Rate of force near the maximum [N/s]; default unknown. */
  readonly forceRate?: number | undefined;
  /** Samples of the record a second [Hz]; default unknown. */
  readonly frequency?: number | undefined;
  /** Height of a lone sample above its neighbours at the record's maximum [N]; default 0. */
  readonly spike?: number | undefined;
}

/** Why pointer and record differ, as a word. */
export type PointerCause = 'agree' | 'peak-between-samples' | 'pushed-past' | 'not-reset' | 'spike-in-record' | 'stuck';

/** Pointer against record. */
export interface PointerComparison {
  /** Pointer less record [N]. */
  readonly difference: number;
  /** That over the record [1]. */
  readonly relativeDifference: number;
  /** Difference that is allowed: 1 % of the record, or half a division where that is more [N]. */
  readonly allowed: number;
  /** The likely cause. */
  readonly cause: PointerCause;
  /** A doubt where they differ by more than is allowed; a fault above 3 %. */
  readonly findings: readonly Finding[];
}

const FROM = 'comparePointer';
const ALLOWED = 0.01;
const FAULT = 0.03;

const sentences: Readonly<Record<PointerCause, string>> = {
  agree: 'They agree',
  'peak-between-samples': 'The peak may have passed between two samples of the record',
  'pushed-past':
    'The pointer was probably pushed past by its own momentum or by the shock of fracture, or the record lost its peak to a filter',
  'not-reset': 'The pointer was probably not brought back before the test',
  'spike-in-record': 'The maximum of the record is probably a spike',
  stuck: 'The pointer probably stuck, drags or was not engaged, or the two channels were calibrated at different times',
};

function causeOf(difference: number, allowed: number, before: number, spike: number, reading: PointerReading): PointerCause {
  const near = (one: number): boolean => Math.abs(one) <= allowed;
  if (near(difference)) return 'agree';
  if (difference < 0) return near(difference + spike) ? 'spike-in-record' : 'stuck';
  if (near(reading.pointer - before)) return 'not-reset';
  const { forceRate, frequency } = reading;
  return forceRate !== undefined && frequency !== undefined && difference <= forceRate / frequency ? 'peak-between-samples' : 'pushed-past';
}

/**
 * Maximum force of a trailing pointer against that of the record, with the likely cause of a difference.
 *
 * $$ |F_{ptr} - F_{rec}| \le \max\left( 1\,\%\ F_{rec},\ \tfrac12 \text{ division} \right) $$
 *
 * @remarks
 * Common practice. Fm stays that of the verified channel, whichever it is; the other is printed beside it. Read the pointer once, at eye level.
 * A pointer that stood above the maximum before the test was never moved: it says nothing of the test.
 *
 * @param reading - `pointer`, `recorded` [N] above 0; `division`, `before`, `spike` [N], `forceRate` [N/s], 0 or more; `frequency` [Hz] above 0.
 * @returns Difference [N], its share [1], what is allowed [N], the cause and a finding.
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * comparePointer({ pointer: 20600, recorded: 20000, division: 100 }).cause; // => 'pushed-past'
 * ```
 *
 * @see Common practice. Checked in `test/force/between.test.ts`.
 */
export function comparePointer(reading: PointerReading): PointerComparison {
  const names = ['pointer', 'recorded', 'division', 'before', 'forceRate', 'frequency', 'spike'];
  requireOptions(FROM, reading, names, 'reading');
  const pointer = requirePositive(FROM, 'reading.pointer', reading.pointer);
  const recorded = requirePositive(FROM, 'reading.recorded', reading.recorded);
  const division = requireNonNegative(FROM, 'reading.division', reading.division ?? 0);
  const before = requireFinite(FROM, 'reading.before', reading.before ?? 0);
  const spike = requireNonNegative(FROM, 'reading.spike', reading.spike ?? 0);
  if (reading.forceRate !== undefined) requireNonNegative(FROM, 'reading.forceRate', reading.forceRate);
  if (reading.frequency !== undefined) requirePositive(FROM, 'reading.frequency', reading.frequency);
  const difference = pointer - recorded;
  // readings are decimal: a difference on the limit is allowed
  const allowed = Math.max(ALLOWED * recorded, division / 2) * (1 + 1e-9);
  const cause = causeOf(difference, allowed, before, spike, reading);
  const relativeDifference = difference / recorded;
  const share = Math.abs(relativeDifference);
  return {
    difference,
    relativeDifference,
    allowed,
    cause,
    findings:
      cause === 'agree'
        ? []
        : [
            finding(
              difference > 0 ? 'pointer-above-record' : 'pointer-below-record',
              { pointer, recorded, share: 100 * share, cause: sentences[cause] },
              share > FAULT ? { severity: 'fault' } : {},
            ),
          ],
  };
}
