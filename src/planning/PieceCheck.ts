import type { Finding, Section } from '../base/index.js';
import type { MaterialFamilyKey } from '../materials/index.js';
import type { ExpectedProperties } from './expectedProperties.js';
import type { PieceHead } from './PieceHead.js';

/** A machined dimension as it was measured along the parallel length. */
export interface MeasuredShape {
  /** Which dimension. */
  readonly dimension: 'diameter' | 'width' | 'thickness';
  /** Nominal value [mm]. */
  readonly nominal: number;
  /** Largest reading [mm]. */
  readonly largest: number;
  /** Smallest reading [mm]. */
  readonly smallest: number;
  /** Which sides are machined; default `all`. */
  readonly machined?: 'all' | 'two-sides' | undefined;
}

/** A piece as drawn, and as made. */
export interface PieceCheckInput {
  /** Family of the material; or `expected`, or both. */
  readonly family?: MaterialFamilyKey | undefined;
  /** Properties to be expected; they count before the family's. */
  readonly expected?: ExpectedProperties | undefined;
  /** Section of the parallel length. */
  readonly section: Section;
  /** Gauge length L0 [mm]. */
  readonly gaugeLength: number;
  /** Parallel length Lc [mm]. */
  readonly parallelLength: number;
  /** Radius of the fillets r [mm]; not given: a piece without heads. */
  readonly filletRadius?: number | undefined;
  /** Total length Lt [mm]. */
  readonly totalLength?: number | undefined;
  /** Heads and what holds them. */
  readonly head?: PieceHead | undefined;
  /** A dimension as it was measured. */
  readonly shape?: MeasuredShape | undefined;
}

/** One check of the heads. */
export interface PieceCheckRow {
  /** What is compared: stresses [MPa], hold of the grips [1], lengths [mm]. */
  readonly kind: 'stress' | 'grip' | 'length';
  /** What is checked, in words. */
  readonly what: string;
  /** What is there. */
  readonly value: number;
  /** What it is compared with. */
  readonly limit: number;
  /** How many times what is needed there is [1]. */
  readonly margin: number;
  /** Whether that is enough. */
  readonly sound: boolean;
}

/** What the check of a piece found. */
export interface PieceCheck {
  /** Greatest force of the strongest bar [N]. */
  readonly force: number;
  /** Least parallel length of the standard [mm]. */
  readonly leastParallelLength: number;
  /** Least radius of the fillets [mm]; absent where there are none. */
  readonly leastFilletRadius?: number | undefined;
  /** Least total length, from parallel length, fillets and what the grips hold [mm]; absent where the heads are not known. */
  readonly leastTotalLength?: number | undefined;
  /** Checks of the heads. */
  readonly heads: readonly PieceCheckRow[];
  /** Doubts. */
  readonly findings: readonly Finding[];
}
