import { headedColumns, numberTable, type Headed, type Measured, type NumberRow, type NumberTable } from './numberTable.js';
import { runDirection } from './runDirection.js';
import { usage } from './usage.js';

/** One reading: what was held, what was read, which run it is of (from 0, rising and falling counted apart), and whether the force fell. */
export interface RunReading {
  readonly held: number;
  readonly read: number;
  readonly run: number;
  readonly falling: boolean;
}

/** Readings in N or MPa, run by run, and what the headings say that the two columns are. */
export interface ForceRuns {
  readonly place: string;
  readonly readings: readonly RunReading[];
  readonly held: Measured | undefined;
  readonly read: Measured | undefined;
}

/** Columns of a table; one whose last column says the direction of each row has two of numbers. */
const columnsIn = (rows: readonly NumberRow[]): number => Math.max(...rows.map(({ cells }) => cells.length));
const saysDirection = ({ cells }: NumberRow): boolean => cells.length === 3 && runDirection(cells[2]!) !== undefined;

/** A row of numbers, of which the first two are there; or two numbers and a direction, in every row. */
function isSound(row: NumberRow, rows: readonly NumberRow[]): boolean {
  const { cells, values } = row;
  if (![0, 1].every((k) => Number.isFinite(values[k]))) return false;
  if (rows.some(saysDirection)) return saysDirection(row);
  return values.every((value, k) => Number.isFinite(value) || cells[k] === '');
}

/** Commas between whole digits may be decimal signs, where no heading counts the columns. */
function requireNoCommas({ place, separator, rows }: NumberTable, headed: readonly Headed[]): void {
  const whole = rows.every(({ cells }) => cells.length % 2 === 0 && cells.every((cell) => /^\s*\d+\s*$/.test(cell)));
  if (separator === ',' && headed.length > 2 && whole && headed.every(({ name }) => name === ''))
    throw usage(`${place}: the commas may be decimal signs or stand between columns; write a heading, or semicolons between columns`);
}

/** Run by run, first the way up and then the way down: pairs tell the direction by their order, whichever way the table was written. */
const wayByWay = (readings: readonly RunReading[]): RunReading[] =>
  [...readings].sort((a, b) => a.run - b.run || Number(a.falling) - Number(b.falling) || (a.falling ? b.held - a.held : a.held - b.held));

/** Rows with a direction: a run is how often a force was held before in that direction. */
function byRow({ rows }: NumberTable, [first, second]: readonly Headed[]): RunReading[] {
  const all = rows.map(({ cells, values }) => ({
    held: values[0]! * first!.factor,
    read: values[1]! * second!.factor,
    falling: runDirection(cells[2]!) === 'falling',
  }));
  return wayByWay(
    all.map((one, i) => ({
      ...one,
      run: all.slice(0, i).filter(({ held, falling }) => held === one.held && falling === one.falling).length,
    })),
  );
}

/** Columns of runs: the first falling one belongs to the first rising one, and so on; where no heading says a direction, in the order of the rows. */
function byColumn({ rows, place }: NumberTable, columns: readonly Headed[]): RunReading[] {
  const [held, ...runs] = columns;
  const isFalling = runs.map(({ name }) => runDirection(name) === 'falling');
  const hole = rows.find(({ values }) => runs.some((_, k) => !isFalling[k] && !Number.isFinite(values[k + 1])));
  if (hole)
    throw usage(`${place}: line ${hole.line} has an empty cell in a run of rising force; only those of falling force may have some`);
  const of = (falling: boolean): number[] => runs.flatMap((_, k) => (isFalling[k] === falling ? [k + 1] : []));
  const [up, down] = [of(false), of(true)];
  if (up.length < down.length) throw usage(`${place} must have a column of rising force for each of falling force, got ${up.length}`);
  const columnOf = (k: number, run: number, falling: boolean): RunReading[] =>
    rows.flatMap(({ values }) =>
      Number.isFinite(values[k]) ? [{ held: values[0]! * held!.factor, read: values[k]! * columns[k]!.factor, run, falling }] : [],
    );
  const readings = [...up.flatMap((k, run) => columnOf(k, run, false)), ...down.flatMap((k, run) => columnOf(k, run, true))];
  return runs.some(({ name }) => runDirection(name) !== undefined) ? wayByWay(readings) : readings;
}

/**
 * Readings against a held quantity from a file that a flag names: the first column is what was held, every further one is a run, of falling force where its
 * heading says so; or two columns and a third one of words that says the direction of each row.
 */
export async function forceRuns(place: string, path: string, held: readonly Measured[], read: readonly Measured[]): Promise<ForceRuns> {
  const table = await numberTable(place, path, isSound, 'two numbers or more, or two numbers and a direction');
  const directed = table.rows.some(saysDirection);
  const columns = headedColumns(table, [held, ...Array.from({ length: (directed ? 2 : columnsIn(table.rows)) - 1 }, () => read)]);
  if (!directed) requireNoCommas(table, columns);
  const [first, second, ...more] = columns;
  const other = more.find(({ of }) => of !== second!.of);
  if (other) throw usage(`${place}: columns "${second!.name}" and "${other.name}" must be of one quantity`);
  return {
    place,
    readings: directed ? byRow(table, columns) : byColumn(table, columns),
    held: first!.of,
    read: second!.of,
  };
}
