import type { Section } from './Section.js';

/** What was measured on the broken piece. */
export interface AfterFracture {
  /** Final gauge length Lu [mm], the pieces fitted together. */
  readonly gaugeLength?: number | undefined;
  /** Least cross-sectional area after fracture Su [mm²]. */
  readonly area?: number | undefined;
}

/** A test piece: its section and its lengths. */
export interface TestPiece {
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
  /** What was measured on the broken piece. */
  readonly afterFracture?: AfterFracture | undefined;
}
