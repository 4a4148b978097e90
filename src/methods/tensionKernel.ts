import { failure, success, type Outcome, type StressStrainCurve } from '../base/index.js';
import {
  areaUnder,
  breakOf,
  explainLine,
  fitModulusKernel,
  maximumSpread,
  plateauOf,
  proofStrengthKernel,
  proportionalLimitsKernel,
  totalExtensionStrengthKernel,
  yieldPointsKernel,
  yieldRule,
  type Break,
  type CurvePoint,
  type Fracture,
  type FractureReason,
  type LineExplanation,
  type Maximum,
  type MaximumSpread,
  type ElasticLine,
  type ModulusReason,
  type ProofReason,
  type ProofStrength,
  type ProportionalDefinition,
  type ProportionalLimit,
  type ProportionalReason,
  type YieldPoints,
  type YieldReason,
} from '../curve/index.js';
import {
  flowKernel,
  hasTrueCurve,
  hollomonKernel,
  neckingByCurve,
  trueKernel,
  withinStrains,
  type HollomonFit,
  type NeckingOnset,
} from '../hardening/index.js';
import { cellMeans, maximumIndex } from '../numeric/index.js';
import type { StrainSlip } from './departures.js';
import type { TensionSettings } from './tensionOptions.js';
import { turned } from './turned.js';

