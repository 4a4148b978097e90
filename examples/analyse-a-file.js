/** A logger's text becomes properties and findings. The record is invented, made by the simulation. */
import { analyseTension, pressureToForce, readRecord, round } from 'testpiece';
import { simulateTension, writeRecord } from 'testpiece/simulate';

const piece = { section: round({ diameter: 8 }), gaugeLength: 40, parallelLength: 48 };
const { pressureRecord } = simulateTension({
  material: {
    modulus: 206_000,
    yieldStress: 285,
    hardening: { law: 'swift', prestrain: 0.03, exponent: 0.22 },
    fracture: { extension: 0.3 },
  },
  piece,
  frame: { bore: 40, rod: 20, compliance: 2e-5, slack: 0.3 },
  logger: { rate: 20, lead: 1, tail: 1 },
});
const text = writeRecord(pressureRecord, {
  columns: [
    { quantity: 'time', name: 'Time', unit: 's', decimals: 2 },
    { quantity: 'pressure', name: 'Pressure', unit: 'bar', decimals: 3 },
    { quantity: 'travel', name: 'Travel', unit: 'mm', decimals: 4 },
  ],
});

const { record, reading } = readRecord(text);
console.log(reading.columns.map(({ name, unit, quantity }) => `${name} [${unit}] is ${quantity}`).join(', '));
const result = analyseTension(pressureToForce(record, { bore: 40, rod: 20 }), piece, { frameCompliance: 2e-5 });
for (const quantity of [result.modulus, result.proofStrengths[0], result.tensileStrength])
  console.log(quantity.symbol, quantity.value.toFixed(0), quantity.unit);
console.log(result.findings.map(({ code }) => code).join('\n'));
