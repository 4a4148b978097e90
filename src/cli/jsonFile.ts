import { readFile } from 'node:fs/promises';
import { usage } from './usage.js';

/** The JSON object of a file that a flag names; its fields are checked where they are used. */
export async function jsonFile(flag: string, path: string): Promise<object> {
  const text = await readFile(path, 'utf8');
  let given: unknown;
  try {
    given = JSON.parse(text);
  } catch {
    given = undefined;
  }
  if (typeof given === 'object' && given !== null && !Array.isArray(given)) return given;
  throw usage(`${flag} must be a file with one JSON object, got ${path}`);
}
