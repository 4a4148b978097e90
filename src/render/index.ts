export { drawFigure } from './drawFigure.js';
export { drawFigures } from './drawFigures.js';
