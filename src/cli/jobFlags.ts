import { Option, type Command } from 'commander';
import { toJson } from '../methods/index.js';
import { failOn, type FailOn } from './session.js';

/** Flags that every command has. */
export interface JobFlags {
  readonly json?: true;
  readonly quiet?: true;
  readonly failOn?: FailOn;
}

/** Adds the flags that every command has. */
export const withJobFlags = (command: Command): Command =>
  command
    .optionsGroup('For scripts:')
    .option('--json', 'the result as JSON on standard output, and nothing else there')
    .addOption(new Option('--fail-on <severity>', 'exit status 3 where a finding is at least that severe').choices(failOn))
    .option('--quiet', 'no progress on standard error');

/** One result as JSON, or the list of several. */
export const asJson = (results: readonly object[], many: boolean): string =>
  many ? `[${results.map(toJson).join(',\n')}]\n` : results.map((one) => `${toJson(one)}\n`).join('');
