import { Command, Option } from 'commander';
import {
  analyseBrinell,
  type BrinellMaterial,
  type BrinellPiece,
  type BrinellReadings,
  type ForceColumns,
  type StrengthMaterial,
} from '../methods/index.js';
import { numberOption, some } from './flags.js';
import { readingsOf } from './readingsOf.js';
import { forceColumnsOf, requireNoFileFlags, withRecordFlags, type RecordFlags } from './recordFlags.js';
import { withSpikeFlag, type SpikeFlags } from './repairFlags.js';
import { reportTogether } from './reportFiles.js';
import type { Session } from './session.js';
import { withTestFlags, type TestFlags } from './testFlags.js';
import { usage } from './usage.js';

/** Flags of the command, as they were typed. */
interface BrinellFlags extends RecordFlags, SpikeFlags, TestFlags {
  readonly ball: number;
  readonly indentation: readonly (readonly number[])[];
  readonly force?: number;
  readonly holdingTime?: number;
  readonly edgeDistance?: number;
  readonly spacing?: number;
  readonly thickness?: number;
  readonly group?: BrinellMaterial;
  readonly strengthOf?: StrengthMaterial;
}

const FROM = 'brinell';
const groups = [
  'steel, nickel and titanium alloys',
  'cast iron',
  'copper alloys',
  'light metals',
  'lead and tin',
] as const satisfies readonly BrinellMaterial[];
const metals = [
  'steel',
  'cold-worked steel',
  'austenitic steel',
  'cast iron',
  'aluminium',
  'copper',
  'other',
] as const satisfies readonly StrengthMaterial[];

const indentation = (text: string, before: readonly (readonly number[])[] = []): (readonly number[])[] => [
  ...before,
  readingsOf('--indentation', text),
];

/** One record belongs to each indentation, in their order, or there is none. */
function brinellReadings(flags: BrinellFlags, records: readonly ForceColumns[]): BrinellReadings {
  const { indentation: list } = flags;
  if (records.length > 0 && records.length !== list.length)
    throw usage(`there must be one file for each --indentation (${list.length}), or none, got ${records.length}`);
  return {
    ballDiameter: flags.ball,
    ...some('force', flags.force),
    ...some('holdingTime', flags.holdingTime),
    indentations: list.map((diameters, k) => ({
      diameters,
      ...some('record', records[k]),
      ...some('edgeDistance', flags.edgeDistance),
      ...some('spacing', flags.spacing),
    })),
  };
}

const pieceOf = (flags: BrinellFlags): BrinellPiece => ({ ...some('thickness', flags.thickness), ...some('material', flags.group) });

/** The command `brinell`: diameters that were read, and the force set or recorded, become a table, a page and data. */
export function brinellCommand(session: Session): Command {
  const command = new Command(FROM)
    .description('A Brinell test from the diameters of its indentations: results in the terminal, page and JSON.')
    .argument(
      '[files...]',
      'records of force over time, one of each indentation in their order, folders, patterns; none where the force was set',
    )
    .addOption(numberOption('--ball <D>', 'ball [mm]; must be given').makeOptionMandatory())
    .addOption(
      new Option('--indentation <d1,d2>', 'diameters of one indentation [mm], one or two at right angles; must be given, once for each')
        .argParser(indentation)
        .makeOptionMandatory(),
    )
    .addOption(numberOption('--force <F>', 'test force [N]'))
    .addOption(numberOption('--holding-time <t>', 'how long the force was held [s], where it was not recorded'))
    .addOption(numberOption('--edge-distance <a>', 'least distance of a centre from an edge [mm]'))
    .addOption(numberOption('--spacing <a>', 'least distance of two centres [mm]'))
    .addOption(numberOption('--thickness <t>', 'thickness of the piece [mm]'))
    .addOption(new Option('--group <material>', 'group of the material, for the usual index').choices(groups))
    .addOption(new Option('--strength-of <metal>', 'the metal, where a tensile strength is to be estimated').choices(metals));
  withTestFlags(withRecordFlags(withSpikeFlag(command))).addHelpText(
    'after',
    `
Example:
  testpiece brinell --ball 10 --force 9807 --indentation 3.98,4.02 --indentation 4.05,4.07 --thickness 12 --group "copper alloys"
  testpiece brinell press-1.csv press-2.csv --ball 5 --indentation 2.11,2.13 --indentation 2.12
`,
  );
  return command.action((files: string[], flags: BrinellFlags) => {
    if (files.length === 0) requireNoFileFlags(flags);
    else if (flags.holdingTime !== undefined) throw usage('--holding-time has no meaning beside files: their records tell it');
    return reportTogether(
      session,
      FROM,
      files,
      flags,
      (file) => forceColumnsOf(file, flags, false),
      (records, test) =>
        analyseBrinell(brinellReadings(flags, records), pieceOf(flags), {
          test,
          ...some('strengthOf', flags.strengthOf),
          ...some('repairs', flags.repair),
        }),
    );
  });
}
