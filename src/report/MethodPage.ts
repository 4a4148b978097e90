import type { Quantity } from '../base/index.js';
import type { MethodResult } from '../methods/index.js';
import type { RoundingKind } from '../statistics/index.js';
import type { Figure } from './figureParts.js';

/** @internal How a quantity is shown: unit, factor from the unit of the library, kind of rounding by the standards, step, or significant figures. */
export interface Shown {
  readonly unit: string;
  readonly factor: number;
  readonly step: RoundingKind | number | { readonly figures: number };
}

/** @internal A quantity of a result with the way in which it is shown. */
export interface ShownQuantity extends Shown {
  readonly field: string;
  readonly quantity: Quantity;
  /** What must be said beside the value. */
  readonly stamp?: string | undefined;
}

/** @internal A further table of a page; the first cell of a row names it. */
export interface PageTable {
  readonly heading: string;
  readonly caption: string;
  readonly columns: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

/** @internal What the report says of one method; the page around it is the same for all. */
export interface MethodPage<Result extends MethodResult> {
  /** Heading, to which the name of the piece is added. */
  readonly title: string;
  /** Piece and set-up: name and text; rows without text are left out. */
  readonly identity: (result: Result) => readonly (readonly [string, string | undefined])[];
  /** Quantities in the order of the table. */
  readonly quantities: (result: Result) => readonly ShownQuantity[];
  /** How each value was found, in sentences with the numbers. */
  readonly howFound: (result: Result) => readonly string[];
  /** Figures by name, in the order of the page. */
  readonly figures: (result: Result) => Readonly<Record<string, Figure | undefined>>;
  /** A further table, where the method has one. */
  readonly table?: (result: Result) => PageTable;
  /** Cautions of this test. */
  readonly cautions: readonly string[];
}

/** @internal A field's quantities, one or several or none, all shown in one way. */
export const shownAs = (
  field: string,
  shown: Shown,
  quantities: Quantity | readonly Quantity[] | undefined,
  stamp?: string,
): ShownQuantity[] =>
  (quantities === undefined ? [] : 'symbol' in quantities ? [quantities] : quantities).map((quantity) => ({
    ...shown,
    field,
    quantity,
    ...(stamp === undefined ? {} : { stamp }),
  }));

/** @internal What stands beside every value that a strain from travel went into. */
export const fromCrosshead = 'determined from crosshead displacement';

/** @internal A number for a sentence: so many significant figures. */
export const number = (value: number, figures: number): string => String(Number(value.toPrecision(figures)));
/** @internal A ratio for a sentence, in per cent. */
export const percent = (value: number, figures = 3): string => `${number(100 * value, figures)} %`;
