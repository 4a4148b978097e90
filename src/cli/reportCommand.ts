import { Command } from 'commander';
import { analyseTension } from '../methods/index.js';
import { some } from './flags.js';
import { ofBrokenPiece, pieceOf, withPieceFlags, type PieceFlags } from './pieceFlags.js';
import { recordOf, withRecordFlags, type RecordFlags } from './recordFlags.js';
import { reportEach } from './reportFiles.js';
import type { Session } from './session.js';
import { tensionOptionsOf, withTensionFlags, type TensionFlags } from './tensionFlags.js';
import { withTestFlags, type TestFlags } from './testFlags.js';

/** Flags of the command, as they were typed. */
interface ReportFlags extends PieceFlags, TensionFlags, RecordFlags, TestFlags {}

/** The command `report`: a logger's file of a tension test becomes a table, a page and data. */
export function reportCommand(session: Session): Command {
  const command = new Command('report')
    .description('A tension test from the file of a logger: results in the terminal, page and JSON beside the file.')
    .argument('<files...>', 'delimited text as the logger wrote it; folders and patterns such as "records/**/*.csv" too');
  withTestFlags(withRecordFlags(withTensionFlags(withPieceFlags(command, true)))).addHelpText(
    'after',
    `
Example:
  testpiece report pull-07.csv --bore 40 --rod 20 --round 8 --gauge-length 40 --parallel-length 48
  testpiece report "records/**/*.csv" --round 8 --gauge-length 40 --repair zero,drift --uncertainty force=0.5%,section.diameter=0.01
`,
  );
  return command.action(async (files: string[], flags: ReportFlags) => {
    const piece = pieceOf(flags);
    const options = await tensionOptionsOf(flags);
    return reportEach(
      session,
      files,
      flags,
      ofBrokenPiece,
      (file) => recordOf(file, flags, some('length', flags.extensometerLength)),
      (record, test) => analyseTension(record, piece, { test, ...options }),
    );
  });
}
