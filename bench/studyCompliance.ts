/**
 * `npm run study:compliance`: frames of known compliance, pulled with pieces of three kinds: what is recovered without noise, and how often the stated
 * uncertainty (k = 2) holds with it.
 */
import { fitCompliance, frameTravel, required } from '../src/index.js';
import { frames, pulled, quiet, usual, ways, type FrameShape, type Way } from '../test/support/compliance.js';

const CASES = 1000;

console.log('| way | shape | error without noise | held at the top | held at mid-range | median standard uncertainty |');
console.log('| --- | --- | --- | --- | --- | --- |');
let first = 0;
let all = 0;
for (const way of Object.keys(ways) as Way[])
  for (const shape of Object.keys(frames) as FrameShape[]) {
    const exact = pulled(way, shape, quiet, 1);
    const clean = required(fitCompliance(exact.pulls, exact.options));
    const truth = (F: number, from: number): number => frameTravel(frames[shape], F) - frameTravel(frames[shape], from);
    const error = Math.max(...clean.force.slice(1).map((F, k) => Math.abs(clean.travel[k + 1]! / truth(F, clean.range[0]) - 1)));
    let top = 0;
    let middle = 0;
    const sizes: number[] = [];
    for (let seed = first + 1; seed <= first + CASES; seed += 1) {
      const { pulls, options } = pulled(way, shape, usual, seed);
      const fit = required(fitCompliance(pulls, options));
      const held = (k: number): boolean => Math.abs(fit.travel[k]! - truth(fit.force[k]!, fit.range[0])) <= 2 * fit.standardUncertainty[k]!;
      if (held(fit.force.length - 1)) top += 1;
      if (held(fit.force.length >> 1)) middle += 1;
      sizes.push(fit.relativeStandardUncertainty);
    }
    first += CASES; // other numbers for each row
    all += top;
    sizes.sort((a, b) => a - b);
    const percent = (count: number): string => `${((100 * count) / CASES).toFixed(1)} %`;
    console.log(
      `| ${way} | ${shape} | ${error.toExponential(1)} | ${percent(top)} | ${percent(middle)} | ${(100 * sizes[CASES >> 1]!).toFixed(2)} % |`,
    );
  }
console.log(
  `\nAll rows at the top: ${((100 * all) / first).toFixed(2)} % of ${first}; of a normal distribution two standard deviations hold 95.45 %.`,
);
