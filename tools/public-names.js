import { readFile } from 'node:fs/promises';
import { dirname, resolve } from 'node:path';

/**
 * Plugin for esbuild: what Node imports or requires has the names of the declarations and no more. The `index.ts` of a floor opens some names to the
 * floors above alone; where it is the entry of a bundle, those are left out.
 */
export const publicNames = {
  name: 'public names',
  setup(build) {
    // the package's own index takes its names from the doors as they are outside
    build.onResolve({ filter: /\/index\.[jt]s$/ }, ({ path, kind, namespace, resolveDir }) =>
      kind === 'entry-point' || namespace === 'door'
        ? { path: resolve(resolveDir, path.replace(/js$/, 'ts')), namespace: 'door' }
        : undefined,
    );
    build.onLoad({ filter: /./, namespace: 'door' }, async ({ path }) => ({
      contents: withoutInternal(await readFile(path, 'utf8')),
      loader: 'ts',
      resolveDir: dirname(path),
    }));
  },
};

/**
 * The text of a floor's `index.ts` without the exports that `@internal` stands above.
 * @param {string} door
 */
export const withoutInternal = (door) => door.replace(/\/\*\* @internal \*\/\nexport [^;]*;/g, '');
