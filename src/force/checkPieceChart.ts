import { finding, requireColumn, requireOptions, requireWhole, type Finding } from '../base/index.js';
import { mean } from '../numeric/index.js';

/** Options of {@link checkPieceChart}. */
export interface ChartOptions {
  /** How many of the first checks fix centre and limits, two at least; default all. */
  readonly baseline?: number | undefined;
  /** Checks in a row on one side of the centre that are a finding; default 7. */
  readonly runLength?: number | undefined;
  /** Checks in a row that rise, or fall, that are a finding; default 7. */
  readonly trendLength?: number | undefined;
}

/** Chart of individuals and moving ranges. */
export interface CheckPieceChart {
  /** Centre: mean of the baseline, in the unit of the values. */
  readonly centre: number;
  /** Lower limit, likewise. */
  readonly lower: number;
  /** Upper limit, likewise. */
  readonly upper: number;
  /** Mean moving range of the baseline, likewise. */
  readonly meanRange: number;
  /** Upper limit of the moving range, likewise. */
  readonly rangeLimit: number;
  /** Moving range of each check with the one before it (so one fewer), likewise. */
  readonly ranges: Float64Array;
  /** Checks beyond the limits. */
  readonly outside: readonly number[];
  /** What the rules find; `range` holds first and last check. */
  readonly findings: readonly Finding[];
}

const FROM = 'checkPieceChart';
/** Mean range of two normal values over their standard deviation, and D4 for two (tables of control chart factors). */
const D2 = 1.128;
const D4 = 3.267;
const PROVISIONAL = 20;

/** Stretches of at least so many neighbours that agree in a sign, as [first, last, sign]. */
function stretches(signs: readonly number[], least: number): (readonly [number, number, number])[] {
  const found: (readonly [number, number, number])[] = [];
  for (let first = 0; first < signs.length;) {
    let last = first;
    while (last + 1 < signs.length && signs[last + 1] === signs[first]) last += 1;
    if (signs[first] !== 0 && last - first + 1 >= least) found.push([first, last, signs[first]!]);
    first = last + 1;
  }
  return found;
}

/**
 * Control chart of a check piece that is pulled or read again and again between calibrations: individuals and moving ranges.
 *
 * $$ \bar x \pm \frac{3}{1.128} \overline{MR} = \bar x \pm 2.66\, \overline{MR}, \qquad MR \le 3.267\, \overline{MR} $$
 *
 * @remarks
 * Rules: a check beyond a limit; a moving range beyond its limit; seven in a row on one side of the centre; seven in a row that rise or fall
 * steadily. The limits say what this frame does of itself, not what is allowed. With `baseline` the first checks alone fix them, so that a
 * later drift does not widen them. Elastic check pieces serve for ever; broken ones must come from one bar.
 *
 * @param values - Readings in order of time, in any one unit, two at least.
 * @param options - `baseline`, `runLength`, `trendLength`: whole numbers.
 * @returns Centre, limits, ranges and findings.
 * @throws {@link InputError} `missing`, `wrong-type`, `empty`, `too-few`, `not-finite`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * const { centre, upper } = checkPieceChart([10, 12, 11, 13]);
 * centre; // => 11.5
 * upper; // => 15.9326
 * ```
 *
 * @see ISO 7870-2, Shewhart control charts (rules from memory); NIST/SEMATECH e-Handbook of Statistical Methods, individuals control charts.
 * Checked in `test/handbook/verification.test.ts`.
 */
export function checkPieceChart(values: ArrayLike<number>, options: ChartOptions = {}): CheckPieceChart {
  requireOptions(FROM, options, ['baseline', 'runLength', 'trendLength']);
  const x = requireColumn(FROM, 'values', values, { least: 2 });
  const n = x.length;
  const whole = (name: keyof ChartOptions, otherwise: number, most: number): number =>
    requireWhole(FROM, `options.${name}`, options[name] ?? otherwise, 2, most);
  const baseline = whole('baseline', n, n);
  const runLength = whole('runLength', 7, 1000);
  const trendLength = whole('trendLength', 7, 1000);
  const ranges = Float64Array.from({ length: n - 1 }, (_, i) => Math.abs(x[i + 1]! - x[i]!));
  const centre = mean(x.subarray(0, baseline));
  const meanRange = mean(ranges.subarray(0, baseline - 1));
  const reach = (3 / D2) * meanRange;
  const [lower, upper, rangeLimit] = [centre - reach, centre + reach, D4 * meanRange];
  // a mean may differ in the last bit from readings that it equals
  const rounding = 1e-12 * x.reduce((most, one) => Math.max(most, Math.abs(one)), 0);
  const outside = [...x.keys()].filter((i) => x[i]! < lower - rounding || x[i]! > upper + rounding);
  const findings: Finding[] = outside.map((i) =>
    finding('check-out-of-limits', { index: i + 1, value: x[i]!, lower, upper }, { range: [i, i] }),
  );
  ranges.forEach((range, i) => {
    if (range > rangeLimit + rounding)
      findings.push(finding('check-jumped', { before: i + 1, index: i + 2, range, limit: rangeLimit }, { range: [i, i + 1] }));
  });
  const sides = [...x].map((one) => (Math.abs(one - centre) <= rounding ? 0 : Math.sign(one - centre)));
  for (const [first, last, sign] of stretches(sides, runLength))
    findings.push(
      finding(
        'check-on-one-side',
        { count: last - first + 1, index: last + 1, side: sign > 0 ? 'above' : 'below' },
        { range: [first, last] },
      ),
    );
  const steps = [...ranges.keys()].map((i) => Math.sign(x[i + 1]! - x[i]!));
  for (const [first, last, sign] of stretches(steps, trendLength - 1))
    findings.push(
      finding(
        'check-trend',
        { count: last - first + 2, index: last + 2, direction: sign > 0 ? 'up' : 'down' },
        { range: [first, last + 1] },
      ),
    );
  if (baseline < PROVISIONAL) findings.push(finding('check-few', { count: baseline }));
  return { centre, lower, upper, meanRange, rangeLimit, ranges, outside, findings };
}
