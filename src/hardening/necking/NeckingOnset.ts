/** Onset of necking. */
export interface NeckingOnset {
  /** True total strain [mm/mm]; by a law, strain as the law counts it. */
  readonly strain: number;
  /** True stress [MPa]. */
  readonly stress: number;
  /** Standard uncertainty of the strain by the curve's scatter, its lack of fit and the doubt about the shape [mm/mm]; 0 by a law. */
  readonly standardUncertainty: number;
  /** By the curve or by a law. */
  readonly method: 'curve' | 'law';
  /** By the curve: true where its curvature probably jumps at the onset, as it does where a neck begins suddenly. */
  readonly shape?: 'smooth' | 'corner' | undefined;
}

/** Why there is no onset of necking. */
export type NeckingReason = 'maximum-at-end' | 'too-few-points' | 'no-maximum' | 'no-crossing';
