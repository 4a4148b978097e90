import { basename } from 'node:path';
import { fitCalibration, type Calibration, type CalibrationOptions, type CalibrationPairs } from '../force/index.js';
import { forceRuns } from './forceRuns.js';
import { givenJson } from './jsonFile.js';
import { madeOf } from './madeOf.js';
import type { Measured } from './numberTable.js';
import { textFile } from './textFile.js';
import { usage } from './usage.js';

/** Which of the two was brought to its steps: the reference, the true force, or what the channel indicates. */
export type Held = 'true' | 'indicated';

/** Pairs of a file, whether the channel indicates pressure or force where that is known, and how they are fitted. */
export interface CalibrationFile {
  /** Name of the file. */
  readonly name: string;
  readonly pairs: CalibrationPairs;
  readonly indicates?: 'pressure' | 'force' | undefined;
  readonly options: CalibrationOptions;
}

/** The calibration by the pairs of a file. */
export interface FittedCalibration extends CalibrationFile {
  readonly calibration: Calibration;
}

/** The pairs of a table; a pressure is what the channel indicates, whichever column it is in. */
async function fromTable(place: string, path: string, held: Held | undefined): Promise<Omit<CalibrationFile, 'name'>> {
  const either: readonly Measured[] = ['stress', 'force'];
  const { readings, held: first, read } = await forceRuns(place, path, either, ['force', 'stress']);
  if (first === 'stress' && read === 'stress') throw usage(`${place} must have a column of the reference force, got pressures alone`);
  const told = first === 'stress' ? 'indicated' : read === 'stress' ? 'true' : undefined;
  if (told !== undefined && held !== undefined && told !== held)
    throw usage(`--held ${held} contradicts the heading of ${path}: the pressure is what the channel indicates`);
  const reversed = (told ?? held) === 'true';
  const of = reversed ? read : first;
  return {
    pairs: {
      indicated: readings.map((one) => (reversed ? one.read : one.held)),
      reference: readings.map((one) => (reversed ? one.held : one.read)),
    },
    ...(of === undefined ? {} : { indicates: of === 'stress' ? 'pressure' : 'force' }),
    options: {},
  };
}

/** Pairs and options as the command `calibrate` prints them as JSON. */
function fromJsonText(place: string, text: string): Omit<CalibrationFile, 'name'> {
  const given = givenJson(place, text) as Partial<CalibrationFile>;
  if (typeof given.pairs !== 'object') throw usage(`${place} must be a table, or the JSON of testpiece calibrate`);
  const { pairs, indicates, options = {} } = given;
  return { pairs, indicates, options };
}

/** The pairs of a file that a flag or an argument names: a table of two columns or of several runs, or JSON of the command `calibrate`. */
export async function calibrationFile(place: string, path: string, held?: Held): Promise<CalibrationFile> {
  const text = await textFile(place, path);
  const json = text.trimStart().startsWith('{');
  if (json && held !== undefined) throw usage('--held is of a table, and the file is JSON');
  return { name: basename(path), ...(json ? fromJsonText(place, text) : await fromTable(place, path, held)) };
}

/** The calibration by a file, fitted as its options say. */
export const fittedFile = (file: CalibrationFile): FittedCalibration => ({
  ...file,
  calibration: madeOf(fitCalibration(file.pairs, file.options)),
});
