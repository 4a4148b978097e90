import { requireList, requireOptions, requireText } from '../../base/index.js';
import type { InterlaboratoryStudy } from '../../statistics/index.js';
import { findingsList } from './findingsList.js';
import { html } from './html.js';
import { htmlPage } from './htmlPage.js';
import { requirePaper, type Paper } from './Paper.js';
import { headingOf, inventedBox, labelled, outside, pictureOf, sectionOf, tableOf } from './pageParts.js';
import { presentation, presentationOptions, type PresentationOptions } from '../words/presentation.js';
import { studyFigure } from '../figures/studyFigure.js';

/** Options of {@link renderStudy}. */
export interface RenderStudyOptions extends PresentationOptions {
  /** What was studied, for the heading: a property, a material, a class. */
  readonly identity?: string | undefined;
  /** Unit of the values, as it is to be written; they are not converted. */
  readonly unit?: string | undefined;
  /** Drawing of `studyFigure` as SVG, as `drawFigure` of `testpiece/render` makes it. */
  readonly drawing?: string | undefined;
  /** True where the values are invented: the page says so. */
  readonly invented?: boolean | undefined;
  /** Sheet that the page is printed on; default `A4`. */
  readonly paper?: Paper | undefined;
}

/**
 * A study of several laboratories, or of a class in groups, as one page of HTML: complete in itself, no script, no address outside.
 *
 * @remarks
 * Precision first, then the groups by $h$ and $k$ with their limits, Cochran's and Grubbs's tests, and findings. Groups that stand out are named and stay in.
 * Text from outside is escaped; the drawing is put in as it is and must come from `testpiece/render`.
 *
 * @param study - A result of `interlaboratoryStudy`.
 * @param options - What was studied, unit, drawing of the groups, whether it is invented; language; paper.
 * @returns The page.
 * @throws {@link InputError} those of `studyFigure`; `unknown-option`, `out-of-range`.
 *
 * @example
 * ```ts
 * const groups = [[41.0, 41.4], [42.0, 41.2], [40.7, 41.5]].map((values) => ({ values }));
 * renderStudy(required(interlaboratoryStudy(groups)), { identity: 'A <class>', unit: '%' }).includes('A &lt;class&gt;'); // => true
 * ```
 *
 * @see ISO 5725-2; ASTM E691. Checked in `test/report/otherPages.test.ts`.
 */
export function renderStudy(study: InterlaboratoryStudy, options: RenderStudyOptions = {}): string {
  const from = 'renderStudy';
  requireOptions(from, options, ['identity', 'unit', 'drawing', 'invented', 'paper', ...presentationOptions]);
  if (options.identity !== undefined) requireText(from, 'options.identity', options.identity);
  for (const name of ['unit', 'drawing'] as const) if (options[name] !== undefined) requireText(from, `options.${name}`, options[name]);
  const picture = studyFigure(study, { language: options.language, units: options.units });
  study.groups.forEach(({ name }, i) => requireText(from, `study.groups[${i}].name`, name));
  for (const name of ['cochran', 'grubbs'] as const) requireText(from, `study.${name}.group`, study[name].group);
  requireList(from, 'study.findings', study.findings, 0);
  const paper = requirePaper(from, options.paper);
  const show = presentation(from, options);
  const { say, number, percent, unitAfter } = show;
  const { identity, unit = '', drawing } = options;
  const { groups, cochran, grubbs } = study;
  const value = (x: number, figures: number): string => `${number(x, figures)}${unitAfter(unit)}`;
  const heading = say('Groups beside each other');
  return htmlPage(
    identity === undefined ? heading : show.labelled(heading, identity),
    html`<h1>${headingOf(heading, identity, show)}</h1>
      <p class="lead">${say('How precisely the same is found: within a group, and by any group.')}</p>
      ${inventedBox(options.invented, show, say('No real test stands behind these numbers.'))}
      <h2>${say('Results')}</h2>
      ${labelled([
        [say('Mean of all results'), value(study.mean, 4)],
        [say('Repeatability standard deviation s_r'), value(study.repeatability, 3)],
        [say('Standard deviation between groups s_L'), value(study.betweenDeviation, 3)],
        [say('Reproducibility standard deviation s_R'), value(study.reproducibility, 3)],
        [
          say('Repeatability limit r'),
          `${value(study.repeatabilityLimit, 3)} – ${say('two results of one group differ by less in 95 % of cases')}`,
        ],
        [say('Reproducibility limit R'), `${value(study.reproducibilityLimit, 3)} – ${say('the same for two groups')}`],
        [
          say('Largest scatter, by Cochran'),
          say('{group}: C = {statistic}; by chance above {limit5} in 5 %, above {limit1} in 1 % of studies.', {
            group: cochran.group,
            statistic: number(cochran.statistic, 3),
            limit5: number(cochran.criticalValue5, 3),
            limit1: number(cochran.criticalValue1, 3),
          }),
        ],
        [
          say('Mean farthest off, by Grubbs'),
          say('{group}: G = {statistic}; by chance above {limit5} in 5 %, above {limit1} in 1 % of studies.', {
            group: grubbs.group,
            statistic: number(grubbs.statistic, 3),
            limit5: number(grubbs.criticalValue5, 3),
            limit1: number(grubbs.criticalValue1, 3),
          }),
        ],
      ])}
      <h2>${say('Findings')}</h2>
      ${findingsList(study.findings, show)}
      ${sectionOf(say('Figures'), drawing === undefined ? [] : [pictureOf(picture, drawing, 'study')])}
      ${tableOf({
        heading: say('Groups'),
        caption: say('h: how far the mean of a group is off; k: its scatter over the common one; limits at a level of {level}.', {
          level: percent(study.alpha, 2),
        }),
        columns: [say('Group'), 'n', say('Mean'), 's', 'h', say('Limit of h'), 'k', say('Limit of k')],
        kinds: [undefined, ...Array.from({ length: 7 }, () => 'number' as const)],
        rows: groups.map(({ name, n, mean, standardDeviation: s, h, k, criticalK }) => [
          outside(name),
          String(n),
          value(mean, 4),
          s === undefined ? '' : number(s, 3),
          number(h, 3),
          `±\u00a0${number(study.criticalH, 3)}`,
          k === undefined ? '' : number(k, 3),
          criticalK === undefined ? '' : number(criticalK, 3),
        ]),
      })}`,
    show.language,
    paper,
  );
}
