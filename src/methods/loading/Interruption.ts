/**
 * How loading was interrupted:
 * - `unloading`: the force was let down and came back, with the motion (a loop, or a stroke of a pump that goes back)
 * - `backlash`: the motion went back by far more than the force asks for
 * - `slip`: the piece moved in the grips
 * - `pause`: the crosshead stood still
 * - `zero-set`: the zero of the force was set under load, so that all later forces are too small by its fall
 * - `final-unloading`: the test was stopped and the force let go, up to the end of the record
 */
export type InterruptionKind = 'unloading' | 'backlash' | 'slip' | 'pause' | 'zero-set' | 'final-unloading';

/*
 * Words for what goes otherwise than loading, from the record to the result: a *fall* of the force is looked at; an *excursion* leaves the loading
 * curve and comes back to it; a *drop* (record/checks/drops.ts) is one with its cause: reversal, backlash, slip or the metal's own yielding; a *leap*
 * of the travel and a *dip* of yielding may be either. An *interruption* stands in the result, and *departures* (departures.ts) is what an
 * evaluation takes of all interruptions.
 */

/** A stretch of the record in which the piece was not simply loaded on. */
export interface Interruption {
  /** How loading was interrupted. */
  readonly kind: InterruptionKind;
  /**
   * First and last sample. Of `unloading`, `backlash` and `slip` the last sample of the loading before and the first one of the loading after: what lies
   * between stays in the curve and is left out of the evaluation. Of `pause` the stretch at rest, which is evaluated; of `zero-set` the last sample by the
   * old zero and the first by the new. Samples of the record: a curve that ends with its extensometer may end before.
   */
  readonly range: readonly [first: number, last: number];
  /** Fall of the stress in it [MPa]. */
  readonly fall: number;
  /** Of a pause: how long it was [s]. */
  readonly duration?: number | undefined;
  /** Of a slip that the strain counts, because it is travel: by how much all later strains are too large [mm/mm]. */
  readonly strain?: number | undefined;
}
