import {
  WINDOW_SHARE,
  STANDARD_ERRORS_OFF,
  bendDoubt,
  slopeDoubt,
  type ElasticLine,
  type LineExplanation,
  type WindowChoice,
} from '../../curve/index.js';
import type { Quantity, StressStrainCurve } from '../../base/index.js';
import { ISO, quantity } from '../common/quantity.js';
import type { ModulusWindow } from './LineResult.js';
import type { TensionNumbers } from './TensionNumbers.js';

/** How a window was chosen; the gap and the shares where they are not the defaults. */
function criterionInWords(window: WindowChoice): string {
  if (window.by !== 'lower-bound' && window.by !== 'relative-error')
    return `given by its ${window.by === 'samples' ? 'samples' : `limits of ${window.by}`}`;
  const { startShare = WINDOW_SHARE, spanShare = WINDOW_SHARE } = window;
  const best =
    window.by === 'relative-error'
      ? 'least relative standard error'
      : `highest slope less ${window.z ?? STANDARD_ERRORS_OFF} standard errors${window.gap ? `, within ${Number((100 * window.gap).toPrecision(4))} % of the highest` : ''}`;
  return startShare === WINDOW_SHARE && spanShare === WINDOW_SHARE
    ? best
    : `${best}, from ${startShare} of the 0.2 % offset stress on and over ${spanShare} of it`;
}

/** @internal The window of an elastic line, on the curve whose origin was moved. */
export function modulusWindowOf(
  { line, shift, filletSlope }: Pick<TensionNumbers, 'line' | 'shift' | 'filletSlope'>,
  { strain, stress }: StressStrainCurve,
  explanation: LineExplanation,
): { readonly modulusWindow?: ModulusWindow } {
  if (!line.ok) return {};
  return {
    modulusWindow: {
      criterion: criterionInWords(line.criterion),
      first: line.first,
      last: line.last,
      points: line.points,
      slope: line.slope,
      strainLimits: [strain[line.first]!, strain[line.last]!] as const,
      stressLimits: [stress[line.first]!, stress[line.last]!] as const,
      strainShift: shift,
      ...(filletSlope === undefined ? {} : { filletSlope }),
      rSquared: line.rSquared,
      relativeStandardError: line.relativeStandardError,
      alternatives: line.alternatives.map(({ first, last, slope: other }) => ({ first, last, slope: other })),
      ...explanation,
    },
  };
}

/** @internal The slope of an elastic line as a quantity, with what the scatter of its samples, the luck of its search, the bends of the curve, noise and steps of the strains, and flatter windows leave open. */
export const slopeQuantity = (
  line: ElasticLine,
  { residuals, beginningYield, remainingToe, noiseFlattening, strainSteps, aboveOthers }: LineExplanation,
  symbol: string,
  name: string,
  source: string,
): Quantity =>
  quantity(
    symbol,
    name,
    line.slope,
    'MPa',
    source,
    line.points > 2
      ? Math.hypot(
          slopeDoubt(line, residuals),
          line.slope * bendDoubt({ beginningYield, remainingToe }),
          line.slope * (noiseFlattening?.slopeShare ?? 0),
          line.slope * (strainSteps?.slopeShare ?? 0),
          line.slope * (aboveOthers?.slopeShare ?? 0),
        )
      : undefined,
  );

/** @internal Elastic line, modulus, and the window with what explains it, where that was asked for. */
export function elasticQuantities(
  numbers: TensionNumbers,
  curve: StressStrainCurve,
  isModulus: boolean,
  explanation: LineExplanation | undefined,
) {
  const { line } = numbers;
  if (!line.ok) return {};
  return {
    elasticSlope: slopeQuantity(
      line,
      explanation ?? {},
      'mE',
      'slope of the elastic part',
      `${ISO}, slope of the elastic part of the curve`,
    ),
    ...(isModulus ? { modulus: slopeQuantity(line, explanation ?? {}, 'E', 'modulus of elasticity', "ASTM E111, Young's modulus") } : {}),
    ...(explanation ? modulusWindowOf(numbers, curve, explanation) : {}),
  };
}
