import {
  PROOF_OFFSET,
  InputError,
  isDivisor,
  requireBetween,
  requireExtensions,
  requireOptions,
  LARGEST_READING,
  requireColumn,
  requirePair,
  type Section,
  type SectionShape,
  type TensionRecord,
} from '../../base/index.js';
import {
  requireBeam,
  requireFrameCompliance,
  type Compliance,
  type FrameMotion,
  requireChord,
  requireModulusOptions,
  requireMotion,
  shearDeflectionShare,
  type ModulusOptions,
  type PieceLengths,
} from '../../curve/index.js';
import { plasticShapeFactor } from '../../piece/index.js';
import type { BendingColumns, BendingPiece } from './BendingResult.js';
import type { TestInfo } from '../common/MethodResult.js';
import { requireSpikeRepair, type SpikeRepair } from '../common/spikeRepair.js';
import type { TensionThresholds } from '../evaluation/tensionOptions.js';
import { requireTest } from '../common/testInfo.js';
import { lineThresholds, requireThresholds, type LineThresholdName } from '../common/thresholds.js';

/** Thresholds of findings of a bending test: common practice where no standard is named. */
export interface BendingThresholds extends Pick<TensionThresholds, LineThresholdName> {
  /** Least span over height; default 16. */
  readonly spanRatio?: number | undefined;
  /** Deflection over span from which the formulas are doubted; default 0.1. */
  readonly deflectionShare?: number | undefined;
  /** Difference of chord and slope, as a share of the slope, that is a caution; default 0.05. */
  readonly chordDifference?: number | undefined;
}

/** Options of {@link analyseBending}. */
export interface BendingOptions {
  /** Plastic strains of the outer fibre for the proof strengths [mm/mm], each 0.05 at most; default `[0.002]`. */
  readonly offsets?: ArrayLike<number> | undefined;
  /** The two strains of the chord [mm/mm]; default `[0.0005, 0.0025]`. */
  readonly chord?: readonly [number, number] | undefined;
  /** How the elastic window is chosen. */
  readonly modulus?: ModulusOptions | undefined;
  /** Compliance of the frame (a number [mm/N], a table or a power law), taken out of travel; default none. */
  readonly frameCompliance?: Compliance | undefined;
  /** What supports and noses sink into the beam, in the same way; taken out of travel as well; 0: the compliance of the frame holds it. */
  readonly indentationCompliance?: Compliance | undefined;
  /** Poisson's ratio, for the share of shear; default 0.3. */
  readonly poissonRatio?: number | undefined;
  /** Repairs of the record before anything else; default spikes. */
  readonly repairs?: SpikeRepair | undefined;
  /** Who tested what. */
  readonly test?: TestInfo | undefined;
  /** Thresholds of findings. */
  readonly thresholds?: BendingThresholds | undefined;
}

const ownThresholds = { spanRatio: 16, deflectionShare: 0.1, chordDifference: 0.05 };

/** Standard uncertainty of the sum of two motions that were measured apart, of that sum; of one whose own is not known nothing comes in. */
function doubtTogether(motions: readonly FrameMotion[]): Pick<FrameMotion, 'relativeUncertainty'> {
  if (motions.every(({ relativeUncertainty }) => relativeUncertainty === undefined)) return {};
  return {
    relativeUncertainty: (from, to) => {
      const moved = motions.map(({ at }) => at(to) - at(from));
      const doubts = motions.map(({ relativeUncertainty: doubt }, k) => (doubt?.(from, to) ?? 0) * moved[k]!);
      const sum = Math.abs(moved.reduce((a, b) => a + b));
      return sum > 0 ? Math.hypot(...doubts) / sum : 0;
    },
  };
}

/** Frame and indentation give one after the other: their motions add up, as far as both were measured. */
function together([first, second]: readonly FrameMotion[]): FrameMotion | undefined {
  if (!first || !second) return first;
  const low = Math.max(first.range?.[0] ?? 0, second.range?.[0] ?? 0);
  const high = Math.min(first.range?.[1] ?? Infinity, second.range?.[1] ?? Infinity);
  const areConstant = first.constant !== undefined && second.constant !== undefined;
  return {
    at: (force) => first.at(force) + second.at(force),
    ...(areConstant ? { constant: first.constant + second.constant } : {}),
    ...(first.range || second.range ? { range: [low, high] } : {}),
    ...doubtTogether([first, second]),
  };
}

/** @internal Options after the checks, with defaults. */
export type BendingSettings = ReturnType<typeof requireBendingOptions>;

