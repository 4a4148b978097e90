import { failure, type Outcome, type StressStrainCurve } from '../../base/index.js';
import {
  areaUnder,
  endOfPlateau,
  fitModulusKernel,
  maximumSpread,
  plateauOf,
  proportionalDefinitions,
  proofStrengthKernel,
  proportionalLimitsKernel,
  totalExtensionStrengthKernel,
  yieldPointsKernel,
  yieldRule,
  type CurvePoint,
  type ElasticLine,
  type ProportionalDefinition,
  type WindowChoice,
} from '../../curve/index.js';
import { maximumIndex } from '../../numeric/index.js';
import { fractureOf } from './fractureOf.js';
import { hardeningOf, neckingOf } from '../loading/hardeningAndNecking.js';
import { moveOrigin, withoutFillets } from '../loading/moveCurve.js';
import type { AfterSlip, Proportional, TensionInput, TensionNumbers } from '../loading/TensionNumbers.js';
import type { TensionSettings } from './tensionOptions.js';
import { turned } from './turned.js';
import { shownFracture, whatWasReached } from './whatWasReached.js';

/** @internal Plastic extension of the limit of proportionality by an offset [mm/mm]. */
export const PROPORTIONAL_OFFSET = 0.0001;

/** Proportional limits below a sample, on the curve whose origin the kernel moved. */
function proportionalOf(curve: StressStrainCurve, line: ElasticLine, end: number, definitions: readonly ProportionalDefinition[]) {
  const { slope, first, residualStandardDeviation: residual } = line;
  return proportionalLimitsKernel(
    curve,
    { slope, shift: 0, offset: PROPORTIONAL_OFFSET, tangentShare: 0.9, residual, first, end },
    definitions,
  );
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

/** What the maximum of the curve takes its neighbourhood by, as a share of it (common practice). */
const NEAR_MAXIMUM = 0.001;

/**
 * The elastic line below a sample, and the slope by which the share of the fillets was taken off first, where there is one. The curve is moved in
 * place: without that share, its origin where the line meets zero stress.
 */
function lineOf(curve: StressStrainCurve, top: number, { alone, elasticLengthRatio, slopeFactor }: TensionInput, window: WindowChoice) {
  let line = fitModulusKernel(curve, window, top, alone);
  const filletSlope = line.ok && elasticLengthRatio !== 1 ? line.slope : undefined;
  if (filletSlope !== undefined) {
    withoutFillets(curve, filletSlope, elasticLengthRatio);
    line = fitModulusKernel(curve, window, top, alone);
  }
  if (line.ok && slopeFactor !== undefined) line = turned(line, curve, slopeFactor);
  const shift = line.ok ? line.strainShift : 0;
  moveOrigin(curve.strain, shift);
  return { line, filletSlope, shift };
}

/** @internal Columns in, numbers out: what a repeated evaluation (a Monte Carlo trial) runs alone. */
export function tensionKernel(input: TensionInput, settings: TensionSettings): TensionNumbers {
  const { curve, pauses } = input;
  const { strain, stress } = curve;
  const n = strain.length;
  const highest = input.highest ?? maximumIndex(input.stress);
  const top = highest < n ? highest : maximumIndex(stress);
  const { line, filletSlope, shift } = lineOf(curve, top, input, settings.window);

  const found = fractureOf(curve, input, highest);
  const lastOfTest = found.end;
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
          lowerYield: settings.lowerYield,
          resolution: input.resolution,
          zeroMoves: input.zeroMoves,
          slipped: slips.reduce((sum, slip) => sum + slip.strain, 0),
          maximum: top,
          end,
        });
  // with a yield point the maximum that counts lies in the hardening range, also where the extensometer ends before it; without one it is that of the level
  const hardening = (yielding?.ok === true ? yielding.hardeningStart : undefined) ?? 0;
  const counted = (yielding?.ok === true ? yielding.levelStart : undefined) ?? hardening;
  const reached = whatWasReached(curve, input, yielding, found);
  const level = reached === 'before-hardening' || reached === 'no-hardening';
  const maximumSample = highest < counted ? maximumIndex(input.stress, counted, lastOfTest) : highest;
  const maximum = maximumSample < n && reached === 'maximum' ? plateauOf(curve, maximumSample, input.resolution, end) : undefined;

  // what lies on the level is found there whether the test went on or not
  const peak = level ? end - 1 : top < hardening ? maximumIndex(stress, hardening, end) : top;
  const beyond = endOfPlateau(stress, peak, input.resolution, end);
  const crossings =
    slope === undefined
      ? []
      : settings.offsets.map((offset) =>
          proofStrengthKernel(curve, { slope, shift: 0, offset }, { from, peak, resolution: input.resolution, end }),
        );
  const afterYield = (hardening > 0 ? hardening : crossings.find((one) => one.ok)?.index) ?? from;
  const totals = settings.totalExtensions.map((total) => totalExtensionStrengthKernel(curve, total, 0, end));
  const proportional = line.ok ? proportionalOf(curve, line, beyond, input.definitions ?? proportionalDefinitions) : undefined;
  const slip = slips[0];
  const unslipped = slip && upTo(strain[slip.at]!);
  const hardens = maximumSample < n && !level && !(slip && slip.at < maximumSample);
  const fracture = shownFracture(found.fracture, reached);
  return {
    line,
    shift,
    highest,
    maximumSample,
    reached,
    maximum,
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
    ...(filletSlope === undefined ? {} : { filletSlope }),
    ...(maximum && input.alone !== true
      ? { spread: maximumSpread(curve, maximumSample, { end, resolution: input.resolution, share: NEAR_MAXIMUM }) }
      : {}),
  };
}
