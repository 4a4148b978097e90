import { InputError, requireObject, requireOptions, requirePositive, requireSection, type Section } from '../base/index.js';

/** A parallel length with a fillet at each end. */
export interface FilletedPiece {
  /** Section of the parallel length, round or rectangular. */
  readonly section: Section;
  /** Parallel length Lc [mm]. */
  readonly parallelLength: number;
  /** Radius of the fillets r [mm]. */
  readonly filletRadius: number;
  /** Diameter or width of the heads [mm]. */
  readonly headSize: number;
}

/** Points of the sum over the arc; its error is far below the last digit of any drawing. */
const POINTS = 400;

/**
 * Length that stretches elastically when the whole piece is pulled, fillets included.
 *
 * $$ L_{eff} = L_c + 2 \int \frac{S_0}{S(x)}\, \mathrm{d}x, \qquad d(x) = d_0 + 2\left(r - \sqrt{r^2 - x^2}\right) $$
 *
 * @remarks
 * Summed over the angle of the arc by Simpson's rule, up to the head or to a quarter turn. Heads in the grips are taken as rigid. Plastic
 * extension lives in the parallel length alone: this length is for the elastic part only.
 *
 * @param piece - `section` (round, or rectangular with its width changing), `parallelLength`, `filletRadius`, `headSize` [mm].
 * @returns Effective length [mm].
 * @throws {@link InputError} `missing`, `wrong-type`, `not-finite`, `not-positive`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * effectiveLength({ section: round({ diameter: 8 }), parallelLength: 48, filletRadius: 5, headSize: 12 }); // => 54.300
 * ```
 *
 * @see Elementary mechanics. Checked in `test/handbook/lengths.test.ts`.
 */
export function effectiveLength(piece: FilletedPiece): number {
  const from = 'effectiveLength';
  requireOptions(from, requireObject(from, 'piece', piece), ['section', 'parallelLength', 'filletRadius', 'headSize'], 'piece');
  const { diameter, width } = requireSection(from, 'section', piece.section).dimensions;
  const size = diameter ?? width;
  if (size === undefined || !['round', 'rectangular'].includes(piece.section.shape))
    throw new InputError(from, 'section.shape', 'out-of-range', 'must be round or rectangular', piece.section.shape);
  requirePositive(from, diameter === undefined ? 'section.dimensions.width' : 'section.dimensions.diameter', size);
  const length = requirePositive(from, 'parallelLength', piece.parallelLength);
  const radius = requirePositive(from, 'filletRadius', piece.filletRadius);
  const head = requirePositive(from, 'headSize', piece.headSize);
  if (head < size) throw new InputError(from, 'headSize', 'out-of-range', `must be at least that of the section (${size})`, head);
  const power = piece.section.shape === 'round' ? 2 : 1;
  const end = Math.acos(Math.max(0, 1 - (head - size) / (2 * radius)));
  // dx = r cos(angle) d(angle)
  const share = (angle: number): number => (size / (size + 2 * radius * (1 - Math.cos(angle)))) ** power * radius * Math.cos(angle);
  let sum = share(0) + share(end);
  for (let k = 1; k < POINTS; k += 1) sum += (k % 2 === 1 ? 4 : 2) * share((k * end) / POINTS);
  return length + (2 * sum * end) / POINTS / 3;
}
