import type { TensionResult } from './TensionResult.js';

/** The result of any method; `method` tells which. */
export type TestResult = TensionResult;
