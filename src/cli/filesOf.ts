import { readdir, stat } from 'node:fs/promises';
import { isAbsolute, join, resolve } from 'node:path';
import { glob, isDynamicPattern } from 'tinyglobby';
import type { Session } from './session.js';
import { usage } from './usage.js';

/** Files that arguments name. */
export interface NamedFiles {
  readonly files: readonly string[];
  /** True where several files may be meant: several arguments, a folder or a pattern. */
  readonly many: boolean;
}

/** Endings of files that loggers write as text. */
export const recordEndings = ['.csv', '.tsv', '.txt', '.dat', '.asc'];
/** Endings of results. */
export const resultEndings = ['.json'];

const byName = new Intl.Collator('en', { numeric: true }).compare;

/** What an argument is. */
const kindOf = (path: string): Promise<'file' | 'folder' | 'nothing'> =>
  stat(path).then(
    (one) => (one.isDirectory() ? 'folder' : 'file'),
    () => 'nothing',
  );

/** Files of a folder or of a pattern; a pattern whose last part names no ending takes those that a folder would. */
async function within(path: string, folder: boolean, endings: readonly string[]): Promise<string[]> {
  const ends = (name: string): boolean => endings.some((ending) => name.toLowerCase().endsWith(ending));
  if (folder) {
    const entries = await readdir(path, { withFileTypes: true });
    return entries.filter((one) => !one.isDirectory() && !one.name.startsWith('.') && ends(one.name)).map(({ name }) => join(path, name));
  }
  const pattern = process.platform === 'win32' ? path.replaceAll('\\', '/') : path;
  const found = await glob(pattern, { absolute: isAbsolute(path), expandDirectories: false });
  return pattern.slice(pattern.lastIndexOf('/') + 1).includes('.') ? found : found.filter(ends);
}

/**
 * The files that arguments name: files, folders, and patterns such as `records/**\/*.csv` that no shell has expanded. In the order of the arguments, each by
 * name with its numbers in order; none twice. A folder or pattern without such files is a problem of its own. What is not there is left to whoever reads it.
 */
export async function filesOf(session: Session, given: readonly string[], endings: readonly string[]): Promise<NamedFiles> {
  const found: string[] = [];
  let many = given.length > 1;
  for (const path of given) {
    const kind = await kindOf(path);
    const pattern = kind === 'nothing' && isDynamicPattern(path);
    if (kind !== 'folder' && !pattern) {
      found.push(path);
      continue;
    }
    many = true;
    const inside = await within(path, kind === 'folder', endings);
    if (inside.length === 0)
      session.problem(pattern ? usage(`${path}: no file has such a name`) : usage(`${path}: no file in it ends in ${endings.join(', ')}`));
    found.push(...inside.sort(byName));
  }
  const files = [...new Map(found.map((file) => [resolve(file), file])).values()];
  return { files, many };
}
