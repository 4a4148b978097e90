import type { BendingResult } from './BendingResult.js';
import type { CompressionResult } from './CompressionResult.js';
import type { BrinellResult } from './BrinellResult.js';
import type { CuppingResult } from './CuppingResult.js';
import type { ShearResult } from './ShearResult.js';
import type { TensionResult } from './TensionResult.js';
import type { UnloadingResult } from './UnloadingResult.js';

/** The result of any method; `method` tells which. */
export type TestResult = TensionResult | CompressionResult | BendingResult | ShearResult | BrinellResult | CuppingResult | UnloadingResult;
