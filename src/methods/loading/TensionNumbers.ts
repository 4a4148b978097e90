import type { Outcome, StressStrainCurve } from '../../base/index.js';
import type {
  Break,
  CurvePoint,
  ElasticLine,
  Fracture,
  FractureReason,
  Maximum,
  MaximumSpread,
  ModulusReason,
  ProofReason,
  ProofStrength,
  ProportionalDefinition,
  ProportionalLimit,
  ProportionalReason,
  YieldPoints,
  YieldReason,
} from '../../curve/index.js';
import type { HollomonFit, NeckingOnset } from '../../hardening/index.js';
import type { StrainSlip } from './departures.js';

/** @internal What the kernel needs: a checked curve, as recorded, that the kernel may keep. */
export interface TensionInput {
  /** Strain as recorded; the kernel moves its origin in place. */
  readonly curve: StressStrainCurve;
  /** Stress of all samples; longer than the curve where the extensometer ends it early. */
  readonly stress: Float64Array;
  /** Sample of its highest value; default: looked for. */
  readonly highest?: number | undefined;
  /** Where the force of the whole record fell away; default: looked for. */
  readonly broken?: Outcome<Break, FractureReason> | undefined;
  /** What was measured on the broken piece: where it fits what the record shows at its end, a force that rose up to there was its maximum. */
  readonly measured?: { readonly elongation?: number | undefined; readonly reduction?: number | undefined } | undefined;
  /** Last sample before the drive let the force go, where the test was stopped and unloaded. */
  readonly unloadedFrom?: number | undefined;
  /** True where a trial asks for the values alone: not for other windows, the fall of the slope, or how far the maximum is determined. */
  readonly alone?: boolean;
  /** One step of the stress reading [MPa]; 0 where it is not stepped. */
  readonly resolution: number;
  readonly pauses: readonly (readonly [number, number])[];
  /** Slips in the grips that the strain counts. */
  readonly slips: readonly StrainSlip[];
  /** First samples that count from a zero set under load. */
  readonly zeroMoves: readonly number[];
  /** Where the strain is travel without the frame: length that stretches elastically over the one that strain is counted over; else 1. */
  readonly elasticLengthRatio: number;
  /** Proportional limits that are asked for; default by every definition. */
  readonly definitions?: readonly ProportionalDefinition[];
  /** Turns the elastic line about the middle of its window by this factor, where its doubt is carried on; else absent. */
  readonly slopeFactor?: number | undefined;
}

/** @internal Why a value is withheld that counts a small strain: the piece slipped in the grips before it. */
export type AfterSlip = 'after-slip';

/** @internal Every number of a tension test; strains from the shifted origin, no text but reasons. */
export interface TensionNumbers {
  readonly line: Outcome<ElasticLine, ModulusReason>;
  /** Slope by which the elastic share of the fillets was taken off [MPa]; absent where none was. */
  readonly filletSlope?: number;
  /** Origin of strain in the strain as recorded. */
  readonly shift: number;
  /** Sample of the highest stress of all, and of the maximum that counts (after a yield point: from hardening on, without that of the level). */
  readonly highest: number;
  readonly maximumSample: number;
  /** What the highest force is worth: see {@link whatWasReached}. */
  readonly reached: 'maximum' | 'still-rising' | 'before-hardening' | 'no-hardening';
  /** The maximum with its strain; absent where it was not reached, or the curve ends before it. */
  readonly maximum: Maximum | undefined;
  /** How far the strain of the maximum is determined, where that was asked for. */
  readonly spread?: MaximumSpread;
  /** One past the last sample of the record that belongs to the test: at fracture, where the force was let go, or at its end. */
  readonly end: number;
  /** Stress at that sample [MPa]. */
  readonly endStress: number;
  readonly yielding: Outcome<YieldPoints, YieldReason> | undefined;
  readonly proofs: readonly Outcome<ProofStrength, ProofReason | AfterSlip>[];
  readonly totals: readonly Outcome<CurvePoint, 'not-reached' | AfterSlip>[];
  readonly proportional: Proportional | undefined;
  readonly fracture: Outcome<Fracture, FractureReason | 'unloaded' | 'extension-ends'>;
  /** Area under the curve up to fracture [MPa]. */
  readonly toughness: number | undefined;
  readonly necking: Outcome<NeckingOnset, string> | undefined;
  readonly hardening: (Outcome<HollomonFit, string> & { readonly range: readonly [number, number] }) | undefined;
  /** Slips that the strain counts beyond the elastic line. */
  readonly slips: readonly StrainSlip[];
}

/** @internal Proportional limits by their definition. */
export type Proportional = Readonly<Partial<Record<ProportionalDefinition, Outcome<ProportionalLimit, ProportionalReason | AfterSlip>>>>;
