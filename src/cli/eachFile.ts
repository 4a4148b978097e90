import { stat } from 'node:fs/promises';
import type { JobFlags } from './jobFlags.js';
import { oneLine, type Session } from './session.js';

/** Bytes from which a single file takes long enough to be announced. */
const LONG = 4e6;
/** Back to the start of the line of a terminal, and the rest of it wiped. */
const WIPE = '\r\u001b[K';

/**
 * Does a job with each file. One that fails is a problem in one line and does not stop the others. On a terminal standard error says
 * which file is at work, where there are several or a large one; what is to be `shown` of a file comes between.
 *
 * @returns What the job gave, of the files that did not fail.
 */
export async function eachFile<T>(
  session: Session,
  flags: JobFlags,
  files: readonly string[],
  job: (file: string) => Promise<T>,
  shown: (given: T, file: string) => void = () => {},
): Promise<{ readonly file: string; readonly given: T }[]> {
  const shows = session.terminal === true && flags.quiet !== true;
  const done: { file: string; given: T }[] = [];
  for (const [k, file] of files.entries()) {
    const size = shows && files.length === 1 ? await stat(file).then((one) => one.size, () => 0) : 0; // prettier-ignore
    const announced = shows && (files.length > 1 || size >= LONG);
    if (announced) session.error(`${WIPE}${k + 1} of ${files.length}: ${oneLine(file)}`);
    const wipe = (): void => {
      if (announced) session.error(WIPE);
    };
    try {
      const given = await job(file);
      wipe();
      shown(given, file);
      done.push({ file, given });
    } catch (reason) {
      wipe();
      session.problem(reason, file);
    }
  }
  return done;
}
