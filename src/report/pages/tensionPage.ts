import type { AfterFracture } from '../../base/index.js';
import type { Phrase } from '../../languages/index.js';
import type { TensionResult } from '../../methods/index.js';
import { elasticDetailFigure } from '../figures/elasticDetailFigure.js';
import { loadExtensionFigure } from '../figures/loadExtensionFigure.js';
import { lineInWords, loadingInWords, sectionInWords, strainBasis } from '../words/lineInWords.js';
import type { MethodPage } from './MethodPage.js';
import { neckingFigure } from '../figures/neckingFigure.js';
import type { Presentation } from '../words/presentation.js';
import { ratesFigure } from '../figures/ratesFigure.js';
import { SLOPE } from '../words/shownUnit.js';
import { standardsTable } from './standardsTable.js';
import { stressStrainFigure } from '../figures/stressStrainFigure.js';
import { hasPiece, type TensionOrCurve } from '../words/TensionOrCurve.js';
import { tensionQuantitiesShown } from './tensionQuantitiesShown.js';
import { trueCurveFigure } from '../figures/trueCurveFigure.js';
import { yieldDetailFigure } from '../figures/yieldDetailFigure.js';

const places = { 'at-mark': 'at a gauge mark', 'in-fillet': 'in the fillet', 'in-grip': 'in the grip' } as const;

/** Where the piece broke, as far as it was told. */
function fractureInWords({ fractureDistance, fracturePlace }: AfterFracture, { say, value }: Presentation): string | undefined {
  if (fracturePlace !== undefined) return say(places[fracturePlace]);
  return fractureDistance === undefined
    ? undefined
    : say('{distance} from the nearest gauge mark', { distance: value(fractureDistance, 'mm', 4) });
}

function identity(result: TensionOrCurve, show: Presentation): [Phrase, string | undefined][] {
  if (!hasPiece(result)) return [];
  const { testPiece } = result;
  const { parallelLength } = testPiece;
  return [
    ['Section', sectionInWords(testPiece.section, show)],
    ['Gauge length L0', show.value(testPiece.gaugeLength, 'mm', 5)],
    ['Parallel length Lc', parallelLength === undefined ? undefined : show.value(parallelLength, 'mm', 5)],
    ['Place of fracture', fractureInWords(testPiece.afterFracture ?? {}, show)],
    ['Strain from', strainBasis(result.extensionBasis, result.strainLength, show)],
  ];
}

/** What explains the elastic line: its residuals, other windows, and what it means for the proof strength. */
function trustInWords({ residuals, envelope, trust }: NonNullable<TensionResult['modulusWindow']>, show: Presentation): string[] {
  const { say, number, percent, value, term } = show;
  const sentences: string[] = [];
  if (residuals)
    sentences.push(
      say(
        'Residuals: {runs} runs of one sign ({expected} expected in random order); a parabola changes the slope by {change} from end to end.',
        { runs: residuals.runs, expected: number(residuals.expectedRuns, 3), change: percent(residuals.slopeChange) },
      ),
    );
  if (envelope) {
    const slopes = {
      windows: envelope.windows,
      low: value(envelope.slope[0], SLOPE, 4),
      high: value(envelope.slope[1], SLOPE, 4),
      verdict: term(envelope.verdict),
    };
    const proof = envelope.proofStrength;
    sentences.push(
      proof
        ? say('Other windows ({windows}) give slopes from {low} to {high} and Rp0.2 from {lowProof} to {highProof}: {verdict}.', {
            ...slopes,
            lowProof: value(proof[0], 'MPa', 4),
            highProof: value(proof[1], 'MPa', 4),
          })
        : say('Other windows ({windows}) give slopes from {low} to {high}: {verdict}.', slopes),
    );
  }
  if (trust)
    sentences.push(
      say('Leverage of the slope on Rp0.2: λ = {leverage}; the doubt of the slope moves the offset by {doubt} of itself: {verdict}.', {
        leverage: number(trust.leverage, 3),
        doubt: percent(trust.offsetDoubt),
        verdict: term(trust.verdict),
      }),
    );
  return sentences;
}

/** How each value was found, in sentences with the numbers. */
function howFound(result: TensionOrCurve, show: Presentation): string[] {
  const { say, number, percent, digits, term } = show;
  const { modulusWindow: line, fracture, hardening, upperYieldStrength: upper, proofStrengths } = result;
  const sentences: string[] = [];
  if (line) sentences.push(...lineInWords(line, show), ...trustInWords(line, show));
  const limits = result.proportionalLimit?.byDefinition;
  if (limits)
    sentences.push(
      say('By other definitions the limit of proportionality lies from {low} to {high}.', {
        low: show.value(limits[0], 'MPa', 4),
        high: show.value(limits[1], 'MPa', 4),
      }),
    );
  for (const proof of proofStrengths)
    sentences.push(
      say('{symbol}: first lasting crossing with a line of the same slope, offset by {offset}; at a strain of {strain}.', {
        symbol: proof.symbol,
        offset: percent(proof.extension),
        strain: percent(proof.strain),
      }),
    );
  if (upper)
    sentences.push(
      say(
        'Yield point: the highest stress before a fall of at least 0.5 % with no higher stress over the next 0.05 % strain, at sample {sample}.',
        { sample: upper.index },
      ),
    );
  if (result.lowerYieldStrength)
    sentences.push(
      result.provenance.options['lowerYield'] === 'short'
        ? say('ReL: the lowest stress over the first 0.25 % strain after ReH, without the first transient.')
        : say('ReL: the lowest stress of the whole yielding range, without the first transient.'),
    );
  sentences.push(...loadingInWords(result.loading, show));
  sentences.push(say('Maximum: sample {sample}.', { sample: result.maximumIndex }));
  if (fracture)
    sentences.push(
      say('Fracture: sample {sample}, recognised as {how}.', { sample: fracture.index, how: term(fracture.how.replaceAll('-', ' ')) }),
    );
  if (result.elongationMethod === 'subdivision')
    sentences.push(say('A: by subdivision of the gauge length, since the piece broke near a mark.'));
  if (result.elongationMethod === 'fine-marks') sentences.push(say('A: by fine marks, read under a microscope.'));
  if (hardening)
    sentences.push(
      say("{law}'s law: true plastic strain {from} to {to}, {points} samples, R² = {rSquared}.", {
        law: hardening.law,
        from: number(hardening.range[0], 3),
        to: number(hardening.range[1], 3),
        points: hardening.points,
        rSquared: digits(hardening.rSquared.toFixed(5)),
      }),
    );
  return sentences;
}

/** @internal The page of a tension test, or of stress and strain alone: what needs the piece is then left out. */
export const tensionPage: MethodPage<TensionOrCurve> = {
  title: 'Tension test',
  steps: 'ISO 6892-1',
  identity,
  quantities: tensionQuantitiesShown,
  howFound,
  figures: (result, show) => ({
    loadExtension: hasPiece(result) ? loadExtensionFigure(result, show) : undefined,
    stressStrain: stressStrainFigure(result, show),
    elasticDetail: elasticDetailFigure(result, show),
    yieldDetail: yieldDetailFigure(result, show),
    trueCurve: trueCurveFigure(result, show),
    necking: neckingFigure(result, show),
    rates: ratesFigure(result, show),
  }),
  tables: (result, show) => [standardsTable(result, show)],
  work: 'tension',
};
