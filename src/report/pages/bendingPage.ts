import type { BendingResult } from '../../methods/index.js';
import { bendingCurveFigure } from '../figures/bendingCurveFigure.js';
import { lineInWords, loadingInWords, sectionInWords } from '../words/lineInWords.js';
import { modulusStep, shownByBasis, type MethodPage, type ShownQuantity } from './MethodPage.js';
import type { Presentation } from '../words/presentation.js';

const TWO = { figures: 2 };
const THREE = { figures: 3 };

function quantities(result: BendingResult): ShownQuantity[] {
  const shown = shownByBasis(result.motionBasis);
  return [
    ...shown('elasticSlope', modulusStep, result.elasticSlope),
    ...shown('modulus', modulusStep, result.modulus),
    ...shown('chordModulus', modulusStep, result.chordModulus),
    ...shown('proofStrengths', THREE, result.proofStrengths),
    ...shown('maximumForce', THREE, result.maximumForce),
    ...shown('flexuralStrength', THREE, result.flexuralStrength),
    ...shown('strainAtMaximum', TWO, result.strainAtMaximum),
    ...shown('stressAtBreak', THREE, result.stressAtBreak),
    ...shown('strainAtBreak', TWO, result.strainAtBreak),
    ...shown('spanRatio', 0.1, result.spanRatio),
    ...shown('shearShare', TWO, result.shearShare),
    ...shown('shapeFactor', 0.001, result.shapeFactor),
  ];
}

function howFound(result: BendingResult, show: Presentation): string[] {
  const { say, percent } = show;
  const { chordModulus, proofStrengths, shearShare } = result;
  return [
    ...lineInWords(result.modulusWindow, show),
    ...(chordModulus ? [say('Chord: stresses at both strains of the chord, counted from the shifted origin.')] : []),
    ...proofStrengths.map(({ symbol, extension, strain }) =>
      say(
        '{symbol}: first lasting crossing with a line of the same slope, offset by {offset} strain of the outer fibre; at a strain of {strain}.',
        { symbol, offset: percent(extension), strain: percent(strain) },
      ),
    ),
    ...loadingInWords(result.loading, show),
    say('Stress and strain are those of the outer fibre by the elastic formulas; beyond yielding they are nominal.'),
    ...(shearShare
      ? [say('Shear adds about {share} to the deflection; it was not taken off.', { share: percent(shearShare.value, 2) })]
      : []),
  ];
}

/** @internal The page of a bending test. */
export const bendingPage: MethodPage<BendingResult> = {
  title: 'Bending test',
  identity: ({ piece: { section, setup }, motionBasis }, show) => [
    ['Section', sectionInWords(section, show)],
    [
      'Set-up',
      setup.hexagonOn === undefined
        ? show.say('{points} points', { points: setup.points })
        : show.say('{points} points, on {side}', { points: setup.points, side: show.term(setup.hexagonOn) }),
    ],
    ['Span L', show.value(setup.span, 'mm', 5)],
    ['Arm a', setup.arm === undefined ? undefined : show.value(setup.arm, 'mm', 5)],
    ['Strain from', show.term(motionBasis.replaceAll('-', ' '))],
  ],
  quantities,
  howFound,
  figures: (result, show) => ({ bendingCurve: bendingCurveFigure(result, show) }),
  work: 'bending',
};
