import { trailValue } from '../../base/index.js';
import type { CompressionResult } from '../../methods/index.js';
import { compressionCurveFigure } from '../figures/compressionCurveFigure.js';
import { compressionFlowFigure } from '../figures/compressionFlowFigure.js';
import { lineInWords, loadingInWords, sectionInWords, strainBasis } from '../words/lineInWords.js';
import { modulusStep, shownByBasis, type MethodPage, type ShownQuantity } from './MethodPage.js';
import type { Presentation } from '../words/presentation.js';
import { FORCE } from '../words/shownUnit.js';

function quantities(result: CompressionResult): ShownQuantity[] {
  const shown = shownByBasis(result.extensionBasis);
  return [
    ...shown('elasticSlope', modulusStep, result.elasticSlope),
    ...shown('modulus', modulusStep, result.modulus),
    ...shown('proofStrengths', 1, result.proofStrengths),
    ...shown('stressesAtStrain', 1, result.stressesAtStrain),
    ...shown('maximumForce', 0.01, result.maximumForce),
    ...shown('compressiveStrength', 1, result.compressiveStrength),
    ...shown('hardening', 0.01, result.hardening?.exponent),
    ...shown('hardening', 1, result.hardening?.strengthCoefficient),
    ...shown('heightRatio', 0.01, result.heightRatio),
    ...shown('bulgeRatio', 0.001, result.bulgeRatio),
  ];
}

function howFound(result: CompressionResult, show: Presentation): string[] {
  const { say, number, percent, digits, value } = show;
  const { buckling, hardening, flowCurve, trail } = result;
  const friction = trailValue(trail, 'end-friction-taken-off', 'friction');
  return [
    ...lineInWords(result.modulusWindow, show),
    ...result.proofStrengths.map(({ symbol, extension, strain }) =>
      say('{symbol}: first lasting crossing with a line of the same slope, offset by {offset}; at a compression of {strain}.', {
        symbol,
        offset: percent(extension),
        strain: percent(strain),
      }),
    ),
    ...loadingInWords(result.loading, show),
    ...(flowCurve
      ? [
          friction === undefined
            ? say('Flow curve: from the plastic part of the compression, by constancy of volume; friction of the ends is still in it.')
            : say(
                'Flow curve: from the plastic part of the compression, by constancy of volume; friction {friction} taken off by Siebel with the present diameter and height.',
                { friction },
              ),
        ]
      : []),
    ...(hardening
      ? [
          say("{law}'s law: true plastic strain {from} to {to}, {points} samples, R² = {rSquared}.", {
            law: hardening.law,
            from: number(hardening.range[0], 3),
            to: number(hardening.range[1], 3),
            points: hardening.points,
            rSquared: digits(hardening.rSquared.toFixed(5)),
          }),
        ]
      : []),
    ...(buckling
      ? [
          say(
            "Buckling: slenderness kL/i = {slenderness}; the force reached {share} of the tangent-modulus load. Euler's elastic load {load} is a comparison, not a safe load.",
            {
              slenderness: number(buckling.slenderness, 3),
              share: number(buckling.largestShare, 3),
              load: value(buckling.elasticLoad.value, FORCE, 4),
            },
          ),
        ]
      : []),
  ];
}

/** @internal The page of a compression test. */
export const compressionPage: MethodPage<CompressionResult> = {
  title: 'Compression test',
  identity: (result, show) => [
    ['Section', sectionInWords(result.piece.section, show)],
    ['Height h0', show.value(result.piece.height, 'mm', 5)],
    ['Strain from', strainBasis(result.extensionBasis, result.strainLength, show)],
    ['Direction', show.say('compression counts positive')],
  ],
  quantities,
  howFound,
  figures: (result, show) => ({
    compressionCurve: compressionCurveFigure(result, show),
    compressionFlow: compressionFlowFigure(result, show),
  }),
  work: 'compression',
};
