import { Command, Option } from 'commander';
import { readFile } from 'node:fs/promises';
import { basename, dirname, extname, join } from 'node:path';
import { InputError, required, type PressureRecord, type TensionRecord, type TestPiece } from '../base/index.js';
import type { Compliance } from '../curve/index.js';
import { applyCalibration, fitCalibration, pressureToForce } from '../force/index.js';
import { analyseTension, toJson, type TestInfo } from '../methods/index.js';
import { readRecord, type ReadOptions, type ReadResult } from '../record/index.js';
import { drawFigures } from '../render/index.js';
import { figures, renderHtml, summarise } from '../report/index.js';
import { resultTable } from './resultTable.js';
import { sectionOf, type SectionFlags } from './sectionOptions.js';
import { requireFree, writeFiles } from './writeFiles.js';

/** Flags of the command, as they were typed. */
interface ReportFlags extends SectionFlags {
  readonly gaugeLength: number;
  readonly parallelLength?: number;
  readonly extensometerLength?: number;
  readonly effectiveLength?: number;
  readonly finalGaugeLength?: number;
  readonly finalArea?: number;
  readonly finalDiameter?: number;
  readonly offsets?: readonly number[];
  readonly totalExtensions?: readonly number[];
  readonly frameCompliance?: number;
  readonly frameTable?: string;
  readonly bore?: number;
  readonly rod?: number;
  readonly efficiency?: number;
  readonly tareForce?: number;
  readonly calibration?: string;
  readonly unit: readonly string[];
  readonly column: readonly string[];
  readonly decimal?: '.' | ',';
  readonly separator?: string;
  readonly identity?: string;
  readonly material?: string;
  readonly operator?: string;
  readonly date?: string;
  readonly temperature?: number;
  readonly standard?: string;
  readonly remarks?: string;
  readonly invented?: true;
  readonly output?: string;
  readonly overwrite?: true;
}

const toNumber = (text: string): number => {
  const value = text.trim() === '' ? NaN : Number(text);
  if (!Number.isFinite(value)) throw new InputError('report', 'option', 'not-finite', 'must be a number with a decimal point', text);
  return value;
};
/** Strains as ratios or with a per cent sign, separated by commas. */
const toStrains = (text: string): number[] =>
  text.split(',').map((one) => (one.trim().endsWith('%') ? toNumber(one.trim().slice(0, -1)) / 100 : toNumber(one)));
const collected = (text: string, before: readonly string[]): string[] => [...before, text];

/** `force=kN` and the like as an object. */
function pairs(flag: string, given: readonly string[]): Record<string, string> {
  return Object.fromEntries(
    given.map((text) => {
      const at = text.indexOf('=');
      if (at < 1) throw new InputError('report', flag, 'wrong-type', 'must be of the form quantity=value, for example force=kN', text);
      return [text.slice(0, at), text.slice(at + 1)];
    }),
  );
}

/** A flag that is there, under another name. */
const some = <Name extends string, Value>(name: Name, value: Value | undefined): Partial<Record<Name, Value>> =>
  (value === undefined ? {} : { [name]: value }) as Partial<Record<Name, Value>>;

function readOptions(flags: ReportFlags): ReadOptions {
  const units = pairs('--unit', flags.unit);
  const columns = pairs('--column', flags.column);
  const separator = flags.separator === 'tab' ? '\t' : flags.separator === 'space' ? ' ' : flags.separator;
  return {
    ...some('decimal', flags.decimal),
    ...some('separator', separator as ReadOptions['separator']),
    ...(flags.unit.length > 0 ? { units: units } : {}),
    ...(flags.column.length > 0
      ? { columns: Object.fromEntries(Object.entries(columns).map(([name, one]) => [name, /^\d+$/.test(one) ? Number(one) : one])) }
      : {}),
    ...some('length', flags.extensometerLength),
  };
}

/** Force of the record: as it is, by calibration, or from pressure by the cylinder. */
async function withForce(record: ReadResult['record'], flags: ReportFlags): Promise<TensionRecord> {
  if (flags.calibration !== undefined) {
    const table = await twoColumns(flags.calibration);
    const calibration = required(fitCalibration({ indicated: table[0], reference: table[1] }));
    const { pressure, force, ...others } = record as TensionRecord & PressureRecord;
    return { force: applyCalibration(calibration, 'pressure' in record ? pressure : force), ...others };
  }
  if ('force' in record) return record;
  if (flags.bore === undefined)
    throw new InputError('report', '--bore', 'missing', 'or --calibration must be given: the file holds pressure', undefined);
  return pressureToForce(record, {
    bore: flags.bore,
    ...some('rod', flags.rod),
    ...some('efficiency', flags.efficiency),
    ...some('tareForce', flags.tareForce),
  });
}

/** Two columns of numbers from a file; other lines are left out. */
async function twoColumns(path: string): Promise<readonly [number[], number[]]> {
  const rows = (await readFile(path, 'utf8')).split(/\r?\n/).map((line) =>
    line
      .trim()
      .split(/[;\t ]+/)
      .map((one) => Number(one.replace(',', '.'))),
  );
  const numeric = rows.filter((row) => row.length === 2 && row.every(Number.isFinite));
  return [numeric.map(([x]) => x!), numeric.map(([, y]) => y!)];
}

/** Compliance of the frame: a number, or a table of its motion over the force. */
async function complianceOf(flags: ReportFlags): Promise<Compliance | undefined> {
  if (flags.frameTable === undefined) return flags.frameCompliance;
  const [force, travel] = await twoColumns(flags.frameTable);
  return { force, travel };
}

