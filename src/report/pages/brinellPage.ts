import type { BrinellResult } from '../../methods/index.js';
import { stepOfFigures } from '../../numeric/index.js';
import { roundResult } from '../../statistics/index.js';
import type { Figure } from '../figures/Figure.js';
import { figure } from '../figures/figureStyle.js';
import { forceFigure } from '../figures/forceFigure.js';
import type { Phrase } from '../../languages/index.js';
import { shownAs, type MethodPage } from './MethodPage.js';
import { plane } from '../figures/plane.js';
import type { Presentation } from '../words/presentation.js';

const THREE = { figures: 3 };

/** Why an indentation does not count. */
const stampOf = ({ valid, offScale }: Pick<BrinellResult['indentations'][number], 'valid' | 'offScale'>): Phrase | undefined => {
  if (!valid) return 'outside 0.24 to 0.60 of the ball: it does not count';
  return offScale ? 'the force is not that of the scale: it does not count' : undefined;
};

/** Force over time of the indentations whose force was recorded, each from its own start. */
function dwellFigure({ indentations }: BrinellResult, show: Presentation): Figure | undefined {
  const recorded = indentations.flatMap(({ record, dwell }) => (record?.time ? [{ ...record, time: record.time, dwell }] : []));
  if (recorded.length === 0) return undefined;
  return forceFigure(
    {
      title: 'Force over time',
      description: show.say('Force of {count} indentations, brought on, held and released.', { count: recorded.length }),
      along: { title: 'Time t', metric: 's' },
      lines: recorded.map(({ time, force }) => ({ x: time, force })),
      points: recorded.slice(0, 1).flatMap(({ time, force, dwell }) =>
        dwell
          ? ([
              { x: time[dwell.range[0]]!, y: force[dwell.range[0]]!, text: show.say('held'), side: 'left' },
              { x: time[dwell.range[1]]!, y: force[dwell.range[1]]!, text: show.say('released'), side: 'right' },
            ] as const)
          : [],
      ),
    },
    show,
  );
}

/** Hardness of each indentation beside the mean. */
function indentationsFigure({ indentations, hardness }: BrinellResult, show: Presentation): Figure | undefined {
  if (indentations.length < 2 || !hardness) return undefined;
  const { say, number, digits, colours } = show;
  const values = indentations.map((one) => one.hardness.value);
  const least = Math.min(...values);
  const most = Math.max(...values);
  const room = Math.max(0.3 * (most - least), 0.01 * most);
  const n = indentations.length;
  const { path, points } = plane(
    show,
    { title: say('Indentation'), from: 0.5, to: n + 0.9, whole: true },
    { title: say('Hardness'), metric: 'HBW', from: least - room, to: most + room },
  );
  const mean: [number, number][] = [
    [0.5, hardness.value],
    [n + 0.5, hardness.value],
  ];
  const named = indentations.map(({ hardness: one, valid, offScale }, k) => {
    const text = digits(roundResult(one.value, { step: stepOfFigures(one.value, 3) }).text);
    return {
      x: k + 1,
      y: one.value,
      text: stampOf({ valid, offScale }) === undefined ? text : say('{value} (outside)', { value: text }),
      side: 'right' as const,
    };
  });
  return figure(
    show,
    say('Hardness of each indentation'),
    say('Hardness from {low} to {high} HBW, mean {mean}.', {
      low: number(least, 3),
      high: number(most, 3),
      mean: number(hardness.value, 3),
    }),
    [path(mean, { color: colours.line, strokeDash: [6, 4], strokeWidth: 1.1 }), ...points(named)],
  );
}

function howFound({ indentations, ballDiameter }: BrinellResult, show: Presentation): string[] {
  const { say, number, percent, listed } = show;
  // the formula below holds for N and mm
  return [
    ...indentations.flatMap(({ hardness, diameter, diameters, depth, force, valid, offScale, dwell }, k) => [
      say('Indentation {number}: {force}; d = {diameter} from {diameters}, h = {depth}: {hardness} HBW.', {
        number: k + 1,
        force: `${number(force.value, 5)}\u00a0N`,
        diameter: `${number(diameter.value, 4)}\u00a0mm`,
        diameters: listed(diameters.map((d) => number(d, 4))),
        depth: `${number(depth.value, 3)}\u00a0mm`,
        hardness: number(hardness.value, 3),
      }),
      ...(dwell
        ? [
            say('Indentation {number} was held {held} s after a rise of {rise} s, the force changing by {change}.', {
              number: k + 1,
              held: number(dwell.duration, 3),
              rise: number(dwell.rise, 3),
              change: percent(dwell.change, 2),
            }),
          ]
        : []),
      ...(stampOf({ valid, offScale }) === undefined ? [] : [say('Indentation {number} does not count.', { number: k + 1 })]),
    ]),
    say('Formula: 0.102 × 2F over πD(D − √(D² − d²)) with D = {ball}; 1 % of d is 2 % of the hardness.', {
      ball: `${number(ballDiameter, 4)}\u00a0mm`,
    }),
  ];
}

/** @internal The page of a Brinell test. */
export const brinellPage: MethodPage<BrinellResult> = {
  title: 'Brinell hardness test',
  steps: 'ISO 6506-1',
  identity: ({ designation, ballDiameter, holdingTime, piece, indentations }, { say, number, value, term, digits }) => [
    ['Scale', designation.replace(/\d+\.\d+/g, digits)],
    ['Time held, as stated', holdingTime === undefined ? undefined : value(holdingTime, 's', 3)],
    ['Ball', say('{diameter} mm, hard metal', { diameter: number(ballDiameter, 4) })],
    ['Material', piece.material === undefined ? undefined : term(piece.material)],
    ['Thickness', piece.thickness === undefined ? undefined : value(piece.thickness, 'mm', 4)],
    [
      'Indentations',
      say('{count}, of which {valid} count', {
        count: indentations.length,
        valid: indentations.filter((one) => stampOf(one) === undefined).length,
      }),
    ],
  ],
  quantities: (result) => [
    ...shownAs('hardness', THREE, result.hardness),
    ...result.indentations.flatMap((one, k) => shownAs('indentations', THREE, { ...one.hardness, symbol: `HBW ${k + 1}` }, stampOf(one))),
    ...shownAs('estimatedStrength', { figures: 2 }, result.estimatedStrength, 'an estimate, ± 10 %; no measured strength'),
  ],
  howFound,
  figures: (result, show) => ({ force: dwellFigure(result, show), indentations: indentationsFigure(result, show) }),
  work: 'brinell',
};
