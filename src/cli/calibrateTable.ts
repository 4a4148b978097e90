import type { PresentationOptions } from '../report/index.js';
import { presentation } from '../report/index.js';
import type { FittedCalibration } from './calibrationFile.js';
import { findingLines } from './findingLines.js';
import { padded } from './padded.js';
import { plain } from './plain.js';

/** Below this share of the highest force a number is rounding of the arithmetic. */
const ROUNDING = 1e-9;

const POWERS = ['', ' x', ' x²', ' x³'] as const;

/** A calibration as text for a terminal: its polynomial, what it leaves over pair by pair, findings. In MPa and N, as the coefficients are. */
export function calibrateTable(file: FittedCalibration, standardUncertainty: readonly number[], reader: PresentationOptions): string {
  const show = presentation('calibrateTable', { language: reader.language });
  const { say, number, digits, percent, doubt } = show;
  const { pairs, indicates, calibration } = file;
  const { degree, degreeBy, coefficients, span, points, residuals, residualStandardDeviation, degreesOfFreedom, weights } = calibration;
  const highest = Math.max(...Array.from(pairs.reference, Math.abs));
  const farthest = Math.max(...span.map(Math.abs));
  /** A force, or a number that `by` makes one, without the dust of the arithmetic. */
  const clean = (value: number, by = 1): number => (Math.abs(value * by) <= ROUNDING * highest ? 0 : value);
  /** Three figures, and all digits of a whole number. */
  const residual = (value: number): string => {
    const three = value.toPrecision(3);
    return digits(value === 0 ? '0' : three.includes('e+') ? value.toFixed(0) : three);
  };
  const left = weights === 'relative' ? clean(residualStandardDeviation, highest) : clean(residualStandardDeviation);
  const unit = indicates === undefined ? say('the unit of the table') : indicates === 'pressure' ? 'MPa' : 'N';
  const [low, high] = span.map((x) => number(x, 6));
  const deviation = weights === 'relative' ? percent(left, 3) : `${number(left, 3)}\u00a0N`;
  const of = indicates === undefined ? '' : ` / ${unit}`;
  const columns = [
    say('Pair'),
    `${say('Indicated value')}${of}`,
    `${say('Force of the reference')} / N`,
    `${say('Reference less calibration')} / N`,
    'u / N',
  ];
  const rows = Array.from({ length: points }, (_, i) => [
    String(i + 1),
    number(pairs.indicated[i]!, 6),
    number(pairs.reference[i]!, 6),
    residual(clean(residuals[i]!)),
    doubt(clean(standardUncertainty[i]!)),
  ]);
  const all = [
    say('Calibration of degree {degree} through {points} pairs.', { degree, points }),
    `  F = ${coefficients.map((c, k) => `c${k}${POWERS[k]!}`).join(' + ')}`,
    ...coefficients.map((c, k) => `  c${k} = ${digits(String(Number(clean(c, farthest ** k).toPrecision(9))))}`),
    `  ${say('x: what the channel indicates, in {unit}, from {low} to {high}; F in N.', { unit, low: low!, high: high! })}`,
    `  ${say(degreeBy === 'given' ? 'The degree was given.' : 'The degree was chosen by F-tests.')}`,
    `  ${say('Standard deviation of the residuals: {deviation}, with {freedom} degrees of freedom.', { deviation, freedom: degreesOfFreedom })}`,
    '',
    ...padded([columns, ...rows], [0, 1, 2, 3, 4]),
    '',
    `  ${say('u: standard uncertainty of one reading, by the fitted curve, the scatter, and what was stated of the reference and of the step of the reading.')}`,
    '',
    say('Findings'),
    ...findingLines(calibration.findings, reader).map((one) => `  ${one}`),
  ];
  return `${all.map(plain).join('\n')}\n`;
}
