import { Command, Option } from 'commander';
import { calibrationUncertainty, type CalibrationOptions } from '../force/index.js';
import { calibrateTable } from './calibrateTable.js';
import { calibrationFile, fittedFile, type Held } from './calibrationFile.js';
import { numberOption, ratioOption, some } from './flags.js';
import { heldOption } from './heldFlag.js';
import { asJson, withJobFlags, type JobFlags } from './jobFlags.js';
import type { Session } from './session.js';
import { readerOf, withLanguageFlag, type LanguageFlags } from './testFlags.js';

/** Flags of the command, as they were typed. */
interface CalibrateFlags extends LanguageFlags, JobFlags {
  readonly degree?: 1 | 2 | 3;
  readonly weights?: 'equal' | 'relative';
  readonly held?: Held;
  readonly reference?: number;
  readonly resolution?: number;
}

/** The command `calibrate`: readings of the channel beside a reference become its calibration. */
export function calibrateCommand(session: Session): Command {
  const command = new Command('calibrate')
    .description(
      'Fits the calibration of the force channel to its readings beside a reference instrument: coefficients, residuals, uncertainty, findings. Nothing is written; the table itself, or the JSON, goes to --calibration of the other commands.',
    )
    .argument(
      '<file>',
      'table of text: what the channel indicated (pressure or force) and the force of the reference; further columns are further runs, of falling force where their heading says so; or a third column of words says it row by row',
    )
    .addOption(numberOption('--degree <d>', 'degree of the polynomial: 1, 2 or 3; default by F-tests'))
    .addOption(
      new Option('--weights <rule>', 'weights of the residuals: equal, or relative for errors in per cent; default equal').choices([
        'equal',
        'relative',
      ]),
    )
    .addOption(heldOption('what the first column holds, where both are forces: indicated (default), or the true force of the reference'))
    .addOption(ratioOption('--reference <u>', 'relative standard uncertainty of the reference instrument, for example 0.1%'))
    .addOption(numberOption('--resolution <r>', 'one step of the reading of the channel, in MPa or N'));
  withJobFlags(withLanguageFlag(command)).addHelpText(
    'after',
    `
Example:
  testpiece calibrate channel.txt --reference 0.1%
  testpiece calibrate channel.txt --degree 2 --json > channel.json
  testpiece report pull-07.csv --calibration channel.json --round 8 --gauge-length 40
`,
  );
  return command.action(async (file: string, flags: CalibrateFlags) => {
    const read = await calibrationFile(file, file, flags.held);
    const options: CalibrationOptions = { ...read.options, ...some('degree', flags.degree), ...some('weights', flags.weights) };
    const fitted = fittedFile({ ...read, options });
    const { pairs, indicates, calibration } = fitted;
    const doubts = { readings: 1, ...some('reference', flags.reference), ...some('resolution', flags.resolution) };
    const standardUncertainty = Array.from(pairs.indicated, (x) => calibrationUncertainty(calibration, x, doubts));
    session.out(
      flags.json === true
        ? asJson([{ ...some('indicates', indicates), pairs, options, calibration, standardUncertainty }], false)
        : calibrateTable(fitted, standardUncertainty, readerOf(flags)),
    );
    session.judge(calibration.findings, flags.failOn);
  });
}
