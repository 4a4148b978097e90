import type { StressStrainCurve } from '../../base/index.js';
import type { LineExplanation } from '../../curve/index.js';
import { bulgeRatio } from '../../piece/index.js';
import type { bucklingOf, flowCurveOf } from './compressionKernel.js';
import type { CompressionLengths, CompressionSettings } from './compressionOptions.js';
import type { CompressionPiece, CompressionResult } from './CompressionResult.js';
import { modulusWindowOf, slopeQuantity } from '../loading/elasticQuantities.js';
import { hardeningQuantities } from '../loading/hardeningQuantities.js';
import type { LineNumbers } from '../loading/lineKernel.js';
import { maximumForce, quantity } from '../common/quantity.js';
import { strengthsAt } from '../loading/strengthsAt.js';
import type { TensionNumbers } from '../loading/TensionNumbers.js';

const E9 = 'ASTM E9';

/** The quantities that stand on the elastic line. */
function lineQuantities(
  numbers: LineNumbers,
  {
    curve,
    explanation,
    settings,
    isModulus,
    strainOfPiece,
  }: Pick<Evaluated, 'curve' | 'explanation' | 'settings' | 'isModulus' | 'strainOfPiece'>,
): Pick<CompressionResult, 'elasticSlope' | 'modulus' | 'modulusWindow' | 'proofStrengths' | 'stressesAtStrain'> {
  const { line, proofs, totals } = numbers;
  return {
    ...(line.ok
      ? {
          elasticSlope: slopeQuantity(
            line,
            explanation,
            'mEc',
            'slope of the elastic part in compression',
            `${E9}, straight part of the curve`,
          ),
        }
      : {}),
    ...(line.ok && isModulus
      ? { modulus: slopeQuantity(line, explanation, 'Ec', 'compressive modulus of elasticity', `${E9}; ASTM E111, Young's modulus`) }
      : {}),
    ...modulusWindowOf(numbers, curve, explanation),
    proofStrengths: strengthsAt('Rpc', 'compressive yield strength, offset', `${E9}, yield strength by offset`, proofs, settings.offsets),
    stressesAtStrain: strengthsAt(
      'Rtc',
      'compressive stress at a stated strain',
      `${E9}, stress at a specified strain`,
      strainOfPiece ? totals : [],
      settings.totalExtensions,
    ),
  };
}

/** The numbers of a compression test, before they have names. */
interface Evaluated {
  readonly numbers: LineNumbers;
  readonly curve: StressStrainCurve;
  readonly explanation: LineExplanation;
  readonly lengths: CompressionLengths;
  readonly settings: CompressionSettings;
  readonly isModulus: boolean;
  /** Whether the strain is the piece's own: without the frame. */
  readonly strainOfPiece: boolean;
  readonly broken: boolean;
  readonly buckling: ReturnType<typeof bucklingOf>;
  readonly flow: ReturnType<typeof flowCurveOf>;
  readonly trueCurve: StressStrainCurve | undefined;
  readonly hardening: TensionNumbers['hardening'];
  readonly piece: CompressionPiece;
  /** Highest force and its sample. */
  readonly highestForce: number;
  readonly top: number;
}

/** @internal The quantities of a compression test, each only where the numbers support it. */
export function compressionQuantities(evaluated: Evaluated) {
  const { numbers, curve, lengths, broken, buckling, flow, trueCurve, hardening, piece } = evaluated;
  const { fracture, highest } = numbers;
  const { middleDiameter, endDiameter } = piece.afterTest ?? {};
  return {
    ...lineQuantities(numbers, evaluated),
    maximumForce: maximumForce(evaluated.highestForce, 'common practice'),
    maximumIndex: evaluated.top,
    ...(broken
      ? { compressiveStrength: quantity('Rmc', 'compressive strength', curve.stress[highest]!, 'MPa', `${E9}, compressive strength`) }
      : {}),
    ...(broken && fracture.ok
      ? { fracture: { index: fracture.index, strain: fracture.strain, stress: fracture.stress, how: fracture.how } }
      : {}),
    ...(trueCurve ? { trueCurve } : {}),
    ...(flow ? { flowCurve: { strain: flow.strain, stress: flow.stress } } : {}),
    ...hardeningQuantities({ hardening }),
    heightRatio: quantity('h0/d0', 'height over diameter', lengths.gaugeLength / lengths.width, '1', E9),
    ...(middleDiameter !== undefined && endDiameter !== undefined
      ? { bulgeRatio: quantity('dm/de', 'bulge ratio', bulgeRatio({ middleDiameter, endDiameter }), '1', 'common practice') }
      : {}),
    ...(buckling
      ? {
          buckling: {
            slenderness: buckling.slenderness,
            elasticLoad: quantity('Fcr', "Euler's load, elastic", buckling.elasticLoad, 'N', 'Euler; no safe load beyond yield'),
            largestShare: buckling.largestShare,
            ...(buckling.halfAt === undefined ? {} : { halfAt: buckling.halfAt }),
            ...(buckling.reachedAt ? { reachedAt: buckling.reachedAt.strain } : {}),
          },
        }
      : {}),
  } satisfies Partial<CompressionResult>;
}
