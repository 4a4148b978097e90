/** `npm run study:real -- DIR`: the measured records of a folder, in their own layouts, against what their laboratories reported. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { analyseTension, readRecord, reductionOfArea, round, sectionFromArea, type TestPiece } from '../src/index.js';

interface Reported {
  readonly piece: TestPiece;
  /** Reported value and accepted deviation: a share for strengths and E, points for A and Z. */
  readonly values: readonly (readonly [what: string, reported: number, accepted: number])[];
}

const s355 = (area: number): TestPiece => ({ section: sectionFromArea({ area }), gaugeLength: 60, extensometerLength: 50 });
const steel42 = (diameter: number, final: number): TestPiece => ({
  section: round({ diameter }),
  gaugeLength: 25,
  parallelLength: 30,
  afterFracture: { area: final },
});

const records: Readonly<Record<string, Reported>> = {
  's355-Zx2': {
    piece: { ...s355(120.444), afterFracture: { gaugeLength: 81, area: 3.38 * 14.67 } },
    values: [
      ['ReH', 379, 0.005],
      ['Rp0.2', 374, 0.005],
      ['Rm', 504, 0.001],
      ['E', 199_000, 0.03],
      ['Z', 0.59, 0.005],
    ],
  },
  's355-Zy1': {
    piece: s355(120.679),
    values: [
      ['ReH', 399, 0.005],
      ['Rp0.2', 396, 0.005],
      ['Rm', 508, 0.001],
      ['E', 210_000, 0.03],
    ],
  },
  '42crmos4-46NT75': {
    piece: steel42(5.013, 8.408460170962467),
    values: [
      ['Rp0.2', 1131.9124, 0.005],
      ['Rm', 1199.3096, 0.001],
      ['E', 205_699.7, 0.08],
      ['Ag', 0.04955, 0.001],
      ['Z', 0.573979, 0.0005],
    ],
  },
  '42crmos4-46NT79': {
    piece: steel42(5.015, 8.719666339227071),
    values: [
      ['Rp0.2', 1131.1039, 0.005],
      ['Rm', 1197.1838, 0.001],
      ['E', 199_824.7, 0.08],
      ['Ag', 0.05565, 0.001],
      ['Z', 0.558564, 0.0005],
    ],
  },
};

const folder = process.argv[2];
if (folder === undefined) {
  console.error('study:real needs the folder with the measured records');
  process.exit(2);
}
console.log('| record | value | found | reported | deviation | accepted | |\n| --- | --- | --- | --- | --- | --- | --- |');
let missed = 0;
for (const file of readdirSync(folder).filter((name) => name.endsWith('.csv'))) {
  const known = records[file.replace(/\.csv$/, '')];
  if (!known) continue;
  const { record } = readRecord(readFileSync(join(folder, file)));
  if (!('force' in record)) continue;
  const result = analyseTension(record, known.piece);
  const found: Readonly<Record<string, number | undefined>> = {
    ReH: result.upperYieldStrength?.value,
    'Rp0.2': result.proofStrengths[0]?.value,
    Rm: result.tensileStrength!.value,
    E: result.modulus?.value,
    Ag: result.uniformExtension?.value,
    Z:
      known.piece.afterFracture?.area === undefined
        ? undefined
        : reductionOfArea({ originalArea: known.piece.section.area, finalArea: known.piece.afterFracture.area }),
  };
  for (const [what, reported, accepted] of known.values) {
    const value = found[what] ?? NaN;
    const points = what === 'Ag' || what === 'Z';
    const deviation = points ? value - reported : value / reported - 1;
    const ok = Math.abs(deviation) <= accepted;
    if (!ok) missed += 1;
    const shown = (one: number): string => `${(100 * one).toFixed(3)} ${points ? 'points' : '%'}`;
    console.log(
      `| ${file} | ${what} | ${value.toPrecision(6)} | ${reported} | ${shown(deviation)} | ${shown(accepted)} | ${ok ? 'within' : 'OUTSIDE'} |`,
    );
  }
}
process.exitCode = missed > 0 ? 1 : 0;
