import type { Section } from './Section.js';

/** Lengths over the marks of a piece whose gauge length was divided before the test: X is the end mark on the short side of the break, Y the mark as far beyond it. */
export interface SubdividedLengths {
  /** Number of equal intervals in the gauge length N. */
  readonly intervals: number;
  /** Number of intervals between X and Y n. */
  readonly between: number;
  /** Distance from X to Y after fracture [mm]. */
  readonly xToY: number;
  /** Distance from Y to the mark (N − n)/2 intervals beyond it [mm], N − n even; or to the two marks (N − n ∓ 1)/2 beyond it, N − n odd. */
  readonly beyondY: number | readonly [number, number];
}

/** What was measured on the broken piece; what was not is left out. */
export interface AfterFracture {
  /** Final gauge length Lu [mm], the pieces fitted together. */
  readonly gaugeLength?: number | undefined;
  /** Lengths over marks that divided the gauge length; where they are given A comes from them. */
  readonly subdivision?: SubdividedLengths | undefined;
  /** Extension between fine marks (scribed arcs, read under a microscope) over the gauge length [mm]; where it is given A comes from it. */
  readonly fineMarksExtension?: number | undefined;
  /** Least cross-sectional area after fracture Su [mm²]. */
  readonly area?: number | undefined;
  /** Least diameter of a round neck [mm], read in two directions at right angles or more; in place of `area`. */
  readonly diameters?: ArrayLike<number> | undefined;
  /** Width of a flat neck [mm]; with `thickness`, in place of `area`. */
  readonly width?: number | undefined;
  /** Thickness of a flat neck [mm]: one reading, or edge, middle, edge where the middle is pulled in. */
  readonly thickness?: number | ArrayLike<number> | undefined;
  /** Distance of the fracture from the nearest gauge mark [mm]. */
  readonly fractureDistance?: number | undefined;
  /** Where it broke, if not in the parallel length between the marks. */
  readonly fracturePlace?: 'at-mark' | 'in-fillet' | 'in-grip' | undefined;
}

/** A test piece before its test: its section and its lengths. */
export interface UnbrokenPiece {
  /** The section, from `round()`, `rectangular()`, `tube()` and so on. */
  readonly section: Section;
  /** Original gauge length L0 [mm], between the marks. */
  readonly gaugeLength: number;
  /** Extensometer base Le [mm]; default `gaugeLength`. */
  readonly extensometerLength?: number | undefined;
  /** Parallel length Lc [mm]: what deforms plastically when only travel is known; default `gaugeLength`, with a finding. */
  readonly parallelLength?: number | undefined;
  /** Length that stretches elastically with travel Leff [mm], fillets included; default `parallelLength`. */
  readonly effectiveLength?: number | undefined;
}

/** A test piece, with what was measured once it had broken. */
export interface TestPiece extends UnbrokenPiece {
  /** What was measured on the broken piece. */
  readonly afterFracture?: AfterFracture | undefined;
}
