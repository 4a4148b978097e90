/** @internal First and last sample of a stretch. */
export type Segment = readonly [number, number];

/** A test rises above this share of the highest force of all, and ends below that one, for as long as a pause lasts. */
const RISEN = 0.3;
const GONE = 0.02;
const SECONDS = 1;
const SAMPLES = 20;

/** @internal The tests in one file: stretches of load with nothing between them for more than a second (or twenty samples without a clock). */
export function testSegments(force: Float64Array, highest: number, time: Float64Array | undefined): Segment[] {
  const n = force.length;
  const up = RISEN * highest;
  const nothing = GONE * highest;
  const found: [number, number][] = [];
  let begin = 0;
  let risen = false;
  let quiet = 0;
  for (let i = 0; i < n; i += 1) {
    if (force[i]! > up) {
      risen = true;
      quiet = 0;
      // most of a record lies up there
      while (i + 4 < n && force[i + 1]! > up && force[i + 2]! > up && force[i + 3]! > up && force[i + 4]! > up) i += 4;
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
