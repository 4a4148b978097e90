import {
  PROOF_OFFSET,
  atExtension,
  finding,
  InputError,
  requireBetween,
  requireExtension,
  requireNonNegative,
  requireObject,
  requireOptions,
  requirePositive,
  type Finding,
  type Severity,
} from '../base/index.js';
import { requireFamily } from './materialFamily.js';
import type { MaterialFamilyKey } from './materialFamilies.js';

/** Properties of one test that must go together; all that are given are compared. */
export interface CrossCheckInput {
  /** ReH [MPa]. */
  readonly upperYieldStrength?: number | undefined;
  /** ReL [MPa]. */
  readonly lowerYieldStrength?: number | undefined;
  /** Rp by plastic extension, in any order. */
  readonly proofStrengths?: readonly ProofAtExtension[] | undefined;
  /** Rm [MPa]. */
  readonly tensileStrength?: number | undefined;
  /** E [MPa]. */
  readonly modulus?: number | undefined;
  /** Ag [mm/mm]. */
  readonly uniformExtension?: number | undefined;
  /** Agt [mm/mm]. */
  readonly totalExtensionAtMaximumForce?: number | undefined;
  /** A on 5.65 roots of the area [mm/mm]. */
  readonly elongation?: number | undefined;
  /** A on 11.3 roots of the area [mm/mm]. */
  readonly longElongation?: number | undefined;
  /** True stress at fracture: force there over the area after fracture [MPa]. */
  readonly trueFractureStress?: number | undefined;
  /** Z [1], 0 to 1. */
  readonly reductionOfArea?: number | undefined;
  /** Family, whose usual Rp/Rm is then compared. */
  readonly family?: MaterialFamilyKey | undefined;
}

/** A proof strength and its offset. */
export interface ProofAtExtension {
  /** Plastic extension [mm/mm]. */
  readonly extension: number;
  /** Strength [MPa]. */
  readonly value: number;
}

/** Doubt of two strengths of one test, of a modulus, and of an elongation by the marks [mm/mm] (common practice). */
const STRENGTH_DOUBT = 0.01;
const MODULUS_DOUBT = 0.05;
const ELONGATION_DOUBT = 0.012;
/** Beyond the usual range of Rp/Rm by this share (common practice). */
const MARGIN = 0.1;
/** A neck deeper than this raises the true stress at fracture above Rm. */
const NECKED = 0.1;

/** Checks every number that is there. */
function requireInput(from: string, input: CrossCheckInput): void {
  const strengths = ['upperYieldStrength', 'lowerYieldStrength', 'tensileStrength', 'modulus', 'trueFractureStress'] as const;
  const strains = ['uniformExtension', 'totalExtensionAtMaximumForce', 'elongation', 'longElongation'] as const;
  requireOptions(from, input, [...strengths, ...strains, 'proofStrengths', 'reductionOfArea', 'family'], 'input');
  for (const name of strengths) if (input[name] !== undefined) requirePositive(from, name, input[name]);
  for (const name of strains) if (input[name] !== undefined) requireNonNegative(from, name, input[name]);
  if (input.reductionOfArea !== undefined) requireBetween(from, 'reductionOfArea', input.reductionOfArea, 0, 1);
  if (input.proofStrengths === undefined) return;
  if (!Array.isArray(input.proofStrengths))
    throw new InputError(from, 'proofStrengths', 'wrong-type', 'must be an array', input.proofStrengths);
  input.proofStrengths.forEach((one: ProofAtExtension, k) => {
    requireObject(from, `proofStrengths[${k}]`, one);
    requireExtension(from, `proofStrengths[${k}].extension`, one.extension);
    requirePositive(from, `proofStrengths[${k}].value`, one.value);
  });
}

