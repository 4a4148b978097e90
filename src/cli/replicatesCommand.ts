import { Command, Option } from 'commander';
import { english, wordsOf } from '../languages/index.js';
import { analyseReplicates, type ReplicateProperty, type ReplicatesOptions, type ReplicatesResult } from '../methods/index.js';
import { replicatesInWords, type PresentationOptions } from '../report/index.js';
import { eachFile } from './eachFile.js';
import { filesOf, resultEndings } from './filesOf.js';
import { findingLines } from './findingLines.js';
import { collected, numberOption, some } from './flags.js';
import { asJson, withJobFlags, type JobFlags } from './jobFlags.js';
import { padded, rightOf } from './padded.js';
import { plain } from './plain.js';
import { requireOneMethod, resultsOf } from './resultsOf.js';
import { STATUS, type Session } from './session.js';
import { readerOf, withTableFlags, type TableFlags } from './testFlags.js';
import { usage } from './usage.js';

/** Flags of the command, as they were typed. */
interface ReplicatesFlags extends TableFlags, JobFlags {
  readonly confidence?: number;
  readonly content?: number;
  readonly alpha?: number;
  readonly pool?: NonNullable<ReplicatesOptions['pool']>;
}

/** Columns of the page's table of properties that a terminal has room for: all but the names. */
const SHOWN = [0, 10, 2, 3, 4, 5, 6, 7, 8, 9];
/** Those of the smallest and the largest value, of which one may be flagged. */
const ENDS = [7, 8] as const;

/** A row with a mark at the value that is flagged as an outlier, which is the smallest or the largest. */
function marked(row: readonly string[], { outlier, summary }: ReplicateProperty): readonly string[] {
  if (outlier?.flagged !== true) return row;
  const at = outlier.value === summary.minimum ? ENDS[0] : ENDS[1];
  return row.map((cell, k) => (k === at ? `${cell} *` : cell));
}

/** Properties over the tests, and findings. */
function replicatesTable(result: ReplicatesResult, reader: PresentationOptions): string {
  const { tests, properties, findings } = result;
  const { say } = wordsOf(reader.language ?? english);
  const { method, properties: table } = replicatesInWords(result, reader);
  const rows = [table.columns, ...table.rows.map((row, k) => marked(row, properties[k]!))].map((row) => SHOWN.map((k) => row[k]!));
  const all = [
    say('{method}, {count} tests: {names}', {
      method,
      count: tests.length,
      names: tests.map(({ identity }, k) => identity ?? String(k + 1)).join(', '),
    }),
    '',
    ...padded(rows, rightOf(table.kinds, SHOWN)),
    '',
    `  ${table.caption}`,
    ...(properties.some(({ outlier }) => outlier?.flagged === true) ? [`  ${say('*: flagged as an outlier, and kept in')}`] : []),
    '',
    say('Findings'),
    ...findingLines(findings, reader).map((one) => `  ${one}`),
  ];
  return `${all.map(plain).join('\n')}\n`;
}

/** The command `replicates`: several results of one method together. */
export function replicatesCommand(session: Session): Command {
  const command = new Command('replicates')
    .description(
      'Several tests of one method together: mean, scatter, interval, outliers and tolerance limit of each property, with every doubt.',
    )
    .argument(
      '<files...>',
      'JSON files that report, bending, brinell and the like wrote, each one result or a list; folders and patterns such as "*.report.json" too',
    )
    .addOption(numberOption('--confidence <p>', 'confidence of intervals and limits; default 0.95'))
    .addOption(numberOption('--content <p>', 'share of all pieces that a tolerance limit is to hold; default 0.9'))
    .addOption(numberOption('--alpha <p>', 'level of the test of outliers; default 0.05'))
    .addOption(
      new Option(
        '--pool <list>',
        'differences to pool across all the same: extensionBasis, frame, friction, gaugeLength, height, scale, section, setup, shape, span, thickness',
      ).argParser(collected),
    );
  withJobFlags(withTableFlags(command)).addHelpText(
    'after',
    `
Example:
  testpiece report records --round 8 --gauge-length 40 --json > class.json
  testpiece replicates class.json
  testpiece bending "bars/*.csv" --rectangular 10x4 --span 64 --json > bars.json
  testpiece replicates bars.json
`,
  );
  return command.action(async (given: string[], flags: ReplicatesFlags) => {
    const { files } = await filesOf(session, given, resultEndings);
    const read = await eachFile(session, flags, files, resultsOf);
    if (session.status() !== STATUS.well) return;
    const results = requireOneMethod(read);
    if (results.length < 2) throw usage(`the files must hold two results at least, got ${results.length}`);
    const result = analyseReplicates(results, {
      ...some('confidence', flags.confidence),
      ...some('content', flags.content),
      ...some('alpha', flags.alpha),
      ...some('pool', flags.pool),
    });
    session.out(flags.json === true ? asJson([result], false) : replicatesTable(result, readerOf(flags)));
    session.judge(result.findings, flags.failOn);
  });
}
