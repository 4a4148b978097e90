import { cautionsFor, type BrinellResult } from '../methods/index.js';
import { axes, figure, ink, lineLayer, pointLayers, type Figure } from './figureParts.js';
import { forceFigure } from './forceFigure.js';
import { number, percent, shownAs, type MethodPage, type Shown } from './MethodPage.js';

const THREE: Shown = { unit: 'HBW', factor: 1, step: { figures: 3 } };

/** Force over time of the indentations whose force was recorded, each from its own start. */
function dwellFigure({ indentations }: BrinellResult): Figure | undefined {
  const recorded = indentations.flatMap(({ record, dwell }) => (record?.time ? [{ ...record, time: record.time, dwell }] : []));
  if (recorded.length === 0) return undefined;
  return forceFigure({
    title: 'Force over time',
    description: `Force of ${recorded.length} indentations, brought on, held and released.`,
    along: 'Time t / s',
    lines: recorded.map(({ time, force }) => ({ x: time, force })),
    points: recorded.slice(0, 1).flatMap(({ time, force, dwell }) =>
      dwell
        ? ([
            { x: time[dwell.range[0]]!, y: force[dwell.range[0]]!, text: 'held', side: 'left' },
            { x: time[dwell.range[1]]!, y: force[dwell.range[1]]!, text: 'released', side: 'right' },
          ] as const)
        : [],
    ),
  });
}

/** Hardness of each indentation beside the mean. */
function indentationsFigure({ indentations, hardness }: BrinellResult): Figure | undefined {
  if (indentations.length < 2 || !hardness) return undefined;
  const values = indentations.map((one) => one.hardness.value);
  const least = Math.min(...values);
  const most = Math.max(...values);
  const room = Math.max(0.3 * (most - least), 0.01 * most);
  const n = indentations.length;
  const encoding = axes(
    { title: 'Indentation', from: 0.5, to: n + 0.9 },
    { title: 'Brinell hardness / HBW', from: least - room, to: most + room },
  );
  const mean = [
    { i: 0, x: 0.5, y: hardness.value },
    { i: 1, x: n + 0.5, y: hardness.value },
  ];
  return figure(
    'Hardness of each indentation',
    `Hardness from ${number(least, 3)} to ${number(most, 3)} HBW, mean ${number(hardness.value, 3)}.`,
    [
      lineLayer(mean, encoding, { color: ink.line, strokeDash: [6, 4], strokeWidth: 1.1 }),
      ...pointLayers(
        indentations.map(({ hardness: one, valid }, k) => ({
          x: k + 1,
          y: one.value,
          text: valid ? number(one.value, 3) : `${number(one.value, 3)} (outside)`,
          side: 'right',
        })),
        encoding,
      ),
    ],
  );
}

function howFound({ indentations, ballDiameter }: BrinellResult): string[] {
  return [
    ...indentations.map(({ hardness, diameter, diameters, depth, force, valid, dwell }, k) => {
      const held = dwell
        ? `, held ${number(dwell.duration, 3)} s after a rise of ${number(dwell.rise, 3)} s, changing by ${percent(dwell.change, 2)}`
        : '';
      return `Indentation ${k + 1}: ${number(force.value, 5)} N${held}; d = ${number(diameter.value, 4)} mm from ${diameters.map((d) => number(d, 4)).join(' and ')}, h = ${number(depth.value, 3)} mm: ${number(hardness.value, 3)} HBW${valid ? '' : ' (does not count)'}.`;
    }),
    `Formula: 0.102 × 2F over πD(D − √(D² − d²)) with D = ${number(ballDiameter, 4)} mm; 1 % of d is 2 % of the hardness.`,
  ];
}

/** @internal The page of a Brinell test. */
export const brinellPage: MethodPage<BrinellResult> = {
  title: 'Brinell hardness test',
  identity: ({ designation, ballDiameter, piece, indentations }) => [
    ['Scale', designation],
    ['Ball', `${number(ballDiameter, 4)} mm, hard metal`],
    ['Material', piece.material],
    ['Thickness', piece.thickness === undefined ? undefined : `${number(piece.thickness, 4)} mm`],
    ['Indentations', `${indentations.length}, of which ${indentations.filter(({ valid }) => valid).length} count`],
  ],
  quantities: (result) => [
    ...shownAs('hardness', THREE, result.hardness),
    ...shownAs(
      'indentations',
      THREE,
      result.indentations.map(({ hardness }, k) => ({ ...hardness, symbol: `HBW ${k + 1}` })),
    ),
    ...shownAs(
      'estimatedStrength',
      { unit: 'MPa', factor: 1, step: { figures: 2 } },
      result.estimatedStrength,
      'an estimate, ± 10 %; no measured strength',
    ),
  ],
  howFound,
  figures: (result) => ({ force: dwellFigure(result), indentations: indentationsFigure(result) }),
  cautions: cautionsFor('brinell'),
};
