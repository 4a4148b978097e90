import type { Figure } from './Figure.js';
import { evaluatedStretches } from './evaluatedStretches.js';
import { figure } from './figureStyle.js';
import { plane, type NamedPoint } from './plane.js';
import type { Presentation } from '../words/presentation.js';
import { SHARE } from '../words/shownUnit.js';
import type { TensionOrCurve } from '../words/TensionOrCurve.js';
import { largest } from './thinned.js';

/** @internal One past the last sample that a figure shows: fracture, or the end. */
export const shownEnd = (result: TensionOrCurve): number => (result.fracture ? result.fracture.index + 1 : result.curve.strain.length);

/** Points of the curve that have names, in per cent of strain and MPa. */
function namedPoints(result: TensionOrCurve, { say }: Presentation): NamedPoint[] {
  const points: NamedPoint[] = [];
  const add = (strain: number, stress: number, text: string, side: NamedPoint['side']) => points.push({ x: strain, y: stress, text, side });
  for (const point of [result.upperYieldStrength, result.lowerYieldStrength])
    if (point) add(point.strain, point.value, point.symbol, point.symbol === 'ReH' ? 'left' : 'right');
  if (!result.upperYieldStrength)
    for (const proof of result.proofStrengths.slice(0, 1)) add(proof.strain, proof.value, proof.symbol, 'right');
  const agt = result.totalExtensionAtMaximumForce;
  if (agt && result.tensileStrength) add(agt.value, result.tensileStrength.value, say('Rm at Agt'), 'left');
  if (result.fracture) add(result.fracture.strain, result.fracture.stress, say('fracture'), 'under');
  return points;
}

/** @internal Stress against strain. */
export function stressStrainFigure(result: TensionOrCurve, show: Presentation): Figure {
  const { say, percent, value } = show;
  const end = shownEnd(result);
  const { strain, stress } = result.curve;
  const most = Math.max(largest(strain, end), 1e-9);
  const top = Math.max(largest(stress, end), 1e-9);
  const { stretches, sentences } = evaluatedStretches(result, end, show);
  const { line, points } = plane(
    show,
    { title: say('Strain e'), metric: SHARE, from: Math.min(0, -0.01 * most), to: 1.06 * most },
    { title: say('Stress R'), metric: 'MPa', from: 0, to: 1.1 * top },
  );
  return figure(
    show,
    say('Stress against strain'),
    [
      say('Stress-strain curve up to {strain} of strain and {stress}.', { strain: percent(most), stress: value(top, 'MPa', 3) }),
      ...sentences,
    ].join(' '),
    [
      ...stretches.map(({ from, to, color, most }) =>
        line({ x: strain.subarray(from, to), y: stress.subarray(from, to), most }, { color, strokeWidth: 1.6 }),
      ),
      ...points(namedPoints(result, show)),
    ],
  );
}
