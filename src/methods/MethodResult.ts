import type { Finding, TrailStep } from '../base/index.js';

/** Who tested what, when and by which rule: carried through unchanged. */
export interface TestInfo {
  /** Name or number of the test piece. */
  readonly identity?: string | undefined;
  /** Material, as it is named on the order or the bar. */
  readonly material?: string | undefined;
  /** Who ran the test. */
  readonly operator?: string | undefined;
  /** Date of the test, as written. */
  readonly date?: string | undefined;
  /** Test temperature [°C]. */
  readonly temperature?: number | undefined;
  /** Standard that the test claims to follow. */
  readonly standard?: string | undefined;
  /** Certificate or calibration of the force. */
  readonly forceCalibration?: string | undefined;
  /** Anything else. */
  readonly remarks?: string | undefined;
  /** True for data made by a simulation or for a class: every page says so. */
  readonly invented?: boolean | undefined;
}

/** What reproduces a result. */
export interface Provenance {
  /** Name of this package. */
  readonly package: string;
  /** Its version. */
  readonly version: string;
  /** Options of the analysis as given (functions and tables as plain data). */
  readonly options: Readonly<Record<string, unknown>>;
  /** Fast hash of the columns as given, 16 hexadecimal digits; not cryptographic. */
  readonly hash: string;
}

/** What the result of every method carries beside its quantities. */
export interface MethodResult {
  /** Which test this is. */
  readonly method: string;
  /** Who tested what. */
  readonly test: TestInfo;
  /** Doubts about the test. */
  readonly findings: readonly Finding[];
  /** What was done to the record, in order. */
  readonly trail: readonly TrailStep[];
  /** What reproduces this result. */
  readonly provenance: Provenance;
}
