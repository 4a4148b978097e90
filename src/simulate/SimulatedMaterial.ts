/** How the stress rises with true plastic strain. */
export type SimulatedHardening =
  | {
      /** σ = K ε_p^n from the first load on: a smooth knee (Ramberg-Osgood). */
      readonly law: 'hollomon';
      /** K [MPa]. */
      readonly strengthCoefficient: number;
      /** n. */
      readonly exponent: number;
    }
  | {
      /** σ = σ_y (1 + ε_p/ε_0)^n from the yield stress on. */
      readonly law: 'swift';
      /** ε_0 [mm/mm]. */
      readonly prestrain: number;
      /** n. */
      readonly exponent: number;
    }
  | {
      /** σ = σ_s − (σ_s − σ_y) e^(−θ ε_p) from the yield stress on. */
      readonly law: 'voce';
      /** σ_s [MPa], above the yield stress. */
      readonly saturationStress: number;
      /** θ. */
      readonly rate: number;
    }
  | {
      /** None: the piece breaks at the yield stress. */
      readonly law: 'none';
    };

/** Where a simulated piece breaks. */
export interface SimulatedFracture {
  /** Plastic extension over the parallel length [mm/mm]. */
  readonly extension: number;
  /** Stress there as a share of the maximum; default 0.75. */
  readonly share?: number | undefined;
}

/** A material as the simulation knows it. */
export interface SimulatedMaterial {
  /** Modulus E [MPa]. */
  readonly modulus: number;
  /** Stress where yielding begins [MPa]: the lower yield strength, where there is a yield point; not for `hollomon`. */
  readonly yieldStress?: number | undefined;
  /** Yield point: upper strength [MPa] and plateau; default none. */
  readonly yieldPoint?:
    | {
        /** ReH [MPa], above the yield stress. */
        readonly upper: number;
        /** Plastic strain where hardening begins [mm/mm]; default 0.012. */
        readonly plateau?: number | undefined;
      }
    | undefined;
  /** Hardening. */
  readonly hardening: SimulatedHardening;
  /** Fracture: plastic extension over the parallel length [mm/mm], beyond the maximum; and stress there as a share of the maximum, default 0.75. */
  readonly fracture?: SimulatedFracture | undefined;
  /** Z [1]; default 0.5. */
  readonly reductionOfArea?: number | undefined;
}
