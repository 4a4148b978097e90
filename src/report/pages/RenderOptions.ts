import type { AskedDecision } from './decisionsPart.js';
import type { Figure } from '../figures/Figure.js';
import type { FigureName } from './figures.js';
import type { Paper } from './Paper.js';
import type { SummaryOptions } from './summarise.js';

/** A figure beside those of the test, with its drawing. */
export interface FurtherFigure {
  /** The figure, for its title and its words. */
  readonly figure: Figure;
  /** Its drawing as SVG, as `drawFigure` of `testpiece/render` makes it. */
  readonly drawing: string;
}

/** Options of {@link renderHtml}. */
export interface RenderOptions extends SummaryOptions {
  /** Drawings of the figures as SVG, by name, as `drawFigures` of `testpiece/render` makes them; figures without one are left out. */
  readonly drawings?: Partial<Record<FigureName, string>> | undefined;
  /** Figures beside those of the test: of several tests, of laws; default none. */
  readonly furtherFigures?: readonly FurtherFigure[] | undefined;
  /** Values with the limits and the rule that `decide` holds them against; default none. */
  readonly decisions?: readonly AskedDecision[] | undefined;
  /** Of a tension test: what other windows, offsets, lengths and compliances would give; default true. */
  readonly whatIf?: boolean | undefined;
  /** Sheet that the page is printed on; default `A4`. */
  readonly paper?: Paper | undefined;
}
