import { Command, CommanderError } from 'commander';
import { version } from '../methods/index.js';
import { bendingCommand } from './bendingCommand.js';
import { brinellCommand } from './brinellCommand.js';
import { checkCommand } from './checkCommand.js';
import { compareCommand } from './compareCommand.js';
import { compressionCommand } from './compressionCommand.js';
import { cuppingCommand } from './cuppingCommand.js';
import { planCommand } from './planCommand.js';
import { replicatesCommand } from './replicatesCommand.js';
import { reportCommand } from './reportCommand.js';
import { oneLine, openSession, STATUS, statusHelp, type Session, type Status, type Streams } from './session.js';
import { shearCommand } from './shearCommand.js';
import { isUsage, usage } from './usage.js';
import { vectorsCommand } from './vectorsCommand.js';

/** The commands, in the order of the help. */
const commands: readonly ((session: Session) => Command)[] = [
  planCommand,
  checkCommand,
  reportCommand,
  compressionCommand,
  bendingCommand,
  shearCommand,
  brinellCommand,
  cuppingCommand,
  replicatesCommand,
  compareCommand,
  vectorsCommand,
];

/** Runs the command; errors are one line, the exit status is what a script needs. */
export async function run(argv: readonly string[], streams: Streams): Promise<Status> {
  const session = openSession(streams);
  const writeErr = (text: string): void => {
    streams.error(`testpiece: ${oneLine(text).replace(/^error: /, '')}\n`);
  };
  const prepared = (command: Command): Command =>
    command.exitOverride().configureOutput({ writeOut: streams.out, writeErr }).addHelpText('after', statusHelp);
  const programOf = (ready: (command: Command) => Command): Command => {
    const program = prepared(
      new Command('testpiece')
        .description('Mechanical tests from their records: properties, findings, a page to look at.')
        .version(version),
    );
    for (const made of commands) program.addCommand(ready(prepared(made(session))));
    return program;
  };
  // parse once without required options, so that a misspelt flag is reported before a missing one
  const asTyped = (command: Command): Command => {
    for (const option of command.options) option.makeOptionMandatory(false);
    return command.action(() => {});
  };
  try {
    // otherwise commander prints all of its help as an error
    if (argv.length === 0) throw usage('name a command; --help lists them');
    await programOf(asTyped).parseAsync([...argv], { from: 'user' });
    await programOf((command) => command).parseAsync([...argv], { from: 'user' });
  } catch (reason) {
    if (!(reason instanceof CommanderError) || isUsage(reason)) session.problem(reason);
    else if (reason.exitCode !== 0) session.leave(STATUS.input);
  }
  return session.status();
}
