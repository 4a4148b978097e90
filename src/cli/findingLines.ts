import type { Finding } from '../base/index.js';

/** Findings with their remedies, a line each. */
export const findingLines = (findings: readonly Finding[]): string[] =>
  findings.length === 0 ? ['nothing to report'] : findings.map(({ severity, message, remedy }) => `${severity}: ${message} ${remedy}`);
