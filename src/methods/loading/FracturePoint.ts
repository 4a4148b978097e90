/** The fracture point of the curve. */
export interface FracturePoint {
  /** Last sample before the force fell away. */
  readonly index: number;
  /** Strain from the shifted origin [mm/mm]. */
  readonly strain: number;
  /** Stress there [MPa]. */
  readonly stress: number;
  /** How it was recognised. */
  readonly how: 'sudden-fall' | 'faded-away' | 'end-of-record';
}
