import type { TestResult } from './TestResult.js';

/** @internal The groups of columns in the result of each method; the first is always there, where there is any. */
export const resultColumns: Readonly<Record<TestResult['method'], readonly string[]>> = {
  tension: ['curve', 'rates'],
  compression: ['curve', 'trueCurve', 'flowCurve'],
  bending: ['curve'],
};
