import { defineConfig } from 'vitest/config';

/** `npm run test:browser`: pages in a real browser. Tests skip themselves on a machine without one. */
export default defineConfig({
  test: { include: ['test/browser/*.browser.ts'], fileParallelism: false, testTimeout: 300_000, hookTimeout: 120_000 },
});
