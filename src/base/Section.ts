/** Shapes of test-piece sections. */
export type SectionShape = 'round' | 'rectangular' | 'square' | 'hexagon' | 'tube' | 'tube-strip' | 'from-mass' | 'from-area';

/** The section of a test piece: what was measured, and what follows from it. */
export interface Section {
  /** Which shape. */
  readonly shape: SectionShape;
  /** The dimensions used [mm; g and g/cm³ for a section by mass], means where readings were repeated. */
  readonly dimensions: Readonly<Record<string, number>>;
  /** Original cross-sectional area S0 [mm²]. */
  readonly area: number;
  /** Second moment of area I [mm⁴], about the axis that bending in the direction of the thickness turns on. */
  readonly secondMoment?: number | undefined;
  /** Section modulus W [mm³]; of a hexagon to the flats. */
  readonly sectionModulus?: number | undefined;
  /** Section modulus of a hexagon to the corners [mm³]. */
  readonly sectionModulusCorner?: number | undefined;
  /** Of repeated readings: (largest − smallest) / mean, the worst dimension [1]. */
  readonly spread?: number | undefined;
  /** Of repeated readings in order along the piece: (last − first) / mean, the worst dimension, signed [1]. */
  readonly taper?: number | undefined;
  /** How many readings of each dimension the section rests on (the fewest). */
  readonly readings: number;
}
