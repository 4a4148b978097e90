/** `npm run study:search`: the window search against a search through every window, on many curves of every kind. */
import { windowSearch } from '../src/curve/window/windowSearch.js';
import { everyWindow } from './everyWindow.js';
import { knownCurve, scenarios } from './scenarios.js';
import { lowerBound, relativeError, searchTask } from './searchTask.js';

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

console.log('| samples | curves | windows compared | the same window | largest relative difference of slope − 4 s |');
console.log('| --- | --- | --- | --- | --- |');
let wrong = 0;
for (const [n, curves] of sizes) {
  let compared = 0;
  let same = 0;
  let largest = 0;
  for (const scenario of scenarios)
    for (let seed = 1; seed <= curves; seed += 1) {
      const curve = knownCurve(scenario, n, 104_729 * seed + n);
      for (const scoring of [lowerBound, relativeError]) {
        const task = searchTask(curve, scoring);
        if (!task) continue;
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
