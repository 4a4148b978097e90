export { runVectors } from './runVectors.js';
export type { CheckVector, ExpectedValue, VectorCall, VectorCheck, VectorStatus } from './CheckVector.js';
