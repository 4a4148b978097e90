import { InputError, notLoaded, requireObject, requireOptions } from '../base/index.js';
import { escaped, printable, type Figure } from '../report/index.js';

/** How figures are drawn. */
export interface DrawOptions {
  /** Families of type, the wanted one first, as in CSS; default those that the figure names. */
  readonly font?: string | undefined;
}

/** @internal Checks options of drawing. */
export function requireDrawOptions(from: string, options: DrawOptions, own: readonly string[] = []): void {
  requireOptions(from, options, ['font', ...own]);
  const { font } = options;
  if (font !== undefined && (typeof (font as unknown) !== 'string' || font.trim() === ''))
    throw new InputError(from, 'options.font', 'wrong-type', 'must name families of type', font);
}

/** The drawing as one image with a name and a description, for readers who cannot see it. */
function named(svg: string, { title, description }: Partial<Figure>): string {
  const words = [
    ...(typeof title === 'string' ? [`<title>${escaped(title)}</title>`] : []),
    ...(typeof description === 'string' ? [`<desc>${escaped(description)}</desc>`] : []),
  ];
  // the drawing is one picture with a name: otherwise a screen reader reads out every mark and axis, and some have no name
  const silent = svg.replace(/<[^>]+>/g, (tag) => tag.replace(/ (?:role|aria-[a-z]+)="[^"]*"/g, ''));
  return silent.replace(/^<svg([^>]*)>/, (_, attributes: string) => `<svg role="img"${attributes}>${words.join('')}`);
}

/** Loads nothing, neither data nor pictures nor links, and keeps the places that were asked for: the library goes on without what it could not load. */
function closed(asked: string[]) {
  const refuse = (place: string): Promise<never> => {
    asked.push(place);
    return Promise.reject(new Error(`not loaded: ${place}`));
  };
  // of links the library wants an answer, if an empty one
  const sanitize = (place: string): Promise<{ href: string }> => {
    asked.push(place);
    return Promise.resolve({ href: '' });
  };
  return { load: refuse, sanitize, http: refuse, file: refuse };
}

/**
 * Draws a figure as SVG.
 *
 * @remarks
 * Needs the optional peers `vega` and `vega-lite`, which are loaded on the first call. Works in Node and in browsers. The drawing carries the figure's title and description
 * as its `title` and `desc`, so that it can be read out by itself. A figure holds its own data: files and addresses are never read, and a figure that names one
 * (`url` of data or of a picture, `href`) is refused.
 *
 * @param figure - A figure of `testpiece/report`, or any Vega-Lite JSON of that form.
 * @param options - `font`.
 * @returns The drawing as SVG text.
 * @throws {@link InputError} `missing` where vega or vega-lite is not installed; `wrong-type` for a figure that cannot be drawn, or that names a file or an address; `unknown-option`.
 *
 * @example
 * ```ts
 * const record = { force: [0, 1000, 2000, 3000, 3100, 2500], strain: [0, 0.001, 0.002, 0.003, 0.05, 0.06] };
 * const { stressStrain } = figures(analyseTension(record, { section: round({ diameter: 8 }), gaugeLength: 40 }));
 * const svg = stressStrain ? await drawFigure(stressStrain) : '';
 * svg.startsWith('<svg'); // => true
 * ```
 *
 * @see Vega-Lite (open specification); SVG Accessibility API Mappings (W3C). Checked in `test/report/report.test.ts` and `test/render/draw.test.ts`.
 */
export async function drawFigure(figure: Figure, options: DrawOptions = {}): Promise<string> {
  const from = 'drawFigure';
  requireObject(from, 'figure', figure);
  requireDrawOptions(from, options);
  const failed = notLoaded(from, 'vega vega-lite', 'draw figures');
  const [vega, lite] = await Promise.all([import('vega').catch(failed), import('vega-lite').catch(failed)]);
  const asked: string[] = [];
  let view: InstanceType<typeof vega.View>;
  try {
    const { font } = options;
    // the library's own type of a specification is too large to check against; it checks the JSON itself
    const specification: object = font === undefined ? figure : { ...figure, config: { ...(figure.config as object), font } };
    view = new vega.View(vega.parse(lite.compile(specification as Parameters<typeof lite.compile>[0]).spec), {
      renderer: 'none',
      loader: closed(asked),
    });
  } catch (reason) {
    throw new InputError(from, 'figure', 'wrong-type', 'must be a figure that can be drawn', reason);
  }
  const svg = await view.toSVG();
  view.finalize();
  if (asked.length > 0) throw new InputError(from, 'figure', 'wrong-type', 'must hold its own data, and name no file or address', asked[0]);
  return named(printable(svg), figure);
}
