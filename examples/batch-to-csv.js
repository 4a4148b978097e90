/** A folder of records becomes one table as CSV: a row a file, the bad one named and left out. The records are invented, made by the simulation. */
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { analyseTension, exportCsv, isInputError, readRecord, round } from 'testpiece';
import { simulateTension } from 'testpiece/simulate';

const piece = { section: round({ diameter: 8 }), gaugeLength: 40, parallelLength: 48 };
const folder = mkdtempSync(join(tmpdir(), 'class-'));

// the bars of the class, as their logger would leave them
for (const [k, yieldStress] of [281, 288, 284, 292].entries()) {
  const { record } = simulateTension({
    material: { modulus: 206_000, yieldStress, hardening: { law: 'swift', prestrain: 0.03, exponent: 0.22 }, fracture: { extension: 0.3 } },
    piece,
    frame: { compliance: 2e-5, slack: 0.3 },
    logger: { rate: 10, forceNoise: 8, lead: 1, tail: 1 },
    seed: 30 + k,
  });
  const { time, force, travel } = record;
  writeFileSync(
    join(folder, `bar-${k + 1}.csv`),
    exportCsv({ time, force, travel }, { provenance: { Data: 'invented, made by a simulation' } }),
  );
}
writeFileSync(join(folder, 'bar-5.csv'), 'the logger was not switched on\n');

const results = [];
for (const name of readdirSync(folder).sort()) {
  try {
    const { record } = readRecord(readFileSync(join(folder, name)));
    results.push(analyseTension(record, piece, { frameCompliance: 2e-5, test: { identity: name, invented: true } }));
  } catch (error) {
    // one bad file does not stop the others; an error that is not about the file does
    if (!isInputError(error)) throw error;
    console.log(`${name}: ${error.code}`);
  }
}
rmSync(folder, { recursive: true });

/** A column of the table; a value that a test does not carry is NaN, which becomes an empty cell. */
const column = (of, decimals) => results.map((result) => Number((of(result)?.value ?? NaN).toFixed(decimals)));
const table = {
  piece: results.map(({ test }) => test.identity),
  modulus: column(({ modulus }) => modulus, 0),
  proofStrength: column(({ proofStrengths }) => proofStrengths[0], 1),
  tensileStrength: column(({ tensileStrength }) => tensileStrength, 1),
  elongation: column(({ elongationAfterFracture }) => elongationAfterFracture, 3),
  faults: results.map(({ findings }) => findings.filter(({ severity }) => severity === 'fault').length),
  cautions: results.map(({ findings }) => findings.filter(({ severity }) => severity === 'caution').map(({ code }) => code).join(' ')), // prettier-ignore
};
const units = { modulus: 'MPa', proofStrength: 'MPa', tensileStrength: 'MPa', elongation: '1' };
console.log(exportCsv(table, { units, provenance: { data: 'invented' } }));
