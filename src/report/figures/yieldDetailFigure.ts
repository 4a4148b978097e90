import type { Figure } from './Figure.js';
import { figure } from './figureStyle.js';
import { plane, type NamedPoint } from './plane.js';
import type { Presentation } from '../words/presentation.js';
import { SHARE } from '../words/shownUnit.js';
import type { TensionOrCurve } from '../words/TensionOrCurve.js';

/** @internal The yield point from near: ReH, ReL and the extension that the piece yields by, Ae. */
export function yieldDetailFigure(result: TensionOrCurve, show: Presentation): Figure | undefined {
  const { upperYieldStrength: upper, lowerYieldStrength: lower, yieldPointExtension, curve } = result;
  if (!upper) return undefined;
  const { say, value, percent, colours } = show;
  const { strain, stress } = curve;
  const length = yieldPointExtension?.value ?? 2 * Math.max((lower?.strain ?? 0) - upper.strain, upper.strain);
  const reach = upper.strain + 1.35 * Math.max(length, upper.strain);
  const low = lower?.value ?? 0.9 * upper.value;
  // the fall from ReH to ReL is what is looked at: the axis begins where it fills a good part of the height
  const drop = Math.max(upper.value - low, 0.02 * upper.value);
  const [bottom, top] = [low - 1.6 * drop, upper.value + 0.8 * drop];
  let end = 0;
  while (end < strain.length && (strain[end]! <= reach || end <= upper.index)) end += 1;
  const { line, strokes, words, points } = plane(
    show,
    { title: say('Strain e'), metric: SHARE, from: -0.05 * reach, to: 1.04 * reach },
    { title: say('Stress R'), metric: 'MPa', from: Math.max(0, bottom), to: top },
  );
  const named: NamedPoint[] = [{ x: upper.strain, y: upper.value, text: upper.symbol, side: 'right' }];
  if (lower) named.push({ x: lower.strain, y: lower.value, text: lower.symbol, side: 'right' });
  const layers = [line({ x: strain.subarray(0, end), y: stress.subarray(0, end) }, { color: colours.curve, strokeWidth: 1.5 })];
  if (yieldPointExtension) {
    const [first, last] = [upper.strain, upper.strain + yieldPointExtension.value];
    const level = low - 0.8 * drop;
    const tick = 0.08 * drop;
    layers.push(
      strokes(
        [
          [[first, level], [last, level]],
          [[first, level - tick], [first, level + tick]],
          [[last, level - tick], [last, level + tick]],
        ], // prettier-ignore
        { color: colours.line, strokeWidth: 1.3 },
      ),
      ...words([{ x: (first + last) / 2, y: level, text: `Ae ${percent(yieldPointExtension.value)}`, side: 'right' }]),
    );
  }
  return figure(
    show,
    say('The yield point'),
    lower
      ? say('Yield point: the upper yield strength is {upper}, the lower {lower}.', {
          upper: value(upper.value, 'MPa', 3),
          lower: value(lower.value, 'MPa', 3),
        })
      : say('Yield point: the upper yield strength is {upper}.', { upper: value(upper.value, 'MPa', 3) }),
    [...layers, ...points(named)],
  );
}
