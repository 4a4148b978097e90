import {
  failure,
  finding,
  InputError,
  requireColumn,
  requireObject,
  requireOptions,
  requireProbability,
  requireText,
  success,
  type Outcome,
} from '../base/index.js';
import { mean, sampleDeviation } from '../numeric/index.js';
import { criticalH, criticalK, criticalShare } from './consistencyLimits.js';
import type {
  CochranTest,
  GroupConsistency,
  GroupMeanTest,
  InterlaboratoryStudy,
  StudyGroup,
  StudyOptions,
  StudyReason,
  StudyVerdict,
} from './GroupStudy.js';
import { grubbsCriticalValue } from './grubbsCriticalValue.js';

/** 1.96 √2, as ISO 5725 and ASTM E691 round it. */
const LIMIT = 2.8;
const FROM = 'interlaboratoryStudy';

interface Cell {
  readonly name: string;
  readonly n: number;
  readonly mean: number;
  readonly s: number;
}

function requireCell(group: StudyGroup, i: number): Cell {
  const path = `groups[${i}]`;
  requireObject(FROM, path, group);
  requireOptions(FROM, group, ['name', 'values'], path);
  const name = requireText(FROM, `${path}.name`, group.name ?? String(i + 1));
  const values = requireColumn(FROM, `${path}.values`, group.values);
  return { name, n: values.length, mean: mean(values), s: sampleDeviation(values) };
}

const verdictOf = ({ statistic, criticalValue5, criticalValue1 }: Omit<CochranTest, 'verdict'>): StudyVerdict =>
  statistic > criticalValue1 ? 'outlier' : statistic > criticalValue5 ? 'straggler' : 'none';

/** The limit that a verdict rests on. */
const limitOf = ({ verdict, criticalValue5, criticalValue1 }: CochranTest | GroupMeanTest): number =>
  verdict === 'outlier' ? criticalValue1 : criticalValue5;

/** Largest share of all squares against its own limit. */
function cochranOf(cells: readonly Cell[], all: number, squares: number): CochranTest {
  const repeated = cells.filter(({ n }) => n > 1);
  const tests = repeated.map(({ name, n, s }) => {
    const limit = (alpha: number) => criticalShare(n - 1, all, repeated.length, alpha);
    return { group: name, statistic: ((n - 1) * s ** 2) / squares, criticalValue5: limit(0.05), criticalValue1: limit(0.01) };
  });
  const worst = tests.reduce((best, one) => (one.statistic / one.criticalValue5 > best.statistic / best.criticalValue5 ? one : best));
  return { ...worst, verdict: verdictOf(worst) };
}

/** The mean that is farthest off, either way: Grubbs's statistic is the largest h. */
function grubbsOf(groups: readonly GroupConsistency[]): GroupMeanTest {
  const { name, h } = groups.reduce((best, one) => (Math.abs(one.h) > Math.abs(best.h) ? one : best));
  const limit = (alpha: number) => grubbsCriticalValue({ n: groups.length, alpha });
  const test = { group: name, statistic: Math.abs(h), criticalValue5: limit(0.05), criticalValue1: limit(0.01) };
  return { ...test, verdict: verdictOf(test) };
}

/**
 * Precision of a test from several groups that tested the same material: laboratories, or the groups of a class.
 *
 * $$ s_r^2 = \frac{\sum (n_i - 1) s_i^2}{\sum (n_i - 1)}, \quad s_L^2 = \frac{1}{\bar{\bar n}}\left( \frac{\sum n_i (\bar x_i - \bar x)^2}{p - 1}
 * - s_r^2 \right) \ge 0, \quad s_R^2 = s_r^2 + s_L^2, \quad \bar{\bar n} = \frac{1}{p-1}\left( \sum n_i - \frac{\sum n_i^2}{\sum n_i} \right) $$
 *
 * $$ h_i = \frac{\bar x_i - \bar{\bar x}}{s_{\bar x}}, \qquad k_i = \frac{s_i}{s_r}, \qquad C = \frac{s_{max}^2}{\sum s_i^2}, \qquad G = \max |h_i|, \qquad r = 2.8\, s_r,\quad R = 2.8\, s_R $$
 *
 * @remarks
 * With equal groups these are the formulas of ASTM E691; groups of unequal size go by ISO 5725-2. h counts from the plain mean of the
 * group means. The limits of k and C of unequal groups follow each group's own degrees of freedom ('t Lam, 2010). Grubbs's test looks at the means of all
 * groups, once; two that are off to one side may hide each other. The group that it names has no second finding by its h, and a caution where h passes
 * its limit. A group that stands out is named and kept: look for its cause (frame, length, unit, reading) first.
 *
 * @param groups - At least 3 groups for an answer, one of them at least with repeated results.
 * @param options - Level of h and k.
 * @returns Standard deviations, limits, consistency of each group; fails with `too-few-groups`, with `no-repeats` where fewer than two
 * groups have repeated results, or with `no-scatter` where none of them scatters.
 * @throws {@link InputError} `missing`, `wrong-type`, `empty`, `not-finite`, `out-of-range`, `unknown-option`; `ambiguous` where two groups have one name.
 *
 * @example
 * ```ts
 * const study = required(interlaboratoryStudy([{ values: [41.0, 41.4] }, { values: [42.0, 41.2] }, { values: [40.7, 41.5] }]));
 * study.repeatability; // => 0.490
 * study.reproducibility; // => 0.490
 * ```
 *
 * @see ISO 5725-2, basic method for repeatability and reproducibility, tests for outliers; ASTM E691. Checked in `test/handbook/precision.test.ts`.
 */
