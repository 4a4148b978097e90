import type { BendingResult } from './BendingResult.js';
import type { CompressionResult } from './CompressionResult.js';
import type { TensionResult } from './TensionResult.js';

/** The result of any method; `method` tells which. */
export type TestResult = TensionResult | CompressionResult | BendingResult;
