import type { BrinellResult } from './BrinellResult.js';
import type { CuppingResult } from './CuppingResult.js';
import type { ShearResult } from './ShearResult.js';
import type { TensionResult } from './TensionResult.js';

/** The result of any method; `method` tells which. */
export type TestResult = TensionResult | ShearResult | BrinellResult | CuppingResult;