export function interlaboratoryStudy(
  groups: readonly StudyGroup[],
  options: StudyOptions = {},
): Outcome<InterlaboratoryStudy, StudyReason> {
  const given: unknown = groups;
  if (!Array.isArray(given))
    throw new InputError(FROM, 'groups', given === undefined ? 'missing' : 'wrong-type', 'must be an array', given);
  const cells = groups.map(requireCell);
  const seen = new Set<string>();
  cells.forEach(({ name }, i) => {
    if (seen.has(name))
      throw new InputError(
        FROM,
        `groups[${i}].name`,
        'ambiguous',
        'must be that of one group: put its values together, or name both',
        name,
      );
    seen.add(name);
  });
  requireOptions(FROM, options, ['alpha']);
  const alpha = requireProbability(FROM, 'options.alpha', options.alpha ?? 0.005);
  const p = cells.length;
  if (p < 3) return failure('too-few-groups', `${p} groups: precision needs 3 at least.`);
  if (cells.filter(({ n }) => n > 1).length < 2) return failure('no-repeats', 'Fewer than two groups have repeated results.');
  const sum = (of: (cell: Cell) => number) => cells.reduce((total, cell) => total + of(cell), 0);
  const all = sum(({ n }) => n - 1);
  const squares = sum(({ n, s }) => (n - 1) * s ** 2);
  const means = Float64Array.from(cells, (cell) => cell.mean);
  const deviationOfMeans = sampleDeviation(means);
  if (squares === 0) return failure('no-scatter', 'The results of no group scatter.');

  const repeatability = Math.sqrt(squares / all);
  const results = sum(({ n }) => n);
  const grand = sum((cell) => cell.n * cell.mean) / results;
  const usualSize = (results - sum(({ n }) => n ** 2) / results) / (p - 1);
  const between = sum((cell) => cell.n * (cell.mean - grand) ** 2) / (p - 1);
  const betweenDeviation = Math.sqrt(Math.max(0, (between - repeatability ** 2) / usualSize));
  const reproducibility = Math.hypot(repeatability, betweenDeviation);

  const centre = mean(means);
  const hLimit = criticalH(p, alpha);
  const consistency = cells.map(({ name, n, mean: own, s }): GroupConsistency => {
    const h = deviationOfMeans > 0 ? (own - centre) / deviationOfMeans : 0;
    if (n === 1) return { name, n, mean: own, h };
    return { name, n, mean: own, standardDeviation: s, h, k: s / repeatability, criticalK: criticalK(n - 1, all, alpha) };
  });
  const cochran = cochranOf(cells, all, squares);
  const grubbs = grubbsOf(consistency);
  // G is |h| again: one fact, one finding
  const byGrubbs = (name: string) => grubbs.verdict !== 'none' && grubbs.group === name;
  const findings = consistency.flatMap(({ name, h, k = 0, criticalK: kLimit = Infinity }) => [
    ...(Math.abs(h) > hLimit && !byGrubbs(name) ? [finding('group-off-the-mean', { group: name, h, limit: hLimit })] : []),
    ...(k > kLimit ? [finding('group-scatters', { group: name, k, limit: kLimit })] : []),
  ]);
  const severity = (caution: boolean) => ({ severity: caution ? 'caution' : 'note' }) as const;
  if (cochran.verdict !== 'none')
    findings.push(
      finding(
        'group-variance-outlying',
        { group: cochran.group, share: cochran.statistic, limit: limitOf(cochran), verdict: cochran.verdict },
        severity(cochran.verdict === 'outlier'),
      ),
    );
  if (grubbs.verdict !== 'none')
    findings.push(
      finding(
        'group-mean-outlying',
        { group: grubbs.group, statistic: grubbs.statistic, limit: limitOf(grubbs), verdict: grubbs.verdict },
        severity(grubbs.verdict === 'outlier' || grubbs.statistic > hLimit),
      ),
    );
  return success({
    groups: consistency,
    mean: grand,
    deviationOfMeans,
    betweenDeviation,
    repeatability,
    reproducibility,
    repeatabilityLimit: LIMIT * repeatability,
    reproducibilityLimit: LIMIT * reproducibility,
    criticalH: hLimit,
    alpha,
    cochran,
    grubbs,
    findings,
  });
}
