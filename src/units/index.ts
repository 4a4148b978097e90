export { convert } from './convert.js';
export { type Dimension, type DimensionOf, type Unit, type UnitOf, type UnitsOf } from './measures.js';
/** @internal */
export { dimensionOf, unitFactor } from './engine.js';
/** @internal */
export { parseUnit, unitNames } from './parseUnit.js';
