import { textFile } from './textFile.js';
import { usage } from './usage.js';

/** The JSON object of a text; its fields are checked where they are used. */
export function givenJson(place: string, text: string): object {
  let given: unknown;
  try {
    given = JSON.parse(text);
  } catch {
    given = undefined;
  }
  if (typeof given === 'object' && given !== null && !Array.isArray(given)) return given;
  throw usage(`${place} must be a file with one JSON object`);
}

/** The JSON object of a file that a flag names. */
export const jsonFile = async (flag: string, path: string): Promise<object> =>
  givenJson(`${flag} ${path}`, await textFile(`${flag} ${path}`, path));
