import { CommanderError } from 'commander';

/** What is wrong with how the command was called: one line, and the exit status of wrong usage. */
export const usage = (text: string): CommanderError => new CommanderError(2, 'testpiece.usage', text);

/** True for such an error, which is still to be written; commander writes its own errors when it throws them. */
export const isUsage = (reason: unknown): boolean => reason instanceof CommanderError && reason.code === 'testpiece.usage';
