import {
  InputError,
  requireFinite,
  requireList,
  requireNonNegative,
  requireObject,
  requireOptions,
  requirePositive,
  requireText,
  requireWhole,
} from '../../base/index.js';
import type { GroupConsistency, InterlaboratoryStudy } from '../../statistics/index.js';
import type { Figure } from './Figure.js';
import { figure } from './figureStyle.js';
import { plane } from './plane.js';
import { figureOptions, presentation, type FigureOptions } from '../words/presentation.js';
import { largest } from './thinned.js';

/** Checks that a study is one: an outcome without precision, or anything else, cannot be drawn. */
function requireStudy(from: string, study: InterlaboratoryStudy): InterlaboratoryStudy {
  const given = requireObject(from, 'study', study);
  if (!('groups' in given)) throw new InputError(from, 'study', 'wrong-type', 'must be that of interlaboratoryStudy', study);
  const { ok = true } = given as { readonly ok?: unknown };
  if (ok !== true) throw new InputError(from, 'study.ok', 'wrong-type', 'must be true, as of a study that has a result', ok);
  requireList(from, 'study.groups', study.groups, 3).forEach((group: GroupConsistency, i) => {
    const path = `study.groups[${i}]`;
    requireObject(from, path, group);
    requireText(from, `${path}.name`, group.name);
    requireWhole(from, `${path}.n`, group.n, 1);
    for (const name of ['mean', 'h'] as const) requireFinite(from, `${path}.${name}`, group[name]);
    for (const name of ['standardDeviation', 'k', 'criticalK'] as const)
      if (group[name] !== undefined) requireNonNegative(from, `${path}.${name}`, group[name]);
  });
  requireFinite(from, 'study.mean', study.mean);
  for (const name of ['deviationOfMeans', 'betweenDeviation', 'repeatability', 'reproducibility'] as const)
    requireNonNegative(from, `study.${name}`, study[name]);
  for (const name of ['repeatabilityLimit', 'reproducibilityLimit', 'criticalH', 'alpha'] as const)
    requirePositive(from, `study.${name}`, study[name]);
  for (const name of ['cochran', 'grubbs'] as const) {
    const test = requireObject(from, `study.${name}`, study[name]) as InterlaboratoryStudy[typeof name];
    for (const number of ['statistic', 'criticalValue5', 'criticalValue1'] as const)
      requireNonNegative(from, `study.${name}.${number}`, test[number]);
  }
  return study;
}

/**
 * The groups of a study beside each other, as plain Vega-Lite JSON: how far each mean is off, and how much each group scatters.
 *
 * @remarks
 * A plane of Mandel's two statistics, in the spirit of Youden's plot: to the side of the dashed lines a group is off the mean of all,
 * which is its own error (frame, length, unit); above them it scatters more than the others, which is its handling. A group with a
 * single result has no scatter and stands on the axis. Where groups are of unequal size the line across is that of the largest.
 *
 * @param study - A result of `interlaboratoryStudy`.
 * @param options - Language, units, ground.
 * @returns The figure; `testpiece/render` draws it.
 * @throws {@link InputError} `missing`, `wrong-type`, `too-few`, `not-finite`, `not-positive`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * const groups = [[41.0, 41.4], [42.0, 41.2], [40.7, 41.5]].map((values) => ({ values }));
 * studyFigure(required(interlaboratoryStudy(groups))).title; // => 'Groups beside each other'
 * ```
 *
 * @see ASTM E691, consistency statistics h and k; Youden (1959), Graphical diagnosis of interlaboratory test results. Checked in `test/report/studyFigure.test.ts`.
 */
export function studyFigure(study: InterlaboratoryStudy, options: FigureOptions = {}): Figure {
  const { groups, criticalH, alpha } = requireStudy('studyFigure', study);
  requireOptions('studyFigure', options, figureOptions);
  const show = presentation('studyFigure', options);
  const { say, number, colours } = show;
  const biggest = groups.reduce((best, one) => (one.n > best.n ? one : best));
  const criticalK = biggest.criticalK ?? 0;
  const width = 1.15 * Math.max(criticalH, largest(groups.map(({ h }) => Math.abs(h))));
  const height = 1.15 * Math.max(criticalK, largest(groups.map(({ k = 0 }) => k)));
  const { path, points } = plane(
    show,
    { title: say('Mean off the mean of all, h'), from: -width, to: width },
    { title: say('Scatter over the common scatter, k'), from: 0, to: height },
  );
  const limit = (...ends: readonly (readonly [number, number])[]) =>
    path(ends, { color: colours.line, strokeWidth: 1, strokeDash: [5, 4] });
  const odd = groups.filter(({ h, k = 0, criticalK: own = Infinity }) => Math.abs(h) > criticalH || k > own).map(({ name }) => name);
  const count = { groups: groups.length, level: number(alpha, 3) };
  return figure(
    show,
    say('Groups beside each other'),
    odd.length > 0
      ? say('{groups} groups by h and k; beyond the limits (level {level}): {names}.', { ...count, names: odd.join(', ') })
      : say('{groups} groups by h and k; none is beyond the limits (level {level}).', count),
    [
      limit([-criticalH, 0], [-criticalH, height]),
      limit([criticalH, 0], [criticalH, height]),
      limit([-width, criticalK], [width, criticalK]),
      ...points(groups.map(({ name, h, k = 0 }) => ({ x: h, y: k, text: name, side: h < 0 ? ('right' as const) : ('left' as const) }))),
    ],
  );
}
