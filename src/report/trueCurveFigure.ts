import { hollomon, trueCurve } from '../hardening/index.js';
import type { TensionResult } from '../methods/index.js';
import { axes, figure, ink, largest, lineLayer, pointLayers, thinned, type Figure, type NamedPoint } from './figureParts.js';

const PLACES = 80;

/** @internal The true curve up to maximum force, with the fitted law and the onset of necking. */
export function trueCurveFigure(result: TensionResult): Figure | undefined {
  const { curve, hardening, necking, elasticSlope } = result;
  const to = Math.min(result.maximumIndex, curve.strain.length - 1);
  let from = 0;
  // slack before the origin has no true strain to speak of
  while (from < to && curve.strain[from]! < 0) from += 1;
  if (to - from < 3) return undefined;
  const { strain, stress } = trueCurve(curve, { from, to });
  const most = Math.max(largest(strain), necking?.value ?? 0);
  const top = largest(stress);
  const encoding = axes({ title: 'True strain ε', from: 0, to: 1.12 * most }, { title: 'True stress σ / MPa', from: 0, to: 1.15 * top });
  const layers = [lineLayer(thinned({ x: strain, y: stress }), encoding, { color: ink.curve, strokeWidth: 1.6 })];
  const points: NamedPoint[] = [];
  if (hardening && elasticSlope) {
    const law = hollomon({ strengthCoefficient: hardening.strengthCoefficient.value, exponent: hardening.exponent.value });
    const plastic = Array.from({ length: PLACES }, (_, k) => (hardening.range[1] * 1.1 * (k + 1)) / PLACES);
    const law0 = { x: plastic.map((p) => p + law.stress(p) / elasticSlope.value), y: plastic.map(law.stress) };
    layers.push(lineLayer(thinned(law0), encoding, { color: ink.law, strokeDash: [5, 3], strokeWidth: 1.3 }));
    const middle = Math.floor(PLACES / 2);
    points.push({
      x: law0.x[middle]!,
      y: law0.y[middle]!,
      text: `σ = ${hardening.strengthCoefficient.value.toFixed(0)} εp^${hardening.exponent.value.toFixed(3)}`,
      side: 'right',
    });
  }
  if (necking) {
    const at = strain.findIndex((one) => one >= necking.value);
    points.push({ x: necking.value, y: at < 0 ? top : stress[at]!, text: 'neck begins', side: 'left' });
  }
  return figure(
    'True stress against true strain, up to maximum force',
    `True curve up to a true strain of ${most.toFixed(3)}${hardening ? `; law with n = ${hardening.exponent.value.toFixed(3)}` : ''}.`,
    [...layers, ...pointLayers(points, encoding)],
  );
}
