import { cautionsFor, type ShearResult } from '../methods/index.js';
import type { Figure } from './figureParts.js';
import { forceFigure } from './forceFigure.js';
import { number, shownAs, type MethodPage } from './MethodPage.js';

/** Force against travel, or over time where no travel was logged. */
function shearFigure({ record, maximumIndex: at, maximumForce }: ShearResult): Figure | undefined {
  const along = record?.travel ?? record?.time;
  if (!record || !along || at === undefined) return undefined;
  const title = record.travel ? 'Force against travel' : 'Force over time';
  return forceFigure({
    title,
    description: `Force up to ${number(maximumForce.value / 1000, 4)} kN, where the piece was sheared.`,
    along: record.travel ? 'Travel x / mm' : 'Time t / s',
    lines: [{ x: along, force: record.force }],
    points: [{ x: along[at]!, y: record.force[at]!, text: 'Fm', side: 'left' }],
  });
}

/** @internal The page of a shear test. */
export const shearPage: MethodPage<ShearResult> = {
  title: 'Shear test',
  identity: ({ piece, area }) => [
    [
      'Sheared',
      piece.diameter === undefined
        ? `area ${number(area.value, 5)} mm²`
        : `round, d ${number(piece.diameter, 5)} mm; ${number(area.value, 5)} mm²`,
    ],
    ['Shear planes', piece.planes === 1 ? '1 (single shear)' : '2 (double shear)'],
    ['Clearance of the tool', piece.clearance === undefined ? undefined : `${number(piece.clearance, 3)} mm`],
  ],
  quantities: (result) => [
    ...shownAs('maximumForce', { unit: 'kN', factor: 1e-3, step: 0.01 }, result.maximumForce),
    ...shownAs('shearStrength', { unit: 'MPa', factor: 1, step: 1 }, result.shearStrength),
    ...shownAs('ratioToTensileStrength', { unit: '', factor: 1, step: 0.01 }, result.ratioToTensileStrength),
    ...shownAs('travelAtMaximumForce', { unit: 'mm', factor: 1, step: 0.01 }, result.travelAtMaximumForce, 'tool and frame included'),
  ],
  howFound: ({ piece, area, maximumForce, maximumIndex: at }) => [
    `Maximum force: ${at === undefined ? 'as given' : `sample ${at}`}, ${number(maximumForce.value, 5)} N.`,
    `Shear strength: maximum force over ${piece.planes} × ${number(area.value, 5)} mm².`,
    'No shear modulus is derived: the travel holds bending, indentation and the tool. Fixtures differ by about a tenth (common practice).',
  ],
  figures: (result) => ({ force: shearFigure(result) }),
  cautions: cautionsFor('shear'),
};
