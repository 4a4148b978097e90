import { InputError, requireOptions, requirePositive } from '../../base/index.js';

/** Width and length of a sheet piece before and after straining, unloaded. */
export interface SheetMeasures {
  /** Original width b0 [mm]. */
  readonly originalWidth: number;
  /** Width after straining b [mm]. */
  readonly width: number;
  /** Original gauge length L0 [mm]. */
  readonly originalLength: number;
  /** Gauge length after straining L [mm]. */
  readonly length: number;
}

/**
 * Plastic strain ratio r of a sheet: width strain over thickness strain.
 *
 * $$ r = \frac{\ln (b / b_0)}{\ln \frac{L_0 b_0}{L b}} $$
 *
 * @remarks
 * The thickness strain follows from constant volume, which is more exact than measuring it. Measures are those after unloading, between the end of
 * yielding and the maximum force; the strain at which r was measured belongs to the value.
 *
 * @param sheet - `originalWidth`, `width`, `originalLength`, `length` [mm], above 0; the length grown and the width shrunk.
 * @returns r [1].
 * @throws {@link InputError} `missing`, `not-finite`, `not-positive`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * plasticStrainRatio({ originalWidth: 20, width: 18.2, originalLength: 80, length: 92 }); // => 2.07498
 * ```
 *
 * @see ISO 10113; ASTM E517. Checked in `test/handbook/sheet.test.ts`.
 */
export function plasticStrainRatio(sheet: SheetMeasures): number {
  const from = 'plasticStrainRatio';
  requireOptions(from, sheet, ['originalWidth', 'width', 'originalLength', 'length'], 'sheet');
  const b0 = requirePositive(from, 'sheet.originalWidth', sheet.originalWidth);
  const b = requirePositive(from, 'sheet.width', sheet.width);
  const L0 = requirePositive(from, 'sheet.originalLength', sheet.originalLength);
  const L = requirePositive(from, 'sheet.length', sheet.length);
  if (!(b < b0)) throw new InputError(from, 'sheet.width', 'out-of-range', `must be below originalWidth (${b0})`, b);
  const thickness = Math.log((L0 * b0) / (L * b));
  if (!(thickness < 0))
    throw new InputError(
      from,
      'sheet.length',
      'out-of-range',
      'must have grown by more than the width shrank, or the sheet grew thicker',
      L,
    );
  return Math.log(b / b0) / thickness;
}
