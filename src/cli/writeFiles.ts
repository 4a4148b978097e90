import { randomUUID } from 'node:crypto';
import { access, mkdir, rename, rm, writeFile } from 'node:fs/promises';
import { dirname } from 'node:path';
import { usage } from './usage.js';

const exists = (path: string): Promise<boolean> =>
  access(path).then(
    () => true,
    () => false,
  );

/**
 * Writes several files, all or none: each under another name first, then renamed. A file that is there already stays as it is unless
 * `overwrite` is set, and is looked for before anything is written.
 */
export async function writeFiles(files: Readonly<Record<string, string>>, overwrite: boolean): Promise<void> {
  await requireFree(Object.keys(files), overwrite);
  const drafts = Object.entries(files).map(([path, text]) => ({ path, text, draft: `${path}.${randomUUID()}.part` }));
  try {
    for (const { path, text, draft } of drafts) {
      await mkdir(dirname(path), { recursive: true });
      await writeFile(draft, text, { flag: 'wx' });
    }
    for (const { path, draft } of drafts) await rename(draft, path);
  } finally {
    for (const { draft } of drafts) await rm(draft, { force: true });
  }
}

/** Refuses paths that hold a file already. */
export async function requireFree(paths: readonly string[], overwrite: boolean): Promise<void> {
  if (overwrite) return;
  for (const path of paths) if (await exists(path)) throw usage(`${path} exists; give --overwrite to replace it`);
}
