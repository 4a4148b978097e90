import type { TensionResult } from '../methods/index.js';
import { axes, figure, ink, largest, lineLayer, pointLayers, thinned, type Figure } from './figureParts.js';
import { namedPoints, shownEnd } from './stressStrainFigure.js';

/** @internal Force against extension, over the length that the strain counts over. */
export function loadExtensionFigure(result: TensionResult): Figure {
  const end = shownEnd(result);
  const { strain, stress } = result.curve;
  const length = result.strainLength;
  const kilonewtons = result.testPiece.section.area / 1000;
  const most = Math.max(largest(strain, end) * length, 1e-9);
  const top = Math.max(largest(stress, end) * kilonewtons, 1e-9);
  const encoding = axes(
    { title: `Extension over ${Number(length.toPrecision(4))} mm / mm`, from: -0.01 * most, to: 1.06 * most },
    { title: 'Force F / kN', from: 0, to: 1.1 * top },
  );
  const values = thinned({ x: strain.subarray(0, end), y: stress.subarray(0, end), xFactor: length, yFactor: kilonewtons });
  const points = namedPoints(result).map((point) => ({
    ...point,
    x: (point.x * length) / 100,
    y: point.y * kilonewtons,
    text: point.text === 'Rm at Agt' ? 'Fm' : point.text,
  }));
  return figure('Force against extension', `Force up to ${top.toFixed(2)} kN at extensions up to ${most.toFixed(2)} mm.`, [
    lineLayer(values, encoding, { color: ink.curve, strokeWidth: 1.6 }),
    ...pointLayers(
      points.filter(({ text }) => text === 'Fm' || text === 'fracture'),
      encoding,
    ),
  ]);
}
