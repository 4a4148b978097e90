import type { Figure } from './Figure.js';
import { figure } from './figureStyle.js';
import { plane, type NamedPoint } from './plane.js';
import type { Presentation } from '../words/presentation.js';
import { SHARE, SLOPE } from '../words/shownUnit.js';
import type { TensionOrCurve } from '../words/TensionOrCurve.js';

/** @internal The elastic part with the window, the elastic line and the offset line. */
export function elasticDetailFigure(result: TensionOrCurve, show: Presentation): Figure | undefined {
  const window = result.modulusWindow;
  if (!window) return undefined;
  const { say, value, colours } = show;
  const { strain, stress } = result.curve;
  const proof = result.proofStrengths[0];
  const upper = result.upperYieldStrength;
  const level = Math.max(proof?.value ?? 0, upper?.value ?? 0, window.stressLimits[1]);
  const reach = Math.max((proof?.strain ?? 0) * 1.4, (level / window.slope) * 1.5, 1e-9);
  let end = 0;
  while (end < strain.length && (strain[end]! <= reach || end < window.last)) end += 1;
  const { line, path, points } = plane(
    show,
    { title: say('Strain e'), metric: SHARE, from: -0.05 * reach, to: reach },
    { title: say('Stress R'), metric: 'MPa', from: 0, to: 1.18 * level },
  );
  const straight = (offset: number): [number, number][] => [
    [offset, 0],
    [offset + (1.1 * level) / window.slope, 1.1 * level],
  ];
  const inside = { x: strain.subarray(window.first, window.last + 1), y: stress.subarray(window.first, window.last + 1) };
  const named: NamedPoint[] = [];
  if (upper) named.push({ x: upper.strain, y: upper.value, text: 'ReH', side: 'left' });
  if (proof) named.push({ x: proof.strain, y: proof.value, text: proof.symbol, side: 'right' });
  // left of the line is nothing else
  const middle = ([low, high]: readonly [number, number]): number => (low + high) / 2;
  named.push({ x: middle(window.strainLimits), y: middle(window.stressLimits), text: say('window'), side: 'left' });
  return figure(
    show,
    say('The elastic part, its window and the offset line'),
    say('Elastic line of slope {slope} fitted from {low} to {high}.', {
      slope: value(window.slope, SLOPE, 4),
      low: value(window.stressLimits[0], 'MPa', 3),
      high: value(window.stressLimits[1], 'MPa', 3),
    }),
    [
      line({ x: strain.subarray(0, end), y: stress.subarray(0, end) }, { color: colours.curve, strokeWidth: 1.4 }),
      path(straight(0), { color: colours.line, strokeDash: [6, 4], strokeWidth: 1.1 }),
      ...(proof ? [path(straight(proof.extension), { color: colours.line, strokeDash: [2, 3], strokeWidth: 1.3 })] : []),
      line(inside, { color: colours.mark, strokeWidth: 3.2, opacity: 0.55 }),
      ...points(named),
    ],
  );
}
