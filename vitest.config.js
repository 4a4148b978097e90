import { defineConfig } from 'vitest/config';
import './tools/examples.js'; // writes test/examples.test.ts before vitest looks for files

/** The closing line that says how many passed; a file that does not load counts as failed. */
const count = {
  onTestRunEnd(modules, errors) {
    const of = (state) => modules.flatMap((file) => [...file.children.allTests(state)]).length;
    const failed = of('failed') + errors.length + modules.filter((file) => file.errors().length > 0).length;
    process.once('exit', () => console.log(`${of('passed')} passed, ${failed} failed`));
  },
};

export default defineConfig({
  test: {
    include: ['test/**/*.test.ts'],
    reporters: ['default', count],
    testTimeout: 60_000,
    coverage: {
      provider: 'v8',
      include: ['src/**/*.ts'],
      exclude: ['src/ambient/**', 'src/cli/main.ts', 'src/**/index.ts'],
      reporter: ['text-summary', 'json-summary'],
      thresholds: { lines: 90, functions: 90, branches: 90, statements: 90 },
    },
  },
});
