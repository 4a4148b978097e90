import { required, requireObject } from '../../base/index.js';
import { leakDown, type StandstillRecord } from '../../force/index.js';
import { extentOf } from './extentOf.js';
import type { Figure } from './Figure.js';
import { figure } from './figureStyle.js';
import { plane } from './plane.js';
import { shownTo, type FigureOptions } from '../words/presentation.js';
import { PRESSURE } from '../words/shownUnit.js';

/** Options of {@link leakFigure}. */
export interface LeakFigureOptions extends FigureOptions {
  /** Time from which the leak was read [s], as of `leakDown`; default the first sample. */
  readonly from?: number | undefined;
}

const FROM = 'leakFigure';

/**
 * Pressure at standstill over time with the line of its leak, as plain Vega-Lite JSON.
 *
 * @param record - As of `leakDown`.
 * @param options - `from` [s]; language, units, ground.
 * @returns The figure, with the pressure in bar (psi).
 * @throws {@link InputError} As `leakDown`; also where it fails (`withheld`); `unknown-option`.
 *
 * @example
 * ```ts
 * const record = { time: [0, 20, 40, 60], pressure: [10, 9.98, 9.96, 9.94], bore: 40 };
 * leakFigure(record).description; // => 'The pressure falls by 0.602\u00a0% of its mean in a minute.'
 * ```
 *
 * @see Common practice. Checked in `test/report/studyFigures.test.ts`.
 */
export function leakFigure(record: StandstillRecord, options: LeakFigureOptions = {}): Figure {
  const { from, ...reader } = requireObject(FROM, 'options', options) as LeakFigureOptions;
  const found = leakDown(record, { from });
  const show = shownTo(FROM, reader);
  const { pressureRate, sharePerMinute } = required(found);
  const time = Float64Array.from(record.time);
  const pressure = Float64Array.from(record.pressure);
  const first = time.findIndex((one) => one >= (from ?? time[0]!));
  const { say, percent, colours } = show;
  const count = time.length - first;
  const middle = (column: Float64Array): number => column.subarray(first).reduce((sum, one) => sum + one / count, 0);
  const [t, p] = [middle(time), middle(pressure)];
  const end = time[time.length - 1]!;
  const fitted = (at: number): number => p - pressureRate * (at - t);
  const { line, path } = plane(
    show,
    { title: say('Time t'), metric: 's', ...extentOf([time], 0.03) },
    { title: say('Oil pressure p'), metric: PRESSURE, ...extentOf([pressure], 0.12) },
  );
  return figure(
    show,
    say('Pressure at standstill'),
    say('The pressure falls by {share} of its mean in a minute.', { share: percent(sharePerMinute) }),
    [
      line({ x: time, y: pressure }, { color: colours.curve, strokeWidth: 1.3 }),
      path([[time[first]!, fitted(time[first]!)], [end, fitted(end)]], { color: colours.line, strokeWidth: 1.4, strokeDash: [6, 4] }), // prettier-ignore
    ],
  );
}
