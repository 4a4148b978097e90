import { InputError, requireFinite, type StressStrainCurve } from '../../base/index.js';
import { requireCurve } from '../../curve/index.js';
import type { ModulusWindow, WindowSummary } from '../../methods/index.js';
import { extentOf } from './extentOf.js';
import type { Figure } from './Figure.js';
import { figure } from './figureStyle.js';
import { plane, type Place } from './plane.js';
import { shownTo, type FigureOptions } from '../words/presentation.js';
import { requireMade } from './requireMade.js';
import { SLOPE } from '../words/shownUnit.js';

const FROM = 'windowsFigure';

/**
 * Slope of the elastic line by the window that it is taken from, as plain Vega-Lite JSON.
 *
 * @remarks
 * Each stroke is a window: it reaches over the stresses that it spans, at the height of its slope; the thick one was chosen, the others are runners-up. The band holds the
 * slopes of all windows that the rule allows: where it is narrow, the choice does not matter. The description says what the windows mean for Rp0.2.
 *
 * @param curve - Strain and stress that the windows count the samples of: `curve` of a result.
 * @param line - `modulusWindow` of a result.
 * @param options - Language, units, ground.
 * @returns The figure.
 * @throws {@link InputError} `missing`, `wrong-type`, `not-finite`, `unequal-lengths`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * const force = Array.from({ length: 200 }, (_, i) => 100 * i);
 * const { curve, modulusWindow } = analyseTension(
 *   { force, strain: force.map((F) => F / (50 * 70000) + 0.002 * (F / 15000) ** 12) },
 *   { section: sectionFromArea({ area: 50 }), gaugeLength: 40 },
 * );
 * const drawn = modulusWindow && windowsFigure(curve, modulusWindow);
 * drawn?.title; // => 'Slope of the elastic line by its window'
 * ```
 *
 * @see Common practice. Checked in `test/report/studyFigures.test.ts`.
 */
export function windowsFigure(
  curve: StressStrainCurve,
  line: Pick<ModulusWindow, 'slope' | 'first' | 'last' | 'alternatives' | 'envelope'>,
  options: FigureOptions = {},
): Figure {
  const { stress } = requireCurve(FROM, curve);
  requireMade(FROM, 'line', line, { numbers: ['slope', 'first', 'last'], lists: ['alternatives'] });
  const show = shownTo(FROM, options);
  const { say, value, colours } = show;
  const stroke = ({ first, last, slope }: WindowSummary, path: string): [Place, Place] => {
    const [low, high] = [stress[first], stress[last]];
    if (low === undefined || high === undefined)
      throw new InputError(FROM, `${path}.last`, 'out-of-range', 'must be a sample of the curve', last);
    const height = requireFinite(FROM, `${path}.slope`, slope);
    return [[low, height], [high, height]]; // prettier-ignore
  };
  const own = stroke(line, 'line');
  const others = line.alternatives.map((one, k) => stroke(one, `line.alternatives[${k}]`));
  const range = line.envelope?.slope ?? [];
  const all = [own, ...others];
  const across = extentOf([all.flatMap(([[low], [high]]) => [low, high])], 0.15);
  const { boxes, strokes, words } = plane(
    show,
    { title: say('Stress R'), metric: 'MPa', from: Math.max(0, across.from), to: across.to },
    { title: say('Slope of the line'), metric: SLOPE, ...extentOf([all.map(([[, height]]) => height), range], 0.3) },
  );
  const layers = [];
  const [low, high] = range;
  if (low !== undefined && high !== undefined)
    layers.push(boxes([[[Math.max(0, across.from), low], [across.to, high]]], { color: colours.curve, opacity: 0.15 })); // prettier-ignore
  if (others.length > 0) layers.push(strokes(others, { color: colours.law, strokeWidth: 1.4, strokeDash: [6, 3] }));
  layers.push(strokes([own], { color: colours.curve, strokeWidth: 4 }));
  layers.push(...words([{ x: own[1][0], y: own[1][1], text: say('window'), side: 'right' }]));
  const { envelope } = line;
  const proof = envelope?.proofStrength;
  const slopes = envelope && {
    windows: envelope.windows,
    low: value(low!, SLOPE, 4),
    high: value(high!, SLOPE, 4),
    verdict: show.term(envelope.verdict),
  };
  return figure(
    show,
    say('Slope of the elastic line by its window'),
    !slopes
      ? say('Slope {slope} by the window that was chosen.', { slope: value(line.slope, SLOPE, 4) })
      : proof
        ? say('Other windows ({windows}) give slopes from {low} to {high} and Rp0.2 from {lowProof} to {highProof}: {verdict}.', {
            ...slopes,
            lowProof: value(proof[0], 'MPa', 4),
            highProof: value(proof[1], 'MPa', 4),
          })
        : say('Other windows ({windows}) give slopes from {low} to {high}: {verdict}.', slopes),
    layers,
  );
}
