import { CommanderError } from 'commander';

/** What is wrong with how the command was called: one line, and the exit status of wrong usage. */
export const usage = (text: string): CommanderError => new CommanderError(2, 'testpiece.usage', text);

/** True for such an error, which nobody has written yet; those of commander itself are written when they are thrown. */
export const isUsage = (reason: unknown): boolean => reason instanceof CommanderError && reason.code === 'testpiece.usage';
