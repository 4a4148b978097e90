import { InputError, requireOptions, requirePositive, requireWhole, type SubdividedLengths } from '../base/index.js';

/** A gauge length that was divided, and what was measured over its marks. */
export interface SubdivisionInput extends SubdividedLengths {
  /** Original gauge length L0 [mm]. */
  readonly originalLength: number;
}

/** @internal {@link elongationBySubdivision} for a caller that names where the lengths stand. */
export function subdividedElongation(from: string, path: string, originalLength: number, input: SubdividedLengths): number {
  const intervals = requireWhole(from, `${path}intervals`, input.intervals, 2, 1000);
  const between = requireWhole(from, `${path}between`, input.between, 1, intervals - 1);
  const xToY = requirePositive(from, `${path}xToY`, input.xToY);
  const { beyondY } = input;
  const even = (intervals - between) % 2 === 0;
  if (even ? typeof beyondY !== 'number' : !Array.isArray(beyondY) || beyondY.length !== 2)
    throw new InputError(
      from,
      `${path}beyondY`,
      'wrong-type',
      even ? 'must be one length, since N − n is even' : 'must be two lengths, since N − n is odd',
      beyondY,
    );
  const [near, far] = typeof beyondY === 'number' ? [beyondY, beyondY] : beyondY;
  const beyond =
    requirePositive(from, `${path}beyondY${even ? '' : '[0]'}`, near) + requirePositive(from, `${path}beyondY${even ? '' : '[1]'}`, far);
  const elongation = (xToY + beyond - originalLength) / originalLength;
  if (elongation < 0) throw new InputError(from, `${path}xToY`, 'out-of-range', 'must not give a piece that has shrunk', xToY);
  return elongation;
}

/**
 * Elongation after fracture of a piece that broke near a mark, by subdivision of the gauge length.
 *
 * $$ A = \frac{XY + 2\, YZ - L_0}{L_0} \text{ (}N - n\text{ even)}, \qquad A = \frac{XY + YZ' + YZ'' - L_0}{L_0} \text{ (}N - n\text{ odd)} $$
 *
 * @remarks
 * The gauge length is divided into N equal intervals before the test. X is the end mark on the short piece, Y the mark on the long piece as far from
 * the break, n the intervals between them. What is missing beyond the break is taken from the other side: Z lies (N − n)/2 intervals beyond Y; with N − n odd, Z′ and Z″
 * lie (N − n − 1)/2 and (N − n + 1)/2 beyond Y.
 *
 * @param input - `originalLength` [mm]; `intervals` N from 2 to 1000, `between` n from 1 to N − 1; `xToY` and `beyondY` [mm], above 0, one where N − n is even, two where it is odd.
 * @returns Elongation [mm/mm].
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `unknown-option`, `wrong-type`; `out-of-range` where counts do not go together or the piece would have shrunk.
 *
 * @example
 * ```ts
 * elongationBySubdivision({ originalLength: 50, intervals: 10, between: 4, xToY: 26, beyondY: 17.2 }); // => 0.208
 * elongationBySubdivision({ originalLength: 50, intervals: 10, between: 5, xToY: 31.4, beyondY: [11.6, 17.3] }); // => 0.206
 * ```
 *
 * @see ISO 6892-1:2019, Annex I, elongation after fracture based on subdivision. Checked in `test/handbook/after-fracture.test.ts`.
 */
export function elongationBySubdivision(input: SubdivisionInput): number {
  const from = 'elongationBySubdivision';
  requireOptions(from, input, ['originalLength', 'intervals', 'between', 'xToY', 'beyondY'], 'input');
  return subdividedElongation(from, '', requirePositive(from, 'originalLength', input.originalLength), input);
}
