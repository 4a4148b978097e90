import { requireOptions, requirePositive, requireSection, type Section } from '../base/index.js';

/** What the least parallel length follows from. */
export interface ParallelLengthInput {
  /** Section of the test piece. */
  readonly section: Section;
  /** Gauge length L0 [mm]. */
  readonly gaugeLength: number;
  /** True for arbitration: longer; default false. */
  readonly arbitration?: boolean | undefined;
}

/** Flats thinner than this are thin products [mm]. */
const THIN = 3;

/**
 * Least parallel length of a machined test piece.
 *
 * $$ L_c \ge L_0 + \frac{d_0}{2} \text{ (round)}, \qquad L_0 + 1.5 \sqrt{S_0} \text{ (other bars)}, \qquad L_0 + \frac{b_0}{2} \text{ (flats under 3 mm)} $$
 *
 * @remarks
 * For arbitration $L_0 + 2 d_0$, $L_0 + 2 \sqrt{S_0}$ and $L_0 + 2 b_0$. The figures are from memory of the annexes.
 *
 * @param input - `section`, `gaugeLength` [mm] above 0, `arbitration`.
 * @returns Least parallel length [mm].
 * @throws {@link InputError} `missing`, `wrong-type`, `not-finite`, `not-positive`, `unknown-option`.
 *
 * @example
 * ```ts
 * leastParallelLength({ section: rectangular({ width: 12.5, thickness: 3 }), gaugeLength: 35 }); // => 44.19
 * ```
 *
 * @see ISO 6892-1:2019, Annexes B and D (from memory). Checked in `test/handbook/lengths.test.ts`.
 */
export function leastParallelLength(input: ParallelLengthInput): number {
  const from = 'leastParallelLength';
  requireOptions(from, input, ['section', 'gaugeLength', 'arbitration'], 'input');
  const length = requirePositive(from, 'gaugeLength', input.gaugeLength);
  const { shape, area, dimensions } = requireSection(from, 'section', input.section);
  const root = Math.sqrt(area);
  const { diameter, width, thickness } = dimensions;
  const arbitration = input.arbitration === true;
  if (shape === 'round' && diameter !== undefined) return length + (arbitration ? 2 : 0.5) * diameter;
  if (width !== undefined && thickness !== undefined && thickness < THIN) return length + (arbitration ? 2 : 0.5) * width;
  return length + (arbitration ? 2 : 1.5) * root;
}
