import type { Phrase } from '../../languages/index.js';
import type { PaceAction, TensionPlan, TestPlan } from '../../planning/index.js';
import type { PageTable } from './MethodPage.js';
import { cautionsInWords } from './pageParts.js';
import { presentation, type Presentation, type PresentationOptions } from '../words/presentation.js';
import { requirePlan } from '../words/requirePlan.js';
import { FORCE, PRESSURE } from '../words/shownUnit.js';
import { controlNames, stageNames } from '../words/tensionPlanRows.js';

/** @internal A table of text alone, for a page or a terminal. */
export interface TextTable extends PageTable {
  readonly heading: string;
  readonly rows: readonly (readonly string[])[];
}

/** @internal What a plan says beside its numbers, for one reader. */
export interface PlanSheet {
  /** Rows to go by while loading; of a tension test. */
  readonly pace?: TextTable;
  /** The speed of each part of a tension test that the sheet reaches. */
  readonly speeds: readonly string[];
  /** How far each property can be trusted; of a tension test. */
  readonly answers?: TextTable;
  /** What to do where the piece does not give way. */
  readonly ifItStalls: readonly string[];
  /** Usual cautions of the work. */
  readonly cautions: readonly string[];
}

const actions: Readonly<Record<PaceAction, Phrase>> = {
  start: 'start, slack taken up',
  read: 'read the dial',
  'slow-down': 'change to the speed for yield',
  'hold-speed': 'keep this speed through yield',
  'watch-yield': 'watch: yield may begin from here',
  'speed-up': 'yield over: change to the speed after it',
  maximum: 'maximum to be expected; read the pointer after fracture',
  stop: 'stop: capacity or relief valve reached, go no further',
};

function paceTable(plan: TensionPlan, { say, number, unit, value }: Presentation): TextTable {
  const oil = plan.force.pressure !== undefined;
  const { stop, stopPressure } = plan.force;
  const [pressures, forces] = [unit(PRESSURE), unit(FORCE)];
  const numbers = [
    't / s',
    ...(oil ? [`p / ${pressures.unit}`] : []),
    `F / ${forces.unit}`,
    `R / ${unit('MPa').unit}`,
    `${say('travel')} / ${unit('mm').unit}`,
  ];
  return {
    heading: say('Pace sheet'),
    caption: [
      say('For the middle of the expected range, {control}: a guide to the hand, no prediction.', {
        control: say(controlNames[plan.control]),
      }),
      say('Time counts from the first force; move evenly, and do not stop through yield.'),
      say('The frame ends at {limit}: stop there, whatever the piece does.', {
        limit: [value(stop, FORCE, 3), ...(stopPressure === undefined ? [] : [value(stopPressure, PRESSURE, 3)])].join(', '),
      }),
    ].join(' '),
    columns: [...numbers, say('part'), say('do')],
    kinds: [...numbers.map(() => 'number' as const), undefined, undefined],
    rows: plan.pace.map(({ time, stage, pressure, force, stress, travel, action }) => [
      number(time, 3),
      ...(oil && pressure !== undefined ? [number(pressure * pressures.factor, 3)] : []),
      number(force * forces.factor, 3),
      number(stress * unit('MPa').factor, 3),
      number(travel * unit('mm').factor, 3),
      say(stageNames[stage]),
      say(actions[action]),
    ]),
  };
}

function speedsOf(plan: TensionPlan, { say, number, value }: Presentation): string[] {
  const strokes = plan.frame.drive?.kind === 'pump';
  const last = plan.pace.at(-1);
  const reached = last?.action === 'stop' ? plan.stages.findIndex(({ stage }) => stage === last.stage) + 1 : plan.stages.length;
  return plan.stages.slice(0, reached).map(({ stage, speed, drivePerMinute }) => {
    const known = { stage: say(stageNames[stage]), speed: value(60 * speed, 'mm/min', 3) };
    if (drivePerMinute === undefined) return say('{stage}: {speed}', known);
    const drive = { ...known, count: number(drivePerMinute, 2) };
    return strokes ? say('{stage}: {speed}, {count} strokes a minute', drive) : say('{stage}: {speed}, {count} turns a minute', drive);
  });
}

const answersTable = ({ answers }: TensionPlan, { say, term }: Presentation): TextTable => ({
  heading: say('What this frame can answer'),
  caption: say('How far each property can be trusted, and why.'),
  columns: [say('Symbol'), say('Trust'), say('Why')],
  rows: answers.map(({ symbols, verdict, why }) => [symbols.map(term).join(', '), term(verdict), term(why)]),
});

/** @internal What a plan says beside its numbers, in the language and units of one reader: of the page and of the terminal the same. */
export function planSheet(plan: TestPlan, options: PresentationOptions = {}): PlanSheet {
  const show = presentation('planSheet', options);
  requirePlan('planSheet', plan);
  return {
    ...(plan.planOf === 'tension' ? { pace: paceTable(plan, show), answers: answersTable(plan, show) } : {}),
    speeds: plan.planOf === 'tension' ? speedsOf(plan, show) : [],
    ifItStalls: plan.ifItStalls.map(show.term),
    cautions: cautionsInWords(plan.planOf, show),
  };
}
