import type { BendingPlan } from './planBending.js';
import type { BrinellPlan } from './planBrinell.js';
import type { CompressionPlan } from './planCompression.js';
import type { CuppingPlan } from './planCupping.js';
import type { ShearPlan } from './planShear.js';
import type { TensionPlan } from './TensionPlan.js';

/** The plan of any test; `planOf` says of which. */
export type TestPlan = TensionPlan | BrinellPlan | ShearPlan | BendingPlan | CompressionPlan | CuppingPlan;
