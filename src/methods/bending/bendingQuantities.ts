import type { Outcome, Quantity, StressStrainCurve } from '../../base/index.js';
import type { ChordModulus, ChordReason, LineExplanation } from '../../curve/index.js';
import type { BeamLengths, BendingSettings } from './bendingOptions.js';
import type { BendingResult } from './BendingResult.js';
import { modulusWindowOf, slopeQuantity } from '../loading/elasticQuantities.js';
import type { LineLoadingPart } from '../loading/evaluateLine.js';
import { withFrame, type FrameShare } from '../loading/frameShare.js';
import { brokeSuddenly, type LineNumbers } from '../loading/lineKernel.js';
import { atHighest } from '../common/endOfTest.js';
import { maximumForce, percent, quantity } from '../common/quantity.js';
import { strengthsAt } from '../loading/strengthsAt.js';

const ISO178 = 'ISO 178';

/** The numbers of a bending test, before they have names. */
interface Evaluated {
  readonly numbers: LineNumbers;
  readonly curve: StressStrainCurve;
  readonly part: LineLoadingPart;
  readonly lengths: BeamLengths;
  readonly settings: BendingSettings;
  readonly explanation: LineExplanation;
  readonly isModulus: boolean;
  readonly chord: Outcome<ChordModulus, ChordReason> | undefined;
  /** The frame's share of the motion along the chord. */
  readonly chordShare: FrameShare | undefined;
  readonly shearShare: number | undefined;
  readonly highestForce: number;
  readonly top: number;
}

/** Moduli by slope and chord, and the proof strengths. */
function elasticPart({ numbers, curve, settings, explanation, isModulus, chord, chordShare }: Evaluated) {
  const { line, proofs } = numbers;
  return {
    ...(line.ok
      ? { elasticSlope: slopeQuantity(line, explanation, 'mf', 'slope of the elastic part in bending', 'elementary beam theory') }
      : {}),
    ...(line.ok && isModulus
      ? { modulus: slopeQuantity(line, explanation, 'Eb', 'flexural modulus, slope', 'ASTM E855; elementary beam theory') }
      : {}),
    ...(chord?.ok === true
      ? {
          chordModulus: withFrame(
            quantity(
              'Ef',
              `flexural modulus, chord from ${percent(chord.strains[0])} to ${percent(chord.strains[1])} % strain`,
              chord.modulus,
              'MPa',
              `${ISO178}, flexural modulus`,
            ),
            chordShare,
          ),
        }
      : {}),
    ...modulusWindowOf(numbers, curve, explanation),
    proofStrengths: strengthsAt(
      'σfp',
      'flexural proof strength, offset',
      'ASTM E855, offset yield strength in bending',
      proofs,
      settings.offsets,
    ),
  };
}

/** @internal The quantities of a bending test, each only where the numbers support it. */
export function bendingQuantities(evaluated: Evaluated) {
  const { numbers, curve, part, lengths, shearShare } = evaluated;
  const { fracture, highest } = numbers;
  const reached = (one: Quantity): Quantity => atHighest(one, numbers.rises);
  return {
    ...elasticPart(evaluated),
    maximumForce: reached(maximumForce(evaluated.highestForce, 'common practice')),
    maximumIndex: evaluated.top,
    flexuralStrength: reached(quantity('σfM', 'flexural strength', curve.stress[highest]!, 'MPa', `${ISO178}, flexural strength`)),
    strainAtMaximum: reached(
      quantity(
        'εfM',
        'flexural strain at flexural strength',
        curve.strain[highest]!,
        '1',
        `${ISO178}, flexural strain at flexural strength`,
      ),
    ),
    ...(fracture.ok && brokeSuddenly(part.numbers, part.curve)
      ? {
          stressAtBreak: quantity('σfB', 'flexural stress at break', fracture.stress, 'MPa', `${ISO178}, flexural stress at break`),
          strainAtBreak: quantity('εfB', 'flexural strain at break', fracture.strain, '1', `${ISO178}, flexural strain at break`),
          fracture: { index: fracture.index, strain: fracture.strain, stress: fracture.stress, how: fracture.how },
        }
      : {}),
    spanRatio: quantity('L/h', 'span over height', lengths.span / lengths.height, '1', ISO178),
    ...(shearShare === undefined
      ? {}
      : {
          shearShare: quantity('ss/sb', 'deflection by shear over that by bending', shearShare, '1', 'elementary beam theory, by energy'),
        }),
    ...(lengths.shapeFactor === undefined
      ? {}
      : { shapeFactor: quantity('Mpl/My', 'plastic shape factor', lengths.shapeFactor, '1', 'plastic bending (textbooks)') }),
  } satisfies Partial<BendingResult>;
}
