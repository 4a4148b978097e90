import type { Finding, TrailStep } from '../../base/index.js';
import type { ForceClass, HydraulicChain } from '../../force/index.js';

/** What is known of the last verification of the force. */
export interface ForceCalibration {
  /** Number or name of the certificate. */
  readonly certificate?: string | undefined;
  /** Day of the verification, as 2026-03-31. */
  readonly date?: string | undefined;
  /** Interval up to the next one, in months, above 0; default 12 (ISO 7500-1, from memory). */
  readonly intervalMonths?: number | undefined;
  /** Class that was reached over the range. */
  readonly forceClass?: ForceClass | undefined;
  /** Lowest and highest force at which the class holds [N]. */
  readonly range?: readonly [low: number, high: number] | undefined;
}

/** The calibration by which a channel's readings became force, so that the force can be made again. */
export interface ChannelCalibration {
  /** Name of its file or certificate. */
  readonly name?: string | undefined;
  /** Day of the calibration, as 2026-03-31. */
  readonly date?: string | undefined;
  /** Coefficients of ascending powers of the indicated value, to force [N]. */
  readonly coefficients: readonly number[];
  /** Least and greatest indicated value [MPa, or N of a force channel]. */
  readonly span: readonly [low: number, high: number];
  /** Number of its pairs. */
  readonly points?: number | undefined;
}

/** Who tested what, when and by which rule: carried through unchanged. */
export interface TestInfo {
  /** Name or number of the test piece. */
  readonly identity?: string | undefined;
  /** Material, as it is named on the order or the bar. */
  readonly material?: string | undefined;
  /** Who ran the test. */
  readonly operator?: string | undefined;
  /** Date of the test, as written; where it begins as 2026-03-31 does, it is compared with the verification of the force. */
  readonly date?: string | undefined;
  /** Test temperature [°C]. */
  readonly temperature?: number | undefined;
  /** Standard that the test claims to follow. */
  readonly standard?: string | undefined;
  /** Grips or set-up that held the piece, in words; compared with those of a compliance that names its own. */
  readonly grips?: string | undefined;
  /** Direction of the piece in the product it was taken from, in words: longitudinal, transverse. */
  readonly sampleDirection?: string | undefined;
  /** Place in the product that the piece was taken from, in words. */
  readonly samplePlace?: string | undefined;
  /** How the test was controlled, as the operator states it: strain rate, stress rate, crosshead by hand. */
  readonly control?: string | undefined;
  /** Testing rate or rates, as the operator states them, with their unit. */
  readonly rate?: string | undefined;
  /** Class of the extensometer and by which standard, in words. */
  readonly extensometerClass?: string | undefined;
  /** Verification of the force: a certificate in words, or what is known of it, which is then compared with the test. */
  readonly forceCalibration?: string | ForceCalibration | undefined;
  /**
   * Lowest and highest force that the calibration of the channel spans [N], as `calibratedForces` gives them, where the force was made with
   * `applyCalibration`: below the lowest, idle readings were carried on to zero. Of what lies outside a finding says so.
   */
  readonly calibratedForces?: readonly [low: number, high: number] | undefined;
  /** The calibration that made the force, where it is to stand in the report. */
  readonly channelCalibration?: ChannelCalibration | undefined;
  /** The cylinder by which `pressureToForce` made the force from oil pressure: the report names it, and what nominal dimensions leave open. */
  readonly cylinder?: HydraulicChain | undefined;
  /** Doubts from before the analysis, as `readRecord` and `fitCalibration` give them: they stand among the findings of the result. */
  readonly findings?: readonly Finding[] | undefined;
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
