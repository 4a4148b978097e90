import type { TensionResult } from '../methods/index.js';
import { axes, figure, ink, lineLayer, pointLayers, thinned, type Figure, type FigureValue, type NamedPoint } from './figureParts.js';

/** @internal The elastic part with the window, the elastic line and the offset line. */
export function elasticDetailFigure(result: TensionResult): Figure | undefined {
  const window = result.modulusWindow;
  if (!window) return undefined;
  const { strain, stress } = result.curve;
  const proof = result.proofStrengths[0];
  const upper = result.upperYieldStrength;
  const level = Math.max(proof?.value ?? 0, upper?.value ?? 0, window.stressLimits[1]);
  const reach = Math.max((proof?.strain ?? 0) * 1.4, (level / window.slope) * 1.5, 1e-9);
  let end = 0;
  while (end < strain.length && (strain[end]! <= reach || end < window.last)) end += 1;
  const encoding = axes(
    { title: 'Strain e / %', from: -5 * reach, to: 100 * reach },
    { title: 'Stress R / MPa', from: 0, to: 1.18 * level },
  );
  const straight = (offset: number): FigureValue[] => [
    { i: 0, x: 100 * offset, y: 0 },
    { i: 1, x: 100 * (offset + (1.1 * level) / window.slope), y: 1.1 * level },
  ];
  const part = { x: strain.subarray(window.first, window.last + 1), y: stress.subarray(window.first, window.last + 1), xFactor: 100 };
  const points: NamedPoint[] = [];
  if (upper) points.push({ x: 100 * upper.strain, y: upper.value, text: 'ReH', side: 'left' });
  if (proof) points.push({ x: 100 * proof.strain, y: proof.value, text: proof.symbol, side: 'right' });
  points.push({ x: 100 * window.strainLimits[1], y: window.stressLimits[1], text: 'window', side: 'right' });
  return figure(
    'The elastic part, its window and the offset line',
    `Elastic line of slope ${(window.slope / 1000).toFixed(1)} GPa fitted from ${window.stressLimits[0].toFixed(0)} to ${window.stressLimits[1].toFixed(0)} MPa.`,
    [
      lineLayer(thinned({ x: strain.subarray(0, end), y: stress.subarray(0, end), xFactor: 100 }), encoding, {
        color: ink.curve,
        strokeWidth: 1.4,
      }),
      lineLayer(straight(0), encoding, { color: ink.line, strokeDash: [6, 4], strokeWidth: 1.1 }),
      ...(proof ? [lineLayer(straight(proof.extension), encoding, { color: ink.line, strokeDash: [2, 3], strokeWidth: 1.3 })] : []),
      lineLayer(thinned(part), encoding, { color: ink.mark, strokeWidth: 3.2, opacity: 0.55 }),
      ...pointLayers(points, encoding),
    ],
  );
}
