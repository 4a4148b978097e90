import { Option, type Command } from 'commander';
import type { TensionOptions } from '../methods/index.js';
import { collected, toRatio } from './flags.js';
import { jsonFile } from './jsonFile.js';
import { usage } from './usage.js';

type Uncertainty = NonNullable<TensionOptions['uncertainty']>;

/** Flags of what is doubtful. */
export interface UncertaintyFlags {
  readonly uncertainty?: readonly string[];
}

function numberOf(name: string, text: string): number {
  try {
    return toRatio(text);
  } catch {
    throw usage(`--uncertainty must give a number to ${name}, with a decimal point, got '${text}'`);
  }
}

/** `gaugeLength=0.05`, `force=0.5%`, `section.diameter=0.01`: a standard uncertainty under its name. */
function withDoubt(all: Record<string, unknown>, text: string): Record<string, unknown> {
  const [name = '', value = ''] = text.split('=');
  const number = numberOf(name, value);
  const [group, inner] = name.split('.');
  return inner === undefined
    ? { ...all, [name]: number }
    : { ...all, [group!]: { ...(all[group!] as object | undefined), [inner]: number } };
}

/** What is doubtful: from files, and from pairs, which count before them; names and numbers are checked where they are used. */
export async function uncertaintyFromFlags(flags: UncertaintyFlags): Promise<Uncertainty | undefined> {
  if (flags.uncertainty === undefined) return undefined;
  const files = flags.uncertainty.filter((one) => !one.includes('='));
  const half = files.find((one) => /^\s*\d+%?\s*$/.test(one));
  if (half !== undefined) throw usage(`--uncertainty must have decimal points, and commas only between several, got ',${half}'`);
  const read = await Promise.all(files.map((file) => jsonFile('--uncertainty', file)));
  const given: Record<string, unknown> = Object.fromEntries(read.flatMap((one) => Object.entries(one)));
  const pairs = flags.uncertainty.filter((one) => one.includes('='));
  return pairs.reduce((all, one) => withDoubt(all, one), given);
}

/** Adds the flag of what is doubtful. */
export const withUncertaintyFlags = (command: Command): Command =>
  command.addOption(
    new Option(
      '--uncertainty <what>',
      'what is doubtful: name=standard uncertainty (force=0.5%, gaugeLength=0.05, section.diameter=0.01, forceClass=1), or a file as JSON with the names of the type TensionUncertainty; commas between several; may be repeated',
    ).argParser(collected),
  );
