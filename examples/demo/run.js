/** `npm run demo`: records as the class's logger would write them, read back, analysed, a report each, and the truth beside the result. */
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { analyseTension, pressureToForce, readRecord, toJson } from 'testpiece';
import { drawFigures } from 'testpiece/render';
import { figures, renderHtml } from 'testpiece/report';
import { simulateTension } from 'testpiece/simulate';
import { asLogged, frame, pieces } from './class.js';

const folder = 'demo-output';
mkdirSync(folder, { recursive: true });

const percent = (value) => (value === undefined ? '-' : (100 * value).toFixed(2));
const megapascal = (value) => (value === undefined ? '-' : value.toFixed(1));
const rows = [];

for (const { name, about, ...scenario } of pieces) {
  const { pressureRecord, truth } = simulateTension(scenario);
  const file = `${folder}/${name}.csv`;
  writeFileSync(file, asLogged(pressureRecord, about));

  const { record } = readRecord(readFileSync(file));
  const result = analyseTension(
    pressureToForce(record, { bore: frame.bore, rod: frame.rod }),
    { ...scenario.piece, afterFracture: truth.afterFracture },
    {
      frameCompliance: frame.compliance,
      test: { identity: name, material: about, operator: 'apprentices of the class (invented)', invented: true },
    },
  );
  const page = renderHtml(result, { drawings: await drawFigures(figures(result)) });
  writeFileSync(`${folder}/${name}.html`, page);
  writeFileSync(`${folder}/${name}.json`, toJson(result));

  const compare = (what, unit, found, known) => rows.push([name, what, unit, found, known]);
  compare('E', 'GPa', result.modulus === undefined ? '-' : (result.modulus.value / 1000).toFixed(1), (truth.modulus / 1000).toFixed(1));
  if (truth.upperYieldStrength !== undefined)
    compare('ReH', 'MPa', megapascal(result.upperYieldStrength?.value), megapascal(truth.upperYieldStrength));
  if (truth.lowerYieldStrength !== undefined)
    compare('ReL', 'MPa', megapascal(result.lowerYieldStrength?.value), megapascal(truth.lowerYieldStrength));
  compare('Rp0.2', 'MPa', megapascal(result.proofStrengths[0]?.value), megapascal(truth.proofStrengths[0]?.stress));
  compare('Rm', 'MPa', megapascal(result.tensileStrength.value), megapascal(truth.tensileStrength));
  compare('Ag', '%', percent(result.uniformExtension?.value), percent(truth.uniformExtension));
  compare('At', '%', percent(result.totalExtensionAtFracture?.value), percent(truth.totalExtensionAtFracture));
  compare('A', '%', percent(result.elongationAfterFracture?.value), percent(truth.elongationAfterFracture));
  compare('Z', '%', percent(result.reductionOfArea?.value), percent(truth.reductionOfArea));
}

console.log("Invented data: an apprentices' class in a bicycle-frame workshop, 25 kN hand-pumped bench frame.\n");
console.log(['piece'.padEnd(18), 'value'.padEnd(6), 'unit'.padEnd(4), 'found'.padStart(8), 'truth'.padStart(8)].join('  '));
let before = '';
for (const [name, what, unit, found, known] of rows) {
  console.log([(name === before ? '' : name).padEnd(18), what.padEnd(6), unit.padEnd(4), found.padStart(8), known.padStart(8)].join('  '));
  before = name;
}
console.log(`\nLook at ${folder}/*.html: a report for each piece; the records stand beside them as .csv, the results as .json.`);
