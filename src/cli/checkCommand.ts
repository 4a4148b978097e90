import { Command } from 'commander';
import { forceMadeBy } from './calibrationFlags.js';
import { checkFile, pressureAsForce, type FileCheck, type WholeTest } from './checkFile.js';
import { checkTable } from './checkTable.js';
import { eachFile } from './eachFile.js';
import { filesOf, recordEndings } from './filesOf.js';
import { some } from './flags.js';
import { asJson, withJobFlags, type JobFlags } from './jobFlags.js';
import { pieceOf, withPieceFlags, type PieceFlags } from './pieceFlags.js';
import { readingOf, withForce, withRecordFlags, type RecordFlags } from './recordFlags.js';
import { givenSections } from './sectionOptions.js';
import type { Session } from './session.js';
import { usage } from './usage.js';
import { tensionOptionsOf, withTensionFlags, type TensionFlags } from './tensionFlags.js';
import { readerOf, withLanguageFlag, type LanguageFlags } from './testFlags.js';

/** Flags of the command, as they were typed. */
interface CheckFlags extends PieceFlags, TensionFlags, RecordFlags, LanguageFlags, JobFlags {}

/** Section and gauge length: both, or none. */
function hasPiece(flags: CheckFlags): boolean {
  const section = givenSections(flags).length > 0;
  if (section && flags.gaugeLength === undefined) throw usage('--gauge-length must be given with a section');
  return section || flags.gaugeLength !== undefined;
}

/** One file, alone or as the test of a piece. */
async function checked(file: string, flags: CheckFlags, whole: WholeTest | undefined): Promise<FileCheck> {
  // only a tension test must have a motion: an indentation is a force over time
  const read = await readingOf(file, flags, { ...some('length', flags.extensometerLength), motion: whole !== undefined });
  const forceIsKnown = 'force' in read.record || flags.bore !== undefined || flags.calibration !== undefined;
  if (!whole && !forceIsKnown) return checkFile(file, read, pressureAsForce(read.record), 'pressure');
  return checkFile(file, read, await withForce(read.record, flags), whole ?? 'record');
}

/** The command `check`: what is wrong with a file, before anything is evaluated. */
export function checkCommand(session: Session): Command {
  const command = new Command('check')
    .description(
      'What is wrong with a file: how it was read, what is in doubt, what repairs would do. Nothing is written. With section and gauge length all findings of a tension test.',
    )
    .argument('<files...>', 'delimited text as the logger wrote it; folders and patterns such as "records/**/*.csv" too');
  withJobFlags(withLanguageFlag(withRecordFlags(withTensionFlags(withPieceFlags(command, false))).optionsGroup('Report:'))).addHelpText(
    'after',
    `
Example:
  testpiece check pull-07.csv
  testpiece check records --round 8 --gauge-length 40 --fail-on fault
`,
  );
  return command.action(async (given: string[], flags: CheckFlags) => {
    const whole = hasPiece(flags)
      ? { piece: pieceOf(flags), options: { ...(await tensionOptionsOf(flags)), test: await forceMadeBy(flags) } }
      : undefined;
    const { files, many } = await filesOf(session, given, recordEndings);
    const done = await eachFile(
      session,
      flags,
      files,
      (file) => checked(file, flags, whole),
      (check) => {
        if (flags.json !== true) session.out(`${checkTable(check, readerOf(flags))}${many ? '\n' : ''}`);
        session.judge(check.findings, flags.failOn);
      },
    );
    if (flags.json === true)
      session.out(
        asJson(
          done.map((one) => one.given),
          many,
        ),
      );
  });
}
