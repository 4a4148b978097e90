/** Three unloadings in one tension test (invented data): modulus, permanent set and lost energy of each, and Rr0.2 between them. */
import { analyseUnloading, round } from 'testpiece';
import { simulateTension } from 'testpiece/simulate';

const piece = { section: round({ diameter: 8 }), gaugeLength: 40, parallelLength: 48 };
const { record } = simulateTension({
  material: { modulus: 70_000, hardening: { law: 'hollomon', strengthCoefficient: 420, exponent: 0.12 } },
  piece,
  hand: {
    speed: 0.02,
    unloadings: [
      { stress: 150, bow: 2e-5 },
      { stress: 190, bow: 5e-5 },
      { stress: 230, bow: 1e-4 },
    ],
  },
  logger: { rate: 50, extensometer: true, forceNoise: 3, motionNoise: 1e-5 },
});
const columns = { force: record.force, extension: record.extension, time: record.time };
const result = analyseUnloading(columns, piece, { reversibility: 0.006, test: { invented: true } });
for (const { top, slope, permanentSet, energy, withinLimit } of result.loops)
  console.log(
    `from ${top.stress.toFixed(0)} MPa: Eu ${(slope.value / 1000).toFixed(1)} GPa, set ${(100 * permanentSet.value).toFixed(3)} %, lost ${energy.value.toFixed(4)} MJ/m³, ${withinLimit ? 'passes' : 'fails'}`,
  );
console.log(`${result.permanentSetStrength.symbol} ${result.permanentSetStrength.value.toFixed(0)} MPa`);
const refused = analyseUnloading(columns, piece, { reversibility: 0.02 });
console.log(refused.findings.find(({ code }) => code === 'unloading-refused').message);
