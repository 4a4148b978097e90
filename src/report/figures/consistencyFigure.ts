import { requirePositive, requireFinite, InputError } from '../../base/index.js';
import type { ConsistencyWeb } from '../../methods/index.js';
import type { Figure } from './Figure.js';
import { figure } from './figureStyle.js';
import { plane, type Place } from './plane.js';
import { shownTo, type FigureOptions } from '../words/presentation.js';
import { requireMade } from './requireMade.js';

const FROM = 'consistencyFigure';
/** A link that is further off than this is drawn at the edge. */
const FARTHEST = 4;
const WIDE = 0.2;

/**
 * The values of one test against each other as plain Vega-Lite JSON: for each link the difference of its sides in tolerances.
 *
 * @remarks
 * A link holds where its point lies in the shaded part: within one tolerance where both sides must be equal, above minus one where the left is to be at least the right. Broken links are
 * open squares. Beyond four tolerances a point stands at the edge.
 *
 * @param web - A result of `checkConsistency`.
 * @param options - Language, units, ground.
 * @returns The figure.
 * @throws {@link InputError} `missing`, `wrong-type`, `empty` where there is no link, `not-finite`, `not-positive`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * const record = { force: [0, 10000, 20000, 19000], strain: [0, 0.001, 0.2, 0.25] };
 * const result = analyseTension(record, { section: sectionFromArea({ area: 50 }), gaugeLength: 40 });
 * consistencyFigure(checkConsistency(result, { hardness: { value: 120 } })).title; // => 'Values of the test against each other'
 * ```
 *
 * @see Common practice. Checked in `test/report/studyFigures.test.ts`.
 */
export function consistencyFigure(web: ConsistencyWeb, options: FigureOptions = {}): Figure {
  const { links } = requireMade(FROM, 'web', web, { lists: ['links'] });
  if (links.length === 0) throw new InputError(FROM, 'web.links', 'empty', 'must hold a link', 0);
  const show = shownTo(FROM, options);
  const { say, term, colours } = show;
  const rows = links.map(({ left, right, relation, difference, tolerance, holds }, k) => {
    const off =
      requireFinite(FROM, `web.links[${k}].difference`, difference) / requirePositive(FROM, `web.links[${k}].tolerance`, tolerance);
    const name = `${term(left.symbol)} ${relation === 'equal' ? '=' : '≥'} ${term(right.symbol)}`;
    return { name, off: Math.max(-FARTHEST, Math.min(FARTHEST, off)), holds, open: relation === 'at-least' };
  });
  const edge = FARTHEST + 0.3;
  const { boxes, path, marks } = plane(
    show,
    { title: say('Difference, in tolerances'), from: -edge, to: edge },
    { title: '', names: rows.map(({ name }) => name) },
  );
  const places = (good: boolean): Place[] => rows.flatMap(({ off, holds }, k): Place[] => (holds === good ? [[off, k]] : []));
  const broken = rows.filter(({ holds }) => !holds).map(({ name }) => name);
  return figure(
    show,
    say('Values of the test against each other'),
    broken.length === 0
      ? say('{links} links between values; all hold.', { links: rows.length })
      : say('{links} links between values; broken: {names}.', { links: rows.length, names: show.listed(broken) }),
    [
      boxes(rows.map(({ open }, k): [Place, Place] => [[-1, k - WIDE], [open ? edge : 1, k + WIDE]]), { color: colours.law, opacity: 0.25 }), // prettier-ignore
      path([[0, -0.5], [0, rows.length - 0.5]], { color: colours.axis, strokeWidth: 1 }), // prettier-ignore
      ...(broken.length < rows.length ? [marks(places(true), { filled: true, color: colours.curve, size: 70 })] : []),
      ...(broken.length > 0 ? [marks(places(false), { shape: 'square', color: colours.line, size: 90, strokeWidth: 2 })] : []),
    ],
    { names: rows.map(({ name }) => name), height: 40 + 36 * rows.length },
  );
}
