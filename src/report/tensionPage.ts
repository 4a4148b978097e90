import { cautionsFor, type TensionResult } from '../methods/index.js';
import { elasticDetailFigure } from './elasticDetailFigure.js';
import { loadExtensionFigure } from './loadExtensionFigure.js';
import { number, percent, type MethodPage } from './MethodPage.js';
import { ratesFigure } from './ratesFigure.js';
import { stressStrainFigure } from './stressStrainFigure.js';
import { tensionQuantitiesShown } from './tensionQuantitiesShown.js';
import { trueCurveFigure } from './trueCurveFigure.js';

function identity(result: TensionResult): [string, string | undefined][] {
  const { testPiece } = result;
  const { section } = testPiece;
  const dimensions = Object.entries(section.dimensions)
    .map(([name, value]) => `${name} ${number(value, 5)}`)
    .join(', ');
  return [
    ['Section', `${section.shape}, ${dimensions} (mm); S0 = ${number(section.area, 5)} mm²`],
    ['Gauge length L0', `${number(testPiece.gaugeLength, 5)} mm`],
    ['Parallel length Lc', testPiece.parallelLength === undefined ? undefined : `${number(testPiece.parallelLength, 5)} mm`],
    ['Strain from', `${result.extensionBasis.replaceAll('-', ' ')}, over ${number(result.strainLength, 5)} mm`],
  ];
}

/** What explains the elastic line: its residuals, other windows, and what it means for the proof strength. */
function lineInWords({ residuals, envelope, trust }: NonNullable<TensionResult['modulusWindow']>): string[] {
  return [
    ...(residuals
      ? [
          `Residuals: ${residuals.runs} runs of one sign (${number(residuals.expectedRuns, 3)} expected in random order); a parabola changes the slope by ${percent(residuals.slopeChange)} from end to end.`,
        ]
      : []),
    ...(envelope
      ? [
          `Other windows (${envelope.windows}) give slopes from ${number(envelope.slope[0] / 1000, 4)} to ${number(envelope.slope[1] / 1000, 4)} GPa${envelope.proofStrength ? ` and Rp0.2 from ${number(envelope.proofStrength[0], 4)} to ${number(envelope.proofStrength[1], 4)} MPa` : ''}: ${envelope.verdict}.`,
        ]
      : []),
    ...(trust
      ? [
          `Leverage of the slope on Rp0.2: λ = ${number(trust.leverage, 3)}; one standard error of the slope moves the offset by ${percent(trust.offsetDoubt)} of itself: ${trust.verdict}.`,
        ]
      : []),
  ];
}

/** How each value was found, in sentences with the numbers. */
function howFound(result: TensionResult): string[] {
  const { modulusWindow: line, fracture, hardening, upperYieldStrength: upper, proofStrengths } = result;
  const sentences: string[] = [];
  if (line)
    sentences.push(
      `Elastic line: window ${line.criterion}, samples ${line.first} to ${line.last} (${line.points}), ${number(line.stressLimits[0], 4)} to ${number(line.stressLimits[1], 4)} MPa; slope ${number(line.slope / 1000, 5)} GPa, R² = ${line.rSquared.toFixed(6)}, S_m(rel) = ${percent(line.relativeStandardError)}.`,
      `Strain origin: moved by ${number(line.strainShift, 4)} to where the line meets zero stress; all strains count from there.`,
      ...(line.alternatives.length > 0
        ? [`Runner-up windows give slopes of ${line.alternatives.map(({ slope }) => number(slope / 1000, 4)).join(', ')} GPa.`]
        : []),
      ...lineInWords(line),
    );
  for (const proof of proofStrengths)
    sentences.push(
      `${proof.symbol}: first lasting crossing with a line of the same slope, offset by ${percent(proof.extension)}; at a strain of ${percent(proof.strain)}.`,
    );
  if (upper)
    sentences.push(
      `Yield point: the highest stress before a fall of at least 0.5 % with no higher stress over the next 0.05 % strain, at sample ${upper.index}; ReL without the first transient.`,
    );
  sentences.push(`Maximum: sample ${result.maximumIndex}.`);
  if (fracture) sentences.push(`Fracture: sample ${fracture.index}, recognised as ${fracture.how.replaceAll('-', ' ')}.`);
  if (hardening)
    sentences.push(
      `${hardening.law}'s law: true plastic strain ${number(hardening.range[0], 3)} to ${number(hardening.range[1], 3)}, ${hardening.points} samples, R² = ${hardening.rSquared.toFixed(5)}.`,
    );
  return sentences;
}

/** @internal The page of a tension test. */
export const tensionPage: MethodPage<TensionResult> = {
  title: 'Tension test',
  identity,
  quantities: tensionQuantitiesShown,
  howFound,
  figures: (result) => ({
    loadExtension: loadExtensionFigure(result),
    stressStrain: stressStrainFigure(result),
    elasticDetail: elasticDetailFigure(result),
    trueCurve: trueCurveFigure(result),
    rates: ratesFigure(result),
  }),
  cautions: cautionsFor('tension'),
};
