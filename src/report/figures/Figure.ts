/** A value in a figure's data or settings. */
export type FigureValue = string | number | boolean | null | readonly FigureValue[] | { readonly [name: string]: FigureValue };

/** A figure as plain Vega-Lite JSON. */
export interface Figure {
  /** Which language the JSON is written in. */
  readonly $schema: string;
  /** Heading of the figure. */
  readonly title: string;
  /** What it shows, in words, for those who cannot see it. */
  readonly description: string;
  /** Width of the plot [px]. */
  readonly width: number;
  /** Height of the plot [px]. */
  readonly height: number;
  /** Layers, each with its data. */
  readonly layer: readonly FigureValue[];
  /** Type, lines and colours of the whole. */
  readonly config: FigureValue;
}
