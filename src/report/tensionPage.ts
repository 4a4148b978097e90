import { cautionsFor, type TensionResult } from '../methods/index.js';
import { elasticDetailFigure } from './elasticDetailFigure.js';
import { loadExtensionFigure } from './loadExtensionFigure.js';
import { lineInWords, loadingInWords, sectionInWords } from './lineInWords.js';
import { number, percent, type MethodPage } from './MethodPage.js';
import { ratesFigure } from './ratesFigure.js';
import { standardsTable } from './standardsTable.js';
import { stressStrainFigure } from './stressStrainFigure.js';
import { tensionQuantitiesShown } from './tensionQuantitiesShown.js';
import { trueCurveFigure } from './trueCurveFigure.js';

function identity(result: TensionResult): [string, string | undefined][] {
  const { testPiece } = result;
  return [
    ['Section', sectionInWords(testPiece.section)],
    ['Gauge length L0', `${number(testPiece.gaugeLength, 5)} mm`],
    ['Parallel length Lc', testPiece.parallelLength === undefined ? undefined : `${number(testPiece.parallelLength, 5)} mm`],
    ['Strain from', `${result.extensionBasis.replaceAll('-', ' ')}, over ${number(result.strainLength, 5)} mm`],
  ];
}

/** What explains the elastic line: its residuals, other windows, and what it means for the proof strength. */
function trustInWords({ residuals, envelope, trust }: NonNullable<TensionResult['modulusWindow']>): string[] {
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
  if (line) sentences.push(...lineInWords(line), ...trustInWords(line));
  for (const proof of proofStrengths)
    sentences.push(
      `${proof.symbol}: first lasting crossing with a line of the same slope, offset by ${percent(proof.extension)}; at a strain of ${percent(proof.strain)}.`,
    );
  if (upper)
    sentences.push(
      `Yield point: the highest stress before a fall of at least 0.5 % with no higher stress over the next 0.05 % strain, at sample ${upper.index}; ReL without the first transient.`,
    );
  sentences.push(...loadingInWords(result.loading));
  sentences.push(`Maximum: sample ${result.maximumIndex}.`);
  if (fracture) sentences.push(`Fracture: sample ${fracture.index}, recognised as ${fracture.how.replaceAll('-', ' ')}.`);
  if (result.elongationMethod === 'subdivision')
    sentences.push('A: by subdivision of the gauge length, since the piece broke near a mark.');
  if (result.elongationMethod === 'fine-marks') sentences.push('A: by fine marks, read under a microscope.');
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
  table: standardsTable,
  cautions: cautionsFor('tension'),
};
