import type { ShearResult } from '../../methods/index.js';
import type { Figure } from '../figures/Figure.js';
import { forceFigure } from '../figures/forceFigure.js';
import { shownAs, type MethodPage } from './MethodPage.js';
import type { Presentation } from '../words/presentation.js';
import { FORCE } from '../words/shownUnit.js';

/** Force against travel, or over time where no travel was logged. */
function shearFigure({ record, maximumIndex: at, maximumForce }: ShearResult, show: Presentation): Figure | undefined {
  const along = record?.travel ?? record?.time;
  if (!record || !along || at === undefined) return undefined;
  return forceFigure(
    {
      title: record.travel ? 'Force against travel' : 'Force over time',
      description: show.say('Force up to {force}, where the piece was sheared.', {
        force: show.value(maximumForce.value, FORCE, 4),
      }),
      along: record.travel ? { title: 'Travel x', metric: 'mm' } : { title: 'Time t', metric: 's' },
      lines: [{ x: along, force: record.force }],
      points: [{ x: along[at]!, y: record.force[at]!, text: 'Fm', side: 'left' }],
    },
    show,
  );
}

/** @internal The page of a shear test. */
export const shearPage: MethodPage<ShearResult> = {
  title: 'Shear test',
  identity: ({ piece, area }, show) => [
    [
      'Sheared',
      piece.diameter === undefined
        ? show.say('area {area}', { area: show.value(area.value, 'mm²', 5) })
        : show.say('round, d {diameter}; {area}', {
            diameter: show.value(piece.diameter, 'mm', 5),
            area: show.value(area.value, 'mm²', 5),
          }),
    ],
    ['Shear planes', show.say(piece.planes === 1 ? '1 (single shear)' : '2 (double shear)')],
    ['Clearance of the tool', piece.clearance === undefined ? undefined : show.value(piece.clearance, 'mm', 3)],
  ],
  quantities: (result) => [
    ...shownAs('maximumForce', 0.01, result.maximumForce),
    ...shownAs('shearStrength', 1, result.shearStrength),
    ...shownAs('ratioToTensileStrength', 0.01, result.ratioToTensileStrength),
    ...shownAs('travelAtMaximumForce', 0.01, result.travelAtMaximumForce),
  ],
  howFound: ({ piece, area, maximumForce, maximumIndex: at }, { say, value }) => [
    at === undefined
      ? say('Maximum force: as given, {force}.', { force: value(maximumForce.value, FORCE, 5) })
      : say('Maximum force: sample {sample}, {force}.', { sample: at, force: value(maximumForce.value, FORCE, 5) }),
    say('Shear strength: maximum force over {planes} × {area}.', { planes: piece.planes, area: value(area.value, 'mm²', 5) }),
    say('Fixtures differ by about a tenth (common practice).'),
  ],
  figures: (result, show) => ({ force: shearFigure(result, show) }),
  work: 'shear',
};
