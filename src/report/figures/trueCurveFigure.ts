import { hasTrueCurve, hollomon, trueCurve } from '../../hardening/index.js';
import { firstReaching } from '../../numeric/index.js';
import type { Figure } from './Figure.js';
import { figure } from './figureStyle.js';
import { plane, type NamedPoint } from './plane.js';
import type { Presentation } from '../words/presentation.js';
import type { TensionOrCurve } from '../words/TensionOrCurve.js';
import { largest } from './thinned.js';

const PLACES = 80;

/** @internal The true curve up to maximum force, with the fitted law and the onset of necking. */
export function trueCurveFigure(result: TensionOrCurve, show: Presentation): Figure | undefined {
  const { curve, hardening, necking, elasticSlope } = result;
  const { say, number, value, colours } = show;
  const to = Math.min(result.maximumIndex, curve.strain.length - 1);
  // slack before the origin has no true strain to speak of
  const from = firstReaching(curve.strain, 0, 0, to);
  if (to - from < 3 || !hasTrueCurve(curve.strain, from, to)) return undefined;
  const { strain, stress } = trueCurve(curve, { from, to });
  const most = Math.max(largest(strain), necking?.value ?? 0);
  const top = largest(stress);
  const { line, points } = plane(
    show,
    { title: say('True strain ε'), from: 0, to: 1.12 * most },
    { title: say('True stress σ'), metric: 'MPa', from: 0, to: 1.15 * top },
  );
  const layers = [line({ x: strain, y: stress }, { color: colours.curve, strokeWidth: 1.6 })];
  const named: NamedPoint[] = [];
  if (hardening && elasticSlope) {
    const [K, n] = [hardening.strengthCoefficient.value, hardening.exponent.value];
    const law = hollomon({ strengthCoefficient: K, exponent: n });
    const plastic = Array.from({ length: PLACES }, (_, k) => (hardening.range[1] * 1.1 * (k + 1)) / PLACES);
    const law0 = { x: plastic.map((p) => p + law.stress(p) / elasticSlope.value), y: plastic.map(law.stress) };
    layers.push(line(law0, { color: colours.law, strokeDash: [5, 3], strokeWidth: 1.3 }));
    const middle = Math.floor(PLACES / 2);
    named.push({
      x: law0.x[middle]!,
      y: law0.y[middle]!,
      text: `σ = K εpⁿ, K = ${value(K, 'MPa', 3)}, n = ${number(n, 3)}`,
      side: 'right',
    });
  }
  if (necking) {
    const at = strain.findIndex((one) => one >= necking.value);
    named.push({ x: necking.value, y: at < 0 ? top : stress[at]!, text: say('neck begins'), side: 'left' });
  }
  const reach = { strain: number(most, 3) };
  return figure(
    show,
    say('True stress against true strain, up to maximum force'),
    hardening
      ? say('True curve up to a true strain of {strain}; law with n = {n}.', { ...reach, n: number(hardening.exponent.value, 3) })
      : say('True curve up to a true strain of {strain}.', reach),
    [...layers, ...points(named)],
  );
}
