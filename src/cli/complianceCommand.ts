import { Command, Option } from 'commander';
import { fitCompliance, type ComplianceOptions, type CompliancePull } from '../curve/index.js';
import { complianceTable } from './complianceTable.js';
import { eachFile } from './eachFile.js';
import { filesOf, recordEndings } from './filesOf.js';
import { numberOption, ratioOption, some, toPositive } from './flags.js';
import { asJson, withJobFlags, type JobFlags } from './jobFlags.js';
import { madeOf } from './madeOf.js';
import { recordOf, withRecordFlags, type RecordFlags } from './recordFlags.js';
import { sectionFromFlags, withSectionFlags, type SectionFlags } from './sectionOptions.js';
import { STATUS, type Session } from './session.js';
import { readerOf, withLanguageFlag, type LanguageFlags } from './testFlags.js';
import { usage } from './usage.js';

/** Flags of the command, as they were typed. */
interface ComplianceCommandFlags extends SectionFlags, RecordFlags, LanguageFlags, JobFlags {
  readonly effectiveLength: readonly number[];
  readonly pieceUncertainty?: number;
  readonly modulus?: number;
  readonly modulusUncertainty?: number;
  readonly shape?: NonNullable<ComplianceOptions['shape']>;
  readonly from?: number;
  readonly to?: number;
  readonly points?: number;
  readonly grips?: string;
  readonly direction?: NonNullable<ComplianceOptions['direction']>;
}

/** A record begins with slack and with grips that bed in: below this share of the highest force it does not count (common practice). */
const SLACK = 0.1;

type Motion = Pick<CompliancePull, 'force' | 'travel'>;

/** Force and travel of a file, as long as the force has not been highest. */
async function pulledBy(file: string, flags: RecordFlags): Promise<Motion> {
  const { force, travel } = (await recordOf(file, flags)).record;
  if (travel === undefined) throw usage('must have the travel of the crosshead: --column travel=NAME says which column it is');
  const end = force.reduce((top, F, i) => (F > force[top]! ? i : top), 0) + 1;
  return { force: force.slice(0, end), travel: travel.slice(0, end) };
}

const highest = ({ force }: Motion): number => force[force.length - 1]!;

/** A flag that is given once, or once for each file. */
const lengths = (text: string, before?: readonly number[]): number[] => [...(before ?? []), toPositive(text)];

/** The lengths of the pieces, of all files or file by file. */
function lengthsOf({ effectiveLength: given }: ComplianceCommandFlags, files: readonly string[]): readonly number[] {
  if (given.length === 1) return files.map(() => given[0]!);
  if (given.length !== files.length)
    throw usage(`--effective-length must be given once, or once for each of the ${files.length} files, got ${given.length}`);
  return given;
}

/** The command `compliance`: how much the frame gives way, by pulls of a stiff bar or of pieces that stay elastic. */
export function complianceCommand(session: Session): Command {
  const command = withSectionFlags(
    new Command('compliance')
      .description(
        'Compliance of the frame, by elastic pulls of a stiff bar or of a piece of known modulus, or of pieces of two lengths. Nothing is written; the number goes to --frame-compliance, the JSON to --frame-table of the other commands.',
      )
      .argument(
        '<files...>',
        'delimited text, one file of each pull: force (or pressure) and travel, from the file of a logger or a table with names and units; only the way up to the highest force counts',
      ),
    true,
  )
    .addOption(
      new Option(
        '--effective-length <Leff>',
        'length of the piece that stretches elastically [mm]; must be given; for pieces of several lengths once for each file, in their order',
      )
        .argParser(lengths)
        .makeOptionMandatory(),
    )
    .addOption(ratioOption('--piece-uncertainty <u>', 'relative standard uncertainty of length over area, for example 0.5%; default 0'))
    .optionsGroup('Evaluation:')
    .addOption(numberOption('--modulus <E>', 'modulus of the pieces [MPa]; without it two lengths at least find it'))
    .addOption(ratioOption('--modulus-uncertainty <u>', 'its relative standard uncertainty, for example 1%; default 0'))
    .addOption(
      new Option('--shape <shape>', 'one number (constant, default), a table, or a power of the force').choices([
        'constant',
        'table',
        'power',
      ]),
    )
    .addOption(numberOption('--from <F>', 'lowest force that counts [N]; default a tenth of the highest that all pulls reach'))
    .addOption(numberOption('--to <F>', 'highest force that counts [N]; default the highest that all pulls reach'))
    .addOption(numberOption('--points <n>', 'points of a table; default 9'))
    .option('--grips <text>', 'grips or set-up; a report with other --grips says so')
    .addOption(new Option('--direction <way>', 'whether the frame was pulled or pushed').choices(['tension', 'compression']));
  withJobFlags(withLanguageFlag(withRecordFlags(command).optionsGroup('Report:'))).addHelpText(
    'after',
    `
Example:
  testpiece compliance bar.csv --round 20 --effective-length 100 --modulus 206000 --modulus-uncertainty 1%
  testpiece compliance bar.csv --round 20 --effective-length 100 --modulus 206000 --shape table --json > frame.json
  testpiece report pull-07.csv --frame-table frame.json --bore 40 --rod 20 --round 8 --gauge-length 40
`,
  );
  return command.action(async (given: string[], flags: ComplianceCommandFlags) => {
    const { area } = sectionFromFlags(flags);
    const { files } = await filesOf(session, given, recordEndings);
    const effectiveLengths = lengthsOf(flags, files);
    const read = await eachFile(session, flags, files, (file) => pulledBy(file, flags));
    if (session.status() !== STATUS.well) return;
    const to = flags.to ?? Math.min(...read.map((one) => highest(one.given)));
    const pulls = read.map((one, k) => ({
      ...one.given,
      area,
      effectiveLength: effectiveLengths[k]!,
      ...some('relativeUncertainty', flags.pieceUncertainty),
    }));
    const found = madeOf(
      fitCompliance(pulls, {
        from: flags.from ?? SLACK * to,
        to,
        ...some('modulus', flags.modulus),
        ...some('modulusUncertainty', flags.modulusUncertainty),
        ...some('shape', flags.shape),
        ...some('points', flags.points),
        ...some('grips', flags.grips),
        ...some('direction', flags.direction),
      }),
    );
    session.out(flags.json === true ? asJson([found], false) : complianceTable(found, pulls.length, readerOf(flags)));
    session.judge(found.findings, flags.failOn);
  });
}
