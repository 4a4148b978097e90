import { InputError, requireBetween, requireNonNegative, requireOptions, type Section } from '../../base/index.js';
import type { FrameMotion, PieceLengths } from '../../curve/index.js';
import {
  classSources,
  positiveInput,
  requireCoverage,
  requireForceClass,
  requireInput,
  type CheckedInput,
  type CoverageOptions,
  type UncertaintySources,
} from '../../uncertainty/index.js';
import type { BrokenPiece } from '../common/brokenPiece.js';

/** Noise of a record, where it is known better than the record shows. */
export interface RecordNoise {
  /** Standard deviation of a sample of the force [N]. */
  readonly force?: number | undefined;
  /** Standard deviation of a sample of extension or travel [mm]. */
  readonly displacement?: number | undefined;
  /** Correlation of the force's noise from sample to sample, 0 to 0.98. */
  readonly correlation?: number | undefined;
}

/** What is doubtful about a tension test. What is not given counts as exact, and a finding names it. */
export interface TensionUncertainty extends CoverageOptions {
  /** Scale of the force: relative [1]. */
  readonly force?: UncertaintySources | undefined;
  /** Class of the force's verification instead: its limits count as rectangular. */
  readonly forceClass?: 0.5 | 1 | 2 | 3 | undefined;
  /** Zero of the force [N]; below the highest force. */
  readonly forceZero?: UncertaintySources | undefined;
  /** Dimensions of the section, by name as in `section.dimensions` [mm]. */
  readonly section?: Readonly<Record<string, UncertaintySources>> | undefined;
  /** Scale of extension and travel: relative [1]. */
  readonly displacement?: UncertaintySources | undefined;
  /** Original gauge length L0 [mm]; lengths that default to it go with it. */
  readonly gaugeLength?: UncertaintySources | undefined;
  /** Base of the extensometer Le [mm]. */
  readonly extensometerLength?: UncertaintySources | undefined;
  /** Parallel length Lc [mm]. */
  readonly parallelLength?: UncertaintySources | undefined;
  /** Effective length Leff [mm]; it goes with Lc where the piece does not name it. */
  readonly effectiveLength?: UncertaintySources | undefined;
  /** Compliance of the frame that is removed: relative [1]; default the `relativeStandardUncertainty` that the compliance itself carries. */
  readonly frameCompliance?: UncertaintySources | undefined;
  /** Gauge length after fracture Lu [mm]. */
  readonly finalGaugeLength?: UncertaintySources | undefined;
  /** Area after fracture Su [mm²]. */
  readonly finalArea?: UncertaintySources | undefined;
  /** Noise of the samples; default as the record shows it: its elastic part, and for drift its stretches up to the maximum too. */
  readonly noise?: RecordNoise | undefined;
}

/** @internal What is doubtful, after its checks. */
export interface TensionDoubts {
  readonly inputs: readonly CheckedInput[];
  readonly coverage: CoverageOptions;
  readonly noise: RecordNoise;
}

/** @internal Prefix of the inputs that are dimensions of the section. */
export const SECTION = 'section.';

const names = [
  'force',
  'forceClass',
  'forceZero',
  'section',
  'displacement',
  'gaugeLength',
  'extensometerLength',
  'parallelLength',
  'effectiveLength',
  'frameCompliance',
  'finalGaugeLength',
  'finalArea',
  'noise',
  'coverage',
  'coverageFactor',
] as const;

function requireNoise(from: string, path: string, noise: RecordNoise): RecordNoise {
  requireOptions(from, noise, ['force', 'displacement', 'correlation'], path);
  const { force, displacement, correlation } = noise;
  return {
    ...(force === undefined ? {} : { force: requireNonNegative(from, `${path}.force`, force) }),
    ...(displacement === undefined ? {} : { displacement: requireNonNegative(from, `${path}.displacement`, displacement) }),
    ...(correlation === undefined ? {} : { correlation: requireBetween(from, `${path}.correlation`, correlation, 0, 0.98) }),
  };
}

/** A doubt of the zero as large as every force leaves nothing of them: another unit was meant. */
function requireZero(from: string, path: string, { standardUncertainty: u }: CheckedInput, highest: number): void {
  if (highest > 0 && u >= highest)
    throw new InputError(from, path, 'out-of-range', `must be a standard uncertainty in N below the highest force (${highest} N)`, u);
}

/** @internal Checks what is doubtful about a test whose highest force is known [N]. */
export function requireTensionUncertainty(
  from: string,
  given: TensionUncertainty,
  { dimensions }: Section,
  lengths: PieceLengths,
  broken: BrokenPiece,
  frame: FrameMotion | undefined,
  highest: number,
): TensionDoubts {
  const path = 'options.uncertainty';
  requireOptions(from, given, names, path);
  if (given.force !== undefined && given.forceClass !== undefined)
    throw new InputError(from, `${path}.forceClass`, 'ambiguous', 'must not be given beside force', given.forceClass);
  const section = given.section ?? {};
  requireOptions(from, section, Object.keys(dimensions), `${path}.section`);
  const doubt = (name: string, value: number | undefined, uncertainty: UncertaintySources | undefined, unit: string) => {
    if (uncertainty === undefined) return [];
    const input = requireInput(from, `${path}.${name}`, name, { value: value ?? 0, uncertainty, unit });
    // checked also where the piece has no such value
    if (value === undefined) return [];
    if (name !== 'forceZero') return [positiveInput(from, `${path}.${name}`, input)];
    requireZero(from, `${path}.${name}`, input, highest);
    return [input];
  };
  // a measured compliance knows its own doubt: of every form of it one number, whatever the forces
  const carried = given.frameCompliance === undefined ? frame?.relativeUncertainty?.(0, 0) : undefined;
  if (carried !== undefined && carried >= 1)
    throw new InputError(
      from,
      'options.frameCompliance.relativeStandardUncertainty',
      'out-of-range',
      'is relative and must be below 1 (0.02 is 2 % of the motion) to stand in a budget',
      carried,
    );
  const scale =
    given.forceClass === undefined ? given.force : classSources(requireForceClass(from, `${path}.forceClass`, given.forceClass));
  return {
    inputs: [
      ...doubt('force', 1, scale, '1'),
      ...doubt('forceZero', 0, given.forceZero, 'N'),
      ...Object.entries(section).flatMap(([name, sources]) => doubt(`${SECTION}${name}`, dimensions[name], sources, 'mm')),
      ...doubt('displacement', 1, given.displacement, '1'),
      ...doubt('gaugeLength', lengths.gaugeLength, given.gaugeLength, 'mm'),
      ...doubt('extensometerLength', lengths.extensometerLength, given.extensometerLength, 'mm'),
      ...doubt('parallelLength', lengths.parallelLength, given.parallelLength, 'mm'),
      ...doubt('effectiveLength', lengths.effectiveLength, given.effectiveLength, 'mm'),
      ...doubt('frameCompliance', 1, given.frameCompliance ?? carried, '1'),
      ...doubt('finalGaugeLength', broken.length, given.finalGaugeLength, 'mm'),
      ...doubt('finalArea', broken.area, given.finalArea, 'mm²'),
    ],
    coverage: requireCoverage(from, { coverage: given.coverage, coverageFactor: given.coverageFactor }, path),
    noise: requireNoise(from, `${path}.noise`, given.noise ?? {}),
  };
}
