/** Three blanks of a sheet, cupped until they crack (invented data): the index with and without the motion of the frame. */
import { analyseCupping } from 'testpiece';
import { simulateCupping } from 'testpiece/simulate';

const sheet = { thickness: 0.8, width: 90 };
const records = [10.3, 10.5, 10.4].map(
  (depth, k) =>
    simulateCupping({
      depth,
      force: 9500,
      push: { compliance: 2e-5, speed: 0.2, rate: 50, forceNoise: 10, travelNoise: 0.002 },
      seed: k + 1,
    }).record,
);
const options = { frameCompliance: 2e-5, holdingForce: 10_000, test: { invented: true } };
const result = analyseCupping(records, sheet, options);
result.blanks.forEach(({ depth, contact }, k) =>
  console.log(`blank ${k + 1}: contact at ${contact.toFixed(2)} mm, h ${depth.value.toFixed(2)} mm`),
);
console.log(`IE ${result.cuppingIndex.value.toFixed(1)} mm, u ${result.cuppingIndex.standardUncertainty.toFixed(2)} mm`);
const raw = analyseCupping(records, sheet, { test: { invented: true } });
console.log(`frame left in: ${raw.cuppingIndex.value.toFixed(1)} mm`);
for (const { message } of raw.findings) console.log(message);
