/** A pin in double shear, simulated (invented data): strength, ratio to the tensile strength, and what stands in doubt. */
import { analyseShear } from 'testpiece';
import { summarise } from 'testpiece/report';
import { simulateShear } from 'testpiece/simulate';

const { record, truth } = simulateShear({
  strength: 310,
  diameter: 8,
  planes: 2,
  push: { compliance: 2e-5, forceNoise: 15, rate: 50 },
});
const result = analyseShear(
  record,
  { diameter: 8, planes: 2, clearance: 0.25 },
  { tensileStrength: 450, family: 'steel', test: { identity: 'pin 1', invented: true } },
);
for (const { symbol, text, unit } of summarise(result)) console.log(symbol, text, unit);
console.log('true shear strength', truth.shearStrength, 'MPa');
for (const { severity, message } of result.findings) console.log(`${severity}: ${message}`);
