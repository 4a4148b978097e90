/** Brinell hardness on a frame of 25 kN: which combinations it can do, and a test whose force slackened while it was held (invented data). */
import { analyseBrinell, brinellCombinations } from 'testpiece';
import { simulateBrinell } from 'testpiece/simulate';

for (const { designation, force, hardness, verified, uses } of brinellCombinations({ capacity: 25_000, verifiedFrom: 2000 }))
  if (verified)
    console.log(
      designation.padEnd(14),
      `${(force / 1000).toFixed(3)} kN`.padEnd(10),
      `${hardness.map((one) => one.toPrecision(3)).join(' to ')} HBW`.padEnd(21),
      [...new Set(uses.map(({ material }) => material))].join('; '),
    );

const { readings, truth } = simulateBrinell({
  hardness: 92,
  ballDiameter: 10,
  force: 9806.65,
  readingNoise: 0.01,
  readingStep: 0.01,
  hold: { drift: -0.02, forceNoise: 10 },
});
const result = analyseBrinell(readings, { thickness: 12, material: 'copper alloys' }, { test: { invented: true } });
console.log(`${result.hardness.value.toPrecision(3)} ${result.designation}, true ${truth.hardness}`);
for (const { message } of result.findings) console.log(message);
