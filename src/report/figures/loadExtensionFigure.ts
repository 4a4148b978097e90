import type { TensionResult } from '../../methods/index.js';
import type { Figure } from './Figure.js';
import { evaluatedStretches } from './evaluatedStretches.js';
import { figure } from './figureStyle.js';
import { plane, type NamedPoint } from './plane.js';
import type { Presentation } from '../words/presentation.js';
import { FORCE } from '../words/shownUnit.js';
import { shownEnd } from './stressStrainFigure.js';
import { largest } from './thinned.js';

/** @internal Force against extension, over the length that the strain counts over. */
export function loadExtensionFigure(result: TensionResult, show: Presentation): Figure {
  const { say, value } = show;
  const end = shownEnd(result);
  const { strain, stress } = result.curve;
  const { strainLength: length, fracture, totalExtensionAtMaximumForce: agt } = result;
  const { area } = result.testPiece.section;
  const most = Math.max(largest(strain, end) * length, 1e-9);
  const top = Math.max(largest(stress, end) * area, 1e-9);
  const { stretches, sentences } = evaluatedStretches(result, end, show);
  const { line, points } = plane(
    show,
    { title: say('Extension over {length}', { length: value(length, 'mm', 4) }), metric: 'mm', from: -0.01 * most, to: 1.06 * most },
    { title: say('Force F'), metric: FORCE, from: 0, to: 1.1 * top },
  );
  const named = (at: number, level: number, text: string, side: NamedPoint['side']): NamedPoint => ({
    x: at * length,
    y: level * area,
    text,
    side,
  });
  return figure(
    show,
    say('Force against extension'),
    [
      say('Force up to {force} at extensions up to {extension}.', { force: value(top, FORCE, 3), extension: value(most, 'mm', 3) }),
      ...sentences,
    ].join(' '),
    [
      ...stretches.map(({ from, to, color, most }) =>
        line(
          { x: strain.subarray(from, to), y: stress.subarray(from, to), xFactor: length, yFactor: area, most },
          { color, strokeWidth: 1.6 },
        ),
      ),
      ...points([
        ...(agt && result.tensileStrength ? [named(agt.value, result.tensileStrength.value, 'Fm', 'left')] : []),
        ...(fracture ? [named(fracture.strain, fracture.stress, say('fracture'), 'under')] : []),
      ]),
    ],
  );
}
