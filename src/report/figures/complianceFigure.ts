import { InputError, requireColumn, requireList, requireObject, requirePositive } from '../../base/index.js';
import type { CompliancePull, FittedCompliance } from '../../curve/index.js';
import { firstReaching } from '../../numeric/index.js';
import type { Figure } from './Figure.js';
import { extentOf } from './extentOf.js';
import { figure } from './figureStyle.js';
import { plane, type Place } from './plane.js';
import { shownTo, type FigureOptions } from '../words/presentation.js';
import { requireMade } from './requireMade.js';
import { FORCE } from '../words/shownUnit.js';
import { valueAxis } from './valueAxis.js';
import { thinned } from './thinned.js';

/** Options of {@link complianceFigure}. */
export interface ComplianceFigureOptions extends FigureOptions {
  /** The pulls that it was fitted to, to be drawn as points; default none. */
  readonly pulls?: readonly CompliancePull[] | undefined;
  /** Modulus of the pieces that is taken off their travel [MPa]; default that of the fit, where it found one. */
  readonly modulus?: number | undefined;
}

const FROM = 'complianceFigure';
/** Points in all pulls together. */
const MOST = 160;
const SHAPES = ['circle', 'square', 'triangle-up', 'diamond'] as const;

/** Travel of a pull less the stretch of its piece, counted so that it agrees with the fit in the mean. */
function frameMotion(
  { force, travel, effectiveLength, area }: CompliancePull,
  modulus: number,
  fit: (force: number) => number,
): [Float64Array, Float64Array] {
  const own = Float64Array.from(force, (F, i) => travel[i]! - (F * effectiveLength) / (modulus * area));
  const shift = own.reduce((sum, one, i) => sum + (one - fit(force[i]!)) / own.length, 0);
  return [Float64Array.from(force), own.map((one) => one - shift)];
}

/**
 * Motion of the frame against force as plain Vega-Lite JSON: the fitted compliance with its band, and the pulls with the stretch of their pieces taken off.
 *
 * @remarks
 * The band is twice the standard uncertainty on either side. Each pull has a mark of its own; its zero of travel, which the fit does not know, is
 * moved to where it agrees with the fit in the mean.
 *
 * @param fitted - A result of `fitCompliance`.
 * @param options - `pulls`, `modulus` [MPa]; language, units, ground.
 * @returns The figure.
 * @throws {@link InputError} `missing`, `wrong-type`, `empty`, `not-finite`, `not-positive`, `unequal-lengths`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * const force = Array.from({ length: 50 }, (_, i) => 200 * (i + 1));
 * const pull = (effectiveLength: number) => ({
 *   force, effectiveLength, area: 50, travel: force.map((F) => F * (2e-5 + effectiveLength / (210000 * 50))),
 * });
 * const pulls = [pull(40), pull(80)];
 * complianceFigure(required(fitCompliance(pulls)), { pulls }).title; // => 'Motion of the frame'
 * ```
 *
 * @see Springs in series. Checked in `test/report/studyFigures.test.ts`.
 */
export function complianceFigure(fitted: FittedCompliance, options: ComplianceFigureOptions = {}): Figure {
  const { force, travel, standardUncertainty } = requireMade(FROM, 'fitted', fitted, {
    columns: ['force', 'travel', 'standardUncertainty'],
  });
  requireColumn(FROM, 'fitted.force', force, { least: 2 });
  for (const name of ['travel', 'standardUncertainty'] as const)
    requireColumn(FROM, `fitted.${name}`, fitted[name], { length: force.length });
  const show = shownTo(FROM, options, ['pulls', 'modulus']);
  const { say, value, colours } = show;
  const pulls = requireList(FROM, 'options.pulls', options.pulls ?? [], 0);
  pulls.forEach((pull, k) => {
    const path = `options.pulls[${k}]`;
    requireObject(FROM, path, pull);
    const { length } = requireColumn(FROM, `${path}.force`, pull.force);
    requireColumn(FROM, `${path}.travel`, pull.travel, { length });
    for (const name of ['effectiveLength', 'area'] as const) requirePositive(FROM, `${path}.${name}`, pull[name]);
  });
  const given = options.modulus === undefined ? fitted.modulus : requirePositive(FROM, 'options.modulus', options.modulus);
  if (pulls.length > 0 && given === undefined)
    throw new InputError(
      FROM,
      'options.modulus',
      'missing',
      'must be given: the fit found none, and the stretch of the pieces is taken off by it',
      given,
    );
  const n = force.length;
  const fit = (F: number): number => {
    const k = firstReaching(force, F, 1, n - 1);
    const share = (F - force[k - 1]!) / (force[k]! - force[k - 1]! || 1);
    return travel[k - 1]! + share * (travel[k]! - travel[k - 1]!);
  };
  const clouds = pulls.map((pull): Place[] => {
    const [F, x] = frameMotion(pull, given!, fit);
    return thinned({ x: F, y: x, most: Math.max(8, MOST / pulls.length) }).map((one) => [one.x, one.y]);
  });
  const [low, high] = [-2, 2].map((times) => travel.map((x, k) => x + times * standardUncertainty[k]!)) as [Float64Array, Float64Array];
  const { line, band, marks } = plane(
    show,
    {
      title: say('Force F'),
      metric: FORCE,
      ...extentOf([force, ...clouds.map((cloud) => cloud.map(([F]) => F))], 0.04),
    },
    { title: say('Motion of the frame'), metric: 'mm', ...extentOf([low, high, ...clouds.map((cloud) => cloud.map(([, x]) => x))], 0.06) },
  );
  const last = travel[n - 1]!;
  const { doubt, beside } = valueAxis('', 'mm', show);
  const said = {
    motion: beside(last, standardUncertainty[n - 1]!, 3),
    force: value(force[n - 1]!, FORCE, 3),
    doubt: doubt(standardUncertainty[n - 1]!),
  };
  return figure(
    show,
    say('Motion of the frame'),
    pulls.length > 0
      ? say('The frame gives {motion} up to {force} (standard uncertainty {doubt}), by {pulls} pulls.', { ...said, pulls: pulls.length })
      : say('The frame gives {motion} up to {force} (standard uncertainty {doubt}).', said),
    [
      band(Array.from(force, (F, k) => [F, low[k]!, high[k]!] as const), { color: colours.curve, opacity: 0.2 }), // prettier-ignore
      ...clouds.map((cloud, k) => marks(cloud, { shape: SHAPES[k % SHAPES.length]!, size: 22, strokeWidth: 0.9 })),
      line({ x: force, y: travel }, { color: colours.curve, strokeWidth: 1.8 }),
    ],
  );
}
