export { lineFit, type LineFit } from './lineFit.js';
export { localParabola, type LocalParabola } from './localParabola.js';
export { median } from './median.js';
export { noiseLevel } from './noiseLevel.js';
export { parabolaNear } from './parabolaNear.js';
export { steepestLine } from './steepestLine.js';
