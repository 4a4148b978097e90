import {
  finding,
  InputError,
  requireColumn,
  requireDay,
  requireList,
  requireOptions,
  requirePositive,
  requireText,
  type Finding,
} from '../base/index.js';
import { betweenPoints } from '../numeric/index.js';

/** Errors of a force channel on one day. */
export interface ForceErrors {
  /** Day, as `2026-03-31`. */
  readonly date: string;
  /** Forces [N], ascending. */
  readonly force: ArrayLike<number>;
  /** Indication error q at each [1]. */
  readonly error: ArrayLike<number>;
}

/** A result that was made with the channel. */
export interface DatedResult {
  /** Name or number of the test. */
  readonly identity: string;
  /** Day, as `2026-03-31`. */
  readonly date: string;
  /** The force that counts in it [N]. */
  readonly force: number;
}

/** Two verifications of one channel, and what was measured between them. */
export interface DriftInput {
  /** The last certificate: as the channel was left. */
  readonly asLeft: ForceErrors;
  /** As it was found now, before anything was adjusted. */
  readonly asFound: ForceErrors;
  /** Results; default none. */
  readonly results?: readonly DatedResult[] | undefined;
  /** Error that is allowed [1]; default 0.01, that of class 1. */
  readonly allowed?: number | undefined;
}

/** What the drift may have done to one result. */
export interface TouchedResult extends DatedResult {
  /** Error as found, at its force [1]; that of the nearest checked force where it lies outside. */
  readonly error: number;
  /** The force as it would be with that error taken out [N]. */
  readonly corrected: number;
}

/** Drift of a force channel. */
export interface ForceDrift {
  /** Forces of the check as found [N]. */
  readonly force: Float64Array;
  /** Error as found less error as left [1]. */
  readonly drift: Float64Array;
  /** The largest of them, either way [1]. */
  readonly largest: number;
  /** Results since the last certificate, up to the day of the check, whose error as found is beyond what is allowed. */
  readonly touched: readonly TouchedResult[];
  /** Doubts. */
  readonly findings: readonly Finding[];
}

const FROM = 'forceDrift';

function requireErrors(path: string, given: ForceErrors) {
  requireOptions(FROM, given, ['date', 'force', 'error'], path);
  const date = requireDay(FROM, `${path}.date`, given.date);
  const force = requireColumn(FROM, `${path}.force`, given.force, { positive: true });
  for (let k = 1; k < force.length; k += 1)
    if (force[k]! <= force[k - 1]!)
      throw new InputError(FROM, `${path}.force[${k}]`, 'not-increasing', 'must be above the one before', force[k]);
  return { date, force, error: requireColumn(FROM, `${path}.error`, given.error, { length: force.length }) };
}

/** Error at a force by straight lines between the checked ones; the nearest beyond them. */
function errorAt({ force, error }: ReturnType<typeof requireErrors>, at: number): number {
  const last = force.length - 1;
  if (at <= force[0]!) return error[0]!;
  return at >= force[last]! ? error[last]! : betweenPoints(force, error, at);
}

/**
 * Drift of a force channel since its last certificate, and the results that it touches.
 *
 * $$ \Delta q(F) = q_{found}(F) - q_{left}(F), \qquad F_{corr} = \frac{F_i}{1 + q_{found}} $$
 *
 * @remarks
 * When the channel moved is unknown, so every result since the certificate is judged by the error as found, the worst that may have applied.
 * The corrected force shows how far a result may be off; it replaces none.
 *
 * @param input - `asLeft`, `asFound` with `date`, `force` [N] above 0 and ascending, `error` [1]; `results` with `identity`, `date`, `force` [N]; `allowed` [1].
 * @returns Drift at each checked force [1], and the results that are touched.
 * @throws {@link InputError} `missing`, `wrong-type`, `empty`, `not-finite`, `not-positive`, `not-increasing`, `unequal-lengths`, `unknown-option`;
 * `out-of-range` where the check as found is older than the certificate.
 *
 * @example
 * ```ts
 * const asLeft = { date: '2025-03-01', force: [5000, 20000], error: [0.002, 0.001] };
 * const asFound = { date: '2026-03-01', force: [5000, 20000], error: [0.006, 0.014] };
 * const { drift, touched } = forceDrift({ asLeft, asFound, results: [{ identity: 'A7', date: '2025-11-20', force: 20000 }] });
 * drift; // => [0.0040, 0.0130]
 * touched[0]?.corrected; // => 19723.9
 * ```
 *
 * @see ISO/IEC 17025, nonconforming work and calibration status (from memory). Checked in `test/force/between.test.ts`.
 */
export function forceDrift(input: DriftInput): ForceDrift {
  requireOptions(FROM, input, ['asLeft', 'asFound', 'results', 'allowed'], 'input');
  const left = requireErrors('input.asLeft', input.asLeft);
  const found = requireErrors('input.asFound', input.asFound);
  if (found.date < left.date)
    throw new InputError(FROM, 'input.asFound.date', 'out-of-range', `must not be before the certificate (${left.date})`, found.date);
  const allowed = requirePositive(FROM, 'input.allowed', input.allowed ?? 0.01);
  const results = requireList(FROM, 'input.results', input.results ?? [], 0).map((one, k): DatedResult => {
    const path = `input.results[${k}]`;
    requireOptions(FROM, one, ['identity', 'date', 'force'], path);
    return {
      identity: requireText(FROM, `${path}.identity`, one.identity),
      date: requireDay(FROM, `${path}.date`, one.date),
      force: requirePositive(FROM, `${path}.force`, one.force),
    };
  });
  const since = results.filter(({ date }) => date >= left.date && date <= found.date);
  const beyond = (error: number): boolean => Math.abs(error) > allowed * (1 + 1e-9);
  const touched = since.flatMap((one): TouchedResult[] => {
    const error = errorAt(found, one.force);
    return beyond(error) ? [{ ...one, error, corrected: one.force / (1 + error) }] : [];
  });
  const drift = found.error.map((error, k) => error - errorAt(left, found.force[k]!));
  const findings: Finding[] = [];
  const worst = found.error.reduce((most, one, k) => (Math.abs(one) > Math.abs(found.error[most]!) ? k : most), 0);
  if (beyond(found.error[worst]!)) {
    const force = found.force[worst]!;
    const before = 100 * errorAt(left, force);
    findings.push(
      finding(
        'force-drifted',
        { error: 100 * found.error[worst]!, force, before, date: left.date, count: touched.length },
        touched.length > 0 ? { severity: 'fault' } : {},
      ),
    );
  }
  const [low, high] = [found.force[0]!, found.force[found.force.length - 1]!];
  for (const { identity, force } of since)
    if (force < low || force > high) findings.push(finding('force-outside-certificate', { identity, force, low, high }));
  return {
    force: Float64Array.from(found.force),
    drift,
    largest: drift.reduce((most, one) => (Math.abs(one) > Math.abs(most) ? one : most), 0),
    touched,
    findings,
  };
}
