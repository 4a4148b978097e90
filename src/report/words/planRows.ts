import type { Phrase } from '../../languages/index.js';
import type { TestPlan } from '../../planning/index.js';
import type { Presentation } from './presentation.js';
import { FORCE, PRESSURE, type MetricUnit } from './shownUnit.js';

/** One row of a plan's table. */
export interface PlanRow {
  /** Part of the plan under which the row stands. */
  readonly part: string;
  /** What it is. */
  readonly name: string;
  /** Value as text. */
  readonly text: string;
  /** Unit as shown; empty where the text says it all. */
  readonly unit: string;
}

/** @internal A row: its name, its value as text, the unit as shown. */
export type Row = readonly [name: string, text: string | undefined, unit: string];

/** @internal Makes the rows of a plan for one reader. */
export function rowMaker(show: Presentation) {
  const { say, number, unit } = show;
  /** Digits of a metric value in the reader's unit. */
  const digitsOf = (value: number, metric: string | MetricUnit, figures: number): string => number(value * unit(metric).factor, figures);
  return {
    under: (part: Phrase, rows: readonly Row[]): PlanRow[] =>
      rows.flatMap(([name, text, shown]) => (text === undefined ? [] : [{ part: say(part), name, text, unit: shown }])),
    /** A row of one value, where it is known. */
    one: (name: Phrase, value: number | undefined, metric: string | MetricUnit, figures = 4): Row => [
      say(name),
      value === undefined ? undefined : digitsOf(value, metric, figures),
      unit(metric).unit,
    ],
    /** A row of two values and what lies between them. */
    span: (name: Phrase, range: readonly [number, number] | undefined, metric: string | MetricUnit, figures = 4): Row => {
      const ends = range?.map((value) => digitsOf(value, metric, figures));
      const [low, high] = ends ?? [];
      return [
        say(name),
        low === undefined || high === undefined ? undefined : low === high ? low : say('{low} to {high}', { low, high }),
        unit(metric).unit,
      ];
    },
    /** A row of two values beside each other. */
    pair: (name: Phrase, [first, second]: readonly [number, number], metric: string | MetricUnit): Row => [
      say(name),
      show.listed([digitsOf(first, metric, 3), digitsOf(second, metric, 3)]),
      unit(metric).unit,
    ],
    share: (name: Phrase, value: number | undefined): Row => [say(name), value === undefined ? undefined : show.percent(value), ''],
    /** A row of words. */
    words: (name: Phrase, text: string | undefined, shown = ''): Row => [say(name), text, shown],
  };
}
/** @internal What makes them. */
export type RowMaker = ReturnType<typeof rowMaker>;

/** @internal Rows of the force, of every plan. */
export const forceRows = ({ force }: TestPlan, { under, one, share }: RowMaker): PlanRow[] =>
  under('Force', [
    one('greatest force to be expected', force.greatest, FORCE),
    share('share of the capacity', force.utilisation),
    one('least force that counts', force.least, FORCE),
    one('oil pressure at the greatest force', force.pressure, PRESSURE),
    share('share of the relief valve', force.shareOfRelief),
    share('share of the transmitter', force.shareOfTransmitter),
  ]);
