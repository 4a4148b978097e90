import { Command } from 'commander';
import type { TestPiece } from '../base/index.js';
import { analyseTension } from '../methods/index.js';
import { numberOption, some, strainsOption } from './flags.js';
import { complianceOf, withFrameFlags, type FrameFlags } from './frameFlags.js';
import { recordOf, withRecordFlags, type RecordFlags } from './recordFlags.js';
import { sectionOf, withSectionFlags, type SectionFlags } from './sectionOptions.js';
import { withTestFlags, writeReport, type TestFlags } from './testFlags.js';

/** Flags of the command, as they were typed. */
interface ReportFlags extends SectionFlags, FrameFlags, RecordFlags, TestFlags {
  readonly gaugeLength: number;
  readonly parallelLength?: number;
  readonly extensometerLength?: number;
  readonly effectiveLength?: number;
  readonly finalGaugeLength?: number;
  readonly finalArea?: number;
  readonly finalDiameter?: number;
  readonly offsets?: readonly number[];
  readonly totalExtensions?: readonly number[];
}

function pieceOf(flags: ReportFlags): TestPiece {
  const area = flags.finalArea ?? (flags.finalDiameter === undefined ? undefined : (Math.PI * flags.finalDiameter ** 2) / 4);
  return {
    section: sectionOf(flags),
    gaugeLength: flags.gaugeLength,
    ...some('parallelLength', flags.parallelLength),
    ...some('extensometerLength', flags.extensometerLength),
    ...some('effectiveLength', flags.effectiveLength),
    ...(area === undefined && flags.finalGaugeLength === undefined
      ? {}
      : { afterFracture: { ...some('gaugeLength', flags.finalGaugeLength), ...some('area', area) } }),
  };
}

/** The command `report`: a logger's file of a tension test becomes a table, a page and data. */
export function reportCommand(out: (text: string) => void): Command {
  const command = withSectionFlags(
    new Command('report')
      .description('A tension test from the file of a logger: results in the terminal, page and JSON beside the file.')
      .argument('<file>', 'delimited text as the logger wrote it'),
  )
    .addOption(numberOption('--gauge-length <L0>', 'original gauge length [mm]').makeOptionMandatory())
    .addOption(numberOption('--parallel-length <Lc>', 'parallel length [mm]'))
    .addOption(numberOption('--extensometer-length <Le>', 'base of the extensometer [mm]; default the gauge length'))
    .addOption(numberOption('--effective-length <Leff>', 'length that stretches elastically, fillets included [mm]'))
    .addOption(numberOption('--final-gauge-length <Lu>', 'gauge length after fracture [mm]'))
    .addOption(numberOption('--final-area <Su>', 'least area after fracture [mm²]'))
    .addOption(numberOption('--final-diameter <du>', 'least diameter after fracture of a round piece [mm]').conflicts('finalArea'))
    .addOption(strainsOption('--offsets <list>', 'plastic extensions, for example 0.1%,0.2%'))
    .addOption(strainsOption('--total-extensions <list>', 'total extensions, for example 0.5%'));
  withTestFlags(withRecordFlags(withFrameFlags(command))).addHelpText(
    'after',
    '\nExample:\n  testpiece report pull-07.csv --round 8 --gauge-length 40 --parallel-length 48\n',
  );
  return command.action((file: string, flags: ReportFlags) => {
    const piece = pieceOf(flags);
    return writeReport(file, flags, out, async (test) =>
      analyseTension(await recordOf(file, flags, flags.extensometerLength), piece, {
        test,
        ...some('offsets', flags.offsets),
        ...some('totalExtensions', flags.totalExtensions),
        ...some('frameCompliance', await complianceOf(flags)),
      }),
    );
  });
}
