import type { CompressionResult } from '../methods/index.js';
import { hollomon } from '../hardening/index.js';
import { axes, figure, ink, largest, lineLayer, thinned, type Figure } from './figureParts.js';

const PLACES = 80;

/** @internal True stress over true strain, and the flow curve with its law. */
export function compressionFlowFigure({ flowCurve, trueCurve, hardening }: CompressionResult): Figure | undefined {
  if (!flowCurve || flowCurve.strain.length < 3) return undefined;
  const most = Math.max(largest(flowCurve.strain), trueCurve ? largest(trueCurve.strain) : 0);
  const top = Math.max(largest(flowCurve.stress), trueCurve ? largest(trueCurve.stress) : 0);
  const encoding = axes({ title: 'True strain ε', from: 0, to: 1.06 * most }, { title: 'True stress σ / MPa', from: 0, to: 1.12 * top });
  const layers = [];
  if (trueCurve)
    layers.push(
      lineLayer(thinned({ x: trueCurve.strain, y: trueCurve.stress }), encoding, { color: ink.mark, strokeDash: [2, 3], strokeWidth: 1.2 }),
    );
  layers.push(lineLayer(thinned({ x: flowCurve.strain, y: flowCurve.stress }), encoding, { color: ink.curve, strokeWidth: 1.7 }));
  if (hardening) {
    const law = hollomon({ strengthCoefficient: hardening.strengthCoefficient.value, exponent: hardening.exponent.value });
    const [from, to] = hardening.range;
    const x = Array.from({ length: PLACES }, (_, k) => from + ((to - from) * k) / (PLACES - 1));
    layers.push(lineLayer(thinned({ x, y: x.map(law.stress) }), encoding, { color: ink.law, strokeDash: [5, 3], strokeWidth: 1.3 }));
  }
  return figure(
    'Flow stress against true plastic strain',
    `Full line: flow curve up to a true plastic strain of ${most.toFixed(3)}${trueCurve ? '; dots: true stress over total true strain, friction included' : ''}${hardening ? `; dashes: law with n = ${hardening.exponent.value.toFixed(3)}` : ''}.`,
    layers,
  );
}
