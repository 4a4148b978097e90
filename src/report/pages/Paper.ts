import { requireOneOf } from '../../base/index.js';

/** Sheets that a page is printed on. */
export type Paper = 'A4' | 'Letter';

/** @internal Checks the sheet. */
export const requirePaper = (from: string, paper: Paper | undefined): Paper =>
  requireOneOf(from, 'options.paper', paper ?? 'A4', ['A4', 'Letter']);
