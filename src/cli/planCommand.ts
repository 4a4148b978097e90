import { Argument, Command, Option } from 'commander';
import type { MaterialFamilyKey, UsualRange } from '../materials/index.js';
import {
  planBending,
  planBrinell,
  planCompression,
  planCupping,
  planShear,
  planTension,
  type ExpectedProperties,
  type RateControl,
  type TestFrame,
  type TestPlan,
  type UseOfValues,
} from '../planning/index.js';
import { drawFigures } from '../render/index.js';
import { planFigures, renderPlan } from '../report/index.js';
import { familyOption } from './familyFlag.js';
import { numberOption, rangeOption as range, some, toRatio } from './flags.js';
import { asJson, withJobFlags, type JobFlags } from './jobFlags.js';
import { frameOf, withFrameFlags, type FrameFlags } from './frameFlags.js';
import { planTable } from './planTable.js';
import { requireGiven } from './requireFlags.js';
import { givenSections, ONE_SECTION, sectionFromFlags, withSectionFlags, type SectionFlags } from './sectionOptions.js';
import type { Session } from './session.js';
import { readerOf, withReaderFlags, type ReaderFlags } from './testFlags.js';
import { usage } from './usage.js';
import { requireFree, writeFiles } from './writeFiles.js';

/** Flags of the command, as they were typed. */
interface PlanFlags extends SectionFlags, FrameFlags, ReaderFlags, JobFlags {
  readonly family?: MaterialFamilyKey;
  readonly modulus?: UsualRange;
  readonly yieldStrength?: UsualRange;
  readonly tensileStrength?: UsualRange;
  readonly elongation?: UsualRange;
  readonly gaugeLength?: number;
  readonly parallelLength?: number;
  readonly effectiveLength?: number;
  readonly arbitration?: true;
  readonly extensometerLength?: number;
  readonly extensometerStep?: number;
  readonly control?: RateControl;
  readonly strengthRange?: number;
  readonly samplingRate?: number;
  readonly use?: UseOfValues;
  readonly claimsStandard?: true;
  readonly ball?: number;
  readonly force?: number;
  readonly index?: number;
  readonly hardness?: UsualRange;
  readonly thickness?: number;
  readonly planes?: number;
  readonly span?: number;
  readonly arm?: number;
  readonly height?: number;
  readonly toStrain?: number;
  readonly friction?: number;
  readonly width?: number;
  readonly die?: number;
  readonly depth?: number;
  readonly page?: string;
  readonly identity?: string;
  readonly invented?: true;
  readonly overwrite?: true;
}

const tests = ['tension', 'brinell', 'shear', 'bending', 'compression', 'cupping'] as const;
type PlannedTest = (typeof tests)[number];

const expectedOf = (flags: PlanFlags): ExpectedProperties => ({
  ...some('modulus', flags.modulus),
  ...some('yieldStrength', flags.yieldStrength),
  ...some('tensileStrength', flags.tensileStrength),
  ...some('elongation', flags.elongation),
});

