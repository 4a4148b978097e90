import type { CuppingResult } from '../../methods/index.js';
import type { Figure } from '../figures/Figure.js';
import { forceFigure } from '../figures/forceFigure.js';
import { shownAs, type MethodPage } from './MethodPage.js';
import type { Presentation } from '../words/presentation.js';

/** Force against depth, one line for each blank. */
function cuppingFigure({ blanks }: CuppingResult, show: Presentation): Figure {
  const first = blanks[0]?.depth;
  return forceFigure(
    {
      title: 'Force against depth of the cup',
      description: first
        ? show.say('Force against depth of {blanks} blanks, the first cracked at {depth}.', {
            blanks: blanks.length,
            depth: show.value(first.value, 'mm', 3),
          })
        : show.say('Force against depth of {blanks} blanks.', { blanks: blanks.length }),
      along: { title: 'Depth of the cup h', metric: 'mm' },
      lines: blanks.map(({ depths, record }) => ({ x: depths, force: record.force })),
      points: blanks.flatMap(({ depth, crackIndex, record }, k) =>
        depth && crackIndex !== undefined
          ? [{ x: depth.value, y: record.force[crackIndex]!, text: k === 0 ? show.say('crack') : '', side: 'left' as const }]
          : [],
      ),
    },
    show,
  );
}

/** @internal The page of a cupping test. */
export const cuppingPage: MethodPage<CuppingResult> = {
  title: 'Cupping test',
  steps: 'ISO 20482',
  identity: ({ sheet, ballDiameter, dieDiameter, blanks }, { say, value }) => [
    [
      'Sheet',
      sheet.width === undefined
        ? say('{thickness} thick', { thickness: value(sheet.thickness, 'mm', 4) })
        : say('{thickness} thick, {width} wide', { thickness: value(sheet.thickness, 'mm', 4), width: value(sheet.width, 'mm', 4) }),
    ],
    ['Ball and die', `${value(ballDiameter, 'mm', 4)}, ${value(dieDiameter, 'mm', 4)}`],
    ['Blanks', String(blanks.length)],
  ],
  quantities: (result) => [
    ...shownAs('cuppingIndex', 0.1, result.cuppingIndex),
    ...result.blanks.flatMap(({ depth, maximumForce }, k) => [
      ...shownAs('blanks', 0.1, depth && { ...depth, symbol: `h ${k + 1}` }),
      ...shownAs('blanks', 0.01, { ...maximumForce, symbol: `Fm ${k + 1}` }),
    ]),
  ],
  howFound: ({ blanks }, { say, value }) =>
    blanks.map(({ depth, contact, crackIndex }, k) => {
      const at = { blank: k + 1, contact: value(contact, 'mm', 4) };
      return depth && crackIndex !== undefined
        ? say(
            'Blank {blank}: contact at {contact}, where the first rise of the force meets zero; the force begins to fall away at sample {sample}, {depth} deeper.',
            { ...at, sample: crackIndex, depth: value(depth.value, 'mm', 4) },
          )
        : say('Blank {blank}: contact at {contact}, where the first rise of the force meets zero; no crack is in the record.', at);
    }),
  figures: (result, show) => ({ force: cuppingFigure(result, show) }),
  work: 'cupping',
};
