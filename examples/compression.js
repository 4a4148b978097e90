/** A compression test with friction at its ends: yield strength, flow curve, and what the barrel says. The record is invented, made by the simulation. */
import { analyseCompression, round } from 'testpiece';
import { simulateCompression } from 'testpiece/simulate';

const piece = { section: round({ diameter: 10 }), height: 15 };
const { record, truth } = simulateCompression({
  material: { modulus: 70_000, yieldStress: 220, hardening: { law: 'swift', prestrain: 0.02, exponent: 0.2 } },
  piece,
  friction: 0.1,
  bulge: 1.06,
  frame: { compliance: 4e-6, slack: 0.05 },
  logger: { rate: 50, forceNoise: 10, motionNoise: 2e-4 },
});

// this logger counts compression as negative: the signs are turned, and a finding says so
const negative = { ...record, force: record.force.map((force) => -force) };
const measured = { ...piece, afterTest: truth.afterTest };
const options = { frameCompliance: 4e-6, strains: [0.05, 0.1, 0.2] };
const raw = analyseCompression(negative, measured, options);
const result = analyseCompression(negative, measured, { ...options, friction: 0.1 });

for (const { symbol, value, unit } of [result.modulus, ...result.proofStrengths, ...result.stressesAtStrain])
  console.log(symbol, value.toFixed(0), unit);
console.log(
  'flow stress at the end',
  raw.flowCurve.stress.at(-1).toFixed(0),
  'MPa with friction,',
  result.flowCurve.stress.at(-1).toFixed(0),
  'without',
);
console.log('true', truth.flowStress.toFixed(0), 'MPa; bulge', result.bulgeRatio.value.toFixed(2));
console.log(result.findings.map(({ code }) => code).join('\n'));
