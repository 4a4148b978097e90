/** Whether the 0.2 % proof strength of a line can be trusted, told before it is used. */
export interface LineTrust {
  /** Elastic strain at the crossing over the offset, λ [1]. */
  readonly leverage: number;
  /** What one standard error of the slope moves the offset by, as a share of it: λ S_m(rel). */
  readonly offsetDoubt: number;
  /** `sound` up to 5 % of the offset, `doubtful` up to 20 %, beyond that `unusable` (common practice). */
  readonly verdict: 'sound' | 'doubtful' | 'unusable';
}

const OFFSET = 0.002;
const DOUBTFUL = 0.05;
const UNUSABLE = 0.2;

/** @internal Trust in the 0.2 % proof strength that a line will give, the curve crossing its offset line at about this stress. */
export function lineTrust(slope: number, relativeStandardError: number, offsetStress: number): LineTrust {
  const leverage = offsetStress / slope / OFFSET;
  const offsetDoubt = leverage * relativeStandardError;
  return { leverage, offsetDoubt, verdict: offsetDoubt > UNUSABLE ? 'unusable' : offsetDoubt > DOUBTFUL ? 'doubtful' : 'sound' };
}
