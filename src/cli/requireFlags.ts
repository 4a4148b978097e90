import type { Command, Option } from 'commander';
import { ONE_SECTION, sectionNames } from './sectionOptions.js';
import { usage } from './usage.js';

/** Refuses a call without what it needs, all of it in one sentence. */
export function requireGiven(missing: readonly string[]): void {
  if (missing.length > 0) throw usage(`must be given: ${missing.join('; ')}`);
}

/** The command with flags that need not be there: commander would name the first of those that are missing. */
export function anyFlags(command: Command): Command {
  for (const option of command.options) option.makeOptionMandatory(false);
  return command;
}

/** Refuses a call without the flags that it needs; of the sections one must be there. */
export function requireFlags(needed: readonly Option[], given: Readonly<Record<string, unknown>>): void {
  const isSection = (option: Option): boolean => (sectionNames as readonly string[]).includes(option.attributeName());
  const missing = needed.filter((option) => given[option.attributeName()] === undefined);
  const section = missing.filter(isSection).length === sectionNames.length;
  requireGiven([...(section ? [ONE_SECTION] : []), ...missing.filter((option) => !isSection(option)).map(({ flags }) => flags)]);
}
