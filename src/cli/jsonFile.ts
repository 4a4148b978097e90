import { readFile } from 'node:fs/promises';
import { InputError, requireObject } from '../base/index.js';

/** The JSON object of a file that a flag names; its fields are checked where they are used. */
export async function jsonFile(from: string, flag: string, path: string): Promise<object> {
  const text = await readFile(path, 'utf8');
  try {
    return requireObject(from, flag, JSON.parse(text) as unknown);
  } catch (reason) {
    throw new InputError(from, flag, 'wrong-type', 'must be a file with one JSON object', reason instanceof Error ? reason.message : path);
  }
}
