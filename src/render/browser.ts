// The door of `render` for bundles that do not run in Node: the drawing of PNG is code of the machine, at which bundlers fail where it is installed.
export { drawFigure, type DrawOptions } from './drawFigure.js';
export { drawFigures } from './drawFigures.js';
export { drawPng } from './pngInBrowser.js';
export type { PngOptions } from './drawPng.js';
