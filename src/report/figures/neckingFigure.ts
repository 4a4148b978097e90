import type { Figure } from './Figure.js';
import { figure } from './figureStyle.js';
import { hardeningPart } from './hardeningPart.js';
import { plane, type NamedPoint } from './plane.js';
import type { Presentation } from '../words/presentation.js';
import type { TensionOrCurve } from '../words/TensionOrCurve.js';
import { largest } from './thinned.js';

/** @internal Considère's construction: hardening rate and true stress against true strain, with their crossing. */
export function neckingFigure(result: TensionOrCurve, show: Presentation): Figure | undefined {
  const { necking } = result;
  const part = necking && hardeningPart(result);
  if (!part) return undefined;
  const { say, number, value, colours } = show;
  const { strain, stress } = part.curve;
  const { strain: places, rate } = part.picture;
  const most = largest(strain);
  const top = 1.9 * largest(stress);
  const { line, path, words, marks } = plane(
    show,
    { title: say('True strain ε'), from: 0, to: 1.12 * most },
    { title: say('True stress, hardening rate'), metric: 'MPa', from: 0, to: top },
  );
  const at = strain.findIndex((one) => one >= necking.value);
  const level = stress[at < 0 ? stress.length - 1 : at]!;
  // the elastic part is far above the plane: the rate gets its name well below the top
  const shown = places.findIndex((one, k) => one > 0.1 * most && rate[k]! < 0.8 * top);
  const third = strain.findIndex((one) => one >= 0.3 * most);
  const named: NamedPoint[] = [{ x: strain[third]!, y: stress[third]!, text: 'σ', side: 'left' }];
  if (shown >= 0) named.push({ x: places[shown]!, y: rate[shown]!, text: 'dσ/dε', side: 'over' });
  return figure(
    show,
    say("Considère's construction: where the neck begins"),
    say('The hardening rate falls to the true stress of {stress} at a true strain of {strain}: there the neck begins.', {
      stress: value(level, 'MPa', 3),
      strain: number(necking.value, 3),
    }),
    [
      line({ x: strain, y: stress }, { color: colours.curve, strokeWidth: 1.6 }),
      line({ x: places, y: rate }, { color: colours.law, strokeWidth: 1.4, strokeDash: [6, 3] }),
      path([[necking.value, 0], [necking.value, level]], { color: colours.line, strokeWidth: 1, strokeDash: [2, 3] }), // prettier-ignore
      ...words(named),
      marks([[necking.value, level]]), // prettier-ignore
      ...words([{ x: necking.value, y: 0.06 * top, text: say('neck begins'), side: 'left' }]),
    ],
  );
}
