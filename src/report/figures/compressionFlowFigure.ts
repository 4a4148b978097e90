import { hollomon } from '../../hardening/index.js';
import type { CompressionResult } from '../../methods/index.js';
import type { Figure } from './Figure.js';
import { figure } from './figureStyle.js';
import { plane, type NamedPoint } from './plane.js';
import type { Presentation } from '../words/presentation.js';
import { largest } from './thinned.js';

const PLACES = 80;

/** @internal True stress over true strain, and the flow curve with its law. */
export function compressionFlowFigure({ flowCurve, trueCurve, hardening }: CompressionResult, show: Presentation): Figure | undefined {
  if (!flowCurve || flowCurve.strain.length < 3) return undefined;
  const { say, number, colours } = show;
  const most = Math.max(largest(flowCurve.strain), trueCurve ? largest(trueCurve.strain) : 0);
  const top = Math.max(largest(flowCurve.stress), trueCurve ? largest(trueCurve.stress) : 0);
  const { line, words: names } = plane(
    show,
    { title: say('True strain ε'), from: 0, to: 1.06 * most },
    { title: say('True stress σ'), metric: 'MPa', from: 0, to: 1.12 * top },
  );
  const layers = [];
  const named: NamedPoint[] = [];
  /** A name beside a line, at a share of its samples. */
  const name = (x: ArrayLike<number>, y: ArrayLike<number>, share: number, text: string, side: NamedPoint['side']) => {
    const at = Math.floor(share * (x.length - 1));
    named.push({ x: x[at]!, y: y[at]!, text, side });
  };
  const words = [say('Full line: flow curve up to a true plastic strain of {strain}.', { strain: number(most, 3) })];
  if (trueCurve) {
    layers.push(line({ x: trueCurve.strain, y: trueCurve.stress }, { color: colours.mark, strokeDash: [2, 3], strokeWidth: 1.2 }));
    name(trueCurve.strain, trueCurve.stress, 0.85, say('with friction, total strain'), 'left');
    words.push(say('Dots: true stress over total true strain, friction included.'));
  }
  layers.push(line({ x: flowCurve.strain, y: flowCurve.stress }, { color: colours.curve, strokeWidth: 1.7 }));
  name(flowCurve.strain, flowCurve.stress, 0.5, say('flow curve, plastic strain'), 'right');
  if (hardening) {
    const law = hollomon({ strengthCoefficient: hardening.strengthCoefficient.value, exponent: hardening.exponent.value });
    const [from, to] = hardening.range;
    const x = Array.from({ length: PLACES }, (_, k) => from + ((to - from) * k) / (PLACES - 1));
    layers.push(line({ x, y: x.map(law.stress) }, { color: colours.law, strokeDash: [5, 3], strokeWidth: 1.3 }));
    name(x, x.map(law.stress), 0.1, say('law'), 'right');
    words.push(say('Dashes: law with n = {n}.', { n: number(hardening.exponent.value, 3) }));
  }
  return figure(show, say('True stress against true strain, with the flow curve'), words.join(' '), [...layers, ...names(named)]);
}
