import { Option, type Command } from 'commander';
import type { AfterFracture, SubdividedLengths, TestPiece } from '../base/index.js';
import { numberOption, some } from './flags.js';
import { readingsOf } from './readingsOf.js';
import { sectionFromFlags, withSectionFlags, type SectionFlags } from './sectionOptions.js';
import { usage } from './usage.js';

/** Flags of a broken piece, readings as they were typed. */
interface BrokenPieceFlags {
  readonly finalGaugeLength?: number;
  readonly finalArea?: number;
  readonly finalDiameter?: string;
  readonly finalWidth?: number;
  readonly finalThickness?: string;
  readonly fractureDistance?: number;
  readonly fracturePlace?: NonNullable<AfterFracture['fracturePlace']>;
  readonly subdivision?: string;
  readonly fineMarksExtension?: number;
}

/** Flags of a tension piece. */
export interface PieceFlags extends SectionFlags, BrokenPieceFlags {
  readonly gaugeLength?: number;
  readonly parallelLength?: number;
  readonly extensometerLength?: number;
  readonly effectiveLength?: number;
}

/** Those that are read on one broken piece. */
export const ofBrokenPiece: readonly (keyof BrokenPieceFlags)[] = [
  'finalGaugeLength',
  'finalArea',
  'finalDiameter',
  'finalWidth',
  'finalThickness',
  'fractureDistance',
  'fracturePlace',
  'subdivision',
  'fineMarksExtension',
];

/** `N,n,XY,YZ`, of an odd N − n `N,n,XY,YZ′,YZ″`. */
function subdivisionOf(text: string): SubdividedLengths {
  const [intervals, between, xToY, near, far, ...more] = text.split(',').map((one) => (one.trim() === '' ? NaN : Number(one)));
  const all = [intervals, between, xToY, near, far ?? 1];
  if (more.length > 0 || !all.every(Number.isFinite))
    throw usage(`--subdivision must be N,n,XY,YZ (or N,n,XY,YZ',YZ'' where N − n is odd), lengths in mm with decimal points, got ${text}`);
  return { intervals: intervals!, between: between!, xToY: xToY!, beyondY: far === undefined ? near! : [near!, far] };
}

/** The thickness of a flat neck: one reading, or edge, middle, edge, which may lie far apart. */
function throughNeck(text: string): number | number[] {
  const read = text.split(',').map((one) => (one.trim() === '' ? NaN : Number(one)));
  if (!read.every(Number.isFinite) || read.length === 2)
    throw usage(`--final-thickness must be one reading in mm, or three with commas between them (edge, middle, edge), got ${text}`);
  return read.length === 1 ? read[0]! : read;
}

/** What was measured on the broken piece. */
function afterFractureOf(flags: PieceFlags): AfterFracture | undefined {
  if (ofBrokenPiece.every((name) => flags[name] === undefined)) return undefined;
  const neck = flags.finalDiameter ?? flags.finalWidth ?? flags.finalThickness;
  if (flags.finalArea !== undefined && neck !== undefined)
    throw usage('--final-area must not stand beside --final-diameter, --final-width or --final-thickness');
  if ((flags.finalWidth === undefined) !== (flags.finalThickness === undefined))
    throw usage('--final-width and --final-thickness must be given together');
  return {
    ...some('gaugeLength', flags.finalGaugeLength),
    ...some('area', flags.finalArea),
    ...(flags.finalDiameter === undefined ? {} : { diameters: readingsOf('--final-diameter', flags.finalDiameter) }),
    ...some('width', flags.finalWidth),
    ...(flags.finalThickness === undefined ? {} : { thickness: throughNeck(flags.finalThickness) }),
    ...some('fractureDistance', flags.fractureDistance),
    ...some('fracturePlace', flags.fracturePlace),
    ...(flags.subdivision === undefined ? {} : { subdivision: subdivisionOf(flags.subdivision) }),
    ...some('fineMarksExtension', flags.fineMarksExtension),
  };
}

/** The piece that the flags describe. */
export const pieceOf = (flags: PieceFlags): TestPiece => ({
  section: sectionFromFlags(flags),
  gaugeLength: flags.gaugeLength as number,
  ...some('parallelLength', flags.parallelLength),
  ...some('extensometerLength', flags.extensometerLength),
  ...some('effectiveLength', flags.effectiveLength),
  ...some('afterFracture', afterFractureOf(flags)),
});

/** Adds the flags of a tension piece. */
export const withPieceFlags = (command: Command, mandatory: boolean): Command =>
  withSectionFlags(command, mandatory)
    .addOption(
      numberOption(
        '--gauge-length <L0>',
        `original gauge length [mm]; must be given${mandatory ? '' : ' with a section'}`,
      ).makeOptionMandatory(mandatory),
    )
    .addOption(numberOption('--parallel-length <Lc>', 'parallel length [mm]'))
    .addOption(numberOption('--extensometer-length <Le>', 'base of the extensometer [mm]; default the gauge length'))
    .addOption(numberOption('--effective-length <Leff>', 'length that stretches elastically, fillets included [mm]'))
    .optionsGroup('Broken piece:')
    .addOption(numberOption('--final-gauge-length <Lu>', 'gauge length after fracture [mm]'))
    .addOption(numberOption('--final-area <Su>', 'least area after fracture [mm²]'))
    .option('--final-diameter <du>', 'least diameter after fracture of a round piece [mm]; two directions as 4.7,4.9')
    .addOption(numberOption('--final-width <bu>', 'width of the neck of a flat piece [mm]'))
    .option('--final-thickness <au>', 'thickness of that neck [mm]; edge, middle, edge as 2.6,2.3,2.6')
    .addOption(numberOption('--fracture-distance <l>', 'distance of the fracture from the nearest gauge mark [mm]'))
    .addOption(
      new Option('--fracture-place <where>', 'where it broke, if not between the marks').choices(['at-mark', 'in-fillet', 'in-grip']),
    )
    .option(
      '--subdivision <N,n,XY,YZ>',
      "A by subdivision: intervals of the gauge length, those between X and Y, distance XY and YZ [mm]; YZ',YZ'' where N − n is odd",
    )
    .addOption(numberOption('--fine-marks-extension <dL>', 'extension between fine marks over the gauge length [mm], for a small A'));
