import { defineConfig } from 'tsup';
import { doors } from './floors.js';
import { bundledLicences } from './tools/bundled-licences.js';
import { publicNames } from './tools/public-names.js';

const all = { clean: false, silent: true };
const core = { ...all, platform: 'neutral', target: 'es2022', tsconfig: 'tsconfig.core.json' };
const peers = /^(vega|@resvg|read-excel-file|hyparquet|apache-arrow)/; // optional, loaded only where a figure is drawn or such a file is read
/** In few files, dependencies and all: Node loads them in a seventh of the time of a file for each source. Bundlers, which drop what is not used, take the latter. */
const whole = {
  ...core,
  entry: doors,
  noExternal: [/^(?!vega|@resvg|read-excel-file|hyparquet|apache-arrow)/],
  external: [peers],
  splitting: true,
};

export default defineConfig([
  { ...core, entry: ['src/**/*.ts', '!src/**/*.d.ts', '!src/cli/**'], format: 'esm', bundle: false },
  // shaken by Rollup, which leaves `import()` as it is: what it loads may be a module that cannot be required
  { ...whole, entry: [...doors, 'src/render/browser.ts'], format: 'cjs', treeshake: true, esbuildPlugins: [publicNames] },
  { ...whole, format: 'esm', outDir: 'dist/node', esbuildPlugins: [publicNames, bundledLicences('dist/licences.txt', 'What Node loads')] },
  { ...core, entry: doors, format: ['esm', 'cjs'], dts: { only: true, compilerOptions: { ignoreDeprecations: '6.0' } } },
  {
    ...all,
    entry: { cli: 'src/cli/main.ts' },
    format: 'esm',
    platform: 'node',
    target: 'node20',
    noExternal: [/^(?!@resvg)/],
    external: ['@resvg/resvg-js'],
    splitting: false,
    minify: true,
    esbuildPlugins: [bundledLicences('dist/cli.licences.txt')],
    banner: {
      js: `#!/usr/bin/env node
import { createRequire as requireFrom } from 'node:module'; const require = requireFrom(import.meta.url);`,
    },
  },
]);
