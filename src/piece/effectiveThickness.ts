import { requireOptions, requirePositive } from '../base/index.js';

/** Thickness of a flat neck at its edges and in its middle. */
export interface EffectiveThicknessInput {
  /** Thickness at one edge t1 [mm]. */
  readonly edge: number;
  /** Thickness in the middle t2 [mm]. */
  readonly middle: number;
  /** Thickness at the other edge t3 [mm]. */
  readonly otherEdge: number;
}

/**
 * Effective thickness of a flat neck whose middle is pulled in.
 *
 * $$ t = \frac{t_1 + 4 t_2 + t_3}{6} $$
 *
 * @remarks
 * The mean of a parabola across the width through the three readings.
 *
 * @param input - `edge`, `middle` and `otherEdge` [mm], above 0.
 * @returns Thickness [mm]; times the width it is the area after fracture.
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `unknown-option`.
 *
 * @example
 * ```ts
 * effectiveThickness({ edge: 2.6, middle: 2.3, otherEdge: 2.6 }); // => 2.4
 * ```
 *
 * @see ASTM E8/E8M, reduction of area (from memory); Simpson's rule. Checked in `test/handbook/after-fracture.test.ts`.
 */
export function effectiveThickness(input: EffectiveThicknessInput): number {
  const from = 'effectiveThickness';
  requireOptions(from, input, ['edge', 'middle', 'otherEdge'], 'input');
  const at = (name: keyof EffectiveThicknessInput): number => requirePositive(from, name, input[name]);
  return (at('edge') + 4 * at('middle') + at('otherEdge')) / 6;
}
