/**
 * `npm run fuzz [-- COUNT [FIRST]]`: mutated files through readRecord and, where they read, through analyseTension. Each must end as a result
 * without NaN or as an InputError. A file is found again by its number.
 */
import { fuzz } from '../test/support/mutants.js';

const count = Number(process.argv[2] ?? 100_000);
const first = Number(process.argv[3] ?? 0);
if (!Number.isInteger(count) || count < 1 || !Number.isInteger(first) || first < 0) {
  console.error('fuzz needs a whole number of files, and perhaps the number of the first');
  process.exit(2);
}
const start = performance.now();
const { read, analysed, refused, slowest, slowestAt, wrong } = fuzz(count, first);
const seconds = (performance.now() - start) / 1000;
console.log(
  `${count} files in ${seconds.toFixed(0)} s: ${read} read, ${analysed} of them analysed, ${refused} refused with an InputError.`,
);
console.log(
  `The slowest took ${slowest.toFixed(0)} ms (file ${slowestAt}); memory at its peak ${(process.resourceUsage().maxRSS / 1024).toFixed(0)} MiB.`,
);
for (const line of wrong.slice(0, 20)) console.log(line);
if (wrong.length > 0) console.log(`${wrong.length} ended in another way.`);
process.exitCode = wrong.length > 0 ? 1 : 0;
