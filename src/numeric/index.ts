export { lineFit, type LineFit } from './lineFit.js';
export { localParabola, type LocalParabola } from './localParabola.js';
export { median } from './median.js';
export { noiseLevel } from './noiseLevel.js';
export { parabolaNear } from './parabolaNear.js';
export { steepestLine } from './steepestLine.js';
export { fExceeds, incompleteBeta } from './fDistribution.js';
export { leastSquares, type FitEnd, type FitTask } from './levenbergMarquardt.js';
export { horner, polynomialFit, type PolynomialFit } from './polynomialFit.js';
