import js from '@eslint/js';
import { defineConfig } from 'eslint/config';
import ts from 'typescript-eslint';
import { floorRules } from './floors.js';

export default defineConfig(
  { ignores: ['.stryker-tmp', 'dist', 'site', 'coverage', 'demo-output', 'test/examples.test.ts', '**/*.d.ts'] },
  js.configs.recommended,
  {
    files: ['**/*.ts'],
    extends: [ts.configs.strictTypeChecked],
    languageOptions: { parserOptions: { projectService: true } },
    rules: {
      '@typescript-eslint/restrict-template-expressions': ['error', { allowNumber: true }],
      '@typescript-eslint/no-non-null-assertion': 'off', // index loops over typed arrays, with noUncheckedIndexedAccess
    },
  },
  { files: ['**/*.js'], languageOptions: { globals: { console: false, process: false, performance: false, URL: false } } },
  floorRules,
);
