/** A point of the curve with its sample. */
export interface YieldPoint {
  /** Stress [MPa]. */
  readonly stress: number;
  /** Strain as the curve counts it, less `strainShift` [mm/mm]. */
  readonly strain: number;
  /** Sample of the curve. */
  readonly index: number;
}

/** The yield points of a curve with discontinuous yielding. */
export interface YieldPoints {
  /** Upper yield strength ReH. */
  readonly upper: YieldPoint;
  /** Lower yield strength ReL. */
  readonly lower: YieldPoint;
  /** Yield point extension Ae [mm/mm]; absent where no hardening follows. */
  readonly extension?: number | undefined;
  /** First sample of uniform hardening; absent where none follows. */
  readonly hardeningStart?: number | undefined;
  /** Where no hardening follows: whether the curve ends on its `level` of yielding, or there is a `fall` from it, as of a neck. */
  readonly ends?: 'level' | 'fall' | undefined;
  /** Where no hardening follows: first sample of the level, after the first dip; the highest from it on stands for the maximum. */
  readonly levelStart?: number | undefined;
}

/** Why there is no yield point. */
export type YieldReason = 'no-fall' | 'ends-after-fall' | 'fall-within-noise' | 'fall-in-pause' | 'no-hardening-after';
