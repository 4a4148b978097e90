import { trailValue } from '../../base/index.js';
import type { CompressionResult } from '../../methods/index.js';
import { compressionCurveFigure } from '../figures/compressionCurveFigure.js';
import { compressionFlowFigure } from '../figures/compressionFlowFigure.js';
import { lineInWords, loadingInWords, sectionInWords, strainBasis } from '../words/lineInWords.js';
import { fromCrosshead, shownAs, type MethodPage, type ShownQuantity } from './MethodPage.js';
import type { Presentation } from '../words/presentation.js';
import { FORCE } from '../words/shownUnit.js';

function quantities(result: CompressionResult): ShownQuantity[] {
  const stamp = result.extensionBasis === 'travel' ? fromCrosshead : undefined;
  return [
    ...shownAs('elasticSlope', { figures: 3 }, result.elasticSlope, stamp),
    ...shownAs('modulus', { figures: stamp === undefined ? 3 : 2 }, result.modulus, stamp),
    ...shownAs('proofStrengths', 1, result.proofStrengths, stamp),
    ...shownAs('stressesAtStrain', 1, result.stressesAtStrain, stamp),
    ...shownAs('maximumForce', 0.01, result.maximumForce),
    ...shownAs('compressiveStrength', 1, result.compressiveStrength),
    ...shownAs('hardening', 0.01, result.hardening?.exponent, stamp),
    ...shownAs('hardening', 1, result.hardening?.strengthCoefficient, stamp),
    ...shownAs('heightRatio', 0.01, result.heightRatio),
    ...shownAs('bulgeRatio', 0.001, result.bulgeRatio),
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
