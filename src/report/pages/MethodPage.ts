import type { Quantity } from '../../base/index.js';
import type { Phrase } from '../../languages/index.js';
import type { FrameWork, MethodResult } from '../../methods/index.js';
import { restsOnTravel, type RoundingKind } from '../../statistics/index.js';
import type { Figure } from '../figures/Figure.js';
import type { Html } from './html.js';
import type { Presentation } from '../words/presentation.js';
import { shownUnit, type MetricUnit } from '../words/shownUnit.js';

/** @internal How a value is rounded where it is shown: by the kind that the standards name, to a step in the metric unit as shown, or to significant figures. */
export type ShownStep = RoundingKind | number | { readonly figures: number };

/** @internal A quantity of a result with the way in which it is shown. */
export interface ShownQuantity extends MetricUnit {
  readonly step: ShownStep;
  readonly field: string;
  readonly quantity: Quantity;
  /** How its symbol is written, where that depends on the piece; default the symbol of the quantity. */
  readonly written?: string | undefined;
  /** What must be said beside the value. */
  readonly stamp?: Phrase | undefined;
}

/** @internal The symbol of a quantity as a reader sees it. */
export const writtenSymbol = ({ quantity, written }: Pick<ShownQuantity, 'quantity' | 'written'>): string => written ?? quantity.symbol;

/** @internal A table of a page; the first cell of a row names it. */
export interface PageTable {
  /** Heading of its section; a table without one belongs to the section before it. */
  readonly heading?: string;
  readonly caption: string;
  readonly columns: readonly string[];
  /** What the cells of a column are, where they are no text to be read along the line. */
  readonly kinds?: readonly (CellKind | undefined)[];
  readonly rows: readonly (readonly (string | Html)[])[];
}

/** @internal How the cells of a column stand: numbers to the right, symbols and units unbroken, sources small, blanks with room to write in. */
export type CellKind = 'number' | 'short' | 'source' | 'blank';

/** @internal What the report says of one method, for one reader; the page around it is the same for all. */
export interface MethodPage<Result extends MethodResult> {
  /** Heading, to which the name of the piece is added. */
  readonly title: Phrase;
  /** Standard whose steps of rounding the table has; without one they are of common practice. */
  readonly steps?: string;
  /** Piece and set-up: label and text; rows without text are left out. */
  readonly identity: (result: Result, show: Presentation) => readonly (readonly [Phrase, string | undefined])[];
  /** Quantities in the order of the table. */
  readonly quantities: (result: Result) => readonly ShownQuantity[];
  /** How each value was found, in sentences with the numbers. */
  readonly howFound: (result: Result, show: Presentation) => readonly string[];
  /** Figures by name, in the order of the page. */
  readonly figures: (result: Result, show: Presentation) => Readonly<Record<string, Figure | undefined>>;
  /** Further tables, where the method has some. */
  readonly tables?: (result: Result, show: Presentation) => readonly PageTable[];
  /** Work on the frame whose cautions stand on the page. */
  readonly work: FrameWork;
}

/** @internal A field's quantities, one or several or none, all rounded in one way. */
export const shownAs = (
  field: string,
  step: ShownStep | ((quantity: Quantity) => ShownStep),
  quantities: Quantity | readonly Quantity[] | undefined,
  stamp?: Phrase,
): ShownQuantity[] =>
  (quantities === undefined ? [] : 'symbol' in quantities ? [quantities] : quantities).map((quantity) => ({
    ...shownUnit(quantity.symbol, quantity.unit),
    step: typeof step === 'function' ? step(quantity) : step,
    field,
    quantity,
    ...(stamp === undefined ? {} : { stamp }),
  }));

/** Figures of a modulus where its uncertainty leaves them (common practice). */
const MOST = 3;

/** @internal How a modulus, or the slope of an elastic line, is rounded in any method: to three figures, and to fewer where its u is known and has its first digit before the third. */
export function modulusStep({ value, standardUncertainty: u = 0 }: Quantity): ShownStep {
  if (!(u > 0)) return { figures: MOST };
  const place = (x: number): number => Math.floor(Math.log10(Math.abs(x)));
  return { figures: Math.max(1, Math.min(MOST, place(value) - place(u) + 1)) };
}

const stamps = {
  'at-least': 'at least: the test ended before its maximum force',
  'without-hardening': 'no hardening: of the highest stress of the level of yielding',
  all: 'determined from crosshead displacement',
  'beyond-extensometer': 'determined from crosshead displacement beyond the extensometer',
} as const satisfies Readonly<Record<string, Phrase>>;

/** @internal The same with what stands beside a value: that it is at least so large, that it is of a level without hardening, or that a strain from travel went into it. */
export const shownByBasis =
  (basis: string) =>
  (field: string, step: Parameters<typeof shownAs>[1], quantities: Quantity | readonly Quantity[] | undefined): ShownQuantity[] =>
    shownAs(field, step, quantities).map((one) => {
      if (one.quantity.atLeast) return { ...one, stamp: stamps['at-least'] };
      if (one.quantity.withoutHardening) return { ...one, stamp: stamps['without-hardening'] };
      const rests = restsOnTravel(one.quantity.symbol, basis, one.quantity.beyondExtensometer);
      return rests === undefined ? one : { ...one, stamp: stamps[rests] };
    });
