import { hardeningPicture, trueCurve } from '../hardening/index.js';
import type { Figure } from './Figure.js';
import { figure, plane, type NamedPoint } from './plane.js';
import type { Presentation } from './presentation.js';
import type { TensionOrCurve } from './TensionOrCurve.js';
import { largest } from './thinned.js';

/** The curve is drawn a little beyond the maximum, to this share of it, so that the crossing can be seen. */
const BEYOND = 0.985;
const FEWEST = 20;
/** A force below this share of the highest so far is falling. */
const STEADY = 0.998;

/**
 * The part that hardens, without the falls of the force in pauses, nor the yield point and its plateau: a rate of them says nothing of the metal.
 * The true curve begins at sample `from`.
 */
function hardeningPart(
  { upperYieldStrength: upper, maximumIndex }: TensionOrCurve,
  strain: Float64Array,
  stress: Float64Array,
  from: number,
) {
  const kept: number[] = [];
  let highest = 0;
  for (let i = upper ? Math.max(0, upper.index - from) : 0; i < stress.length; i += 1) {
    const nominal = stress[i]! / Math.exp(strain[i]!);
    highest = Math.max(highest, nominal);
    if (i + from >= maximumIndex || nominal > STEADY * highest) kept.push(i);
  }
  // in front of a plateau stand a few samples of the yield point itself
  const first = upper ? kept.findIndex((i, k) => k > 0 && i > kept[k - 1]! + 1) : 0;
  const part = kept.slice(Math.max(0, first));
  return { strain: Float64Array.from(part, (i) => strain[i]!), stress: Float64Array.from(part, (i) => stress[i]!) };
}

/** @internal Considère's construction: hardening rate and true stress against true strain, with their crossing. */
export function neckingFigure(result: TensionOrCurve, show: Presentation): Figure | undefined {
  const { curve, necking, maximumIndex, tensileStrength, fracture } = result;
  const end = (fracture?.index ?? curve.stress.length - 1) + 1;
  let to = Math.min(maximumIndex, end - 1);
  while (to + 1 < end && curve.stress[to + 1]! > BEYOND * tensileStrength.value) to += 1;
  let from = 0;
  while (from < to && curve.strain[from]! <= 0) from += 1;
  if (!necking || to - from < FEWEST) return undefined;
  const { say, number, value, colours } = show;
  const { strain, stress } = trueCurve(curve, { from, to });
  const { strain: places, rate } = hardeningPicture(hardeningPart(result, strain, stress, from));
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
