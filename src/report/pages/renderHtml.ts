import { requireBoolean, requireList, requireObject, requireOptions, requireText } from '../../base/index.js';
import type { Phrase } from '../../languages/index.js';
import type { CurveResult, ReplicatesResult, TestResult } from '../../methods/index.js';
import { requireDecisions } from './decisionsPart.js';
import { html } from './html.js';
import { htmlPage } from './htmlPage.js';
import { requirePaper } from './Paper.js';
import { headingOf, requireDrawings } from './pageParts.js';
import { pageOf } from './pageOf.js';
import { presentation, presentationOptions } from '../words/presentation.js';
import type { FurtherFigure, RenderOptions } from './RenderOptions.js';
import { repeated, replicatesPage } from './replicatesPage.js';
import { further, testPage } from './testPage.js';

const optionNames = ['drawings', 'furtherFigures', 'decisions', 'whatIf', 'paper', 'rounding', 'half', ...presentationOptions];

function requireFurther(from: string, given: readonly FurtherFigure[] | undefined): void {
  requireList(from, 'options.furtherFigures', given ?? [], 0).forEach((one, i) => {
    const path = `options.furtherFigures[${i}]`;
    requireOptions(from, one, ['figure', 'drawing'], path);
    requireObject(from, `${path}.figure`, one.figure);
    for (const name of ['title', 'description'] as const) requireText(from, `${path}.figure.${name}`, one.figure[name]);
    requireText(from, `${path}.drawing`, one.drawing);
  });
}

/**
 * A report as one page of HTML, complete in itself: no script, no address outside.
 *
 * @remarks
 * Results with units, uncertainty, rules and stamps; decisions by their rule; how each value was found; findings with their remedy; cautions;
 * figures; budgets; what other evaluations would give ({@link whatIf}); what was done to the record; what reproduces it. Of replicates: each property
 * over the tests. Prints on A4 or Letter. Text from outside (identity, remarks, messages) is escaped; the drawings are put in as they are
 * and must come from `testpiece/render`.
 *
 * @param result - A result of any `analyse` function, also of `analyseReplicates`; of `analyseCurve`, what needs the piece is left out.
 * @param options - Drawings of the figures (made with the same language and units), further ones, decisions; whose steps of rounding, and where a half goes; language; units; paper.
 * @returns The page.
 * @throws {@link InputError} `wrong-type`, `missing`, `out-of-range`, `unknown-option`; those of `decide`.
 *
 * @example
 * ```ts
 * const record = { force: [0, 1000, 2000, 3000, 3100, 2500], strain: [0, 0.001, 0.002, 0.003, 0.05, 0.06] };
 * const result = analyseTension(record, { section: round({ diameter: 8 }), gaugeLength: 40 }, { test: { identity: 'bar <1>' } });
 * renderHtml(result).includes('bar &lt;1&gt;'); // => true
 * ```
 *
 * @see ISO 6892-1:2019, test report. Checked in `test/report/report.test.ts`.
 */
export function renderHtml(result: TestResult | CurveResult | ReplicatesResult, options: RenderOptions = {}): string {
  const from = 'renderHtml';
  const own = requireObject(from, 'result', result) as typeof result;
  const replicates = own.method === 'replicates';
  const title: Phrase = replicates ? 'Replicate tests' : pageOf(from, own).title;
  requireOptions(from, options, optionNames);
  if (options.drawings !== undefined) requireDrawings(from, 'options.drawings', options.drawings);
  requireFurther(from, options.furtherFigures);
  requireDecisions(from, options.decisions);
  requireBoolean(from, 'options.whatIf', options.whatIf ?? true);
  const paper = requirePaper(from, options.paper);
  const show = presentation(from, options);
  const { say } = show;
  const heading = say(title);
  // what the page is of: a piece, or the method that was repeated
  const of = replicates ? say(repeated(own).title) : own.test.identity;
  const lead = replicates
    ? say('Each property over several tests, and what stands in doubt when they are taken together.')
    : say('Properties from the record, how each was found, and what stands in doubt.');
  return htmlPage(
    of === undefined ? heading : show.labelled(heading, of),
    html`<h1>${headingOf(heading, of, show)}</h1>
      <p class="lead">${lead}</p>
      ${replicates ? replicatesPage(own, options.decisions ?? [], further(options.furtherFigures ?? []), show) : testPage(own, options, show)}`,
    show.language,
    paper,
  );
}
