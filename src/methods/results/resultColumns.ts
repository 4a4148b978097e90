import type { ReplicatesResult } from './ReplicatesResult.js';
import type { TestResult } from './TestResult.js';

/**
 * @internal The groups of columns in the result of each method, `*` for each of a list; the first group or list is always there, where there is any.
 */
export const resultColumns: Readonly<Record<(TestResult | ReplicatesResult)['method'], readonly string[]>> = {
  tension: ['curve', 'rates'],
  compression: ['curve', 'trueCurve', 'flowCurve'],
  bending: ['curve'],
  shear: ['record'],
  brinell: ['indentations.*.record'],
  cupping: ['blanks.*.record', 'blanks.*.depths'],
  unloading: ['curve'],
  replicates: [],
};
