import { Command, Option } from 'commander';
import { analyseBending, bendingColumns, type BendingPiece } from '../methods/index.js';
import { numberOption, some, strainsOption, toTwoStrains } from './flags.js';
import { complianceOf, withComplianceFlags, type ComplianceFlags } from './complianceFlags.js';
import { recordOf, withRecordFlags, type RecordFlags } from './recordFlags.js';
import { withSpikeFlag, type SpikeFlags } from './repairFlags.js';
import { reportEach } from './reportFiles.js';
import { sectionFromFlags, withSectionFlags, type SectionFlags } from './sectionOptions.js';
import type { Session } from './session.js';
import { withTestFlags, type TestFlags } from './testFlags.js';
import { modulusOf, withWindowFlags, type WindowFlags } from './windowFlags.js';

/** Flags of the command, as they were typed. */
interface BendingFlags extends SectionFlags, ComplianceFlags, WindowFlags, RecordFlags, SpikeFlags, TestFlags {
  readonly span: number;
  readonly arm?: number;
  readonly hexagonOn?: 'flats' | 'corners';
  readonly offsets?: readonly number[];
  readonly chord?: readonly [number, number];
  readonly indentationCompliance?: number;
  readonly poissonRatio?: number;
}

/** Four points where an arm is given, three else. */
const pieceOf = (flags: BendingFlags): BendingPiece => ({
  section: sectionFromFlags(flags),
  setup: {
    points: flags.arm === undefined ? 3 : 4,
    span: flags.span,
    ...some('arm', flags.arm),
    ...some('hexagonOn', flags.hexagonOn),
  },
});

/** The deflection of a beam is read as the extension of a bar is. */
const renamed = <Value>(given: Readonly<Record<string, Value>> = {}): Record<string, Value> =>
  Object.fromEntries(Object.entries(given).map(([name, value]) => [name === 'deflection' ? 'extension' : name, value]));

/** The command `bending`: a logger's file of a bending test becomes a table, a page and data. */
export function bendingCommand(session: Session): Command {
  const command = withSectionFlags(
    new Command('bending')
      .description('A bending test from the file of a logger: results in the terminal, page and JSON beside the file.')
      .argument(
        '<files...>',
        'delimited text as the logger wrote it, folders, patterns; an extension is the deflection at mid-span (also --column deflection=NAME), travel that of the noses',
      ),
    true,
  )
    .addOption(numberOption('--span <L>', 'distance of the supports [mm]; must be given').makeOptionMandatory())
    .addOption(numberOption('--arm <a>', 'four points: distance from a support to the next nose [mm]; without it three points'))
    .addOption(new Option('--hexagon-on <side>', 'how a hexagon lies; default flats').choices(['flats', 'corners']))
    .addOption(strainsOption('--offsets <list>', 'plastic strains of the proof strengths, for example 0.1%,0.2%'))
    .addOption(new Option('--chord <list>', 'the two strains of the chord; default 0.05%,0.25%').argParser(toTwoStrains))
    .addOption(numberOption('--indentation-compliance <C>', 'what supports and noses sink in [mm/N], taken out of travel'))
    .addOption(numberOption('--poisson-ratio <nu>', "Poisson's ratio, for the share of shear; default 0.3"));
  withTestFlags(withRecordFlags(withSpikeFlag(withComplianceFlags(withWindowFlags(command))))).addHelpText(
    'after',
    '\nExample:\n  testpiece bending bar-02.csv --rectangular 10x4 --span 64 --frame-compliance 2e-5\n  Of a rectangle the second number is the height in the direction of the force.\n',
  );
  return command.action(async (files: string[], flags: BendingFlags) => {
    const piece = pieceOf(flags);
    const frameCompliance = await complianceOf(flags);
    return reportEach(
      session,
      files,
      flags,
      [],
      (file) => recordOf(file, { ...flags, column: renamed(flags.column), unit: renamed(flags.unit) }),
      (record, test) =>
        analyseBending(bendingColumns(record), piece, {
          test,
          ...some('offsets', flags.offsets),
          ...some('chord', flags.chord),
          ...some('modulus', modulusOf(flags)),
          ...some('frameCompliance', frameCompliance),
          ...some('indentationCompliance', flags.indentationCompliance),
          ...some('poissonRatio', flags.poissonRatio),
          ...some('repairs', flags.repair),
        }),
    );
  });
}
