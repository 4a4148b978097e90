import { InputError } from '../base/index.js';
import type { Figure } from '../report/index.js';

/**
 * Draws a figure as SVG.
 *
 * @remarks
 * Needs the optional peers `vega` and `vega-lite`, which are loaded on the first call. Works in Node and in browsers.
 *
 * @param figure - A figure of `testpiece/report`, or any Vega-Lite JSON of that form.
 * @returns The drawing as SVG text.
 * @throws {@link InputError} `missing` where vega or vega-lite is not installed; `wrong-type` for a figure that cannot be drawn.
 *
 * @example
 * ```ts
 * const record = { force: [0, 1000, 2000, 3000, 3100, 2500], strain: [0, 0.001, 0.002, 0.003, 0.05, 0.06] };
 * const { stressStrain } = figures(analyseTension(record, { section: round({ diameter: 8 }), gaugeLength: 40 }));
 * const svg = stressStrain ? await drawFigure(stressStrain) : '';
 * svg.startsWith('<svg'); // => true
 * ```
 *
 * @see Vega-Lite (open specification). Checked in `test/report/report.test.ts`.
 */
export async function drawFigure(figure: Figure): Promise<string> {
  const [vega, lite] = await Promise.all([import('vega'), import('vega-lite')]).catch((reason: unknown) => {
    throw new InputError('drawFigure', 'vega', 'missing', 'and vega-lite must be installed to draw figures', reason);
  });
  let view: InstanceType<typeof vega.View>;
  try {
    // the library's own type of a specification is too large to check against; it checks the JSON itself
    const specification: object = figure;
    view = new vega.View(vega.parse(lite.compile(specification as Parameters<typeof lite.compile>[0]).spec), { renderer: 'none' });
  } catch (reason) {
    throw new InputError('drawFigure', 'figure', 'wrong-type', 'must be a figure that can be drawn', reason);
  }
  const svg = await view.toSVG();
  view.finalize();
  return svg;
}