/**
 * Relations that hold between the properties of any one test, and a finding for each that is broken.
 *
 * $$ R_{eL} \le R_{eH}, \quad R_{p0.1} \le R_{p0.2} \le R_{p1} \le R_m, \quad A_g \le A, \quad A_{gt} \ge \frac{R_m}{E}, \quad A_{11.3} < A, \quad
 * \sigma_f > R_m \text{ for } Z > 0.1 $$
 *
 * @remarks
 * Strengths may differ by 1 %, the elastic part by 5 %, elongations by 1.2 points, the doubt of the marks. The order of proof strengths holds
 * where there is no yield point. The true stress at fracture needs the force at the break itself, so its finding is a note.
 *
 * @param input - The properties that are known: strengths [MPa], extensions as ratios; with `family` also Rp/Rm.
 * @returns One finding `properties-contradict` for each broken relation.
 * @throws {@link InputError} `not-finite`, `not-positive`, `out-of-range`, `wrong-type`, `unknown-option`.
 *
 * @example
 * ```ts
 * crossCheck({ upperYieldStrength: 280, lowerYieldStrength: 300 })[0]?.code; // => 'properties-contradict'
 * crossCheck({ upperYieldStrength: 300, lowerYieldStrength: 280 }).length; // => 0
 * ```
 *
 * @see Definitions of ISO 6892-1; common practice. Checked in `test/materials/crossCheck.test.ts`.
 */
export function crossCheck(input: CrossCheckInput): Finding[] {
  const from = 'crossCheck';
  requireInput(from, input);
  const found: Finding[] = [];
  const broken = (
    [left, leftValue]: readonly [string, number],
    [right, rightValue]: readonly [string, number],
    rule: string,
    unit: 'MPa' | '',
    severity?: Severity,
  ): void => {
    found.push(
      finding(
        'properties-contradict',
        { left, leftValue, leftUnit: unit, right, rightValue, rightUnit: unit, rule },
        severity === undefined ? {} : { severity },
      ),
    );
  };
  const { upperYieldStrength: upper, lowerYieldStrength: lower, tensileStrength: strength, modulus } = input;
  const { uniformExtension: uniform, totalExtensionAtMaximumForce: total, elongation, longElongation: long } = input;
  const atMost = (a: number, b: number, doubt = STRENGTH_DOUBT): boolean => a <= b * (1 + doubt);
  if (upper !== undefined && lower !== undefined && !atMost(lower, upper))
    broken(['ReL', lower], ['ReH', upper], 'ReL is at most ReH', 'MPa');
  const proofs = [...(input.proofStrengths ?? [])].sort((a, b) => a.extension - b.extension);
  const symbol = (extension: number): string => `Rp${Number((100 * extension).toPrecision(10))}`;
  if (upper === undefined)
    proofs.forEach(({ extension, value }, k) => {
      const next = proofs[k + 1];
      if (next && !atMost(value, next.value))
        broken(
          [symbol(extension), value],
          [symbol(next.extension), next.value],
          'without a yield point a larger offset gives at least the same strength',
          'MPa',
        );
      if (!next && strength !== undefined && !atMost(value, strength))
        broken([symbol(extension), value], ['Rm', strength], 'a proof strength is at most Rm', 'MPa');
    });
  if (uniform !== undefined && elongation !== undefined && uniform > elongation + ELONGATION_DOUBT)
    broken(['Ag', uniform], ['A', elongation], 'Ag is at most A', '');
  if (total !== undefined && strength !== undefined && modulus !== undefined && !atMost(strength / modulus, total, MODULUS_DOUBT))
    broken(['Agt', total], ['Rm/E', strength / modulus], 'Agt holds at least the elastic part Rm/E', '');
  if (elongation !== undefined && long !== undefined && long >= elongation && elongation !== 0)
    broken(['A11.3', long], ['A', elongation], 'the longer gauge length gives the smaller elongation', '');
  const { trueFractureStress: fracture, reductionOfArea: reduction } = input;
  if (fracture !== undefined && strength !== undefined && reduction !== undefined && reduction > NECKED && fracture <= strength)
    broken(['the true stress at fracture', fracture], ['Rm', strength], 'with a neck it lies above Rm', 'MPa', 'note');
  const family = input.family === undefined ? undefined : requireFamily(from, 'family', input.family);
  const yields = upper ?? atExtension(proofs, PROOF_OFFSET)?.value;
  if (family?.yieldRatio && yields !== undefined && strength !== undefined) {
    const [low, high] = family.yieldRatio;
    const ratio = yields / strength;
    if (ratio < low / (1 + MARGIN) || ratio > high * (1 + MARGIN))
      broken(
        [upper === undefined ? 'Rp0.2' : 'ReH', yields],
        ['Rm', strength],
        `their ratio is usually ${low} to ${high} for ${family.name}`,
        'MPa',
      );
  }
  return found;
}
