import { cautionsFor, type CuppingResult } from '../methods/index.js';
import type { Figure } from './figureParts.js';
import { forceFigure } from './forceFigure.js';
import { number, shownAs, type MethodPage } from './MethodPage.js';

/** Force against depth, one line for each blank. */
function cuppingFigure({ blanks }: CuppingResult): Figure {
  return forceFigure({
    title: 'Force against depth of the cup',
    description: `Force against depth of ${blanks.length} blanks${blanks[0]?.depth ? `, the first cracked at ${number(blanks[0].depth.value, 3)} mm` : ''}.`,
    along: 'Depth of the cup h / mm',
    lines: blanks.map(({ depths, record }) => ({ x: depths, force: record.force })),
    points: blanks.flatMap(({ depth, crackIndex, record }) =>
      depth && crackIndex !== undefined ? [{ x: depth.value, y: record.force[crackIndex]!, text: 'crack', side: 'left' as const }] : [],
    ),
  });
}

/** @internal The page of a cupping test. */
export const cuppingPage: MethodPage<CuppingResult> = {
  title: 'Cupping test',
  identity: ({ sheet, ballDiameter, dieDiameter, blanks }) => [
    ['Sheet', `${number(sheet.thickness, 4)} mm thick${sheet.width === undefined ? '' : `, ${number(sheet.width, 4)} mm wide`}`],
    ['Ball and die', `${number(ballDiameter, 4)} mm, ${number(dieDiameter, 4)} mm`],
    ['Blanks', String(blanks.length)],
  ],
  quantities: (result) => [
    ...shownAs('cuppingIndex', { unit: 'mm', factor: 1, step: 0.1 }, result.cuppingIndex),
    ...result.blanks.flatMap(({ depth, maximumForce }, k) => [
      ...shownAs('blanks', { unit: 'mm', factor: 1, step: 0.1 }, depth && { ...depth, symbol: `h ${k + 1}` }),
      ...shownAs('blanks', { unit: 'kN', factor: 1e-3, step: 0.01 }, { ...maximumForce, symbol: `Fm ${k + 1}` }),
    ]),
  ],
  howFound: ({ blanks }) =>
    blanks.map(
      ({ depth, contact, crackIndex }, k) =>
        `Blank ${k + 1}: contact at ${number(contact, 4)} mm, where the first rise of the force meets zero; ${
          depth && crackIndex !== undefined
            ? `the force begins to fall away at sample ${crackIndex}, ${number(depth.value, 4)} mm deeper.`
            : 'no crack is in the record.'
        }`,
    ),
  figures: (result) => ({ force: cuppingFigure(result) }),
  cautions: cautionsFor('cupping'),
};
