export { type Figure, type FigureValue } from './figureParts.js';
export { figures, type FigureName } from './figures.js';
export { pieceFigure, type PieceDrawing } from './pieceFigure.js';
export { planFigures, type PlanFigureName } from './planFigures.js';
export { renderHtml, type RenderOptions } from './renderHtml.js';
export { studyFigure } from './studyFigure.js';
export { summarise, type SummaryOptions, type SummaryRow } from './summarise.js';
export { renderPlan, type RenderPlanOptions } from './renderPlan.js';
export { summarisePlan, type PlanRow } from './summarisePlan.js';
