export { type Figure, type FigureValue } from './figures/Figure.js';
export { type Appearance } from './words/appearance.js';
export { type FigureOptions, type PresentationOptions, type UnitSystem } from './words/presentation.js';
export { figures, type FigureName } from './pages/figures.js';
export { pieceFigure, type PieceDrawing } from './figures/pieceFigure.js';
export { planFigures, type PlanFigureName } from './figures/planFigures.js';
export { type AskedDecision, type MeasuredQuantity } from './pages/decisionsPart.js';
export { type Paper } from './pages/Paper.js';
export { renderHtml } from './pages/renderHtml.js';
export { type FurtherFigure, type RenderOptions } from './pages/RenderOptions.js';
export { renderStudy, type RenderStudyOptions } from './pages/renderStudy.js';
export { renderVerification, type RenderVerificationOptions } from './pages/renderVerification.js';
export { studyFigure } from './figures/studyFigure.js';
export { barbaFigure } from './figures/barbaFigure.js';
export { batchesFigure } from './figures/batchesFigure.js';
export { budgetFigure } from './figures/budgetFigure.js';
export { calibrationFigures } from './figures/calibrationFigures.js';
export { checkPieceFigure } from './figures/checkPieceFigure.js';
export { complianceFigure, type ComplianceFigureOptions } from './figures/complianceFigure.js';
export { consistencyFigure } from './figures/consistencyFigure.js';
export { decisionFigure } from './figures/decisionFigure.js';
export { displacementVerificationFigure } from './figures/displacementVerificationFigure.js';
export { distributionFigure, type DistributionFigureOptions } from './figures/distributionFigure.js';
export { forceVerificationFigure } from './figures/forceVerificationFigure.js';
export { frictionFigure } from './figures/frictionFigure.js';
export { hardeningFigures } from './figures/hardeningFigures.js';
export { lawsFigure } from './figures/lawsFigure.js';
export { leakFigure, type LeakFigureOptions } from './figures/leakFigure.js';
export { poissonFigure } from './figures/poissonFigure.js';
export { type QuantityOptions } from './figures/quantityOptions.js';
export { rateSensitivityFigure } from './figures/rateSensitivityFigure.js';
export { recordFigure, type RecordFigureOptions } from './figures/recordFigure.js';
export { replicatesFigures } from './figures/replicatesFigures.js';
export { strainRatioFigure } from './figures/strainRatioFigure.js';
export { windowsFigure } from './figures/windowsFigure.js';
export { summarise, type SummaryOptions, type SummaryRow } from './pages/summarise.js';
export { renderPlan, type RenderPlanOptions } from './pages/renderPlan.js';
export { summarisePlan } from './pages/summarisePlan.js';
export { type PlanRow } from './words/planRows.js';
/** @internal */
export { escaped, printable } from './pages/html.js';
/** @internal */
export { hardeningPart } from './figures/hardeningPart.js';
/** @internal */
export { SHARE, SLOPE, shownUnit } from './words/shownUnit.js';
/** @internal */
export { largest, thinned, type Line } from './figures/thinned.js';
/** @internal */
export { decisionsInWords } from './pages/decisionsInWords.js';
/** @internal */
export { presentation } from './words/presentation.js';
/** @internal */
export { replicatesInWords } from './pages/replicatesInWords.js';
/** @internal */
export { comparisonInWords } from './pages/comparisonInWords.js';
/** @internal */
export { type DecisionsTable } from './pages/decisionsPart.js';
/** @internal */
export { measuredOf } from './pages/measuredOf.js';
/** @internal */
export { planSheet, type TextTable } from './pages/planSheet.js';
/** @internal */
export { verificationInWords } from './pages/verificationInWords.js';
