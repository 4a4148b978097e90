/**
 * Statistics of a class: four groups of apprentices pull the same steel; what is the precision, and does a group stand out? One group misreads its
 * calliper by 0.15 mm. Everything is invented, made by the simulation.
 */
import { analyseReplicates, analyseTension, interlaboratoryStudy, required, round } from 'testpiece';
import { simulateTension } from 'testpiece/simulate';

const groups = [
  { name: 'north bench', misread: 0 },
  { name: 'south bench', misread: 0 },
  { name: 'window', misread: -0.15 },
  { name: 'door', misread: 0 },
  { name: 'stairs', misread: 0 },
];

/** The pieces of a group: bars that scatter a little, and the diameter as the group reads it. */
function testsOf({ name, misread }, g) {
  return [0, 1, 2, 3].map((k) => {
    const seed = 100 + 10 * g + k;
    const yieldStress = 285 + 3 * Math.sin(seed);
    const piece = { section: round({ diameter: 8 }), gaugeLength: 40, parallelLength: 48 };
    const { record } = simulateTension({
      material: {
        modulus: 206_000,
        yieldStress,
        hardening: { law: 'swift', prestrain: 0.03, exponent: 0.22 },
        fracture: { extension: 0.3 },
      },
      piece,
      frame: { compliance: 2e-5, slack: 0.2 },
      hand: { speed: 0.1, speedAfterYield: 0.3 },
      logger: { rate: 10, forceNoise: 10, lead: 1, tail: 1 },
      seed,
    });
    const read = { ...piece, section: round({ diameter: 8 + misread }) };
    return analyseTension(record, read, { frameCompliance: 2e-5, test: { identity: `${name} ${k + 1}`, operator: name, invented: true } });
  });
}
const tests = groups.map(testsOf);

const study = required(
  interlaboratoryStudy(groups.map(({ name }, g) => ({ name, values: tests[g].map(({ tensileStrength }) => tensileStrength.value) }))),
);
console.log('group         mean/MPa  s/MPa      h      k');
for (const { name, mean, standardDeviation, h, k } of study.groups)
  console.log(name.padEnd(12), mean.toFixed(1).padStart(9), standardDeviation.toFixed(1).padStart(6), h.toFixed(2).padStart(6), k.toFixed(2).padStart(6)); // prettier-ignore
console.log(
  `one group repeats to ${study.repeatability.toFixed(1)} MPa, groups differ by ${study.reproducibility.toFixed(1)} MPa (one standard deviation)`,
);
for (const { message } of study.findings) console.log(message);

// without the group that misread: the class as one
const { properties, findings } = analyseReplicates(tests.filter((_, g) => groups[g].misread === 0).flat());
for (const { symbol, unit, summary, tolerance } of properties.filter((one) => ['Rp0.2', 'Rm'].includes(one.symbol)))
  console.log(
    `${symbol}: ${summary.mean.toFixed(1)} ± ${summary.interval.halfWidth.toFixed(1)} ${unit} (n = ${summary.n}),`,
    `nine in ten pieces above ${tolerance.lower.toFixed(0)} ${unit}`,
  );
for (const { message } of findings) console.log(message);