const plans: Readonly<Record<PlannedTest, (flags: PlanFlags, frame: TestFrame) => TestPlan>> = {
  tension: (flags, frame) =>
    planTension({
      ...some('family', flags.family),
      expected: expectedOf(flags),
      section: sectionFromFlags(flags),
      frame,
      lengths: {
        ...some('gaugeLength', flags.gaugeLength),
        ...some('parallelLength', flags.parallelLength),
        ...some('effectiveLength', flags.effectiveLength),
        ...some('arbitration', flags.arbitration),
      },
      ...(flags.extensometerLength === undefined
        ? {}
        : { extensometer: { length: flags.extensometerLength, ...some('step', flags.extensometerStep) } }),
      ...some('control', flags.control),
      ...some('strengthRange', flags.strengthRange as 2 | 3 | 4 | undefined),
      ...some('samplingRate', flags.samplingRate),
      ...some('use', flags.use),
      ...some('claimsStandard', flags.claimsStandard),
    }),
  brinell: (flags, frame) =>
    planBrinell({
      ballDiameter: flags.ball as number,
      hardness: flags.hardness as UsualRange,
      ...some('force', flags.force),
      ...some('index', flags.index),
      ...some('thickness', flags.thickness),
      frame,
    }),
  shear: (flags, frame) =>
    planShear({
      ...some('family', flags.family),
      expected: expectedOf(flags),
      section: sectionFromFlags(flags),
      ...some('planes', flags.planes as 1 | 2 | undefined),
      frame,
    }),
  bending: (flags, frame) =>
    planBending({
      ...some('family', flags.family),
      expected: expectedOf(flags),
      section: sectionFromFlags(flags),
      span: flags.span as number,
      ...some('arm', flags.arm),
      frame,
    }),
  compression: (flags, frame) =>
    planCompression({
      ...some('family', flags.family),
      expected: expectedOf(flags),
      section: sectionFromFlags(flags),
      height: flags.height as number,
      ...some('toStrain', flags.toStrain),
      ...some('friction', flags.friction),
      frame,
    }),
  cupping: (flags, frame) =>
    planCupping({
      ...some('family', flags.family),
      expected: expectedOf(flags),
      thickness: flags.thickness as number,
      ...some('width', flags.width),
      ...some('ballDiameter', flags.ball),
      ...some('dieDiameter', flags.die),
      ...some('depth', flags.depth),
      frame,
    }),
};

const propertyFlags = { modulus: '--modulus', tensileStrength: '--tensile-strength', elongation: '--elongation' } as const;
/** What a plan must know of the material, where no family says it. */
const properties: Readonly<Record<PlannedTest, readonly (keyof typeof propertyFlags)[]>> = {
  tension: ['modulus', 'tensileStrength', 'elongation'],
  bending: ['modulus', 'tensileStrength'],
  shear: ['tensileStrength'],
  compression: ['modulus', 'tensileStrength', 'elongation'],
  cupping: ['tensileStrength'],
  brinell: [],
};

/** Refuses a plan without what it needs, all of it in one sentence. */
function requirePlanFlags(test: PlannedTest, flags: PlanFlags, frame: Partial<TestFrame>): void {
  const unknown = flags.family === undefined ? properties[test].filter((name) => flags[name] === undefined) : [];
  const without = (...names: (keyof PlanFlags)[]): boolean => names.every((name) => flags[name] === undefined);
  requireGiven([
    ...(test !== 'brinell' && test !== 'cupping' && givenSections(flags).length === 0 ? [ONE_SECTION] : []),
    ...(unknown.length > 0 ? [`--family, or ${unknown.map((name) => propertyFlags[name]).join(' and ')}`] : []),
    ...(test === 'bending' && without('span') ? ['--span'] : []),
    ...(test === 'compression' && without('height') ? ['--height'] : []),
    ...(test === 'cupping' && without('thickness') ? ['--thickness'] : []),
    ...(test === 'brinell' && without('ball') ? ['--ball'] : []),
    ...(test === 'brinell' && without('hardness') ? ['--hardness'] : []),
    ...(test === 'brinell' && without('force', 'index') ? ['--force or --index'] : []),
    ...(frame.capacity === undefined ? ['--capacity, or capacity in the file of --frame'] : []),
  ]);
  if (test === 'brinell' && !without('force') && !without('index')) throw usage('--force and --index must not both be given');
}

async function makePlan(session: Session, test: PlannedTest, flags: PlanFlags): Promise<void> {
  const { page, overwrite = false } = flags;
  if (page !== undefined) await requireFree([page], overwrite);
  const frame = await frameOf(flags);
  requirePlanFlags(test, flags, frame);
  const plan = plans[test](flags, frame);
  if (page !== undefined) {
    const reader = readerOf(flags);
    const drawings = await drawFigures(planFigures(plan, reader));
    const text = renderPlan(plan, {
      drawings,
      ...reader,
      ...some('identity', flags.identity),
      ...some('invented', flags.invented),
      ...some('paper', flags.paper),
    });
    await writeFiles({ [page]: text }, overwrite);
  }
  session.out(
    flags.json === true ? asJson([plan], false) : `${planTable(plan, readerOf(flags))}${page === undefined ? '' : `\n  ${page}\n`}`,
  );
  session.judge(plan.findings, flags.failOn);
}