function pieceOf(flags: ReportFlags): TestPiece {
  const area = flags.finalArea ?? (flags.finalDiameter === undefined ? undefined : (Math.PI * flags.finalDiameter ** 2) / 4);
  return {
    section: sectionOf(flags),
    gaugeLength: flags.gaugeLength,
    ...some('parallelLength', flags.parallelLength),
    ...some('extensometerLength', flags.extensometerLength),
    ...some('effectiveLength', flags.effectiveLength),
    ...(area === undefined && flags.finalGaugeLength === undefined
      ? {}
      : { afterFracture: { ...some('gaugeLength', flags.finalGaugeLength), ...some('area', area) } }),
  };
}

async function report(file: string, flags: ReportFlags, out: (text: string) => void): Promise<void> {
  const piece = pieceOf(flags);
  const stem = join(flags.output ?? dirname(file), basename(file, extname(file)));
  const pagePath = `${stem}.report.html`;
  const dataPath = `${stem}.report.json`;
  await requireFree([pagePath, dataPath], flags.overwrite === true);
  const { record } = readRecord(await readFile(file), readOptions(flags));
  const test: TestInfo = {
    identity: flags.identity ?? basename(file),
    ...some('material', flags.material),
    ...some('operator', flags.operator),
    ...some('date', flags.date),
    ...some('temperature', flags.temperature),
    ...some('standard', flags.standard),
    ...some('remarks', flags.remarks),
    ...some('invented', flags.invented),
  };
  const result = analyseTension(await withForce(record, flags), piece, {
    test,
    ...some('offsets', flags.offsets),
    ...some('totalExtensions', flags.totalExtensions),
    ...some('frameCompliance', await complianceOf(flags)),
  });
  const page = renderHtml(result, { drawings: await drawFigures(figures(result)) });
  await writeFiles({ [pagePath]: page, [dataPath]: toJson(result) }, flags.overwrite === true);
  out(`${resultTable(summarise(result), result.findings)}\n  ${pagePath}\n  ${dataPath}\n`);
}

/** The command `report`: a logger's file becomes a table, a page and data. */
export function reportCommand(out: (text: string) => void): Command {
  const number = (flags: string, description: string): Option => new Option(flags, description).argParser(toNumber);
  const command = new Command('report')
    .description('A tension test from the file of a logger: results in the terminal, page and JSON beside the file.')
    .argument('<file>', 'delimited text as the logger wrote it')
    .option('--round <d>', 'diameter [mm]; several readings as 8.01,8.00,7.99')
    .option('--rectangular <bxa>', 'width x thickness [mm], for example 12.5x3')
    .option('--square <a>', 'side [mm]')
    .option('--hexagon <f>', 'width across flats [mm]')
    .option('--tube <Dxa>', 'outer diameter x wall [mm]')
    .option('--tube-strip <bxDxa>', 'width x outer diameter x wall of a strip cut from a tube [mm]')
    .option('--mass <mxLxrho>', 'mass [g] x length [mm] x density [g/cm³]')
    .option('--area <S0>', 'area of the section [mm²]')
    .addOption(number('--gauge-length <L0>', 'original gauge length [mm]').makeOptionMandatory())
    .addOption(number('--parallel-length <Lc>', 'parallel length [mm]'))
    .addOption(number('--extensometer-length <Le>', 'base of the extensometer [mm]; default the gauge length'))
    .addOption(number('--effective-length <Leff>', 'length that stretches elastically, fillets included [mm]'))
    .addOption(number('--final-gauge-length <Lu>', 'gauge length after fracture [mm]'))
    .addOption(number('--final-area <Su>', 'least area after fracture [mm²]'))
    .addOption(number('--final-diameter <du>', 'least diameter after fracture of a round piece [mm]').conflicts('finalArea'))
    .addOption(new Option('--offsets <list>', 'plastic extensions, for example 0.1%,0.2%').argParser(toStrains))
    .addOption(new Option('--total-extensions <list>', 'total extensions, for example 0.5%').argParser(toStrains))
    .addOption(number('--frame-compliance <C>', 'compliance of the frame [mm/N], taken out of travel'))
    .addOption(
      new Option('--frame-table <file>', 'the same as two columns: force [N], motion of the frame [mm]').conflicts('frameCompliance'),
    )
    .addOption(number('--bore <D>', 'bore of the cylinder [mm], for files of pressure'))
    .addOption(number('--rod <d>', 'rod [mm], where the rod side pulls'))
    .addOption(number('--efficiency <eta>', 'force over pressure times area'))
    .addOption(number('--tare-force <F>', 'force to take off [N]'))
    .option('--calibration <file>', 'two columns: what the channel indicated [MPa or N], reference force [N]')
    .option('--unit <quantity=unit>', 'unit of a column where the file has none; may be repeated', collected, [])
    .option('--column <quantity=name>', 'which column serves; may be repeated', collected, [])
    .addOption(new Option('--decimal <sign>', 'decimal sign').choices(['.', ',']))
    .addOption(new Option('--separator <sign>', 'separator of cells').choices([';', ',', '|', 'tab', 'space']))
    .option('--identity <text>', 'name of the test piece; default the name of the file')
    .option('--material <text>', 'material')
    .option('--operator <text>', 'who ran the test')
    .option('--date <text>', 'date of the test')
    .addOption(number('--temperature <T>', 'test temperature [°C]'))
    .option('--standard <text>', 'standard that the test claims to follow')
    .option('--remarks <text>', 'anything else')
    .option('--invented', 'the data are invented: the page says so')
    .option('--output <folder>', 'folder for page and data; default that of the file')
    .option('--overwrite', 'replace an existing report')
    .addHelpText('after', '\nExample:\n  testpiece report pull-07.csv --round 8 --gauge-length 40 --parallel-length 48\n');
  return command.action((file: string, flags: ReportFlags) => report(file, flags, out));
}
