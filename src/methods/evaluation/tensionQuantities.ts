import type { Quantity } from '../../base/index.js';
import { isGiven, type LineExplanation } from '../../curve/index.js';
import { elasticQuantities } from '../loading/elasticQuantities.js';
import { extensionQuantities } from './extensionQuantities.js';
import { hardeningQuantities } from '../loading/hardeningQuantities.js';
import { yieldQuantities } from './yieldQuantities.js';
import { atHighest } from '../common/endOfTest.js';
import { ISO, quantity } from '../common/quantity.js';
import type { TensionNumbers } from '../loading/TensionNumbers.js';
import type { TensionSettings } from './tensionOptions.js';
import type { TensionResult } from './TensionResult.js';

/** @internal The quantities of a result, each only where the numbers support it. */
export type Quantities = Omit<
  TensionResult,
  | 'method'
  | 'test'
  | 'testPiece'
  | 'extensionBasis'
  | 'strainLength'
  | 'curve'
  | 'maximumForce'
  | 'rates'
  | 'uncertainty'
  | 'findings'
  | 'trail'
  | 'provenance'
>;

/** @internal Fm or Rm with what it is worth: at least so much where the test ended before the maximum, and of the level of yielding where no hardening follows. */
export function atMaximum(one: Quantity, { reached }: Pick<TensionNumbers, 'reached'>): Quantity {
  return reached === 'no-hardening' ? { ...one, withoutHardening: true } : atHighest(one, reached !== 'maximum');
}

/** @internal True of a curve without a linear part, whichever window was chosen: nothing in it is proportional. */
export const hasNoLine = ({ line }: Pick<TensionNumbers, 'line'>, explanation: Pick<LineExplanation, 'linearPart'> | undefined): boolean =>
  line.ok && !isGiven(line) && explanation?.linearPart?.verdict === 'none';

/** @internal What the strain is good for: travel with the frame in it bears neither E nor a strength at a total extension. */
export interface StrainHolds {
  /** Whether the slope is named modulus. */
  readonly modulus: boolean;
  /** Whether the strain is the piece's own. */
  readonly strainOfPiece: boolean;
}

/** @internal Names, units and sources for the numbers. */
export function tensionQuantities(
  numbers: TensionNumbers,
  curve: TensionResult['curve'],
  stress: Float64Array,
  settings: TensionSettings,
  holds: StrainHolds,
  explanation: LineExplanation | undefined,
): Quantities {
  const yields = yieldQuantities(numbers, settings, holds.strainOfPiece);
  const proof = yields.proofStrengths[0];
  const { line } = numbers;
  const resilience =
    holds.modulus && line.ok && proof
      ? quantity(
          'Ur',
          'elastic energy per volume at the proof strength',
          proof.value ** 2 / (2 * line.slope),
          'MPa',
          'Rp²/(2E) (textbooks)',
        )
      : undefined;
  // assigned, because a literal that begins with another object's fields costs ten times as much, and every trial makes one
  return Object.assign(
    {},
    elasticQuantities(numbers, curve, holds.modulus, explanation),
    yields,
    {
      tensileStrength: atMaximum(
        quantity('Rm', 'tensile strength', stress[numbers.maximumSample]!, 'MPa', `${ISO}, tensile strength`),
        numbers,
      ),
      maximumIndex: numbers.maximumSample,
    },
    extensionQuantities(numbers),
    resilience && { resilience },
    hardeningQuantities(numbers),
  ) as Quantities;
}
