import { Command } from 'commander';
import { english, wordsOf } from '../languages/index.js';
import { compareResults, type ResultComparison, type TestResult } from '../methods/index.js';
import { comparisonInWords, type PresentationOptions } from '../report/index.js';
import { eachFile } from './eachFile.js';
import { filesOf, resultEndings } from './filesOf.js';
import { findingLines } from './findingLines.js';
import { numberOption, some } from './flags.js';
import { asJson, withJobFlags, type JobFlags } from './jobFlags.js';
import { padded } from './padded.js';
import { plain } from './plain.js';
import { requireOneMethod, resultsOf } from './resultsOf.js';
import { usage } from './usage.js';
import { STATUS, type Session } from './session.js';
import { readerOf, withTableFlags, type TableFlags } from './testFlags.js';

/** Flags of the command, as they were typed. */
interface CompareFlags extends TableFlags, JobFlags {
  readonly limit?: number;
}

/** Columns of numbers. */
const NUMBERS = [2, 3, 4, 5, 6, 7];

/** Properties, what differs, findings. */
function comparisonTable(comparison: ResultComparison, results: readonly TestResult[], reader: PresentationOptions): string {
  const { say } = wordsOf(reader.language ?? english);
  const { columns, rows, differences } = comparisonInWords(comparison, results, reader);
  const all = [
    ...padded([columns, ...rows], NUMBERS),
    '',
    say('What differs'),
    ...(differences.length === 0 ? [`  ${say('neither record, piece, options nor version')}`] : padded(differences)),
    '',
    say('Findings'),
    ...findingLines(comparison.findings, reader).map((one) => `  ${one}`),
  ];
  return `${all.map(plain).join('\n')}\n`;
}

/** The command `compare`: two results property by property. */
export function compareCommand(session: Session): Command {
  const command = new Command('compare')
    .description(
      'Two results of one method property by property: differences, in standard uncertainties too, and whether record, piece, options or version differ.',
    )
    .argument('<files...>', 'two JSON files that the other commands wrote, or one with a list of two')
    .addOption(numberOption('--limit <n>', 'standard uncertainties beyond which a difference is a caution; default 2'));
  withJobFlags(withTableFlags(command)).addHelpText(
    'after',
    `
Example:
  testpiece compare pull-07.report.json old/pull-07.report.json
  testpiece compare pull-07.report.json pull-08.report.json --fail-on caution
`,
  );
  return command.action(async (given: string[], flags: CompareFlags) => {
    const { files } = await filesOf(session, given, resultEndings);
    const read = await eachFile(session, flags, files, resultsOf);
    if (session.status() !== STATUS.well) return;
    const results = read.flatMap((one) => one.given);
    const [first, second] = results;
    if (!first || !second || results.length > 2) throw usage(`the files must hold two results, got ${results.length}`);
    requireOneMethod(read);
    const comparison = compareResults(first, second, some('limit', flags.limit));
    session.out(flags.json === true ? asJson([comparison], false) : comparisonTable(comparison, results, readerOf(flags)));
    session.judge(comparison.findings, flags.failOn);
  });
}
