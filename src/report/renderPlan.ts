import { requireOptions } from '../base/index.js';
import type { PaceAction, TensionPlan, TestPlan } from '../planning/index.js';
import { findingsList } from './findingsList.js';
import { html, raw, type Html } from './html.js';
import { htmlPage } from './htmlPage.js';
import { number } from './MethodPage.js';
import { planFigures, type PlanFigureName } from './planFigures.js';
import { controlNames, driveWord, requirePlan, sectionInWords, stageNames, summarisePlan, type PlanRow } from './summarisePlan.js';

/** Options of {@link renderPlan}. */
export interface RenderPlanOptions {
  /** Drawings of `planFigures` as SVG, by name, as `drawFigures` of `testpiece/render` makes them; figures without one are left out. */
  readonly drawings?: Partial<Record<PlanFigureName, string>> | undefined;
  /** What is to be tested, for the heading. */
  readonly identity?: string | undefined;
  /** True where the plan is of an invented frame or piece: the page says so. */
  readonly invented?: boolean | undefined;
}

const titles: Readonly<Record<TestPlan['planOf'], string>> = {
  tension: 'Plan of a tension test',
  brinell: 'Plan of a Brinell test',
  shear: 'Plan of a shear test',
  bending: 'Plan of a bending test',
};

const actions: Readonly<Record<PaceAction, string>> = {
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
                <td>${name}</td>
                <td class="number">${text}</td>
                <td class="unit">${unit}</td>
              </tr>`,
          )}
      </tbody>`,
  );
}

function headed(columns: readonly string[], rows: readonly Html[]): Html {
  return html`<table>
    <thead>
      <tr>
        ${columns.map((one) => html`<th scope="col">${one}</th>`)}
      </tr>
    </thead>
    <tbody>
      ${rows}
    </tbody>
  </table>`;
}

/** Rows to go by while loading, with room to write down what was read. */
function paceTable(plan: TensionPlan): Html {
  const oil = plan.force.pressure !== undefined;
  const rows = plan.pace.map(({ time, stage, pressure, force, stress, travel, action }) => {
    const cells = [
      number(time, 3),
      ...(oil && pressure !== undefined ? [number(10 * pressure, 3)] : []),
      number(force / 1000, 3),
      number(stress, 3),
      number(travel, 3),
    ];
    return html`<tr>
      ${cells.map((cell) => html`<td class="number">${cell}</td>`)}
      <td>${stageNames[stage]}</td>
      <td>${actions[action]}</td>
      <td></td>
    </tr>`;
  });
  const columns = ['t / s', ...(oil ? ['p / bar'] : []), 'F / kN', 'R / MPa', 'travel / mm', 'part', 'do', 'read'];
  return html`<h2>Pace sheet</h2>
    <p>
      For the middle of the expected range, ${controlNames[plan.control]}: a guide to the hand, no prediction. Time counts from the first
      force; move evenly, and do not stop through yield.
    </p>
    ${headed(columns, rows)}`;
}

function speedLine(plan: TensionPlan): Html {
  const sentences = plan.stages.map(({ stage, speed, drivePerMinute }) => {
    const drive = drivePerMinute === undefined ? '' : `, ${number(drivePerMinute, 2)} ${driveWord(plan)} a minute`;
    return html`<li>${stageNames[stage]}: ${number(60 * speed, 3)} mm a minute${drive}</li>`;
  });
  return html`<ul>
    ${sentences}
  </ul>`;
}

function answersTable({ answers }: TensionPlan): Html {
  const rows = answers.map(
    ({ symbols, verdict, why }) =>
      html`<tr>
        <th scope="row">${symbols.join(', ')}</th>
        <td>${verdict}</td>
        <td>${why}</td>
      </tr>`,
  );
  return html`<h2>What this frame can answer</h2>
    ${headed(['Symbol', 'Trust', 'Why'], rows)}`;
}

/** Drawings with their words. The SVG is our renderer's own. */
function drawn(plan: TestPlan, drawings: NonNullable<RenderPlanOptions['drawings']>): Html[] {
  return Object.entries(planFigures(plan)).flatMap(([name, { title, description }]) => {
    const svg = drawings[name as PlanFigureName];
    return svg === undefined ? [] : [html`<figure role="img" aria-label="${`${title}. ${description}`}">${raw(svg)}</figure>`];
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
 * @param options - Drawings of the figures, what is to be tested, whether it is invented.
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
  requireOptions(from, options, ['drawings', 'identity', 'invented']);
  const { drawings = {}, identity, invented } = options;
  requireOptions(from, drawings, ['piece', 'pace'], 'drawings');
  const title = `${titles[plan.planOf]}${identity === undefined ? '' : `: ${identity}`}`;
  const list = (sentences: readonly string[]): Html =>
    html`<ul>
      ${sentences.map((one) => html`<li>${one}</li>`)}
    </ul>`;
  return htmlPage(
    title,
    html`<h1>${title}</h1>
      <p class="lead">
        ${'section' in plan ? `Section ${sectionInWords(plan.section)}. ` : ''}Frame of ${number(plan.frame.capacity / 1000, 4)} kN.
      </p>
      ${invented === true ? html`<p class="invented"><strong>Invented example.</strong> No real frame or piece stands behind these numbers.</p>` : []}
      ${plan.planOf === 'tension' ? [paceTable(plan), speedLine(plan)] : []} ${drawn(plan, drawings)}
      <h2>If it does not give way</h2>
      ${list(plan.ifItStalls)}
      <h2>Findings</h2>
      ${findingsList(plan.findings)}
      <h2>The plan in numbers</h2>
      <table>
        ${planTable(summarisePlan(plan))}
      </table>
      ${plan.planOf === 'tension' ? answersTable(plan) : []}
      <h2>Cautions</h2>
      ${list(plan.cautions)}`,
  );
}
