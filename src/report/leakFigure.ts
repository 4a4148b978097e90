import { InputError, requireColumn, requireFinite, requireObject } from '../base/index.js';
import type { Leak, StandstillRecord } from '../force/index.js';
import { extentOf } from './extentOf.js';
import type { Figure } from './Figure.js';
import { figure, plane } from './plane.js';
import { shownTo, type FigureOptions } from './presentation.js';
import { requireMade } from './requireMade.js';

/** Options of {@link leakFigure}. */
export interface LeakFigureOptions extends FigureOptions {
  /** Time from which the leak was read [s], as given to `leakDown`; default the first sample. */
  readonly from?: number | undefined;
}

const FROM = 'leakFigure';

/**
 * Pressure at standstill over time with the line of its leak, as plain Vega-Lite JSON.
 *
 * @param record - `time` [s] and `pressure` [MPa], as given to `leakDown`.
 * @param leak - Its result.
 * @param options - `from` [s]; language, units, ground.
 * @returns The figure, with the pressure in bar (psi).
 * @throws {@link InputError} `missing`, `wrong-type`, `empty`, `not-finite`, `unequal-lengths`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * const record = { time: [0, 20, 40, 60], pressure: [10, 9.98, 9.96, 9.94], bore: 40 };
 * leakFigure(record, required(leakDown(record))).description; // => 'The pressure falls by 0.602 % of its mean in a minute.'
 * ```
 *
 * @see Common practice. Checked in `test/report/studyFigures.test.ts`.
 */
export function leakFigure(record: Pick<StandstillRecord, 'time' | 'pressure'>, leak: Leak, options: LeakFigureOptions = {}): Figure {
  requireObject(FROM, 'record', record);
  const time = requireColumn(FROM, 'record.time', record.time);
  const pressure = requireColumn(FROM, 'record.pressure', record.pressure, { length: time.length });
  const { pressureRate, sharePerMinute } = requireMade(FROM, 'leak', leak, { numbers: ['pressureRate', 'sharePerMinute'] });
  const show = shownTo(FROM, options, ['from']);
  const start = requireFinite(FROM, 'options.from', options.from ?? time[0]);
  const first = time.findIndex((one) => one >= start);
  if (first < 0) throw new InputError(FROM, 'options.from', 'out-of-range', 'must lie within the record', start);
  const { say, percent, colours } = show;
  const count = time.length - first;
  const middle = (column: Float64Array): number => column.subarray(first).reduce((sum, one) => sum + one / count, 0);
  const [t, p] = [middle(time), middle(pressure)];
  const end = time[time.length - 1]!;
  const fitted = (at: number): number => 10 * (p - pressureRate * (at - t));
  const { line, path } = plane(
    show,
    { title: say('Time t'), metric: 's', ...extentOf([time], 0.03) },
    { title: say('Oil pressure p'), metric: 'bar', ...extentOf([pressure.map((one) => 10 * one)], 0.12) },
  );
  return figure(
    show,
    say('Pressure at standstill'),
    say('The pressure falls by {share} of its mean in a minute.', { share: percent(sharePerMinute) }),
    [
      line({ x: time, y: pressure, yFactor: 10 }, { color: colours.curve, strokeWidth: 1.3 }),
      path([[time[first]!, fitted(time[first]!)], [end, fitted(end)]], { color: colours.line, strokeWidth: 1.4, strokeDash: [6, 4] }), // prettier-ignore
    ],
  );
}
