import type { BaseUnit } from '../../base/index.js';
import type { WindowChoice } from '../../curve/index.js';

/** What was done otherwise. */
export type WhatIfChange =
  | {
      /** Another window of the elastic line. */
      readonly kind: 'window';
      /** The window, as the option `modulus.window` takes it. */
      readonly window: WindowChoice;
      /** Of a band of stress: its ends as shares of a strength [1]. */
      readonly shares?: readonly [number, number];
      /** Of a band of stress: symbol of that strength. */
      readonly of?: string;
    }
  | {
      /** Another plastic extension of the proof strength. */
      readonly kind: 'offset';
      /** The extension [mm/mm]. */
      readonly offset: number;
    }
  | {
      /** Another compliance of the frame. */
      readonly kind: 'frame-compliance';
      /** Times the one that was taken out [1]; 0 takes out nothing. */
      readonly factor: number;
    }
  | {
      /** Travel counted over another parallel length, or without the fillets' share. */
      readonly kind: 'parallel-length' | 'effective-length';
      /** The length [mm]. */
      readonly length: number;
    };

/** A value that comes out otherwise. */
export interface WhatIfValue {
  /** Field of the result. */
  readonly field: string;
  /** Symbol. */
  readonly symbol: string;
  /** The value, in `unit`. */
  readonly value: number;
  /** Its unit. */
  readonly unit: BaseUnit;
  /** The value less the one of the result, in `unit`; of another offset, less the first proof strength. Absent where the result has none. */
  readonly difference?: number;
}

/** One thing done otherwise, and what comes out. */
export interface WhatIfRow {
  /** What was done otherwise; all else is as it was. */
  readonly change: WhatIfChange;
  /** What comes out. */
  readonly values: readonly WhatIfValue[];
}

/** Options of {@link whatIf}. */
export interface WhatIfOptions {
  /** Bands of stress for the elastic line, as shares of ReH, else of the first proof strength, else of Rm; default 10 to 40, 20 to 50, 30 to 60 %. */
  readonly bands?: readonly (readonly [number, number])[] | undefined;
  /** Plastic extensions [mm/mm], each 0.05 at most; default 0.1, 0.2, 0.5 and 1 %. */
  readonly offsets?: ArrayLike<number> | undefined;
  /** Doubt of the frame's compliance, of itself [1]; from 0 to 1; default the one that the options of the test state, at most 1, else 0.1. */
  readonly complianceDoubt?: number | undefined;
}