/** @internal Checks the options before any work, and fills in defaults. */
export function requireBendingOptions(from: string, options: BendingOptions) {
  requireOptions(from, options, [
    'offsets',
    'chord',
    'modulus',
    'frameCompliance',
    'indentationCompliance',
    'poissonRatio',
    'repairs',
    'test',
    'thresholds',
  ]);
  const [low, high] = requirePair(from, 'options.chord', options.chord ?? [0.0005, 0.0025]);
  const parts = (['frameCompliance', 'indentationCompliance'] as const).map((name) =>
    requireFrameCompliance(from, `options.${name}`, options[name]),
  );
  return {
    offsets: requireExtensions(from, 'options.offsets', options.offsets, [PROOF_OFFSET]),
    offsetsAsked: options.offsets !== undefined,
    totalExtensions: [],
    chord: requireChord(from, [low, high], ['options.chord[0]', 'options.chord[1]']),
    window: requireModulusOptions(from, options.modulus ?? {}, 'options.modulus'),
    frameCompliance: together(parts.filter((one) => one !== undefined)),
    measured: parts,
    frameKnown: options.frameCompliance !== undefined,
    indentationKnown: options.indentationCompliance !== undefined,
    poissonRatio: requireBetween(from, 'options.poissonRatio', options.poissonRatio ?? 0.3, 0, 0.5),
    repairs: requireSpikeRepair(from, options.repairs),
    test: requireTest(from, options.test ?? {}),
    thresholds: requireThresholds(from, options.thresholds, { ...lineThresholds, ...ownThresholds }),
  };
}

/** @internal Which of the two compliances was taken off travel, as the trail names it. */
export const whatWasRemoved = ({ frameKnown, indentationKnown }: BendingSettings) =>
  !indentationKnown ? 'frame-compliance-removed' : frameKnown ? 'frame-and-indentation-removed' : 'indentation-removed';

/** @internal A beam as its curve needs it: lengths that turn force into stress and motion into strain of the outer fibre. */
export interface BeamLengths extends PieceLengths {
  readonly span: number;
  /** Height of the beam, twice the distance of the outer fibre [mm]. */
  readonly height: number;
  readonly shapeFactor: number | undefined;
}

const withShapeFactor: readonly SectionShape[] = ['rectangular', 'square', 'round', 'tube', 'hexagon'];
/** @internal True for shapes that a shape factor and a share of shear are known of. */
export const isBeamShape = ({ shape }: Section): boolean => withShapeFactor.includes(shape);

/**
 * @internal Checks beam and set-up. A beam is like a bar of area I/(m c) and length κ/(m c): F over the one is the stress of the outer fibre,
 * motion over the other its strain.
 */
export function requireBendingPiece(from: string, piece: BendingPiece): BeamLengths {
  requireOptions(from, piece, ['section', 'setup'], 'piece');
  const { section, setup } = piece;
  const atNose = requireBeam(from, setup, section, 'piece.');
  const inMiddle = requireBeam(from, { ...setup, measuredAt: setup.measuredAt ?? 'mid-span' }, section, 'piece.');
  const perStress = atNose.moment * atNose.outerFibre;
  const [area, nose] = [atNose.secondMoment / perStress, atNose.reach / perStress];
  if (![area, nose].every(isDivisor))
    throw new InputError(from, 'piece.setup.span', 'out-of-range', 'must be nearer to the size of the section', atNose.span);
  return {
    area,
    gaugeLength: nose,
    parallelLength: nose,
    effectiveLength: nose,
    extensometerLength: inMiddle.reach / perStress,
    span: atNose.span,
    height: 2 * atNose.outerFibre,
    shapeFactor: isBeamShape(section) ? plasticShapeFactor(section, setup.hexagonOn ?? 'flats') : undefined,
  };
}

/** @internal Share of shear in the deflection, of shapes that have one. */
export const shearShareOf = (
  { section, setup }: BendingPiece,
  poissonRatio: number,
  measuredAt: 'nose' | 'mid-span',
): number | undefined =>
  isBeamShape(section) ? shearDeflectionShare({ section, setup: { measuredAt, ...setup }, poissonRatio }) : undefined;

const columns = ['force', 'deflection', 'strain', 'travel', 'time'] as const;

/** @internal A bending record under the names that the curve knows: deflection is an extension whose base is the beam's. */
export function requireBendingRecord(from: string, record: BendingColumns): TensionRecord {
  requireOptions(from, record, columns, 'record');
  const force = requireColumn(from, 'record.force', record.force, { least: 2, largest: LARGEST_READING });
  const column = (name: Exclude<(typeof columns)[number], 'force'>, as: 'extension' | 'strain' | 'travel' | 'time') =>
    record[name] === undefined
      ? {}
      : {
          [as]: requireColumn(from, `record.${name}`, record[name], {
            length: force.length,
            largest: LARGEST_READING,
            endsEarly: as === 'extension' || as === 'strain',
          }),
        };
  const checked: TensionRecord = {
    force,
    ...column('deflection', 'extension'),
    ...column('strain', 'strain'),
    ...column('travel', 'travel'),
    ...column('time', 'time'),
  };
  requireMotion(from, checked, record, 'deflection');
  return checked;
}
