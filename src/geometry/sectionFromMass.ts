import type { Section } from '../base/index.js';
import { section, type Readings } from './readings.js';

/** Measured dimensions of a piece by its mass. */
export interface SectionFromMassDimensions {
  /** Mass m [g]. */
  readonly mass: Readings;
  /** Length L of the weighed piece [mm], ends square. */
  readonly length: Readings;
  /** Density ρ [g/cm³]; steel 7.85. */
  readonly density: Readings;
}

/**
 * Section properties of a piece by its mass.
 *
 * $$ S_0 = \frac{1000\, m}{\rho L} $$
 *
 * @remarks
 * For wire and reinforcing bar, whose diameter is uneven. The strength of reinforcing bar is by rule referred to its nominal area.
 *
 * @param dimensions - `mass` m [g], `length` L [mm] and `density` ρ [g/cm³]; finite and above 0, one reading or several in order along the piece.
 * @returns Area [mm²].
 * @throws {@link InputError} `missing`, `wrong-type`, `empty`, `not-finite`, `not-positive`, `unknown-option`.
 *
 * @example
 * ```ts
 * sectionFromMass({ mass: 15.41, length: 250, density: 7.85 }).area; // => 7.8522
 * ```
 *
 * @see ISO 6892-1:2019, original cross-sectional area; Annex C; ISO 15630-1. Checked in `test/handbook/sections.test.ts`.
 */
export function sectionFromMass(dimensions: SectionFromMassDimensions): Section {
  return section('from-mass', 'sectionFromMass', dimensions, ['mass', 'length', 'density'], ({ mass, length, density }) => ({
    area: (1000 * mass) / (density * length),
  }));
}
