import { InputError, requireFinite, requireOptions, requirePositive, requireSection, type Section } from '../base/index.js';

/** A bar on two supports. */
export interface BendingForceInput {
  /** Section of the bar; bending in the direction of its thickness. */
  readonly section: Section;
  /** Distance of the supports L [mm]. */
  readonly span: number;
  /** Distance of each of two loading noses from its support a [mm]; default none: one nose in the middle. */
  readonly arm?: number | undefined;
  /** Stress of the outer fibre [MPa]. */
  readonly stress: number;
}

/**
 * Total force that bends a bar to a stress of its outer fibre.
 *
 * $$ F = \frac{4 W \sigma}{L} \text{ (one nose)}, \qquad F = \frac{2 W \sigma}{a} \text{ (two noses)} $$
 *
 * @remarks
 * Elastic. A rectangle carries 1.5 times the force of first yield when it is plastic throughout, a round 1.70 times.
 *
 * @param input - `section` with a section modulus, `span` [mm], `arm` [mm] up to half the span, `stress` [MPa].
 * @returns Total force [N].
 * @throws {@link InputError} `missing`, `wrong-type`, `not-finite`, `not-positive`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * bendingForce({ section: rectangular({ width: 20, thickness: 5 }), span: 100, stress: 300 }); // => 1000
 * ```
 *
 * @see Elementary mechanics of beams; ISO 178 writes the stress of a rectangle as $3FL/(2bh^2)$. Checked in `test/handbook/planning.test.ts`.
 */
export function bendingForce(input: BendingForceInput): number {
  const from = 'bendingForce';
  requireOptions(from, input, ['section', 'span', 'arm', 'stress'], 'input');
  const section = requireSection(from, 'section', input.section);
  const modulus = requirePositive(from, 'section.sectionModulus', section.sectionModulus);
  const span = requirePositive(from, 'span', input.span);
  const stress = requirePositive(from, 'stress', input.stress);
  if (input.arm === undefined) return (4 * modulus * stress) / span;
  const arm = requireFinite(from, 'arm', input.arm);
  if (arm <= 0 || arm > span / 2)
    throw new InputError(from, 'arm', 'out-of-range', `must be above 0 and at most half the span (${span / 2})`, arm);
  return (2 * modulus * stress) / arm;
}
