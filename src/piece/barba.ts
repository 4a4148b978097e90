import { InputError, requireNonNegative, requireOptions, requirePositive } from '../base/index.js';

/** An elongation with its gauge length and section. */
export interface MeasuredElongation {
  /** Elongation after fracture A [mm/mm]. */
  readonly elongation: number;
  /** Gauge length L0 [mm]. */
  readonly gaugeLength: number;
  /** Original cross-sectional area S0 [mm²]. */
  readonly area: number;
}

/** The parts of Barba's law. */
export interface BarbaLaw {
  /** Uniform part a [mm/mm]. */
  readonly uniform: number;
  /** Part of the neck b [1]: times √S0/L0 it is what the neck adds. */
  readonly neck: number;
}

/**
 * Uniform part and neck's part of the elongation, from two gauge lengths on one broken piece.
 *
 * $$ A(L_0) = a + b \frac{\sqrt{S_0}}{L_0} $$
 *
 * @remarks
 * With both parts the elongation on any other gauge length of the same material follows; between sections it holds as far as their shapes are alike. Two lengths that are
 * near each other give a poor law.
 *
 * @param first - Elongation [mm/mm] of 0 or more, gauge length [mm] and area [mm²] above 0.
 * @param second - The same on another gauge length.
 * @returns a [mm/mm] and b [1].
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `unknown-option`; `out-of-range` for a negative elongation or gauge lengths that are proportionally equal.
 *
 * @example
 * ```ts
 * const law = barba({ elongation: 0.3, gaugeLength: 5.65, area: 1 }, { elongation: 0.24, gaugeLength: 11.3, area: 1 });
 * law.uniform; // => 0.18
 * law.neck; // => 0.678
 * law.uniform + law.neck / 8.16; // => 0.2631
 * ```
 *
 * @see J. Barba, Mémoires de la Société des ingénieurs civils (1880), as textbooks give it. Checked in `test/handbook/after-fracture.test.ts`.
 */
export function barba(first: MeasuredElongation, second: MeasuredElongation): BarbaLaw {
  const from = 'barba';
  const point = (path: 'first' | 'second', given: MeasuredElongation): readonly [number, number] => {
    requireOptions(from, given, ['elongation', 'gaugeLength', 'area'], path);
    const root = Math.sqrt(requirePositive(from, `${path}.area`, given.area));
    return [
      root / requirePositive(from, `${path}.gaugeLength`, given.gaugeLength),
      requireNonNegative(from, `${path}.elongation`, given.elongation),
    ];
  };
  const [u1, a1] = point('first', first);
  const [u2, a2] = point('second', second);
  if (Math.abs(u1 / u2 - 1) < 1e-6)
    throw new InputError(from, 'second.gaugeLength', 'out-of-range', 'must differ in proportion from the first', second.gaugeLength);
  const neck = (a1 - a2) / (u1 - u2);
  return { uniform: a1 - neck * u1, neck };
}
