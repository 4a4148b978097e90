import { requireOptions, requireText, type Finding } from '../../base/index.js';
import type { Phrase } from '../../languages/index.js';
import type { TestPlan } from '../../planning/index.js';
import { findingsList } from './findingsList.js';
import { html, type Html } from './html.js';
import { htmlPage } from './htmlPage.js';
import { requirePaper, type Paper } from './Paper.js';
import { sectionInWords } from '../words/lineInWords.js';
import { boxed, bullets, headingOf, pictureOf, requireDrawings, sectionOf, tableOf } from './pageParts.js';
import { planFigures, type PlanFigureName } from '../figures/planFigures.js';
import type { PlanRow } from '../words/planRows.js';
import { presentation, presentationOptions, type Presentation, type PresentationOptions } from '../words/presentation.js';
import { planSheet, type PlanSheet } from './planSheet.js';
import { FORCE } from '../words/shownUnit.js';
import { requirePlan } from '../words/requirePlan.js';
import { summarisePlan } from './summarisePlan.js';

/** Options of {@link renderPlan}. */
export interface RenderPlanOptions extends PresentationOptions {
  /** Drawings of `planFigures` as SVG, by name, as `drawFigures` of `testpiece/render` makes them; figures without one are left out. */
  readonly drawings?: Partial<Record<PlanFigureName, string>> | undefined;
  /** What is to be tested, for the heading. */
  readonly identity?: string | undefined;
  /** True where the plan is of an invented frame or piece: the page says so. */
  readonly invented?: boolean | undefined;
  /** Sheet that the page is printed on; default `A4`. */
  readonly paper?: Paper | undefined;
}

const titles: Readonly<Record<TestPlan['planOf'], Phrase>> = {
  tension: 'Plan of a tension test',
  brinell: 'Plan of a Brinell test',
  shear: 'Plan of a shear test',
  bending: 'Plan of a bending test',
  compression: 'Plan of a compression test',
  cupping: 'Plan of a cupping test',
};

function planTable(rows: readonly PlanRow[], caption: string): Html {
  const parts = [...new Set(rows.map(({ part }) => part))];
  const bodies = parts.map(
    (part) =>
      html`<tbody>
        <tr>
          <th scope="rowgroup" colspan="3"><strong>${part}</strong></th>
        </tr>
        ${rows
          .filter((one) => one.part === part)
          .map(
            ({ name, text, unit }) =>
              html`<tr>
                <th scope="row">${name}</th>
                <td class="number">${text}</td>
                <td class="unit">${unit}</td>
              </tr>`,
          )}
      </tbody>`,
  );
  return boxed(
    caption,
    html`<table>
      <caption>
        ${caption}
      </caption>
      ${bodies}
    </table>`,
  );
}

/** The pace sheet, with room to write down what was read, and the speeds. */
const pacePart = ({ pace, speeds }: PlanSheet, { say }: Presentation): Html[] =>
  pace === undefined
    ? []
    : [
        tableOf({
          ...pace,
          columns: [...pace.columns, say('read')],
          kinds: [...(pace.kinds ?? []), 'blank'],
          rows: pace.rows.map((row) => [...row, '']),
        }),
        bullets(speeds),
      ];

/** Findings under their heading; nothing where there are none, unless that is to be said. */
const findingsPart = (findings: readonly Finding[], show: Presentation, none: 'nothing' | 'even none' = 'nothing'): Html[] =>
  findings.length === 0 && none === 'nothing' ? [] : [html`<h2>${show.say('Findings')}</h2>`, findingsList(findings, show)];

/** Drawings with their words. */
function drawn(plan: TestPlan, drawings: NonNullable<RenderPlanOptions['drawings']>, options: PresentationOptions): Html[] {
  return Object.entries(planFigures(plan, options)).flatMap(([name, one]) => {
    const svg = drawings[name as PlanFigureName];
    return svg === undefined ? [] : [pictureOf(one, svg, name)];
  });
}

/**
 * A plan as one page of HTML to print and take to the frame: complete in itself, no script, no address outside.
 *
 * @remarks
 * Faults first, then the pace sheet with room to write, what to do where the piece does not give way, the other findings, the plan's numbers, what the
 * frame can answer, cautions. Text from outside is escaped; the drawings are put in as they are and must come from `testpiece/render`.
 *
 * @param plan - A plan of any test.
 * @param options - Drawings of the figures, what is to be tested, whether it is invented; language; units; paper.
 * @returns The page.
 * @throws {@link InputError} `missing`, `wrong-type`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * const plan = planTension({ family: 'brass', section: round({ diameter: 5 }), frame: { capacity: 25000 } });
 * renderPlan(plan, { identity: 'bar <3>' }).includes('bar &lt;3&gt;'); // => true
 * ```
 *
 * @see Common practice. Checked in `test/report/plan.test.ts`.
 */
export function renderPlan(plan: TestPlan, options: RenderPlanOptions = {}): string {
  const from = 'renderPlan';
  requirePlan(from, plan);
  requireOptions(from, options, ['drawings', 'identity', 'invented', 'paper', ...presentationOptions]);
  const { drawings = {}, identity, invented, language, units } = options;
  requireOptions(from, drawings, ['piece', 'pace'], 'drawings');
  requireDrawings(from, 'drawings', drawings);
  if (options.identity !== undefined) requireText(from, 'options.identity', options.identity);
  const paper = requirePaper(from, options.paper);
  const show = presentation(from, options);
  const { say, value } = show;
  const sheet = planSheet(plan, { language, units });
  const faults = plan.findings.filter(({ severity }) => severity === 'fault');
  const others = plan.findings.filter(({ severity }) => severity !== 'fault');
  const heading = say(titles[plan.planOf]);
  return htmlPage(
    identity === undefined ? heading : show.labelled(heading, identity),
    html`<h1>${headingOf(heading, identity, show)}</h1>
      <p class="lead">
        ${'section' in plan ? say('Section {section}.', { section: sectionInWords(plan.section, show) }) : ''}
        ${say('Frame of {capacity}.', { capacity: value(plan.frame.capacity, FORCE, 4) })}
      </p>
      ${
        invented === true
          ? html`<p class="invented">
              <strong>${say('Invented example.')}</strong> ${say('No real frame or piece stands behind these numbers.')}
            </p>`
          : []
      }
      ${findingsPart(faults, show)} ${pacePart(sheet, show)} ${drawn(plan, drawings, { language, units })}
      <h2>${say('If the frame reaches its limit first')}</h2>
      ${bullets(sheet.ifItStalls)} ${faults.length > 0 && others.length === 0 ? [] : findingsPart(others, show, 'even none')}
      <h2>${say('The plan in numbers')}</h2>
      ${planTable(summarisePlan(plan, { language, units }), say('Quantities of the plan, part by part.'))}
      ${sheet.answers === undefined ? [] : tableOf(sheet.answers)} ${sectionOf(say('Cautions'), [bullets(sheet.cautions)])}`,
    show.language,
    paper,
  );
}
