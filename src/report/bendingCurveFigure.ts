import type { BendingResult } from '../methods/index.js';
import { axes, figure, ink, largest, lineLayer, pointLayers, thinned, type Figure, type NamedPoint } from './figureParts.js';

/** @internal Flexural stress against strain of the outer fibre, with the elastic line and the window. */
export function bendingCurveFigure(result: BendingResult): Figure {
  const { strain, stress } = result.curve;
  const most = Math.max(largest(strain), 1e-9);
  const top = Math.max(largest(stress), 1e-9);
  const encoding = axes(
    { title: 'Strain of the outer fibre / %', from: Math.min(0, -2 * most), to: 112 * most },
    { title: 'Flexural stress σf / MPa', from: 0, to: 1.12 * top },
  );
  const window = result.modulusWindow;
  const points: NamedPoint[] = result.proofStrengths.map((one) => ({ x: 100 * one.strain, y: one.value, text: one.symbol, side: 'right' }));
  points.push({
    x: 100 * result.strainAtMaximum.value,
    y: result.flexuralStrength.value,
    text: result.flexuralStrength.symbol,
    side: 'left',
  });
  return figure(
    'Flexural stress against strain of the outer fibre',
    `Bending curve up to ${(100 * most).toFixed(2)} % strain of the outer fibre and ${top.toFixed(0)} MPa by the elastic formulas.`,
    [
      lineLayer(thinned({ x: strain, y: stress, xFactor: 100 }), encoding, { color: ink.curve, strokeWidth: 1.6 }),
      ...(window
        ? [
            lineLayer(
              [
                { i: 0, x: 0, y: 0 },
                { i: 1, x: (100 * 1.1 * top) / window.slope, y: 1.1 * top },
              ],
              encoding,
              { color: ink.line, strokeDash: [6, 4], strokeWidth: 1.1 },
            ),
            lineLayer(
              thinned({
                x: strain.subarray(window.first, window.last + 1),
                y: stress.subarray(window.first, window.last + 1),
                xFactor: 100,
              }),
              encoding,
              { color: ink.mark, strokeWidth: 3.2, opacity: 0.55 },
            ),
          ]
        : []),
      ...pointLayers(points, encoding),
    ],
  );
}
