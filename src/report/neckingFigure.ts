import { hardeningPicture, trueCurve } from '../hardening/index.js';
import type { TensionResult } from '../methods/index.js';
import type { Figure } from './Figure.js';
import { figure, plane, type NamedPoint } from './plane.js';
import type { Presentation } from './presentation.js';
import { largest } from './thinned.js';

/** The curve is drawn a little beyond the maximum, to this share of it, so that the crossing can be seen. */
const BEYOND = 0.985;
const FEWEST = 20;

/** @internal Considère's construction: hardening rate and true stress against true strain, with their crossing. */
export function neckingFigure(result: TensionResult, show: Presentation): Figure | undefined {
  const { curve, necking, maximumIndex, tensileStrength, fracture } = result;
  const end = (fracture?.index ?? curve.stress.length - 1) + 1;
  let to = Math.min(maximumIndex, end - 1);
  while (to + 1 < end && curve.stress[to + 1]! > BEYOND * tensileStrength.value) to += 1;
  let from = 0;
  while (from < to && curve.strain[from]! <= 0) from += 1;
  if (!necking || to - from < FEWEST) return undefined;
  const { say, number, value, colours } = show;
  const { strain, stress } = trueCurve(curve, { from, to });
  const { strain: places, rate } = hardeningPicture({ strain, stress });
  const most = largest(strain);
  const top = 1.9 * largest(stress);
  const { line, path, words, points } = plane(
    show,
    { title: say('True strain ε'), from: 0, to: 1.12 * most },
    { title: say('True stress σ and hardening rate dσ/dε'), metric: 'MPa', from: 0, to: top },
  );
  const at = strain.findIndex((one) => one >= necking.value);
  const level = stress[at < 0 ? stress.length - 1 : at]!;
  // the elastic part is far above the plane: the rate gets its name well below the top
  const shown = places.findIndex((one, k) => one > 0.1 * most && rate[k]! < 0.8 * top);
  const third = strain.findIndex((one) => one >= 0.3 * most);
  const named: NamedPoint[] = [{ x: strain[third]!, y: stress[third]!, text: 'σ', side: 'left' }];
  if (shown >= 0) named.push({ x: places[shown]!, y: rate[shown]!, text: 'dσ/dε', side: 'right' });
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
      ...points([{ x: necking.value, y: level, text: say('neck begins'), side: 'left' }]),
    ],
  );
}
