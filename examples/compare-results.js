/** Two results property by property: two bars of a class, and one record evaluated twice. The records are invented, made by the simulation. */
import { analyseTension, compareResults, fromJson, round, toJson } from 'testpiece';
import { simulateTension } from 'testpiece/simulate';

const piece = { section: round({ diameter: 8 }), gaugeLength: 40, parallelLength: 48 };
const recordOf = (yieldStress, seed) =>
  simulateTension({
    material: { modulus: 206_000, yieldStress, hardening: { law: 'swift', prestrain: 0.03, exponent: 0.22 }, fracture: { extension: 0.3 } },
    piece,
    hand: { speed: 0.02, speedAfterYield: 0.2 },
    logger: { rate: 20, extensometer: true, forceNoise: 8, motionNoise: 2e-4 },
    seed,
  }).record;
const uncertainty = { force: 0.005, section: { diameter: 0.01 }, displacement: 0.005 };
const options = { uncertainty, test: { identity: 'bar 1', invented: true } };
const first = analyseTension(recordOf(285, 41), piece, options);
const second = analyseTension(recordOf(297, 42), piece, { ...options, test: { identity: 'bar 2', invented: true } });

const show = ({ properties, differences, findings }) => {
  for (const { symbol, unit, first: a, second: b, inUncertainties: z } of properties.filter((one) =>
    ['E', 'Rp0.2', 'Rm'].includes(one.symbol),
  ))
    console.log(`  ${symbol}: ${a.toFixed(1)} and ${b.toFixed(1)} ${unit}, ${z.toFixed(1)} standard uncertainties`);
  console.log('  differs:', differences.map(({ of, name }) => `${of} (${name})`).join(', ') || 'nothing');
  for (const { code, severity, values } of findings.filter((one) => one.severity !== 'note'))
    console.log(`  ${severity}: ${code} ${values.symbol}`);
};
console.log('two bars');
show(compareResults(first, second));

console.log('one record, another window of the elastic line');
const stretch = { window: { by: 'stress', from: 50, to: 150 } };
show(compareResults(first, analyseTension(recordOf(285, 41), piece, { ...options, modulus: stretch })));

console.log('a result from an archive, and the same made anew');
const archive = toJson(first);
show(compareResults(fromJson(archive), analyseTension(recordOf(285, 41), piece, options)));
