export { type Figure, type FigureValue } from './figureParts.js';
export { figures, type FigureName } from './figures.js';
export { renderHtml, type RenderOptions } from './renderHtml.js';
export { studyFigure } from './studyFigure.js';
export { summarise, type SummaryOptions, type SummaryRow } from './summarise.js';
