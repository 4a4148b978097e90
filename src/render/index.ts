export { drawFigure, type DrawOptions } from './drawFigure.js';
export { drawFigures } from './drawFigures.js';
export { drawPng, type PngOptions } from './drawPng.js';
