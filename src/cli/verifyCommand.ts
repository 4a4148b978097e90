import { Command } from 'commander';
import { LEAST_RUNS, verifyForce, type ForceStep, type ForceVerificationResult } from '../force/index.js';
import { presentation, renderVerification, verificationInWords, type PresentationOptions } from '../report/index.js';
import type { Held } from './calibrationFile.js';
import { findingLines } from './findingLines.js';
import { numberOption, ratioOption, some } from './flags.js';
import { forceRuns, type ForceRuns } from './forceRuns.js';
import { heldOption } from './heldFlag.js';
import { asJson, withJobFlags, type JobFlags } from './jobFlags.js';
import { columnsOf, fill, padded, rightOf } from './padded.js';
import { plain } from './plain.js';
import { numbersOf } from './readingsOf.js';
import { requireGiven } from './requireFlags.js';
import type { Session } from './session.js';
import { readerOf, withReaderFlags, type ReaderFlags } from './testFlags.js';
import { usage } from './usage.js';
import { requireFree, writeFiles } from './writeFiles.js';

/** Flags of the command, as they were typed. */
interface VerifyFlags extends ReaderFlags, JobFlags {
  readonly range?: number;
  readonly resolution?: number;
  readonly fluctuation?: number;
  readonly zeros?: string;
  readonly reference?: number;
  readonly held?: Held;
  readonly page?: string;
  readonly identity?: string;
  readonly invented?: true;
  readonly overwrite?: true;
}

/** Steps of ascending force with their runs; falling ones are those of the first runs. */
function stepsOf({ readings, place }: ForceRuns): ForceStep[] {
  const forces = [...new Set(readings.map(({ held }) => held))].sort((a, b) => a - b);
  const idle = forces.find((force) => force <= 0);
  if (idle !== undefined) throw usage(`${place}: a row of ${idle} N is no step: leave it out; readings without force go to --zeros`);
  return forces.map((force) => {
    const of = (falling: boolean): number[] => {
      const own = readings.filter((one) => one.held === force && one.falling === falling).sort((a, b) => a.run - b.run);
      if (own.some(({ run }, k) => run !== k))
        throw usage(`${place}: at ${force} N a run is empty before one that is not; readings of falling force are those of the first runs`);
      return own.map(({ read }) => read);
    };
    const [rising, falling] = [of(false), of(true)];
    if (rising.length < LEAST_RUNS)
      throw usage(`${place}: at ${force} N there must be ${LEAST_RUNS} readings of rising force at least, got ${rising.length}`);
    return { force, rising, ...(falling.length > 0 ? { falling } : {}) };
  });
}

/** A verification as text for a terminal. */
function verifyTable(result: ForceVerificationResult, reader: PresentationOptions): string {
  const show = presentation('verifyTable', reader);
  const { summary, steps, ranges } = verificationInWords(result, show);
  const wide = Math.max(...summary.map(([name]) => columnsOf(name)));
  const spaced = (rows: readonly (readonly string[])[]): string[][] => rows.map((row) => row.map((cell) => cell.replaceAll('\u00a0', ' ')));
  const all = [
    ...summary.map(([name, text]) => `  ${fill(name, wide)}  ${text}`),
    '',
    steps.heading,
    ...padded(spaced([steps.columns, ...steps.rows]), rightOf(steps.kinds)),
    `  ${steps.caption}`,
    '',
    ranges.caption,
    ...padded(spaced([ranges.columns, ...ranges.rows]), rightOf(ranges.kinds)),
    '',
    show.say('Findings'),
    ...findingLines(result.findings, reader).map((one) => `  ${one}`),
    '',
    show.say('Terms and classes step by step; no certificate of an accredited laboratory.'),
  ];
  return `${all.map(plain).join('\n')}\n`;
}

async function makeVerification(session: Session, file: string, flags: VerifyFlags): Promise<void> {
  const { page, overwrite = false } = flags;
  requireGiven([...(flags.range === undefined ? ['--range <F>'] : []), ...(flags.resolution === undefined ? ['--resolution <r>'] : [])]);
  if (page !== undefined) await requireFree([page], overwrite);
  const runs = await forceRuns(file, file, ['force'], ['force']);
  const result = verifyForce({
    steps: stepsOf(runs),
    range: flags.range!,
    resolution: flags.resolution!,
    ...some('fluctuation', flags.fluctuation),
    ...(flags.zeros === undefined ? {} : { zeros: numbersOf('--zeros', flags.zeros, 'N') }),
    ...some('reference', flags.reference),
    ...some('held', flags.held),
  });
  if (page !== undefined) {
    const text = renderVerification(result, {
      ...readerOf(flags),
      ...some('identity', flags.identity),
      ...some('invented', flags.invented),
      ...some('paper', flags.paper),
    });
    await writeFiles({ [page]: text }, overwrite);
  }
  session.out(
    flags.json === true ? asJson([result], false) : `${verifyTable(result, readerOf(flags))}${page === undefined ? '' : `\n  ${page}\n`}`,
  );
  session.judge(result.findings, flags.failOn);
}

/** The command `verify`: readings of the force against a reference instrument, and the class that they reach. */
export function verifyCommand(session: Session): Command {
  const command = new Command('verify')
    .description(
      'Verifies the force against a reference instrument: error, repeatability, reversibility, zero and resolution of each step, its class, and the forces over which each class holds.',
    )
    .argument(
      '<file>',
      'table of text: the force that was held, then a column for each run (three of rising force at least), of falling force where its heading says so; or a third column of words that says it row by row; in the units of the heading, else N',
    )
    .addOption(numberOption('--range <F>', 'end of the range [N]; must be given'))
    .addOption(numberOption('--resolution <r>', 'one step of the reading [N]; must be given'))
    .addOption(numberOption('--fluctuation <f>', 'range over which the reading wanders at a steady force [N]; default 0'))
    .option('--zeros <list>', 'readings without force after the runs [N], for example 0,6,6')
    .addOption(ratioOption('--reference <u>', 'relative standard uncertainty of the reference instrument, for example 0.1%'))
    .addOption(heldOption('which force the first column holds: the true one (default), or the indicated one'))
    .option('--page <file>', 'write a page to print')
    .option('--identity <text>', 'what was verified, for the page')
    .option('--invented', 'the readings are invented: the page says so')
    .option('--overwrite', 'replace an existing page');
  withJobFlags(withReaderFlags(command)).addHelpText(
    'after',
    `
Example:
  testpiece verify readings.txt --range 25000 --resolution 6 --zeros 0,6,6
  The class, its day and its range then go to --force-class, --force-verified and --force-range of a report.
`,
  );
  return command.action((file: string, flags: VerifyFlags) => makeVerification(session, file, flags));
}
