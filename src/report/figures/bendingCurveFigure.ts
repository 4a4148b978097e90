import type { BendingResult } from '../../methods/index.js';
import type { Figure } from './Figure.js';
import { figure } from './figureStyle.js';
import { plane, type NamedPoint } from './plane.js';
import type { Presentation } from '../words/presentation.js';
import { SHARE } from '../words/shownUnit.js';
import { largest } from './thinned.js';

/** @internal Flexural stress against strain of the outer fibre, with the elastic line and the window. */
export function bendingCurveFigure(result: BendingResult, show: Presentation): Figure {
  const { say, percent, value, colours } = show;
  const { strain, stress } = result.curve;
  const most = Math.max(largest(strain), 1e-9);
  const top = Math.max(largest(stress), 1e-9);
  const { line, path, points } = plane(
    show,
    { title: say('Strain of the outer fibre'), metric: SHARE, from: Math.min(0, -0.02 * most), to: 1.12 * most },
    { title: say('Flexural stress σf'), metric: 'MPa', from: 0, to: 1.12 * top },
  );
  const window = result.modulusWindow;
  const named: NamedPoint[] = result.proofStrengths.map((one) => ({ x: one.strain, y: one.value, text: one.symbol, side: 'right' }));
  named.push({
    x: result.strainAtMaximum.value,
    y: result.flexuralStrength.value,
    text: result.flexuralStrength.symbol,
    side: 'left',
  });
  const layers = [line({ x: strain, y: stress }, { color: colours.curve, strokeWidth: 1.6 })];
  if (window) {
    const end: [number, number] = [(1.1 * top) / window.slope, 1.1 * top];
    const inside = { x: strain.subarray(window.first, window.last + 1), y: stress.subarray(window.first, window.last + 1) };
    layers.push(path([[0, 0], end], { color: colours.line, strokeDash: [6, 4], strokeWidth: 1.1 }));
    layers.push(line(inside, { color: colours.mark, strokeWidth: 3.2, opacity: 0.55 }));
  }
  return figure(
    show,
    say('Flexural stress against strain of the outer fibre'),
    say('Bending curve up to {strain} strain of the outer fibre and {stress} by the elastic formulas.', {
      strain: percent(most),
      stress: value(top, 'MPa', 3),
    }),
    [...layers, ...points(named)],
  );
}
