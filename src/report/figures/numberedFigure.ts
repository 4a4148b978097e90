import { extentOf } from './extentOf.js';
import type { FigureValue } from './Figure.js';
import { plane, type NamedPoint, type Place } from './plane.js';
import type { Presentation } from '../words/presentation.js';
import { thinned } from './thinned.js';
import type { ValueAxis } from './valueAxis.js';

/** @internal Values one after the other, with lines across; all in the unit of the library. */
export interface NumberedValues {
  /** What is counted along. */
  readonly along: string;
  /** What the values are. */
  readonly axis: ValueAxis;
  readonly values: ArrayLike<number>;
  /** Number of each value; default 1, 2, 3 and on. */
  readonly numbers?: readonly number[];
  /** Places in the list of values that stand out, with their names. */
  readonly odd: readonly { readonly at: number; readonly text: string }[];
  /** Lines across, with their names. */
  readonly levels: readonly { readonly value: number; readonly text: string; readonly strong?: boolean }[];
  /** Band across. */
  readonly band?: readonly [low: number, high: number] | undefined;
  /** True where the values follow one another in time: then a thin line joins them. */
  readonly joined?: true;
}

const MOST = 150;

/** @internal Layers of values in their order: filled points, squares for those that stand out, lines across with their names at the right. */
export function numberedValues(
  { along, axis, values, odd, levels, band, joined, numbers }: NumberedValues,
  show: Presentation,
): FigureValue[] {
  const { unit, title } = axis;
  const n = values.length;
  const number = (k: number): number => numbers?.[k] ?? k + 1;
  const x = Array.from({ length: n }, (_, k) => number(k));
  const y = Array.from(values);
  const last = Math.max(...[0, n - 1].map(number));
  // room at the right for the names of the lines
  const to = last + Math.max(0.5, 0.22 * last);
  const { line, path, marks, words, boxes } = plane(
    show,
    { title: along, from: 0.5, to, whole: true },
    { title, ...unit, ...extentOf([y, levels.map(({ value }) => value), band ?? []], 0.12) },
  );
  const out = new Set(odd.map(({ at }) => at));
  const place = (k: number): Place => [number(k), y[k]!];
  const few = thinned({ x, y, most: MOST });
  const sound = few.map(({ i }) => i).filter((k) => !out.has(k));
  const lines = levels.map(({ value, strong }) =>
    path(
      [
        [0.5, value],
        [to, value],
      ],
      strong // prettier-ignore
        ? { color: show.colours.mark, strokeWidth: 1.2 }
        : { color: show.colours.line, strokeWidth: 1.1, strokeDash: [6, 4] },
    ),
  );
  const names = levels.map(({ value, text }): NamedPoint => ({ x: to, y: value, text, side: 'left' }));
  return [
    ...(band ? [boxes([[[0.5, band[0]], [to, band[1]]]], { color: show.colours.curve, opacity: 0.14 })] : []), // prettier-ignore
    ...lines,
    ...(joined ? [line({ x, y, most: MOST }, { color: show.colours.curve, strokeWidth: 1 })] : []),
    marks(sound.map(place), { filled: true, color: show.colours.curve, size: 40 }),
    marks(odd.map(({ at }) => place(at)), { shape: 'square', color: show.colours.line, size: 80, strokeWidth: 1.8 }), // prettier-ignore
    ...words([...names, ...odd.map(({ at, text }): NamedPoint => ({ x: number(at), y: y[at]!, text, side: 'right' }))]),
  ];
}
