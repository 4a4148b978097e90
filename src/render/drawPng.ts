import { InputError, notLoaded, requireArray, requireBetween, requireObject } from '../base/index.js';
import type { Figure } from '../report/index.js';
import { drawFigure, requireDrawOptions, type DrawOptions } from './drawFigure.js';

/** How a figure is drawn as PNG. */
export interface PngOptions extends DrawOptions {
  /** Pixels for each unit of the drawing, 0.1 to 10; default 2. */
  readonly scale?: number | undefined;
  /** Files of type (TTF, OTF, TTC) to take beside those that the system has; default none. */
  readonly fontFiles?: readonly string[] | undefined;
}

const FROM = 'drawPng';

/**
 * Draws a figure as PNG, for word processors and mail.
 *
 * @remarks
 * Needs the optional peers `vega`, `vega-lite` and `@resvg/resvg-js`, which are loaded on the first call; runs in Node: a bundle for browsers leaves it out, and
 * there the call is refused as `missing`. Letters come from the type that the
 * system has: for a language whose signs none of it holds, give `fontFiles`.
 *
 * @param figure - A figure of `testpiece/report`.
 * @param options - `scale`, `font`, `fontFiles`.
 * @returns The bytes of the PNG.
 * @throws {@link InputError} `missing` where a peer is not installed, or in a browser; `wrong-type` for a figure that cannot be drawn; `not-finite`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * const plan = planTension({ family: 'brass', section: round({ diameter: 5 }), frame: { capacity: 25000 } });
 * const { pace } = planFigures(plan);
 * const png = pace ? await drawPng(pace, { scale: 1 }) : new Uint8Array();
 * png.slice(1, 4); // => [80, 78, 71]
 * ```
 *
 * @see PNG (W3C). Checked in `test/render/draw.test.ts`.
 */
export async function drawPng(figure: Figure, options: PngOptions = {}): Promise<Uint8Array> {
  requireObject(FROM, 'figure', figure);
  requireDrawOptions(FROM, options, ['scale', 'fontFiles']);
  const scale = requireBetween(FROM, 'options.scale', options.scale ?? 2, 0.1, 10);
  const fontFiles = requireArray(FROM, 'options.fontFiles', options.fontFiles ?? []).map((file, k) => {
    if (typeof (file as unknown) !== 'string') throw new InputError(FROM, `options.fontFiles[${k}]`, 'wrong-type', 'must be a path', file);
    return file;
  });
  const { Resvg } = await import('@resvg/resvg-js').catch(notLoaded(FROM, '@resvg/resvg-js', 'draw PNG'));
  const svg = await drawFigure(figure, options.font === undefined ? {} : { font: options.font });
  const drawn = new Resvg(svg, { font: { loadSystemFonts: true, fontFiles }, fitTo: { mode: 'zoom', value: scale } }).render();
  return Uint8Array.from(drawn.asPng());
}
