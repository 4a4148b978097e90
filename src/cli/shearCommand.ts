import { Command, InvalidArgumentError, Option } from 'commander';
import { analyseShear, type ShearFamily, type ShearOptions, type ShearPiece, type TestInfo } from '../methods/index.js';
import { numberOption, some } from './flags.js';
import { forceColumnsOf, withRecordFlags, type RecordFlags } from './recordFlags.js';
import { withSpikeFlag, type SpikeFlags } from './repairFlags.js';
import { reportEach, reportTogether } from './reportFiles.js';
import { sectionFromFlags, withSectionFlags, type SectionFlags } from './sectionOptions.js';
import type { Session } from './session.js';
import { withTestFlags, type TestFlags } from './testFlags.js';
import { usage } from './usage.js';

/** Flags of the command, as they were typed. */
interface ShearFlags extends SectionFlags, RecordFlags, SpikeFlags, TestFlags {
  readonly planes: 1 | 2;
  readonly clearance?: number;
  readonly bent?: true;
  readonly maximumForce?: number;
  readonly tensileStrength?: number;
  readonly shearFamily?: ShearFamily;
}

const FROM = 'shear';

function pieceOf(flags: ShearFlags): ShearPiece {
  const { shape, dimensions, area } = sectionFromFlags(flags);
  return {
    ...(shape === 'round' ? { diameter: dimensions['diameter']! } : { area }),
    planes: flags.planes,
    ...some('clearance', flags.clearance),
    ...some('bent', flags.bent),
  };
}

const optionsOf = (flags: ShearFlags, test: TestInfo): ShearOptions => ({
  test,
  ...some('tensileStrength', flags.tensileStrength),
  ...some('family', flags.shearFamily),
  ...some('repairs', flags.repair),
});

const toPlanes = (text: string): 1 | 2 => {
  if (text !== '1' && text !== '2') throw new InvalidArgumentError('It must be 1 or 2.');
  return text === '1' ? 1 : 2;
};

/** The command `shear`: the force of a shear test, recorded or read off, becomes a table, a page and data. */
export function shearCommand(session: Session): Command {
  const command = withSectionFlags(
    new Command(FROM)
      .description('A shear test from the file of a logger, or from the maximum force alone: results in the terminal, page and JSON.')
      .argument('[files...]', 'delimited text as the logger wrote it, folders, patterns; none with --maximum-force'),
    true,
  )
    .addOption(
      new Option('--planes <n>', 'planes that are sheared at once: 1 or 2; must be given').argParser(toPlanes).makeOptionMandatory(),
    )
    .addOption(numberOption('--maximum-force <F>', 'the maximum force [N], read off where nothing was recorded'))
    .addOption(numberOption('--clearance <c>', 'clearance of the tool on one side [mm]'))
    .option('--bent', 'the piece was seen to be bent')
    .addOption(numberOption('--tensile-strength <Rm>', 'tensile strength of the same material [MPa], for the ratio'))
    .addOption(new Option('--shear-family <key>', 'material, for the usual ratio; default any').choices(['steel', 'aluminium', 'any']));
  withTestFlags(withRecordFlags(withSpikeFlag(command))).addHelpText(
    'after',
    `
Example:
  testpiece shear pin-01.csv --round 8 --planes 2 --clearance 0.05 --tensile-strength 450 --shear-family steel
  testpiece shear --maximum-force 31200 --round 8 --planes 2 --identity pin-01
`,
  );
  return command.action((files: string[], flags: ShearFlags) => {
    const piece = pieceOf(flags);
    const { maximumForce } = flags;
    if (files.length > 0 && maximumForce === undefined)
      return reportEach(
        session,
        files,
        flags,
        ['bent'],
        (file) => forceColumnsOf(file, flags, false),
        (record, test) => analyseShear(record, piece, optionsOf(flags, test)),
      );
    if (files.length > 0 || maximumForce === undefined) throw usage('either files or --maximum-force must be given');
    return reportTogether(
      session,
      FROM,
      files,
      flags,
      (file) => forceColumnsOf(file, flags, false),
      (_, test) => analyseShear({ maximumForce }, piece, optionsOf(flags, test)),
    );
  });
}
