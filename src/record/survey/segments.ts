import { finding, type Finding } from '../../base/index.js';
import { firstBelow, maximumIndex, type BlockExtremes } from '../../numeric/index.js';
import { LOADED } from './recordOutline.js';

/** @internal First and last sample of a stretch. */
export type Segment = readonly [number, number];

/** Share of the highest force of all that a test rises above. */
const RISEN = 0.3;
/** Time without load that ends a test [s]. */
const SECONDS = 1;
/** Samples without load that end a test where there is no clock. */
const SAMPLES = 20;
/** Share of the time passed so far to which a clock that starts anew falls back; one that is set anew does not fall as far. */
const ANEW = 0.1;

/**
 * @internal The tests in one file: stretches of load with nothing between them for more than a second (or twenty samples without a clock), or with a
 * clock between them that starts anew, or, without a clock, the names of the columns.
 */
export function testSegments(
  force: Float64Array,
  highest: number,
  time: Float64Array | undefined,
  headings: readonly number[] = [],
  blocks?: BlockExtremes,
): Segment[] {
  const n = force.length;
  const up = RISEN * highest;
  const nothing = LOADED * highest;
  const found: [number, number][] = [];
  let begin = 0;
  let risen = false;
  let quiet = 0;
  const startsAnew = (i: number): boolean =>
    time ? time[i]! < time[i - 1]! && time[i]! - time[begin]! <= ANEW * (time[i - 1]! - time[begin]!) : headings.includes(i);
  for (let i = 0; i < n; i += 1) {
    // a page break of the logger, or a clock set anew, stands within the load
    if (risen && force[i]! <= up && startsAnew(i)) {
      found.push([begin, i - 1]);
      begin = i;
      risen = false;
      quiet = 0;
    }
    if (force[i]! > up) {
      risen = true;
      quiet = 0;
      // most of a record lies up there
      i = firstBelow(force, up, i + 1, n, blocks) - 1;
    } else if (Math.abs(force[i]!) < nothing) quiet += 1;
    else quiet = 0;
    if (!risen || quiet === 0) continue;
    const longEnough = time ? time[i]! - time[i - quiet + 1]! > SECONDS && quiet > 3 : quiet > SAMPLES;
    if (!longEnough) continue;
    found.push([begin, i]);
    begin = i + 1;
    risen = false;
    quiet = 0;
  }
  if (risen) found.push([begin, n - 1]);
  else if (found.length > 0) found[found.length - 1]![1] = n - 1;
  return found;
}

/** @internal A record that holds several tests. */
export function severalTests(force: Float64Array, time: Float64Array | undefined, headings?: readonly number[]): Finding[] {
  const tests = testSegments(force, force[maximumIndex(force, 0, force.length)]!, time, headings);
  const second = tests[1];
  return second ? [finding('several-tests', { count: tests.length, second: second[0] }, { range: [second[0], second[1]] })] : [];
}
