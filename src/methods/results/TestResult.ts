import type { BendingResult } from '../bending/BendingResult.js';
import type { CompressionResult } from '../compression/CompressionResult.js';
import type { BrinellResult } from '../brinell/BrinellResult.js';
import type { CuppingResult } from '../cupping/CuppingResult.js';
import type { ShearResult } from '../shear/ShearResult.js';
import type { TensionResult } from '../evaluation/TensionResult.js';
import type { UnloadingResult } from '../unloading/UnloadingResult.js';

/** The result of any method; `method` tells which. */
export type TestResult = TensionResult | CompressionResult | BendingResult | ShearResult | BrinellResult | CuppingResult | UnloadingResult;
