import { defineConfig } from 'vitest/config';

/** Tests in a real browser, which `npm test` leaves out. */
export default defineConfig({ test: { include: ['test/browser/**/*.browser.ts'], testTimeout: 120_000, hookTimeout: 120_000 } });
