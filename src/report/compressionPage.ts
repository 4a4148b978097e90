import { cautionsFor, type CompressionResult } from '../methods/index.js';
import { compressionCurveFigure } from './compressionCurveFigure.js';
import { compressionFlowFigure } from './compressionFlowFigure.js';
import { lineInWords, loadingInWords, sectionInWords } from './lineInWords.js';
import { fromCrosshead, number, percent, shownAs, type MethodPage, type Shown, type ShownQuantity } from './MethodPage.js';

const strength: Shown = { unit: 'MPa', factor: 1, step: 1 };
const ratio: Shown = { unit: '', factor: 1, step: 0.01 };
const modulus: Shown = { unit: 'GPa', factor: 1e-3, step: { figures: 3 } };
const kilonewtons: Shown = { unit: 'kN', factor: 1e-3, step: 0.01 };

function quantities(result: CompressionResult): ShownQuantity[] {
  const stamp = result.extensionBasis === 'travel' ? fromCrosshead : undefined;
  return [
    ...shownAs('elasticSlope', modulus, result.elasticSlope, stamp),
    ...shownAs('modulus', stamp === undefined ? modulus : { ...modulus, step: { figures: 2 } }, result.modulus, stamp),
    ...shownAs('proofStrengths', strength, result.proofStrengths, stamp),
    ...shownAs('stressesAtStrain', strength, result.stressesAtStrain, stamp),
    ...shownAs('maximumForce', kilonewtons, result.maximumForce),
    ...shownAs('compressiveStrength', strength, result.compressiveStrength),
    ...shownAs('hardening', ratio, result.hardening?.exponent, stamp),
    ...shownAs('hardening', strength, result.hardening?.strengthCoefficient, stamp),
    ...shownAs('heightRatio', ratio, result.heightRatio),
    ...shownAs('bulgeRatio', { ...ratio, step: 0.001 }, result.bulgeRatio),
  ];
}

function howFound(result: CompressionResult): string[] {
  const { buckling, hardening, flowCurve, trail } = result;
  const friction = trail.find(({ step }) => step.startsWith('friction'))?.values['friction'];
  return [
    ...lineInWords(result.modulusWindow),
    ...result.proofStrengths.map(
      ({ symbol, extension, strain }) =>
        `${symbol}: first lasting crossing with a line of the same slope, offset by ${percent(extension)}; at a compression of ${percent(strain)}.`,
    ),
    ...loadingInWords(result.loading),
    ...(flowCurve
      ? [
          `Flow curve: from the plastic part of the compression, by constancy of volume; ${friction === undefined ? 'friction of the ends is still in it' : `friction ${friction} taken off by Siebel with the present diameter and height`}.`,
        ]
      : []),
    ...(hardening
      ? [
          `${hardening.law}'s law: true plastic strain ${number(hardening.range[0], 3)} to ${number(hardening.range[1], 3)}, ${hardening.points} samples, R² = ${hardening.rSquared.toFixed(5)}.`,
        ]
      : []),
    ...(buckling
      ? [
          `Buckling: slenderness kL/i = ${number(buckling.slenderness, 3)}; the force reached ${number(buckling.largestShare, 3)} of the tangent-modulus load. Euler's elastic load ${number(buckling.elasticLoad.value / 1000, 4)} kN is a comparison, not a safe load.`,
        ]
      : []),
  ];
}

/** @internal The page of a compression test. */
export const compressionPage: MethodPage<CompressionResult> = {
  title: 'Compression test',
  identity: (result) => [
    ['Section', sectionInWords(result.piece.section)],
    ['Height h0', `${number(result.piece.height, 5)} mm`],
    ['Strain from', `${result.extensionBasis.replaceAll('-', ' ')}, over ${number(result.strainLength, 5)} mm`],
    ['Direction', 'compression counts positive'],
  ],
  quantities,
  howFound,
  figures: (result) => ({ compressionCurve: compressionCurveFigure(result), compressionFlow: compressionFlowFigure(result) }),
  cautions: cautionsFor('compression'),
};
