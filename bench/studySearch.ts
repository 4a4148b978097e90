/** `npm run study:search`: the window search against a search through every window, on many curves of every kind. */
import { coarseLine } from '../src/curve/coarseLine.js';
import { windowSearch } from '../src/curve/windowSearch.js';
import type { WindowTask } from '../src/curve/windowTask.js';
import { maximumIndex } from '../src/numeric/index.js';
import { everyWindow } from './everyWindow.js';
import { knownCurve, scenarios } from './scenarios.js';

/** Samples of a curve, and curves of each kind. */
const sizes = [
  [50, 60],
  [120, 60],
  [400, 50],
  [1000, 40],
  [3000, 20],
  [10_000, 6],
  [20_000, 3],
] as const;

type Scoring = Pick<WindowTask, 'score' | 'slopeFor' | 'unit'>;
const lowerBound: Scoring = { score: (slope, error) => slope - 4 * error, slopeFor: (score) => score, unit: 0 };
const relativeError: Scoring = { score: (slope, error) => (slope > 0 ? -error / slope : -Infinity), slopeFor: () => 0, unit: 1 };

console.log('| samples | curves | windows compared | the same window | largest relative difference of slope − 4 s |');
console.log('| --- | --- | --- | --- | --- |');
let wrong = 0;
for (const [n, curves] of sizes) {
  let compared = 0;
  let same = 0;
  let largest = 0;
  for (const scenario of scenarios)
    for (let seed = 1; seed <= curves; seed += 1) {
      const { strain, stress } = knownCurve(scenario, n, 104_729 * seed + n);
      const coarse = coarseLine(strain, stress, maximumIndex(stress));
      if (!coarse) continue;
      const { end, slope, offsetStress } = coarse;
      let start = end;
      while (start > 0 && stress[start - 1]! >= 0.2 * offsetStress) start -= 1;
      for (const scoring of [lowerBound, relativeError]) {
        const task = { strain, stress, start, end, slope, span: 0.2 * offsetStress, points: 8, gap: 0, ...scoring };
        const best = everyWindow(task);
        const found = windowSearch(task)?.best;
        compared += 1;
        if (best?.first === found?.first && best?.last === found?.last) same += 1;
        if (scoring === lowerBound && best && found) largest = Math.max(largest, Math.abs(found.score / best.score - 1));
      }
    }
  wrong += compared - same;
  console.log(`| ${n} | ${curves * scenarios.length} | ${compared} | ${same} | ${largest.toExponential(1)} |`);
}
if (wrong > 0) process.exitCode = 1;
