import { Command, Option } from 'commander';
import { analyseCompression, type CompressionPiece } from '../methods/index.js';
import { numberOption, some, strainsOption, toPositive } from './flags.js';
import { complianceOf, withComplianceFlags, type ComplianceFlags } from './complianceFlags.js';
import { recordOf, withRecordFlags, type RecordFlags } from './recordFlags.js';
import { withSpikeFlag, type SpikeFlags } from './repairFlags.js';
import { reportEach } from './reportFiles.js';
import { sectionFromFlags, withSectionFlags, type SectionFlags } from './sectionOptions.js';
import type { Session } from './session.js';
import { withTestFlags, type TestFlags } from './testFlags.js';
import { modulusOf, withWindowFlags, type WindowFlags } from './windowFlags.js';

/** Flags of the command, as they were typed. */
interface CompressionFlags extends SectionFlags, ComplianceFlags, WindowFlags, RecordFlags, SpikeFlags, TestFlags {
  readonly height: number;
  readonly extensometerLength?: number;
  readonly endFactor?: number;
  readonly finalHeight?: number;
  readonly middleDiameter?: number;
  readonly endDiameter?: number;
  readonly broken?: true;
  readonly offsets?: readonly number[];
  readonly strains?: readonly number[];
  readonly friction?: number;
}

/** Readings of one pressed piece. */
const ofPressedPiece = ['finalHeight', 'middleDiameter', 'endDiameter', 'broken'];

const pieceOf = (flags: CompressionFlags): CompressionPiece => ({
  section: sectionFromFlags(flags),
  height: flags.height,
  ...some('extensometerLength', flags.extensometerLength),
  ...some('endFactor', flags.endFactor),
  afterTest: {
    ...some('height', flags.finalHeight),
    ...some('middleDiameter', flags.middleDiameter),
    ...some('endDiameter', flags.endDiameter),
    ...some('broken', flags.broken),
  },
});

/** The command `compression`: a logger's file of a compression test becomes a table, a page and data. */
export function compressionCommand(session: Session): Command {
  const command = withSectionFlags(
    new Command('compression')
      .description('A compression test from the file of a logger: results in the terminal, page and JSON beside the file.')
      .argument('<files...>', 'delimited text as the logger wrote it, folders, patterns; compression may be negative'),
    true,
  )
    .addOption(new Option('--height <h0>', 'height of the piece [mm]; must be given').argParser(toPositive).makeOptionMandatory())
    .addOption(numberOption('--extensometer-length <Le>', 'base of the extensometer [mm]; default the height'))
    .addOption(numberOption('--end-factor <k>', 'end factor of buckling, 0.5 to 2; default 0.5, flat ends'))
    .addOption(numberOption('--final-height <h>', 'height after the test [mm]'))
    .addOption(numberOption('--middle-diameter <dm>', 'diameter at half of the height after the test [mm]'))
    .addOption(numberOption('--end-diameter <de>', 'diameter at the ends after the test [mm]'))
    .option('--broken', 'the piece broke')
    .addOption(strainsOption('--offsets <list>', 'plastic strains of the yield strengths, for example 0.1%,0.2%'))
    .addOption(strainsOption('--strains <list>', 'strains at which the stress is given, for example 5%,10%'))
    .addOption(numberOption('--friction <mu>', 'coefficient of friction at the ends, taken off the flow stress'));
  withTestFlags(withRecordFlags(withSpikeFlag(withComplianceFlags(withWindowFlags(command), 'frame and plates')))).addHelpText(
    'after',
    '\nExample:\n  testpiece compression puck-03.csv --round 10 --height 15 --frame-compliance 4e-6 --friction 0.1\n',
  );
  return command.action(async (files: string[], flags: CompressionFlags) => {
    const piece = pieceOf(flags);
    const frameCompliance = await complianceOf(flags);
    return reportEach(
      session,
      files,
      flags,
      ofPressedPiece,
      (file) => recordOf(file, flags, { length: flags.extensometerLength ?? flags.height }),
      (record, test) =>
        analyseCompression(record, piece, {
          test,
          ...some('offsets', flags.offsets),
          ...some('strains', flags.strains),
          ...some('modulus', modulusOf(flags)),
          ...some('frameCompliance', frameCompliance),
          ...some('friction', flags.friction),
          ...some('repairs', flags.repair),
        }),
    );
  });
}
