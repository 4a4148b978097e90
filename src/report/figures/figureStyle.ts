import type { Figure, FigureValue } from './Figure.js';
import type { Presentation } from '../words/presentation.js';

/** @internal Width of the plot of every figure [px]. */
export const WIDTH = 560;
/** @internal Height of the plot of a figure without rows [px]. */
export const HEIGHT = 330;
/** @internal Size of the type of names [px]. */
export const NAME_SIZE = 11.5;
/** Width of letters in widths of the type; those of Chinese fill their square. */
const LETTER = 0.52;
const FULL = /[\u2e80-\u9fff\uf900-\ufaff\uff00-\uff60]/;
/** @internal Width of a name [px], nearly. */
export const widthOf = (text: string): number => NAME_SIZE * Array.from(text).reduce((sum, one) => sum + (FULL.test(one) ? 1 : LETTER), 0);

/** @internal Rows of a figure that has some in the place of an axis: their names, and the height of the whole [px]. */
export interface Rows {
  readonly names: readonly string[];
  readonly height: number;
}

/** Room around a figure [px]. */
const ROOM = 10;

/** Correction of the drawing library's estimate of the widest name: it takes four fifths of the type size for every letter. */
function guessOff(names: readonly string[]): number {
  const widest = (of: (name: string) => number): number => Math.max(0, ...names.map(of));
  return widest((name) => 1.06 * widthOf(name)) - widest((name) => 0.8 * NAME_SIZE * name.length);
}

/** Size of the type of titles [px]. */
const TITLE_SIZE = 14;
/** Numbers and title of the upright axis are at least so wide [px]. */
const AXIS = 40;

/** The same of a long title: without it the drawing would become wide, and its plot small. */
function titleGuessOff(title: string): number {
  const own = (1.06 * widthOf(title) * TITLE_SIZE) / NAME_SIZE;
  return Math.max(0, 0.8 * TITLE_SIZE * title.length - Math.max(own, WIDTH + AXIS));
}

/** @internal A figure of layers, in the one style of all figures. */
export function figure(
  { colours, language }: Presentation,
  title: string,
  description: string,
  layer: readonly FigureValue[],
  rows?: Rows,
): Figure {
  return {
    $schema: 'https://vega.github.io/schema/vega-lite/v6.json',
    title,
    description,
    width: WIDTH,
    height: rows?.height ?? HEIGHT,
    layer,
    config: {
      background: colours.ground,
      // the last ones have Chinese characters
      font: 'Georgia, Times New Roman, Liberation Serif, Noto Serif CJK SC, Songti SC, SimSun, serif',
      // title and description say what is drawn; a screen reader should not read it point by point
      aria: false,
      padding: {
        left: ROOM + (rows ? guessOff(rows.names) : 0),
        right: ROOM - (rows ? 0 : titleGuessOff(title)),
        top: ROOM,
        bottom: ROOM,
      },
      locale: { number: { decimal: language.decimalSign, thousands: '\u202f', grouping: [3], currency: ['', ''] } },
      title: {
        anchor: 'start',
        ...(rows ? { frame: 'group' } : {}),
        fontSize: TITLE_SIZE,
        fontWeight: 'normal',
        offset: 10,
        color: colours.mark,
      },
      axis: {
        gridColor: colours.grid,
        domainColor: colours.axis,
        tickColor: colours.axis,
        labelFontSize: 11,
        titleFontSize: 12,
        titleFontWeight: 'normal',
        labelColor: colours.words,
        titleColor: colours.mark,
      },
      view: { stroke: null },
    },
  };
}
