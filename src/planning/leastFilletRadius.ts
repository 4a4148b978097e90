import { requireOptions, requireSection, type Section } from '../base/index.js';

/** Share of the diameter of a round; flats under 3 mm; other bars [mm]. */
const ROUND = 0.75;
const THIN = 20;
const OTHER = 12;
const THIN_BELOW = 3;

/**
 * Least radius of the fillets between parallel length and heads.
 *
 * $$ r \ge 0.75\, d_0 \text{ (round)}, \qquad 20\ \text{mm (flats under 3 mm)}, \qquad 12\ \text{mm (other bars)} $$
 *
 * @remarks
 * From memory of the annexes. A larger radius is always better: a sharp shoulder starts the fracture there.
 *
 * @param input - `section` of the parallel length.
 * @returns Radius [mm].
 * @throws {@link InputError} `missing`, `wrong-type`, `unknown-option`.
 *
 * @example
 * ```ts
 * leastFilletRadius({ section: round({ diameter: 8 }) }); // => 6
 * ```
 *
 * @see ISO 6892-1:2019, Annexes B and D, transition radii (from memory). Checked in `test/planning/checkPiece.test.ts`.
 */
export function leastFilletRadius(input: { readonly section: Section }): number {
  const from = 'leastFilletRadius';
  requireOptions(from, input, ['section'], 'input');
  const { shape, dimensions } = requireSection(from, 'section', input.section);
  const { diameter, thickness } = dimensions;
  if (shape === 'round' && diameter !== undefined) return ROUND * diameter;
  return thickness !== undefined && thickness < THIN_BELOW ? THIN : OTHER;
}
