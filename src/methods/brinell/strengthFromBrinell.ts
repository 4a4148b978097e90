import { failure, requireOneOf, requireOptions, requirePositive, success, type Outcome } from '../../base/index.js';

/** Metals for which a strength is asked. */
export type StrengthMaterial = 'steel' | 'cold-worked steel' | 'austenitic steel' | 'cast iron' | 'aluminium' | 'copper' | 'other';

/** A hardness and the metal that it was found on. */
export interface StrengthInput {
  /** Brinell hardness [HBW]. */
  readonly hardness: number;
  /** The metal; `steel` is unalloyed or low-alloy, hot-rolled, normalised, or quenched and tempered. */
  readonly material: StrengthMaterial;
}

/** A strength estimated from hardness. */
export interface EstimatedStrength {
  /** Tensile strength Rm [MPa]. */
  readonly strength: number;
  /** The estimate less and plus a tenth [MPa]. */
  readonly range: readonly [number, number];
}

/** Why no strength is estimated. */
export type StrengthReason = 'no-single-factor' | 'hardness-outside';

/** MPa for one HBW of steel, its doubt, and the hardness over which it holds within it (common practice, from memory). */
const FACTOR = 3.45;
const DOUBT = 0.1;
const HOLDS = [80, 450] as const;

const why: Readonly<Record<Exclude<StrengthMaterial, 'steel'>, string>> = {
  'cold-worked steel': 'cold work moves strength and hardness apart',
  'austenitic steel': 'austenitic steel hardens under the ball itself',
  'cast iron': 'graphite breaks in tension and bears in compression',
  aluminium: 'alloys of aluminium have no factor in common',
  copper: 'alloys of copper have no factor in common',
  other: 'no factor is known for it',
};

/**
 * Estimates the tensile strength of a steel from its Brinell hardness.
 *
 * $$ R_m \approx 3.45\, \text{HBW} \pm 10\,\% $$
 *
 * @remarks
 * For unalloyed and low-alloy steel of 80 to 450 HBW, not cold worked. Others are refused: aluminium and copper alloys have no single factor, cold-worked and
 * austenitic steel fail. Strength is the least reliable of all conversions of hardness; it serves to plan and to check, never to accept.
 *
 * @param input - `hardness` above 0 and `material`.
 * @returns Strength and its range [MPa], or why there is none: `no-single-factor`, `hardness-outside`.
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * required(strengthFromBrinell({ hardness: 229, material: 'steel' })).strength; // => 790.05
 * ```
 *
 * @see Common practice; compare ISO 18265:2013, conversion of hardness values. Checked in `test/handbook/brinell.test.ts`.
 */
export function strengthFromBrinell(input: StrengthInput): Outcome<EstimatedStrength, StrengthReason> {
  const from = 'strengthFromBrinell';
  requireOptions(from, input, ['hardness', 'material'], 'input');
  const hardness = requirePositive(from, 'hardness', input.hardness);
  const material = requireOneOf(from, 'material', input.material, ['steel', ...(Object.keys(why) as (keyof typeof why)[])]);
  if (material !== 'steel') return failure('no-single-factor', why[material]);
  if (hardness < HOLDS[0] || hardness > HOLDS[1])
    return failure('hardness-outside', `the factor holds from ${HOLDS[0]} to ${HOLDS[1]} HBW, not at ${Number(hardness.toPrecision(3))}`);
  const strength = FACTOR * hardness;
  return success({ strength, range: [strength * (1 - DOUBT), strength * (1 + DOUBT)] });
}
