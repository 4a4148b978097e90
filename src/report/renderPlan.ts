import { requireOptions, requireText } from '../base/index.js';
import type { Phrase } from '../languages/index.js';
import type { PaceAction, TensionPlan, TestPlan } from '../planning/index.js';
import { findingsList } from './findingsList.js';
import { html, type Html } from './html.js';
import { htmlPage, requirePaper, type Paper } from './htmlPage.js';
import { sectionInWords } from './lineInWords.js';
import { bullets, cautionsPart, outside, pictureOf, tableOf } from './pageParts.js';
import { planFigures, type PlanFigureName } from './planFigures.js';
import { presentation, presentationOptions, type Presentation, type PresentationOptions } from './presentation.js';
import { controlNames, requirePlan, stageNames, summarisePlan, type PlanRow } from './summarisePlan.js';

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
};

const actions: Readonly<Record<PaceAction, Phrase>> = {
  start: 'start, slack taken up',
  read: 'read the dial',
  'slow-down': 'change to the speed for yield',
  'hold-speed': 'keep this speed through yield',
  'watch-yield': 'watch: yield may begin from here',
  'speed-up': 'yield over: change to the speed after it',
  maximum: 'maximum to be expected; read the pointer after fracture',
};

function planTable(rows: readonly PlanRow[]): Html[] {
  const parts = [...new Set(rows.map(({ part }) => part))];
  return parts.map(
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
}

/** Rows to go by while loading, with room to write down what was read. */
function paceTable(plan: TensionPlan, show: Presentation): Html {
  const { say, number, unit, term } = show;
  const oil = plan.force.pressure !== undefined;
  const rows = plan.pace.map(({ time, stage, pressure, force, stress, travel, action }) => {
    const cells = [
      number(time, 3),
      ...(oil && pressure !== undefined ? [number(10 * pressure * unit('bar').factor, 3)] : []),
      number((force / 1000) * unit('kN').factor, 3),
      number(stress * unit('MPa').factor, 3),
      number(travel * unit('mm').factor, 3),
    ];
    return [...cells, say(stageNames[stage]), say(actions[action]), ''];
  });
  const columns = [
    't / s',
    ...(oil ? [`p / ${unit('bar').unit}`] : []),
    `F / ${unit('kN').unit}`,
    `R / ${unit('MPa').unit}`,
    `${say('travel')} / ${unit('mm').unit}`,
    say('part'),
    say('do'),
    say('read'),
  ];
  return tableOf({
    heading: say('Pace sheet'),
    caption: [
      say('For the middle of the expected range, {control}: a guide to the hand, no prediction.', {
        control: term(controlNames[plan.control]),
      }),
      say('Time counts from the first force; move evenly, and do not stop through yield.'),
    ].join(' '),
    columns,
    kinds: [...columns.slice(0, -3).map(() => 'number' as const), undefined, undefined, 'blank'],
    rows,
  });
}

function speedLine(plan: TensionPlan, { say, number, value }: Presentation): Html {
  const strokes = plan.frame.drive?.kind === 'pump';
  const sentences = plan.stages.map(({ stage, speed, drivePerMinute }) => {
    const known = { stage: say(stageNames[stage]), speed: value(60 * speed, 'mm/min', 3) };
    if (drivePerMinute === undefined) return html`<li>${say('{stage}: {speed}', known)}</li>`;
    const drive = { ...known, count: number(drivePerMinute, 2) };
    return html`<li>
      ${strokes ? say('{stage}: {speed}, {count} strokes a minute', drive) : say('{stage}: {speed}, {count} turns a minute', drive)}
    </li>`;
  });
  return html`<ul>
    ${sentences}
  </ul>`;
}

function answersTable({ answers }: TensionPlan, { say, term }: Presentation): Html {
  return tableOf({
    heading: say('What this frame can answer'),
    caption: say('How far each property can be trusted, and why.'),
    columns: [say('Symbol'), say('Trust'), say('Why')],
    rows: answers.map(({ symbols, verdict, why }) => [symbols.join(', '), term(verdict), term(why)]),
  });
}

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
 * Pace sheet first, with room to write; then the plan's numbers, what the frame can answer, what to do where the piece does not give way, findings,
 * cautions. Text from outside is escaped; the drawings are put in as they are and must come from `testpiece/render`.
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
  if (options.identity !== undefined) requireText(from, 'options.identity', options.identity);
  const paper = requirePaper(from, options.paper);
  const show = presentation(from, options);
  const { say, term, value } = show;
  const heading = say(titles[plan.planOf]);
  return htmlPage(
    identity === undefined ? heading : `${heading}: ${identity}`,
    html`<h1>${heading}${identity === undefined ? [] : html`: ${outside(identity)}`}</h1>
      <p class="lead">
        ${'section' in plan ? say('Section {section}.', { section: sectionInWords(plan.section, show) }) : ''}
        ${say('Frame of {capacity}.', { capacity: value(plan.frame.capacity / 1000, 'kN', 4) })}
      </p>
      ${
        invented === true
          ? html`<p class="invented">
              <strong>${say('Invented example.')}</strong> ${say('No real frame or piece stands behind these numbers.')}
            </p>`
          : []
      }
      ${plan.planOf === 'tension' ? [paceTable(plan, show), speedLine(plan, show)] : []} ${drawn(plan, drawings, { language, units })}
      <h2>${say('If it does not give way')}</h2>
      ${bullets(plan.ifItStalls.map(term))}
      <h2>${say('Findings')}</h2>
      ${findingsList(plan.findings, show)}
      <h2>${say('The plan in numbers')}</h2>
      <table>
        <caption>
          ${say('Quantities of the plan, part by part.')}
        </caption>
        ${planTable(summarisePlan(plan, { language, units }))}
      </table>
      ${plan.planOf === 'tension' ? answersTable(plan, show) : []} ${cautionsPart(plan.planOf, show)}`,
    show.language,
    paper,
  );
}
