import { Command, CommanderError } from 'commander';
import { version } from '../methods/index.js';
import { bendingCommand } from './bendingCommand.js';
import { brinellCommand } from './brinellCommand.js';
import { calibrateCommand } from './calibrateCommand.js';
import { checkCommand } from './checkCommand.js';
import { compareCommand } from './compareCommand.js';
import { complianceCommand } from './complianceCommand.js';
import { compressionCommand } from './compressionCommand.js';
import { cuppingCommand } from './cuppingCommand.js';
import { planCommand } from './planCommand.js';
import { replicatesCommand } from './replicatesCommand.js';
import { reportCommand } from './reportCommand.js';
import { oneLine, openSession, STATUS, statusHelp, type Session, type Status, type Streams } from './session.js';
import { shearCommand } from './shearCommand.js';
import { simulateCommand } from './simulateCommand.js';
import { anyFlags, requireFlags } from './requireFlags.js';
import { isUsage, usage } from './usage.js';
import { verifyCommand } from './verifyCommand.js';
import { vectorsCommand } from './vectorsCommand.js';

/** The commands, in the order of the help. */
const commands: readonly ((session: Session) => Command)[] = [
  calibrateCommand,
  verifyCommand,
  complianceCommand,
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
  simulateCommand,
  vectorsCommand,
];

/** Flags under the names and symbols by which they may be looked for. */
const otherNames: Readonly<Record<string, string>> = {
  '--diameter': '--round',
  '--width': '--rectangular',
  '--thickness': '--rectangular',
  '--L0': '--gauge-length',
  '--Lc': '--parallel-length',
  '--Le': '--extensometer-length',
  '--Lu': '--final-gauge-length',
  '--Su': '--final-area',
  '--du': '--final-diameter',
  '--compliance': '--frame-compliance',
  '--lang': '--language',
  '--method': '--control',
  '--direction': '--sample-direction',
  '--certificate': '--force-certificate',
  '--class': '--force-class',
};

/** What commander says of a call, in words of a user of the command; `owners` are the commands that have a flag. */
const asUsage = (text: string, flags: ReadonlySet<string>, owners: ReadonlyMap<string, readonly string[]>): string =>
  text
    .replace(/^error: /, '')
    .replace(/^command-argument value ('.*') is invalid for argument '(.*)'\./, '$2 $1 is not known.')
    .replace(/^unknown option '(--[\w-]+)'.*$/, (said, flag: string) => {
      const meant = otherNames[flag];
      if (meant !== undefined && flags.has(meant)) return `unknown option '${flag}' (Did you mean ${meant}?)`;
      const others = owners.get(flag);
      return others === undefined ? said : `unknown option '${flag}' (it is one of ${others.join(', ')})`;
    });

/** Runs the command; errors are one line, the exit status is what a script needs. */
export async function run(argv: readonly string[], streams: Streams): Promise<Status> {
  const flags = new Set<string>();
  const owners = new Map<string, string[]>();
  const session = openSession(streams, flags);
  const writeErr = (text: string): void => {
    streams.error(`testpiece: ${asUsage(oneLine(text), flags, owners)}\n`);
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
  // parse once without the action, so that a misspelt flag is reported before a missing one, and all that are missing at once
  const asTyped = (command: Command): Command => {
    for (const { long } of command.options) owners.set(long!, [...(owners.get(long!) ?? []), command.name()]);
    if (command.name() === argv[0]) for (const { long } of command.options) flags.add(long!);
    const needed = command.options.filter(({ mandatory }) => mandatory);
    return anyFlags(command).action(() => {
      requireFlags(needed, command.opts());
    });
  };
  try {
    // otherwise commander prints all of its help as an error
    if (argv.length === 0) throw usage('name a command; --help lists them');
    await programOf(asTyped).parseAsync([...argv], { from: 'user' });
    await programOf(anyFlags).parseAsync([...argv], { from: 'user' });
  } catch (reason) {
    if (!(reason instanceof CommanderError) || isUsage(reason)) session.problem(reason);
    else if (reason.exitCode !== 0) session.leave(STATUS.input);
  }
  return session.status();
}
