import { Command } from 'commander';
import { compareResults, type ResultComparison } from '../methods/index.js';
import { shownUnit } from '../report/index.js';
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

/** Flags of the command, as they were typed. */
interface CompareFlags extends JobFlags {
  readonly limit?: number;
}

const shown = (value: number | undefined, figures = 6): string => (value === undefined ? '-' : String(Number(value.toPrecision(figures))));

/** Properties, what differs, findings. */
function comparisonTable({ tests, properties, differences, findings }: ResultComparison): string {
  const [first, second] = tests.map(({ identity }, k) => identity ?? String(k + 1));
  const rows = properties.map((one) => {
    const { unit, factor } = shownUnit(one.symbol, one.unit);
    const own = (value: number | undefined, figures?: number): string => shown(value === undefined ? undefined : factor * value, figures);
    return [
      one.symbol,
      unit,
      own(one.first),
      own(one.second),
      own(one.difference, 3),
      one.relativeDifference === undefined ? '-' : `${shown(100 * one.relativeDifference, 3)} %`,
      own(one.standardUncertainty, 3),
      shown(one.inUncertainties, 3),
    ];
  });
  const head = ['', '', first === second ? 'first' : first!, first === second ? 'second' : second!, 'difference', '', 'u', 'difference/u'];
  const list = (heading: string, lines: readonly string[]): string[] => ['', heading, ...lines.map((one) => `  ${one}`)];
  const all = [
    ...padded([head, ...rows]),
    ...list(
      'What differs',
      differences.length === 0
        ? ['neither record, piece, options nor version']
        : differences.map(({ of, name, first: a, second: b }) => `${of}: ${name} ${a ?? 'not given'} and ${b ?? 'not given'}`),
    ),
    ...list('Findings', findingLines(findings)),
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
  withJobFlags(command).addHelpText(
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
    session.out(flags.json === true ? asJson([comparison], false) : comparisonTable(comparison));
    session.judge(comparison.findings, flags.failOn);
  });
}