/** The command `plan`: whether a frame does a test, at which pace, and what it can answer. */
export function planCommand(session: Session): Command {
  const command = new Command('plan')
    .description('A test before it is done: whether the frame does it, lengths, speeds, pace sheet, what can be answered.')
    .addArgument(new Argument('[test]', 'which test').choices(tests).default('tension'))
    .addOption(familyOption('family of the material'))
    .addOption(range('--modulus <E>', 'modulus to be expected [MPa]; here and below one number, or lowest-highest'))
    .addOption(range('--yield-strength <Re>', 'Rp0.2 or ReH to be expected [MPa]'))
    .addOption(range('--tensile-strength <Rm>', 'tensile strength to be expected [MPa]'))
    .addOption(range('--elongation <A>', 'elongation to be expected, for example 20%-30%'));
  withFrameFlags(withSectionFlags(command, false))
    .optionsGroup('Test:')
    .addOption(numberOption('--gauge-length <L0>', 'gauge length [mm]; default by the standard'))
    .addOption(numberOption('--parallel-length <Lc>', 'parallel length [mm]; default the least of the standard'))
    .addOption(numberOption('--effective-length <Leff>', 'length that stretches elastically, fillets included [mm]'))
    .option('--arbitration', 'parallel length for arbitration')
    .addOption(numberOption('--extensometer-length <Le>', 'base of the extensometer [mm]'))
    .addOption(numberOption('--extensometer-step <r>', 'step of its reading [mm]'))
    .addOption(new Option('--control <way>', 'how rates are chosen').choices(['iso-a', 'iso-b', 'e8-a', 'e8-b', 'e8-c']))
    .addOption(numberOption('--strength-range <n>', 'strain rate range after yield: 2, 3 or 4'))
    .addOption(numberOption('--sampling-rate <f>', 'samples of the logger per second'))
    .addOption(new Option('--use <what>', 'what the values are for').choices(['teaching', 'comparison', 'acceptance', 'structural']))
    .option('--claims-standard', 'the report is to claim the standard')
    .addOption(numberOption('--ball <D>', 'brinell, cupping: ball [mm]'))
    .addOption(numberOption('--force <F>', 'brinell: test force [N]'))
    .addOption(numberOption('--index <k>', 'brinell: index 0.102 F/D², instead of the force'))
    .addOption(range('--hardness <HBW>', 'brinell: hardness to be expected'))
    .addOption(numberOption('--thickness <t>', 'brinell, cupping: thickness of the piece [mm]'))
    .addOption(numberOption('--planes <n>', 'shear: planes, 1 or 2'))
    .addOption(numberOption('--span <L>', 'bending: distance of the supports [mm]'))
    .addOption(numberOption('--arm <a>', 'bending: distance of two noses from their supports [mm]'))
    .addOption(numberOption('--height <h0>', 'compression: height [mm]'))
    .addOption(new Option('--to-strain <e>', 'compression: strain at which to stop, for example 10%').argParser(toRatio))
    .addOption(numberOption('--friction <mu>', 'compression: coefficient of friction at the ends'))
    .addOption(numberOption('--width <b>', 'cupping: width or diameter of the blank [mm]'))
    .addOption(numberOption('--die <d>', 'cupping: bore of the die [mm]'))
    .addOption(numberOption('--depth <h>', 'cupping: greatest depth to be expected [mm]'))
    .option('--page <file>', 'write a page to print')
    .option('--identity <text>', 'what is to be tested, for the page')
    .option('--invented', 'the frame or the piece is invented: the page says so')
    .option('--overwrite', 'replace an existing page')
    .addHelpText(
      'after',
      '\nExample:\n  testpiece plan --family structural-steel --round 5 --capacity 25000 --bore 40 --rod 20 --frame-compliance 2e-5 --page plan.html\n',
    );
  withJobFlags(withReaderFlags(command));
  return command.action((test: PlannedTest, flags: PlanFlags) => makePlan(session, test, flags));
}
