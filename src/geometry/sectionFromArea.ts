import type { Section } from '../base/index.js';
import { section, type Readings } from './readings.js';

/** Measured dimensions of a section whose area is known. */
export interface SectionFromAreaDimensions {
  /** Area S0 [mm²]. */
  readonly area: Readings;
}

/**
 * Section properties of a section whose area is known.
 *
 * $$ S_0 = S_0 $$
 *
 * @remarks
 * For a section of any other shape, measured elsewhere.
 *
 * @param dimensions - `area` S0 [mm²]; finite and above 0, one reading or several in order along the piece.
 * @returns Area [mm²].
 * @throws {@link InputError} `missing`, `wrong-type`, `empty`, `not-finite`, `not-positive`, `unknown-option`.
 *
 * @example
 * ```ts
 * sectionFromArea({ area: 120.444 }).area; // => 120.444
 * ```
 *
 * @see ISO 6892-1:2019, original cross-sectional area; measured elsewhere. Checked in `test/geometry/sections.test.ts`.
 */
export function sectionFromArea(dimensions: SectionFromAreaDimensions): Section {
  return section('from-area', 'sectionFromArea', dimensions, ['area'], ({ area }) => ({ area }));
}
