import type { Quantity, StressStrainCurve, TestPiece } from '../../base/index.js';
import type { Interruption } from '../loading/Interruption.js';
import type { FracturePoint } from '../loading/FracturePoint.js';
import type { HardeningSummary } from '../loading/HardeningSummary.js';
import type { ModulusWindow, StrengthAtExtension } from '../loading/LineResult.js';
import type { Loading } from '../loading/loadingOf.js';
import type { UncertaintyBudget } from '../../uncertainty/index.js';
import type { ElongationMethod } from '../common/brokenPiece.js';
import type { MethodResult } from '../common/MethodResult.js';

/** Where the strain of the curve comes from. */
export type ExtensionBasis = 'extensometer' | 'extensometer-then-travel' | 'travel' | 'curve';

/** A yield strength with its place on the curve. */
export interface YieldStrength extends Quantity {
  /** Strain of the point from the shifted origin [mm/mm]. */
  readonly strain: number;
  /** Sample of the record. */
  readonly index: number;
}

/** A limit of proportionality, whose value belongs to a definition. */
export interface ProportionalLimitOfTest extends Quantity {
  /** Lowest and highest limit by the definitions that find one [MPa]; absent where they are alike once rounded. */
  readonly byDefinition?: readonly [number, number] | undefined;
}

/** Local rates over the test, at most a few hundred places. */
export interface Rates {
  /** Time [s]. */
  readonly time: Float64Array;
  /** Stress rate [MPa/s]. */
  readonly stressRate: Float64Array;
  /** Strain rate [1/s]. */
  readonly strainRate: Float64Array;
}

/** All that a tension test gives. A quantity that the record cannot support is absent, and a finding says why. */
export interface TensionResult extends MethodResult {
  /** Which test this is. */
  readonly method: 'tension';
  /** The piece as given. */
  readonly testPiece: TestPiece;
  /** Where the strain comes from. */
  readonly extensionBasis: ExtensionBasis;
  /** Length that strain is counted over [mm]: Le of an extensometer, Lc with travel. */
  readonly strainLength: number;
  /** First sample without the extensometer, where it did not read to the end: from there on strain is travel, or there is none. */
  readonly extensometerEnd?: number | undefined;
  /**
   * Whether the give of the frame was taken out of travel: false where the compliance that was given is more than travel and piece allow; absent
   * where none was given, or there is no travel.
   */
  readonly frameRemoved?: boolean | undefined;
  /** Strain (from the shifted origin) and stress, sample by sample as recorded. */
  readonly curve: StressStrainCurve;
  /** Where loading was interrupted: unloadings, slips, pauses, zeros set under load, in the order of the record; absent where it never was. */
  readonly interruptions?: readonly Interruption[] | undefined;
  /** Slope of the elastic line mE, that everything below uses. */
  readonly elasticSlope?: Quantity | undefined;
  /** Modulus of elasticity E: only where an extensometer or a removed frame compliance justifies the name. */
  readonly modulus?: Quantity | undefined;
  /** The window of the elastic line. */
  readonly modulusWindow?: ModulusWindow | undefined;
  /** Limit of proportionality, with its definition in the name, and what others give. */
  readonly proportionalLimit?: ProportionalLimitOfTest | undefined;
  /** ReH. */
  readonly upperYieldStrength?: YieldStrength | undefined;
  /** ReL. */
  readonly lowerYieldStrength?: YieldStrength | undefined;
  /** Ae. */
  readonly yieldPointExtension?: Quantity | undefined;
  /** Rp, one for each offset asked for that the curve reaches. */
  readonly proofStrengths: readonly StrengthAtExtension[];
  /** Rt, one for each total extension asked for that the curve reaches. */
  readonly totalExtensionStrengths: readonly StrengthAtExtension[];
  /** Fm; `atLeast` where the test ended before its maximum; `withoutHardening` where none follows yielding: of the highest stress of the level then. */
  readonly maximumForce: Quantity;
  /** Rm, as Fm. */
  readonly tensileStrength: Quantity;
  /** Sample of the maximum force. */
  readonly maximumIndex: number;
  /** Ag. */
  readonly uniformExtension?: Quantity | undefined;
  /** Agt. */
  readonly totalExtensionAtMaximumForce?: Quantity | undefined;
  /** A, from what was measured on the broken piece. */
  readonly elongationAfterFracture?: Quantity | undefined;
  /** How A was measured. */
  readonly elongationMethod?: ElongationMethod | undefined;
  /** At, from the curve. */
  readonly totalExtensionAtFracture?: Quantity | undefined;
  /** Plastic extension at fracture from the curve: At less the elastic part. */
  readonly plasticExtensionAtFracture?: Quantity | undefined;
  /** Z, from the area after fracture. */
  readonly reductionOfArea?: Quantity | undefined;
  /** Elastic energy per volume at the proof strength (modulus of resilience): Rp²/(2E) [MPa = MJ/m³]; the area under the curve up to there holds plastic work too. */
  readonly resilience?: Quantity | undefined;
  /** Energy per volume up to fracture [MPa = MJ/m³]. */
  readonly toughness?: Quantity | undefined;
  /** True strain at the onset of necking by Considère. */
  readonly necking?: Quantity | undefined;
  /** Fracture point. */
  readonly fracture?: FracturePoint | undefined;
  /** Hardening law. */
  readonly hardening?: HardeningSummary | undefined;
  /** How the piece was loaded against the testing rates of the standards, where time was recorded. */
  readonly loading?: Loading | undefined;
  /** Local rates, where time was recorded. */
  readonly rates?: Rates | undefined;
  /** Budgets of the quantities by symbol, where the option `uncertainty` was given; their findings speak of the budgets. */
  readonly uncertainty?: Readonly<Record<string, UncertaintyBudget>> | undefined;
}
