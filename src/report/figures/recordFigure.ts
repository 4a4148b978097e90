import { InputError, requireArray, requireObject, type TensionColumns, type TrailStep } from '../../base/index.js';
import { requireRecord } from '../../curve/index.js';
import { findPauses } from '../../record/index.js';
import type { Figure } from './Figure.js';
import { figure } from './figureStyle.js';
import { plane, type Place } from './plane.js';
import { shownTo, type FigureOptions } from '../words/presentation.js';
import { FORCE } from '../words/shownUnit.js';
import { largest, thinned } from './thinned.js';
import { extentOf } from './extentOf.js';

/** Options of {@link recordFigure}. */
export interface RecordFigureOptions extends FigureOptions {
  /** What was done to the record, of its result; default nothing. */
  readonly trail?: readonly TrailStep[] | undefined;
}

const FROM = 'recordFigure';
/** More marks than these cannot be told from each other. */
const MARKS = 120;

/** Samples of the record as given that repairs changed, and those that they left out. */
function touched(length: number, trail: readonly TrailStep[]): { readonly changed: Set<number>; readonly left: Set<number> } {
  const changed = new Set<number>();
  const left = new Set<number>();
  // repairs count the samples that are there when they come: each one's place in the record as given
  let places = Uint32Array.from({ length }, (_, i) => i);
  for (const { change } of trail) {
    if (change?.kind === 'set') for (const sample of change.samples) if (sample < places.length) changed.add(places[sample]!);
    if (change?.kind !== 'keep') continue;
    const kept = new Uint8Array(places.length);
    for (const [first, last] of change.ranges) kept.fill(1, first, last + 1);
    places.forEach((place, i) => kept[i] === 0 && left.add(place));
    places = places.filter((_, i) => kept[i] === 1);
  }
  return { changed, left };
}

/**
 * Force over time as plain Vega-Lite JSON, with pauses of the drive and the samples that repairs changed or left out.
 *
 * @remarks
 * Pauses are shaded, as `findPauses` finds them. Triangles are samples that were given other values, crosses those that
 * were left out; of many, so many as can be told apart.
 *
 * @param record - The record as given to the analysis: `force` [N], `time` [s] and a column of motion.
 * @param options - `trail` of the result; language, units, ground.
 * @returns The figure.
 * @throws {@link InputError} `missing`, `wrong-type`, `not-finite`, `unequal-lengths`, `too-few`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * const time = Array.from({ length: 40 }, (_, i) => 0.1 * i);
 * const travel = time.map((t, i) => (i < 20 ? t : Math.max(2, t - 1)));
 * const force = travel.map((x, i) => 1000 * x - (i > 20 && x === 2 ? 10 : 0));
 * recordFigure({ force, travel, time }).description; // => 'Force over 3.9 s, up to 2.9\u00a0kN; pauses: 1.'
 * ```
 *
 * @see Common practice. Checked in `test/report/studyFigures.test.ts`.
 */
export function recordFigure(record: TensionColumns, options: RecordFigureOptions = {}): Figure {
  const { time, force } = requireRecord(FROM, record);
  const show = shownTo(FROM, options, ['trail']);
  if (!time) throw new InputError(FROM, 'record.time', 'missing', 'must be given: force is drawn over it', undefined);
  const trail = requireArray(FROM, 'options.trail', options.trail ?? []);
  trail.forEach((step, k) => requireObject(FROM, `options.trail[${k}]`, step));
  const { say, value, number, colours } = show;
  const top = 1.12 * Math.max(largest(force), 1e-6);
  const span = extentOf([time], 0.02);
  const lowest = Math.min(0, extentOf([force], 0.05).from);
  const { line, boxes, marks, words } = plane(
    show,
    { title: say('Time t'), metric: 's', ...span },
    { title: say('Force F'), metric: FORCE, from: lowest, to: top },
  );
  const still = findPauses(record);
  const { changed, left } = touched(force.length, trail);
  const places = (samples: Set<number>): Place[] => {
    const own = [...samples].sort((a, b) => a - b);
    const x = own.map((i) => time[i]!);
    const few = thinned({ x, y: own.map((i) => force[i]!), most: MARKS });
    return few.map((one): Place => [one.x, one.y]);
  };
  const layers = [];
  if (still.length > 0)
    layers.push(
      boxes(still.map(({ range: [a, b] }): [Place, Place] => [[time[a]!, lowest], [time[b]!, top]]), { color: colours.line, opacity: 0.2 }), // prettier-ignore
    );
  layers.push(line({ x: time, y: force }, { color: colours.curve, strokeWidth: 1.4 }));
  if (changed.size > 0) layers.push(marks(places(changed), { shape: 'triangle-up', color: colours.line }));
  if (left.size > 0) layers.push(marks(places(left), { shape: 'cross', size: 30, color: colours.mark, strokeWidth: 1 }));
  const first = still[0];
  if (first) layers.push(...words([{ x: time[first.range[1]]!, y: 0.06 * top, text: say('pause'), side: 'right' }]));
  const said = { time: number(time[time.length - 1]! - time[0]!, 3), force: value(largest(force), FORCE, 3), pauses: still.length };
  return figure(
    show,
    say('Force over time'),
    changed.size + left.size > 0
      ? say(
          'Force over {time} s, up to {force}; pauses: {pauses}; samples changed by repairs: {changed} (triangles), left out: {left} (crosses).',
          {
            ...said,
            changed: changed.size,
            left: left.size,
          },
        )
      : say('Force over {time} s, up to {force}; pauses: {pauses}.', said),
    layers,
  );
}
