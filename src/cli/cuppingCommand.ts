import { Command } from 'commander';
import { analyseCupping } from '../methods/index.js';
import { numberOption, some } from './flags.js';
import { complianceOf, withComplianceFlags, type ComplianceFlags } from './complianceFlags.js';
import { forceColumnsOf, withRecordFlags, type RecordFlags } from './recordFlags.js';
import { withSpikeFlag, type SpikeFlags } from './repairFlags.js';
import { reportTogether } from './reportFiles.js';
import type { Session } from './session.js';
import { withTestFlags, type TestFlags } from './testFlags.js';

/** Flags of the command, as they were typed. */
interface CuppingFlags extends ComplianceFlags, RecordFlags, SpikeFlags, TestFlags {
  readonly thickness: number;
  readonly width?: number;
  readonly ball?: number;
  readonly die?: number;
  readonly holdingForce?: number;
  readonly minimumFall?: number;
}

const FROM = 'cupping';

/** The command `cupping`: the records of the blanks of one sheet become a table, a page and data. */
export function cuppingCommand(session: Session): Command {
  const command = new Command(FROM)
    .description('A cupping test of sheet from the files of a logger, one of each blank: results in the terminal, page and JSON.')
    .argument('<files...>', 'force and travel of each blank as the logger wrote them; folders and patterns too')
    .addOption(numberOption('--thickness <a>', 'thickness of the sheet [mm]; must be given').makeOptionMandatory())
    .addOption(numberOption('--width <b>', 'width or diameter of the blank [mm]'))
    .addOption(numberOption('--ball <D>', 'diameter of the ball [mm]; default 20'))
    .addOption(numberOption('--die <D>', 'bore of the die [mm]; default 27'))
    .addOption(numberOption('--holding-force <F>', 'force that holds the blank [N]'))
    .addOption(numberOption('--minimum-fall <share>', 'least fall of the force after its maximum that shows the crack; default 0.05'));
  withTestFlags(withRecordFlags(withSpikeFlag(withComplianceFlags(command)))).addHelpText(
    'after',
    '\nExample:\n  testpiece cupping blank-1.csv blank-2.csv blank-3.csv --thickness 0.8 --width 90 --frame-compliance 2e-5\n',
  );
  return command.action(async (files: string[], flags: CuppingFlags) => {
    const frameCompliance = await complianceOf(flags);
    return reportTogether(
      session,
      FROM,
      files,
      flags,
      (file) => forceColumnsOf(file, flags, true),
      (records, test) =>
        analyseCupping(
          records,
          { thickness: flags.thickness, ...some('width', flags.width) },
          {
            test,
            ...some('frameCompliance', frameCompliance),
            ...some('ballDiameter', flags.ball),
            ...some('dieDiameter', flags.die),
            ...some('holdingForce', flags.holdingForce),
            ...some('minimumFall', flags.minimumFall),
            ...some('repairs', flags.repair),
          },
        ),
    );
  });
}
