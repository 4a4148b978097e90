import { InputError, requireBetween, requireNonNegative, requireOneOf, requireOptions, requirePositive } from '../base/index.js';

/** A condition that ISO 2566 converts: the first three of part 1, with or without tempering; the last of part 2. */
export type ConvertedCondition = 'hot-rolled' | 'normalised' | 'annealed' | 'solution-treated';

/** An elongation, the two gauges between which it is converted, and what is known of the steel: each is held against the limits of the standard. */
export interface ConvertElongationInput {
  /** Measured elongation [mm/mm]. */
  readonly elongation: number;
  /** Gauge length that it was measured on [mm]. */
  readonly fromLength: number;
  /** Section that it was measured on [mm²]. */
  readonly fromArea: number;
  /** Gauge length that it is wanted for [mm]. */
  readonly toLength: number;
  /** Section that it is wanted for [mm²]. */
  readonly toArea: number;
  /** Carbon and low-alloy steel (ISO 2566-1) or austenitic steel (ISO 2566-2). */
  readonly material: 'carbon' | 'austenitic';
  /** Tensile strength of the steel Rm [MPa]; default not known. */
  readonly tensileStrength?: number | undefined;
  /** Its condition; default not known. Steels that were cold worked, or quenched and tempered, are not converted. */
  readonly condition?: ConvertedCondition | undefined;
  /** Thickness of a flat piece [mm]; default not known. */
  readonly thickness?: number | undefined;
  /** Width of a flat piece [mm], with its thickness; default not known. */
  readonly width?: number | undefined;
}

interface Limits {
  readonly strength: readonly [number, number];
  readonly conditions: readonly ConvertedCondition[];
  readonly thickness: number;
}

/** Exponents of ISO 2566-1 and ISO 2566-2, and their constants for a fixed length: 5.65 to the exponent, as the standards round it. */
const constants = { carbon: { exponent: 0.4, fixed: 2 }, austenitic: { exponent: 0.127, fixed: 1.25 } } as const;
/** Where each part holds (from memory): tensile strength [MPa], conditions, thickness of strip [mm]. */
const holds = {
  carbon: { strength: [300, 700], conditions: ['hot-rolled', 'normalised', 'annealed'], thickness: 4 },
  austenitic: { strength: [450, 750], conditions: ['solution-treated'], thickness: 0 },
} as const satisfies Readonly<Record<ConvertElongationInput['material'], Limits>>;
/** Flats wider than so many times their thickness are outside both. */
const WIDEST = 20;
/** Gauge lengths above 25 roots of the area are outside the standard. */
const MOST = 25;
/** Coefficients of proportional gauge lengths in use: 4, 5.65, 8.16, 11.3, and four and five diameters of a round. */
const PROPORTIONAL = [4, 8 / Math.sqrt(Math.PI), 5.65, 10 / Math.sqrt(Math.PI), 8.16, 11.3];

const known = [
  ...['elongation', 'fromLength', 'fromArea', 'toLength', 'toArea', 'material'],
  ...['tensileStrength', 'condition', 'thickness', 'width'],
];

/** Elongation on a gauge of coefficient k, relative to that on 5.65 roots of the area. */
function relative(k: number, { exponent, fixed }: { readonly exponent: number; readonly fixed: number }): number {
  const proportional = PROPORTIONAL.some((one) => Math.abs(k / one - 1) < 1e-4);
  return proportional ? (5.65 / k) ** exponent : fixed / k ** exponent;
}

/** Refuses a steel or a flat piece for which the standard has no conversion, as far as it is known. */
function requireWithin(from: string, { tensileStrength, condition, thickness, width }: ConvertElongationInput, limits: Limits): void {
  if (tensileStrength !== undefined) requireBetween(from, 'tensileStrength', tensileStrength, ...limits.strength);
  if (condition !== undefined) requireOneOf(from, 'condition', condition, limits.conditions);
  const wide = width === undefined ? 0 : requirePositive(from, 'width', width);
  if (thickness === undefined && wide === 0) return;
  const thick = requirePositive(from, 'thickness', thickness);
  if (thick < limits.thickness)
    throw new InputError(
      from,
      'thickness',
      'out-of-range',
      `must be at least ${limits.thickness} mm: for thinner strip the exponent is larger, and agreed`,
      thick,
    );
  if (wide > WIDEST * thick * (1 + 1e-9))
    throw new InputError(from, 'width', 'out-of-range', `must be at most ${WIDEST} times the thickness (${thick})`, wide);
}

/**
 * Converts an elongation after fracture from one gauge length and section to another.
 *
 * $$ A_r = 2 A \left( \frac{\sqrt{S_0}}{L_0} \right)^{0.4} \text{ (carbon)}, \qquad A_r = 1.25 A \left( \frac{\sqrt{S_0}}{L_0} \right)^{0.127}
 * \text{ (austenitic)}, \qquad A_2 = A_1 \left( \frac{k_1}{k_2} \right)^m $$
 *
 * @remarks
 * The first two lead from 5.65 roots of the area to a fixed gauge length, with the constants as the standards round them; the third leads
 * between proportional gauge lengths of coefficients $k = L_0 / \sqrt{S_0}$ of 4, 5.65, 8.16, 11.3, and four and five diameters.
 * Part 1 holds for carbon and low-alloy steels of tensile strength 300 to 700 MPa, hot rolled, normalised or annealed, tempered or not, not cold worked, not quenched
 * and tempered, and of strip from 4 mm thickness on; part 2 for austenitic steels of 450 to 750 MPa, solution treated. Neither holds for gauge lengths above $25 \sqrt{S_0}$, nor for flats
 * wider than 20 times their thickness (limits from memory). What is given of the steel is held against them; what is not given is for the caller to know.
 *
 * @param input - `elongation` [mm/mm] of 0 or more; lengths [mm] and areas [mm²] above 0; `material`; as known `tensileStrength` [MPa], `condition`, `thickness` and `width` [mm].
 * @returns Elongation on the other gauge [mm/mm].
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `unknown-option`; `out-of-range` beyond the limits of the standard.
 *
 * @example
 * ```ts
 * convertElongation({ elongation: 0.24, fromLength: 200, fromArea: 600, toLength: 5.65, toArea: 1, material: 'austenitic' }); // => 0.25068
 * ```
 *
 * @see ISO 2566-1:1984 and ISO 2566-2:1984, conversion of elongation values. Checked in `test/handbook/elongation.test.ts`.
 */
export function convertElongation(input: ConvertElongationInput): number {
  const from = 'convertElongation';
  requireOptions(from, input, known, 'input');
  const elongation = requireNonNegative(from, 'elongation', input.elongation);
  const material = requireOneOf(from, 'material', input.material, ['carbon', 'austenitic']);
  requireWithin(from, input, holds[material]);
  const coefficient = (length: 'fromLength' | 'toLength', area: 'fromArea' | 'toArea'): number => {
    const k = requirePositive(from, length, input[length]) / Math.sqrt(requirePositive(from, area, input[area]));
    if (k > MOST) throw new InputError(from, length, 'out-of-range', `must be at most 25 roots of ${area}`, input[length]);
    return k;
  };
  const from565 = relative(coefficient('fromLength', 'fromArea'), constants[material]);
  return (elongation * relative(coefficient('toLength', 'toArea'), constants[material])) / from565;
}
