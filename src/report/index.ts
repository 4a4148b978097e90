export { type Figure, type FigureValue } from './Figure.js';
export { type Appearance } from './appearance.js';
export { type FigureOptions, type PresentationOptions, type UnitSystem } from './presentation.js';
export { figures, type FigureName } from './figures.js';
export { pieceFigure, type PieceDrawing } from './pieceFigure.js';
export { planFigures, type PlanFigureName } from './planFigures.js';
export { type AskedDecision, type MeasuredQuantity } from './decisionsPart.js';
export { type Paper } from './htmlPage.js';
export { renderHtml } from './renderHtml.js';
export { type FurtherFigure, type RenderOptions } from './RenderOptions.js';
export { renderStudy, type RenderStudyOptions } from './renderStudy.js';
export { renderVerification, type RenderVerificationOptions } from './renderVerification.js';
export { studyFigure } from './studyFigure.js';
export { barbaFigure } from './barbaFigure.js';
export { batchesFigure } from './batchesFigure.js';
export { budgetFigure } from './budgetFigure.js';
export { calibrationFigures } from './calibrationFigures.js';
export { checkPieceFigure } from './checkPieceFigure.js';
export { complianceFigure, type ComplianceFigureOptions } from './complianceFigure.js';
export { consistencyFigure } from './consistencyFigure.js';
export { decisionFigure } from './decisionFigure.js';
export { displacementVerificationFigure } from './displacementVerificationFigure.js';
export { distributionFigure, type DistributionFigureOptions } from './distributionFigure.js';
export { forceVerificationFigure } from './forceVerificationFigure.js';
export { frictionFigure } from './frictionFigure.js';
export { hardeningFigures } from './hardeningFigures.js';
export { lawsFigure } from './lawsFigure.js';
export { leakFigure, type LeakFigureOptions } from './leakFigure.js';
export { poissonFigure } from './poissonFigure.js';
export { type QuantityOptions } from './quantityOptions.js';
export { rateSensitivityFigure } from './rateSensitivityFigure.js';
export { recordFigure, type RecordFigureOptions } from './recordFigure.js';
export { replicatesFigures } from './replicatesFigures.js';
export { strainRatioFigure } from './strainRatioFigure.js';
export { windowsFigure } from './windowsFigure.js';
export { summarise, type SummaryOptions, type SummaryRow } from './summarise.js';
export { renderPlan, type RenderPlanOptions } from './renderPlan.js';
export { summarisePlan } from './summarisePlan.js';
export { type PlanRow } from './planRows.js';
/** @internal */
export { escaped, printable } from './html.js';
/** @internal */
export { hardeningPart } from './hardeningPart.js';
/** @internal */
export { SHARE, SLOPE, shownUnit } from './shownUnit.js';
/** @internal */
export { largest, thinned, type Line } from './thinned.js';
/** @internal */
export { decisionsInWords } from './decisionsInWords.js';
/** @internal */
export { type DecisionsTable } from './decisionsPart.js';
/** @internal */
export { measuredOf } from './measuredOf.js';
/** @internal */
export { planSheet, type TextTable } from './planSheet.js';
