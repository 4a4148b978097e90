import { Command, CommanderError } from 'commander';
import { isInputError } from '../base/index.js';
import { version } from '../methods/index.js';
import { bendingCommand } from './bendingCommand.js';
import { compressionCommand } from './compressionCommand.js';
import { planCommand } from './planCommand.js';
import { reportCommand } from './reportCommand.js';
import { vectorsCommand } from './vectorsCommand.js';

/** Where the command writes. */
export interface Streams {
  /** Standard output. */
  readonly out: (text: string) => void;
  /** Standard error. */
  readonly error: (text: string) => void;
}

/** Exit status: all well, unexpected, wrong input or usage. */
const STATUS = { well: 0, unexpected: 1, input: 2 } as const;

const oneLine = (text: string): string => text.replace(/\s+/g, ' ').trim();

/** Runs the command; errors are one line, the exit status is what a script needs. */
export async function run(argv: readonly string[], { out, error }: Streams): Promise<number> {
  const writeErr = (text: string): void => {
    error(`${oneLine(text)}\n`);
  };
  const program = new Command('testpiece')
    .description('Mechanical tests from their records: properties, findings, a page to look at.')
    .version(version)
    .exitOverride()
    .configureOutput({ writeOut: out, writeErr });
  for (const command of [reportCommand(out), compressionCommand(out), bendingCommand(out), planCommand(out), vectorsCommand(out)])
    program.addCommand(command.exitOverride().configureOutput({ writeOut: out, writeErr }));
  try {
    await program.parseAsync([...argv], { from: 'user' });
    return STATUS.well;
  } catch (reason) {
    if (reason instanceof CommanderError) return reason.exitCode === 0 ? STATUS.well : STATUS.input;
    const system = reason instanceof Error && 'code' in reason && 'path' in reason;
    error(`testpiece: ${oneLine(reason instanceof Error ? reason.message : String(reason))}\n`);
    return isInputError(reason) || system ? STATUS.input : STATUS.unexpected;
  }
}
