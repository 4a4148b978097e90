import { run } from '../../src/cli/run.js';

/** What a call of the command left behind. */
export interface Called {
  readonly status: number;
  readonly out: string;
  readonly error: string;
}

/** Calls the command as from a shell; `terminal` as where standard error is one. */
export async function called(argv: readonly string[], terminal = false): Promise<Called> {
  let [out, error] = ['', ''];
  const status = await run(argv, { out: (text) => (out += text), error: (text) => (error += text), terminal });
  return { status, out, error };
}

/** The same with the arguments one by one. */
export const command = (...argv: string[]): Promise<Called> => called(argv);
