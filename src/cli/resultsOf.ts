import { readFile } from 'node:fs/promises';
import { fromJson, type TestResult } from '../methods/index.js';

/** Results of a file as JSON: one, or the list that `--json` prints of several. */
export async function resultsOf(file: string): Promise<readonly TestResult[]> {
  const text = await readFile(file, 'utf8');
  if (!text.trimStart().startsWith('[')) return [fromJson(text)];
  let list: unknown;
  try {
    list = JSON.parse(text);
  } catch {
    // says what is wrong with it
    return [fromJson(text)];
  }
  return (list as readonly unknown[]).map((one) => fromJson(JSON.stringify(one)));
}
