import { requireObject } from '../base/index.js';
import type { Figure } from '../report/index.js';
import { drawFigure, requireDrawOptions, type DrawOptions } from './drawFigure.js';

/**
 * Draws named figures as SVG, for `renderHtml`.
 *
 * @remarks
 * Needs the optional peers `vega` and `vega-lite`.
 *
 * @param figures - Figures by name, as `figures` of `testpiece/report` makes them.
 * @param options - As of `drawFigure`.
 * @returns SVG text by the same names.
 * @throws {@link InputError} as `drawFigure`.
 *
 * @example
 * ```ts
 * const record = { force: [0, 1000, 2000, 3000, 3100, 2500], strain: [0, 0.001, 0.002, 0.003, 0.05, 0.06] };
 * const result = analyseTension(record, { section: round({ diameter: 8 }), gaugeLength: 40 });
 * const page = renderHtml(result, { drawings: await drawFigures(figures(result)) });
 * page.includes('<svg'); // => true
 * ```
 *
 * @see Vega-Lite (open specification). Checked in `test/report/report.test.ts`.
 */
export async function drawFigures<Name extends string>(
  figures: Partial<Record<Name, Figure>>,
  options: DrawOptions = {},
): Promise<Partial<Record<Name, string>>> {
  requireDrawOptions('drawFigures', options);
  const entries = Object.entries(requireObject('drawFigures', 'figures', figures)) as [Name, Figure | undefined][];
  const drawn = await Promise.all(
    entries.map(async ([name, figure]) => (figure ? [[name, await drawFigure(figure, options)] as const] : [])),
  );
  return Object.fromEntries(drawn.flat()) as Partial<Record<Name, string>>;
}