/** @internal What the kernel needs: a checked curve, as recorded, that the kernel may keep. */
export interface TensionInput {
  /** Strain as recorded; the kernel moves its origin in place. */
  readonly curve: StressStrainCurve;
  /** Stress of all samples; longer than the curve where the extensometer ends it early. */
  readonly stress: Float64Array;
  /** Sample of its highest value; default: looked for. */
  readonly highest?: number;
  /** Where the force of the whole record fell away; default: looked for. */
  readonly broken?: Outcome<Break, FractureReason> | undefined;
  /** Last sample before the drive let the force go, where the test was stopped and unloaded. */
  readonly unloadedFrom?: number | undefined;
  /** False where a trial does not ask how far the maximum is determined; default true. */
  readonly withSpread?: boolean;
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

/** Why a value is withheld that counts a small strain: the piece slipped in the grips before it. */
export type AfterSlip = 'after-slip';

/** @internal Every number of a tension test; strains from the shifted origin, no text but reasons. */
export interface TensionNumbers {
  readonly line: Outcome<ElasticLine, ModulusReason>;
  /** Slope by which the elastic share of the fillets was taken off [MPa]; absent where none was. */
  readonly filletSlope?: number;
  /** Origin of strain in the strain as recorded. */
  readonly shift: number;
  /** Sample of the highest stress of all, and of the maximum that counts (after a yield point: from hardening on). */
  readonly highest: number;
  readonly maximumSample: number;
  /** The maximum with its strain; absent where the curve ends before it. */
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

type Proportional = Readonly<Partial<Record<ProportionalDefinition, Outcome<ProportionalLimit, ProportionalReason | AfterSlip>>>>;

/** Hollomon is fitted from 2 % true plastic strain where the curve reaches twice as far, else from the end of yielding. */
const FIT_FROM = 0.02;
/** The onset of necking is looked for where the stress is above this share of its maximum. */
const NECKING_SHARE = 0.96;

/** @internal What the fillets and heads give elastically over the stress [1/MPa]: strain counts over Lc, but Leff stretches. */
export const filletShare = (slope: number, ratio: number): number => (ratio - 1) / (slope * ratio); // with the slope m over Lc, E = m ratio

/** Takes out, in place, what the fillets and heads give elastically. */
function withoutFillets({ strain, stress }: StressStrainCurve, slope: number, ratio: number): void {
  const surplus = filletShare(slope, ratio);
  for (let i = 0; i < strain.length; i += 1) strain[i]! -= stress[i]! * surplus;
}

/** @internal Moves a curve in place as the kernel moved the one that it was given. */
export function moveCurve(
  curve: StressStrainCurve,
  { filletSlope, shift }: Pick<TensionNumbers, 'filletSlope' | 'shift'>,
  ratio: number,
): void {
  if (filletSlope !== undefined) withoutFillets(curve, filletSlope, ratio);
  if (shift !== 0) for (let i = 0; i < curve.strain.length; i += 1) curve.strain[i]! -= shift;
}

/** About so many means stand for the samples of a long record in hardening and necking. */
const PLACES = 150;

/** @internal The curve from one sample to another (included), by means. */
export function meansOf({ strain, stress }: StressStrainCurve, first: number, last: number): StressStrainCurve {
  const { x, y } = cellMeans(strain, stress, first, last, PLACES);
  return { strain: x, stress: y };
}

/** @internal Hollomon's law on a flow curve, from 2 % plastic strain on where it reaches twice as far. */
export function hollomonOf(flow: StressStrainCurve): TensionNumbers['hardening'] {
  const last = flow.strain.length - 1;
  if (last < 4) return undefined;
  const to = flow.strain[last]!;
  const from = to > 2 * FIT_FROM ? Math.max(FIT_FROM, flow.strain[0]!) : flow.strain[0]!;
  if (to <= from) return undefined; // noise on a curve without plastic strain
  return Object.assign(hollomonKernel(withinStrains(flow, from, to)), { range: [from, to] as const });
}

/** A plastic strain is told from none where it is so many times its standard doubt. */
const PLASTIC = 3;

/** Doubt of a plastic strain at a stress: by the slope of the line, and by the scatter of the samples about it [mm/mm]. */
const plasticDoubt = ({ slope, standardError, residualStandardDeviation }: ElasticLine, stress: number): number =>
  Math.hypot((stress * standardError) / slope, residualStandardDeviation) / slope;

/** The hardening law between yielding and maximum; none where nothing flowed, so that only noise could be fitted. */
function hardeningOf(curve: StressStrainCurve, line: ElasticLine, first: number, maximum: number): TensionNumbers['hardening'] {
  if (maximum - first < 5 || !hasTrueCurve(curve.strain, first, maximum)) return undefined;
  const means = trueKernel(meansOf(curve, first, maximum), 1);
  const flow = flowKernel(means, line.slope, 0, means.strain.length - 1);
  const last = flow.strain.length - 1;
  if (last < 0) return undefined;
  const [from, to] = [flow.strain[0]!, flow.strain[last]!];
  const doubt = plasticDoubt(line, flow.stress[last]!);
  if (to - from < PLASTIC * doubt)
    return Object.assign(failure('within-doubt', 'the plastic strain up to the maximum is within its doubt: nothing hardened'), {
      range: [from, to] as const,
    });
  return hollomonOf(flow);
}

/** The onset of necking by Considère, from the samples around the maximum. */
function neckingOf({ strain, stress }: StressStrainCurve, maximum: number, end: number): TensionNumbers['necking'] {
  const least = NECKING_SHARE * stress[maximum]!;
  let first = maximum;
  let last = maximum;
  while (first > 0 && stress[first - 1]! >= least) first -= 1;
  while (last < end - 1 && stress[last + 1]! >= least) last += 1;
  if (last - first < 7 || !hasTrueCurve(strain, first, last)) return undefined;
  const { strain: means, stress: force } = meansOf({ strain, stress }, first, last);
  const trueStrain = new Float64Array(means.length);
  for (let i = 0; i < means.length; i += 1) trueStrain[i] = Math.log1p(means[i]!);
  // the engineering stress is the force over the original area
  return neckingByCurve(trueStrain, force);
}

const DEFINITIONS = ['offset', 'deviation', 'tangent', 'johnson'] as const;

/** Proportional limits below a sample, on the curve whose origin the kernel moved. */
function proportionalOf(curve: StressStrainCurve, line: ElasticLine, end: number, definitions: readonly ProportionalDefinition[]) {
  const { slope, first, residualStandardDeviation: residual } = line;
  return proportionalLimitsKernel(curve, { slope, shift: 0, offset: 0.0001, tangentShare: 0.9, residual, first, end }, definitions);
}

/** @internal What explains the elastic line, on the curve whose origin the kernel moved and up to its maximum; not needed by a repeated evaluation. */
export function explanationOf(
  { line, shift, highest }: Pick<TensionNumbers, 'line' | 'shift' | 'highest'>,
  curve: StressStrainCurve,
): LineExplanation {
  if (!line.ok) return {};
  // a curve that an extensometer ends early may end before the highest force
  const maximum = highest < curve.stress.length ? highest : maximumIndex(curve.stress);
  return explainLine(curve, { ...line, intercept: line.intercept + line.slope * shift, strainShift: line.strainShift - shift }, maximum);
}

/** A point, unless it lies beyond a strain from which on a slip is counted. */
const upTo =
  (strain: number) =>
  <Point extends CurvePoint, Reason extends string>(point: Outcome<Point, Reason>): Outcome<Point, Reason | AfterSlip> =>
    point.ok && point.strain > strain
      ? failure('after-slip', 'the piece slipped in the grips before it, and the strain counts the slip')
      : point;

/** Proportional limits, those beyond a slip withheld. */
const proportionalBefore = (limits: Proportional, unslipped: ReturnType<typeof upTo>): Proportional =>
  Object.fromEntries(Object.entries(limits).map(([definition, limit]) => [definition, unslipped(limit)]));

/** Where the curve breaks: by the force of the whole record, with the strain where the curve reaches so far. */
function fractureOf(
  { strain }: StressStrainCurve,
  { stress, unloadedFrom, broken }: TensionInput,
  highest: number,
): { readonly end: number; readonly fracture: TensionNumbers['fracture'] } {
  if (unloadedFrom !== undefined)
    return {
      end: unloadedFrom + 1,
      fracture: failure('unloaded', 'the drive let the force go, and the strain went back elastically with it'),
    };
  const by = broken ?? breakOf(stress, highest, 0.02);
  if (!by.ok) return { end: stress.length, fracture: by };
  const { index, how } = by;
  // a record that ends in its neck, after the extensometer
  if (how === 'end-of-record' && index >= strain.length)
    return {
      end: index + 1,
      fracture: failure('not-fractured', `the record ends at ${((100 * stress[index]!) / stress[highest]!).toFixed(1)} % of its maximum`),
    };
  if (index < strain.length) return { end: index + 1, fracture: success({ index, stress: stress[index]!, strain: strain[index]!, how }) };
  return { end: index + 1, fracture: failure('extension-ends', 'the extensometer ends before the fracture') };
}

/** What the maximum of the curve takes its neighbourhood by, as a share of it (common practice). */
const NEAR_MAXIMUM = 0.001;

/** @internal Columns in, numbers out: what a repeated evaluation (a Monte Carlo trial) runs alone. */
export function tensionKernel(input: TensionInput, settings: TensionSettings): TensionNumbers {
  const { curve, pauses } = input;
  const { strain, stress } = curve;
  const n = strain.length;
  const highest = input.highest ?? maximumIndex(input.stress);
  const top = highest < n ? highest : maximumIndex(stress);
  let line = fitModulusKernel(curve, settings.window, top);
  const filletSlope = line.ok && input.elasticLengthRatio !== 1 ? line.slope : undefined;
  if (line.ok && filletSlope !== undefined) {
    withoutFillets(curve, line.slope, input.elasticLengthRatio);
    line = fitModulusKernel(curve, settings.window, top);
  }
  if (line.ok && input.slopeFactor !== undefined) line = turned(line, curve, input.slopeFactor);
  const shift = line.ok ? line.strainShift : 0;
  if (shift !== 0) for (let i = 0; i < n; i += 1) strain[i]! -= shift;

  const { fracture, end: lastOfTest } = fractureOf(curve, input, highest);
  const end = Math.min(lastOfTest, n);
  const slope = line.ok ? line.slope : undefined;
  // what lies before the line is in its origin
  const from = line.ok ? line.first : 0;
  const slips = input.slips.filter(({ at }) => at >= from && at < n);
  const yielding =
    slope === undefined
      ? undefined
      : yieldPointsKernel(curve, {
          pauses,
          modulus: slope,
          strainShift: 0,
          ...yieldRule,
          lowerRule: settings.lowerYield,
          zeroMoves: input.zeroMoves,
          slipped: slips.reduce((sum, slip) => sum + slip.strain, 0),
          maximum: top,
          end,
        });
  // with a yield point the maximum that counts lies in the hardening range
  const maximumSample =
    yielding?.ok === true && highest === yielding.upper.index ? maximumIndex(stress, yielding.hardeningStart, end) : highest;
  const maximum = maximumSample < n ? plateauOf(curve, maximumSample, input.resolution) : undefined;

  const beyond = top + 1;
  const crossings = slope === undefined ? [] : settings.offsets.map((offset) => proofStrengthKernel(curve, slope, 0, offset, from, beyond));
  const afterYield = yielding?.ok === true ? yielding.hardeningStart : (crossings.find((one) => one.ok)?.index ?? from);
  const totals = settings.totalExtensions.map((total) => totalExtensionStrengthKernel(curve, total, 0, end));
  const proportional = line.ok ? proportionalOf(curve, line, beyond, input.definitions ?? DEFINITIONS) : undefined;
  const slip = slips[0];
  const unslipped = slip && upTo(strain[slip.at]!);
  const hardens = maximum && !(slip && slip.at < maximumSample);
  return {
    line,
    ...(filletSlope === undefined ? {} : { filletSlope }),
    shift,
    highest,
    maximumSample,
    maximum,
    ...(maximum && input.withSpread !== false ? { spread: maximumSpread(curve, maximumSample, end, NEAR_MAXIMUM) } : {}),
    end: lastOfTest,
    endStress: input.stress[lastOfTest - 1]!,
    yielding,
    proofs: unslipped ? crossings.map(unslipped) : crossings,
    totals: unslipped ? totals.map(unslipped) : totals,
    proportional: unslipped && proportional ? proportionalBefore(proportional, unslipped) : proportional,
    fracture,
    toughness: fracture.ok ? areaUnder(curve, 0, fracture.index) : undefined,
    necking: maximum && maximumSample < end - 1 ? neckingOf(curve, maximumSample, end) : undefined,
    hardening: line.ok && hardens ? hardeningOf(curve, line, afterYield, maximumSample) : undefined,
    slips,
  };
}
