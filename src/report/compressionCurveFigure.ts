import type { CompressionResult } from '../methods/index.js';
import { axes, figure, ink, largest, lineLayer, pointLayers, thinned, type Figure, type NamedPoint } from './figureParts.js';

/** @internal Compressive stress against compression, with yield strength, stated strains and the strain of buckling. */
export function compressionCurveFigure(result: CompressionResult): Figure {
  const { strain, stress } = result.curve;
  const most = Math.max(largest(strain), 1e-9);
  const top = Math.max(largest(stress), 1e-9);
  const encoding = axes(
    { title: 'Compression e / %', from: Math.min(0, -1 * most), to: 112 * most },
    { title: 'Compressive stress R / MPa', from: 0, to: 1.12 * top },
  );
  const named = (side: NamedPoint['side']) => (one: CompressionResult['proofStrengths'][number]) => ({
    x: 100 * one.strain,
    y: one.value,
    text: one.symbol,
    side,
  });
  const at = result.buckling?.reachedAt;
  const watched = result.findings.some(({ code }) => code === 'buckled');
  const buckles = watched ? at : undefined;
  const points = [...result.proofStrengths.map(named('right')), ...result.stressesAtStrain.map(named('left'))];
  if (buckles !== undefined) {
    const i = strain.findIndex((one) => one >= buckles);
    points.push({ x: 100 * buckles, y: stress[Math.max(i, 0)]!, text: 'buckling load', side: 'right' });
  }
  return figure(
    'Compressive stress against compression',
    `Compression curve up to ${(100 * most).toFixed(1)} % and ${top.toFixed(0)} MPa, both counted positive${buckles === undefined ? '' : '; a dashed line marks where buckling begins'}.`,
    [
      lineLayer(thinned({ x: strain, y: stress, xFactor: 100 }), encoding, { color: ink.curve, strokeWidth: 1.6 }),
      ...(buckles === undefined
        ? []
        : [
            lineLayer(
              [
                { i: 0, x: 100 * buckles, y: 0 },
                { i: 1, x: 100 * buckles, y: 1.1 * top },
              ],
              encoding,
              { color: ink.line, strokeDash: [6, 4], strokeWidth: 1.2 },
            ),
          ]),
      ...pointLayers(points, encoding),
    ],
  );
}
