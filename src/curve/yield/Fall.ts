import type { NoiseOfCurve } from '../../numeric/index.js';

/** @internal The fall of the stress after an upper yield point, and what is known of the curve there. */
export interface Fall {
  /** Sample of ReH. */
  readonly peak: number;
  /** First sample after it that has fallen far enough. */
  readonly fallen: number;
  /** One past the last sample to look at. */
  readonly end: number;
  readonly noise: NoiseOfCurve;
  /** What noise and the steps of the reading explain of a fall or a rise [MPa]. */
  readonly reach: number;
  /** Step of the reading [MPa], 0 where it has none. */
  readonly step: number;
  /** Marks the samples that pauses spoil. */
  readonly spoilt: Uint8Array | undefined;
}
