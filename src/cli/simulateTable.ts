import { presentation, shownUnit, type PresentationOptions } from '../report/index.js';
import type { SimulatedTruth } from '../simulate/index.js';
import { columnsOf, fill } from './padded.js';

type Unit = 'MPa' | 'N' | 'mm' | '1' | 'mm²';
type True = readonly [symbol: string, value: number | undefined, unit: Unit, name: string];

/** What is true of a test, in the order of a report. */
const valuesOf = (truth: SimulatedTruth): readonly True[] => [
  ['E', truth.modulus, 'MPa', 'modulus of elasticity'],
  ...truth.proofStrengths.map(({ offset, stress }): True => [
    `Rp${Number((100 * offset).toPrecision(6))}`,
    stress,
    'MPa',
    'proof strength, plastic extension',
  ]),
  ['ReH', truth.upperYieldStrength, 'MPa', 'upper yield strength'],
  ['ReL', truth.lowerYieldStrength, 'MPa', 'lower yield strength'],
  ['Ae', truth.yieldPointExtension, '1', 'yield point extension'],
  ['Fm', truth.maximumForce, 'N', 'maximum force'],
  ['Rm', truth.tensileStrength, 'MPa', 'tensile strength'],
  ['Ag', truth.uniformExtension, '1', 'plastic extension at maximum force'],
  ['Agt', truth.totalExtensionAtMaximumForce, '1', 'total extension at maximum force'],
  ['At', truth.totalExtensionAtFracture, '1', 'total extension at fracture'],
  ['A', truth.elongationAfterFracture, '1', 'elongation after fracture'],
  ['Z', truth.reductionOfArea, '1', 'reduction of area'],
];

/** The truth of a simulated test as text for a terminal, and the files that were written. */
export function simulateTable(truth: SimulatedTruth, files: readonly string[], reader: PresentationOptions): string {
  const show = presentation('simulateTable', reader);
  const rows = valuesOf(truth).flatMap(([symbol, value, unit, name]) => {
    if (value === undefined) return [];
    const shown = show.unit(shownUnit(symbol, unit));
    return [[symbol, show.number(value * shown.factor, 4), shown.unit, show.term(name)] as const];
  });
  const [first, second, third] = [0, 1, 2].map((k) => Math.max(...rows.map((row) => columnsOf(row[k]!))));
  const all = [
    show.say('Invented data.'),
    show.say('What is true of the test, by the model that made it'),
    ...rows.map(
      ([symbol, text, unit, name]) => `  ${fill(symbol, first!)}  ${fill(text, second!, 'right')} ${fill(unit, third!)}  ${name}`,
    ),
    '',
    ...files.map((file) => `  ${file}`),
  ];
  return `${all.join('\n')}\n`;
}
