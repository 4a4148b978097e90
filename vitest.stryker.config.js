/** Tests that mutation testing runs: of the floors that it changes, and the handbook. */
import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: { include: ['test/{geometry,force,record,curve,hardening,handbook}/**/*.test.ts'], exclude: ['test/record/fuzz.test.ts'] },
});
