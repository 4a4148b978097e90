import { Command, Option } from 'commander';
import { analyseReplicates, type ReplicateProperty, type ReplicatesOptions, type ReplicatesResult } from '../methods/index.js';
import { shownUnit } from '../report/index.js';
import { eachFile } from './eachFile.js';
import { filesOf, resultEndings } from './filesOf.js';
import { findingLines } from './findingLines.js';
import { collected, numberOption, some } from './flags.js';
import { asJson, withJobFlags, type JobFlags } from './jobFlags.js';
import { padded } from './padded.js';
import { plain } from './plain.js';
import { requireOneMethod, resultsOf } from './resultsOf.js';
import { STATUS, type Session } from './session.js';
import { usage } from './usage.js';

/** Flags of the command, as they were typed. */
interface ReplicatesFlags extends JobFlags {
  readonly confidence?: number;
  readonly content?: number;
  readonly alpha?: number;
  readonly pool?: NonNullable<ReplicatesOptions['pool']>;
}

const figured = (value: number | undefined, figures: number): string =>
  value === undefined ? '-' : String(Number(value.toPrecision(figures)));

const rowOf = ({ symbol, unit: own, summary, tolerance, outlier }: ReplicateProperty): string[] => {
  const { unit, factor } = shownUnit(symbol, own);
  const shown = (value: number | undefined, figures: number): string => figured(value === undefined ? undefined : factor * value, figures);
  return [
    symbol,
    unit,
    String(summary.n),
    shown(summary.mean, 5),
    shown(summary.standardDeviation, 3),
    summary.coefficientOfVariation === undefined ? '-' : `${figured(100 * summary.coefficientOfVariation, 3)} %`,
    summary.interval ? `${shown(summary.interval.low, 5)} to ${shown(summary.interval.high, 5)}` : '-',
    `${shown(summary.minimum, 5)} to ${shown(summary.maximum, 5)}`,
    shown(tolerance?.lower, 5),
    outlier?.flagged === true ? shown(outlier.value, 5) : '',
  ];
};

/** Properties over the tests, and findings. */
function replicatesTable({ replicatesOf = 'tension', tests, properties, findings }: ReplicatesResult): string {
  const head = ['', '', 'n', 'mean', 's', 'CV', 'interval of the mean', 'least to most', 'tolerance limit', 'flagged'];
  const all = [
    `${replicatesOf}, ${tests.length} tests: ${tests.map(({ identity }, k) => identity ?? String(k + 1)).join(', ')}`,
    '',
    ...padded([head, ...properties.map(rowOf)]),
    '',
    'Findings',
    ...findingLines(findings).map((one) => `  ${one}`),
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
  withJobFlags(command).addHelpText(
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
    session.out(flags.json === true ? asJson([result], false) : replicatesTable(result));
    session.judge(result.findings, flags.failOn);
  });
}
