import { Command } from 'commander';
import { extname } from 'node:path';
import type { PressureRecord, TensionRecord, UnbrokenPiece } from '../base/index.js';
import type { MaterialFamilyKey } from '../materials/index.js';
import { randomNumbers } from '../numeric/index.js';
import { simulateTension, usualMaterials, usualScenario, writeRecord, type WrittenColumn } from '../simulate/index.js';
import { familyOption } from './familyFlag.js';
import { numberOption, some } from './flags.js';
import { asJson } from './jobFlags.js';
import { requireGiven } from './requireFlags.js';
import { sectionFromFlags, withSectionFlags, type SectionFlags } from './sectionOptions.js';
import type { Session } from './session.js';
import { simulateTable } from './simulateTable.js';
import { readerOf, withTableFlags, type TableFlags } from './testFlags.js';
import { usage } from './usage.js';
import { requireFree, writeFiles } from './writeFiles.js';

/** Flags of the command, as they were typed. */
interface SimulateFlags extends SectionFlags, TableFlags {
  readonly family: MaterialFamilyKey;
  readonly gaugeLength: number;
  readonly parallelLength?: number;
  readonly extensometerLength?: number;
  readonly frameCompliance?: number;
  readonly slack?: number;
  readonly bore?: number;
  readonly rod?: number;
  readonly strokes?: number;
  readonly seed?: number;
  readonly json?: true;
  readonly overwrite?: true;
}

/** A frame of the bench, where nothing else is stated [mm/N]. */
const COMPLIANCE = 2e-5;

const columns: readonly WrittenColumn[] = [
  { quantity: 'time', name: 'Time', unit: 's', decimals: 3 },
  { quantity: 'force', name: 'Load', unit: 'N', decimals: 1 },
  { quantity: 'pressure', name: 'Pressure', unit: 'bar', decimals: 3 },
  { quantity: 'travel', name: 'Travel', unit: 'mm', decimals: 4 },
  { quantity: 'extension', name: 'Extension', unit: 'mm', decimals: 4 },
];

const pieceOf = (flags: SimulateFlags): UnbrokenPiece => ({
  section: sectionFromFlags(flags),
  gaugeLength: flags.gaugeLength,
  ...some('parallelLength', flags.parallelLength),
  ...some('extensometerLength', flags.extensometerLength),
});

/** The scenario that the flags describe, at the usual pace and with the noise of a usual logger; where in its family the metal lies is drawn by the seed. */
function scenarioOf(flags: SimulateFlags) {
  const { make } = usualMaterials.find(({ family }) => family === flags.family)!;
  const seed = flags.seed ?? 1;
  const random = randomNumbers(seed);
  return usualScenario({
    curve: make(random.uniform(), random.uniform()),
    piece: pieceOf(flags),
    frame: {
      compliance: flags.frameCompliance ?? COMPLIANCE,
      ...some('slack', flags.slack),
      ...some('bore', flags.bore),
      ...some('rod', flags.rod),
    },
    extensometer: flags.extensometerLength !== undefined,
    hand: { ...some('strokes', flags.strokes) },
    random,
    seed,
  });
}

/** The record as the text of a logger, marked as invented. */
function fileOf(record: TensionRecord | PressureRecord, { family, seed = 1 }: SimulateFlags): string {
  return writeRecord(record, {
    columns: columns.filter(({ quantity }) => quantity in record),
    preamble: [`Invented data: a simulated tension test of ${family}, seed ${seed}`],
  });
}

/** The command `simulate`: an invented tension test as the file of a logger, and what is true of it. */
export function simulateCommand(session: Session): Command {
  const command = new Command('simulate')
    .description(
      'An invented tension test: writes the file of a logger, and beside it what is true of the test as JSON, to practise with or to try an evaluation on.',
    )
    .argument('<file>', 'file to write, for example practice.csv; the truth goes into practice.truth.json')
    .addOption(
      familyOption(
        'family of the metal; must be given',
        usualMaterials.map(({ family }) => family),
      ).makeOptionMandatory(),
    );
  withSectionFlags(command, true)
    .addOption(numberOption('--gauge-length <L0>', 'original gauge length [mm]; must be given').makeOptionMandatory())
    .addOption(numberOption('--parallel-length <Lc>', 'parallel length [mm]; default the gauge length'))
    .addOption(numberOption('--extensometer-length <Le>', 'base of an extensometer [mm], on until fracture; default none'))
    .optionsGroup('Frame:')
    .addOption(numberOption('--frame-compliance <C>', `compliance of the frame [mm/N]; default ${COMPLIANCE}`))
    .addOption(numberOption('--slack <x>', 'slack before the train takes force [mm]; default 0'))
    .addOption(numberOption('--bore <D>', 'bore of the cylinder [mm]; with it the file holds oil pressure'))
    .addOption(numberOption('--rod <d>', 'rod [mm], where the rod side pulls'))
    .addOption(numberOption('--strokes <n>', 'strokes of the pump a minute, which pulse; default an even drive'))
    .optionsGroup('File:')
    .addOption(numberOption('--seed <n>', 'a whole number: another one is another metal of the family and another noise; default 1'))
    .option('--overwrite', 'replace existing files')
    .optionsGroup('For scripts:')
    .option('--json', 'the truth as JSON on standard output too, in place of the table');
  withTableFlags(command.optionsGroup('Report:')).addHelpText(
    'after',
    `
Example:
  testpiece simulate practice.csv --family structural-steel --round 8 --gauge-length 40 --parallel-length 48 --bore 40 --rod 20 --seed 7
  testpiece report practice.csv --bore 40 --rod 20 --round 8 --gauge-length 40 --parallel-length 48 --frame-compliance 2e-5 --invented
`,
  );
  return command.action(async (file: string, flags: SimulateFlags) => {
    if (extname(file) === '') throw usage(`${file} must have an ending, for example ${file}.csv`);
    if (extname(file) === '.json') throw usage(`${file} must not end in .json: it is the file of a logger`);
    requireGiven(flags.bore === undefined && flags.rod !== undefined ? ['--bore with --rod'] : []);
    const truthFile = `${file.slice(0, -extname(file).length)}.truth.json`;
    const overwrite = flags.overwrite === true;
    await requireFree([file, truthFile], overwrite);
    const scenario = scenarioOf(flags);
    const { record, pressureRecord, truth } = simulateTension(scenario);
    const json = asJson([{ invented: true, family: flags.family, truth, scenario }], false);
    await writeFiles({ [file]: fileOf(pressureRecord ?? record, flags), [truthFile]: json }, overwrite);
    session.out(flags.json === true ? json : simulateTable(truth, [file, truthFile], readerOf(flags)));
  });
}
