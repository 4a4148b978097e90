import { finding, type Finding } from '../base/index.js';
import type { PlanLimits } from './planForce.js';
import type { TestFrame } from './TestFrame.js';

/** @internal Whether the crosshead has the way that a test needs [mm]. */
export const strokeFindings = ({ stroke }: TestFrame, travel: number, limits: PlanLimits): Finding[] =>
  stroke === undefined || travel <= limits.stroke * stroke
    ? []
    : [finding('travel-near-stroke', { travel, share: (100 * travel) / stroke, stroke }, travel > stroke ? { severity: 'fault' } : {})];
