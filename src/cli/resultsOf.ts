import { readFile } from 'node:fs/promises';
import { isInputError } from '../base/index.js';
import { fromParsed, type TestResult } from '../methods/index.js';
import { usage } from './usage.js';

/** The results of a file: one, or the list that `--json` prints of several. */
function listOf(text: string): readonly unknown[] {
  try {
    const given: unknown = JSON.parse(text);
    return Array.isArray(given) ? given : [given];
  } catch {
    throw usage('is no JSON: give the .json files that report, bending, brinell and the like wrote');
  }
}

/** Results of a file as JSON. */
export async function resultsOf(file: string): Promise<readonly TestResult[]> {
  return listOf(await readFile(file, 'utf8')).map((one) => {
    try {
      return fromParsed(one) as TestResult;
    } catch (reason) {
      if (!isInputError(reason)) throw reason;
      const rule = reason.message.slice(reason.message.indexOf(': ') + 2).replace(/^text must be/, 'must be');
      throw usage(`is no result that report, bending, brinell and the like wrote: ${rule}`);
    }
  });
}

/** Refuses results of several methods, and says which file is of which. */
export function requireOneMethod(read: readonly { readonly file: string; readonly given: readonly TestResult[] }[]): readonly TestResult[] {
  const all = read.flatMap(({ file, given }) => given.map((result) => ({ file, result })));
  const [first] = all;
  const other = all.find(({ result }) => result.method !== first!.result.method);
  if (first && other)
    throw usage(`the results must be of one method: ${first.file} is of ${first.result.method}, ${other.file} of ${other.result.method}`);
  return all.map(({ result }) => result);
}
